#include "shot/rest.hpp"

#include <cmath>

namespace yardworth {

namespace {

// Two club-lengths, the width of a relief area: common practice for the longest club but the putter.
constexpr double relief_yd = 2.5;

// How closely a rolling ball is watched near edges.
constexpr double step_yd = 2.0;

bool playable(Ground ground) { return ground != Ground::out_of_bounds && ground != Ground::penalty_area; }

// The ball is in a penalty area at `inside`, which looks like `look`; it came along `direction` from `from`.
Rest drop_from_penalty_area(const HoleMap& map, Point from, Point direction, Point inside,
                            HoleMap::GroundProbe probed) {
  const double flown = distance_yd(from, inside);
  double out = 0.0;  // yards back from `inside`: still inside
  double back = std::max<double>(1.0, probed.clearance_yd);
  while (back < flown && (probed = map.probe(inside - back * direction)).ground == Ground::penalty_area) {
    out = back;
    back += std::max<double>(1.0, probed.clearance_yd);
  }
  const auto place = [&](double yards_back) { return inside - yards_back * direction; };
  if (const auto share = map.edge_between(place(out), place(back))) {
    back = std::lerp(out, back, *share);
  } else {
    // To a thousandth of a yard.
    constexpr double closely_yd = 0.001;
    while (back - out > closely_yd) {
      const double middle = 0.5 * (out + back);
      (map.ground_at(place(middle)) == Ground::penalty_area ? out : back) = middle;
    }
  }
  for (double drop = back + relief_yd; drop < flown; drop += 1.0) {
    const Point at = inside - drop * direction;
    const Ground ground = map.ground_at(at);
    if (playable(ground)) return {at, lie_on(ground), 1, false};
  }
  return {from, Lie::rough, 1, true};
}

}  // namespace

Rest roll_out(const HoleMap& map, Point from, Point direction, Point landing, HoleMap::GroundProbe landed,
              double roll_yd) {
  Point at = landing;
  HoleMap::GroundProbe probed = landed;
  Ground ground = probed.ground;
  double factor = roll_factor(ground, map.firmness());
  double left = roll_yd * factor;  // in yards of this ground
  for (;;) {
    if (ground == Ground::out_of_bounds) return {from, Lie::rough, 1, true};
    if (ground == Ground::penalty_area) return drop_from_penalty_area(map, from, direction, at, probed);
    if (!(left >= 1e-6)) return {at, lie_on(ground), 0, false};
    // Between fairway and rough alone an edge met a little late only changes the roll a little.
    const double watch = left < probed.trouble_yd ? 2.0 * step_yd : step_yd;
    const double step = std::min(left, std::max<double>(watch, probed.clearance_yd));
    at = at + step * direction;
    left -= step;
    probed = map.probe(at);
    if (probed.ground == ground) continue;
    const double before = factor;
    ground = probed.ground;
    factor = roll_factor(ground, map.firmness());
    left *= factor / before;
  }
}

}  // namespace yardworth
