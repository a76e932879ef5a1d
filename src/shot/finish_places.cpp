#include "shot/finish_places.hpp"

#include <algorithm>

namespace yardworth {

namespace {

// For each whole number up to the last of some rising distances, which of them is the last that is not beyond it.
template <const auto& distances>
constexpr auto lower_of = [] {
  std::array<int, static_cast<std::size_t>(distances.back())> lower{};
  int index = 0;
  for (std::size_t whole = 0; whole < lower.size(); ++whole) {
    while (distances[static_cast<std::size_t>(index) + 1] <= static_cast<int>(whole)) ++index;
    lower[whole] = index;
  }
  return lower;
}();

template <const auto& distances>
FinishPlace between(double distance, int first) {
  const double last = distances.back();
  if (distance >= last) return {first + static_cast<int>(distances.size()) - 2, 1.0};
  const int lower = lower_of<distances>[static_cast<std::size_t>(distance)];
  const auto index = static_cast<std::size_t>(lower);
  return {first + lower, (distance - distances[index]) / (distances[index + 1] - distances[index])};
}

}  // namespace

FinishPlace finish_place(Lie lie, double distance_yd) {
  using numerics::finish_feet;
  using numerics::finish_yards;
  const auto yards = static_cast<int>(finish_yards.size());
  if (lie == Lie::green) {
    return between<finish_feet>(distance_yd * feet_per_yard, static_cast<int>(lies_in_play.size()) * yards);
  }
  return between<finish_yards>(distance_yd, static_cast<int>(index_in_play(lie)) * yards);
}

}  // namespace yardworth
