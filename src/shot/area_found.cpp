#include "shot/area_found.hpp"

#include "core/numerics.hpp"

namespace yardworth {

namespace {

constexpr double step_yd = numerics::area_step_yd;

}  // namespace

int area_found(const HoleMap& map, Point landing, Point direction, double roll_yd, const Rest& rest) {
  if (rest.penalty_strokes == 0) return map.area_at(rest.at);
  const double farthest = roll_yd * longest_roll_factor() + step_yd;
  for (double rolled = 0.0; rolled <= farthest; rolled += step_yd) {
    const Point place = landing + rolled * direction;
    if (is_penalised(map.ground_at(place))) return map.area_at(place);
  }
  return -1;
}

}  // namespace yardworth
