#include "shot/rest.hpp"

#include <cmath>

#include "core/numerics.hpp"

namespace yardworth {

namespace {

// Two club-lengths, the width of a relief area: common practice for the longest club but the putter.
constexpr double relief_yd = 2.5;

// Where a rolling ball stops of itself, or first comes to ground that costs a penalty.
struct Stop {
  Point at;
  HoleMap::GroundProbe probed;  // there
};

// Walks the roll yard by yard and meets edges. Never called: a call costs a fifth of what a roll does.
[[gnu::always_inline]] inline Stop roll(const HoleMap& map, Point direction, Point landing, HoleMap::GroundProbe landed,
                                        double roll_yd) {
  Point at = landing;
  HoleMap::GroundProbe probed = landed;
  Ground ground = probed.ground;
  double factor = map.roll_factor_on(ground);
  double left = roll_yd * factor;  // in yards of this ground
  while (!is_penalised(ground)) {
    do {
      if (!(left >= numerics::least_roll_yd)) return {at, probed};
      // An edge that does not count may be met a little late.
      const double watch = left < probed.edge_free_yd ? numerics::open_roll_step_yd : numerics::roll_step_yd;
      const double step = std::min(left, std::max<double>(watch, probed.clearance_yd));
      at = at + step * direction;
      left -= step;
      probed = map.probe(at);
    } while (probed.ground == ground);
    const double before = factor;
    ground = probed.ground;
    factor = map.roll_factor_on(ground);
    left *= factor / before;
  }
  return {at, probed};
}

Rest play_again(Point from, Ground found) { return {from, Lie::rough, 1, true, found}; }

// The ball is at `inside`, as probed, on ground that it is dropped from; it came along `direction` from `from`.
Rest drop_behind_edge(const HoleMap& map, Point from, Point direction, Point inside, HoleMap::GroundProbe probed) {
  const Ground found = probed.ground;
  const double flown = distance_yd(from, inside);
  double out = 0.0;  // yards back from `inside`: still inside
  double back = std::max<double>(numerics::drop_step_yd, probed.clearance_yd);
  while (back < flown && (probed = map.probe(inside - back * direction)).ground == found) {
    out = back;
    back += std::max<double>(numerics::drop_step_yd, probed.clearance_yd);
  }
  const auto place = [&](double yards_back) { return inside - yards_back * direction; };
  if (const auto share = map.edge_between(place(out), place(back))) {
    back = std::lerp(out, back, *share);
  } else {
    while (back - out > numerics::crossing_yd) {
      const double middle = 0.5 * (out + back);
      (map.ground_at(place(middle)) == found ? out : back) = middle;
    }
  }
  for (double drop = back + relief_yd; drop < flown; drop += numerics::drop_step_yd) {
    const Point at = inside - drop * direction;
    const Ground ground = map.ground_at(at);
    if (is_playable(ground)) return {at, lie_on(ground), 1, false, found};
  }
  return play_again(from, found);
}

}  // namespace

Rest roll_out(const HoleMap& map, Point from, Point direction, Point landing, HoleMap::GroundProbe landed,
              double roll_yd) {
  const Stop stop = roll(map, direction, landing, landed, roll_yd);
  const Ground ground = stop.probed.ground;
  switch (penalty_on(ground)) {
    case Penalty::none:
      return {stop.at, lie_on(ground), 0, false, ground};
    case Penalty::drop:
      return drop_behind_edge(map, from, direction, stop.at, stop.probed);
    case Penalty::stroke_and_distance:
      break;
  }
  return play_again(from, ground);
}

Ground ground_rolled_to(const HoleMap& map, Point direction, Point landing, HoleMap::GroundProbe landed,
                        double roll_yd) {
  return roll(map, direction, landing, landed, roll_yd).probed.ground;
}

Point stopped_at(const HoleMap& map, Point from, Point direction, double carry_yd, double roll_yd) {
  const Point landing = from + carry_yd * direction;
  return roll(map, direction, landing, map.probe(landing), roll_yd).at;
}

}  // namespace yardworth
