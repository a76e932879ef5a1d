#include "shot/area_found.hpp"

#include "core/numerics.hpp"

namespace yardworth {

namespace {

constexpr double step_yd = numerics::area_step_yd;

}  // namespace

int area_found(const HoleMap& map, Point from, Point direction, double carry_yd, double roll_yd) {
  const Rest rest = come_to_rest(map, from, direction, carry_yd, roll_yd);
  if (rest.penalty_strokes == 0) return map.area_at(rest.at);
  const double farthest = carry_yd + roll_yd * longest_roll_factor() + step_yd;
  for (double at = carry_yd; at <= farthest; at += step_yd) {
    const Point place = from + at * direction;
    if (is_penalised(map.ground_at(place))) return map.area_at(place);
  }
  return -1;
}

}  // namespace yardworth
