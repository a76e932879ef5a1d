#pragma once

#include <algorithm>

#include "course/hole_map.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// Where a struck ball ends and what it costs beside the stroke itself.
struct Rest {
  Point at;
  Lie lie = Lie::rough;     // where replay is false
  int penalty_strokes = 0;  // 0 or 1
  bool replay = false;      // stroke and distance: played again from where it was struck
};

// Whether a ball ends in what golfers keep away from: a penalty, sand or trees.
inline bool finds_trouble(const Rest& rest) {
  return rest.penalty_strokes > 0 || rest.lie == Lie::bunker || rest.lie == Lie::recovery;
}

// Roll on a ground over roll on a normal fairway. Common practice, no source; see docs/model.md, "Roll".
double roll_factor(Ground ground, Firmness firmness);

// The largest there is: that of firm fairway.
inline double longest_roll_factor() { return roll_factor(Ground::fairway, Firmness::firm); }

// The lie that a ball at rest on a ground is played from.
Lie lie_on(Ground ground);

// The part of come_to_rest that walks the roll yard by yard, meets edges and applies the Rules of Golf. `landed` is the
// look at the landing.
Rest roll_out(const HoleMap& map, Point from, Point direction, Point landing, HoleMap::GroundProbe landed,
              double roll_yd);

// A ball struck from `from` along the unit vector `direction`: it lands carry_yd on, rolls (roll_yd is the roll on a
// normal fairway) and comes to rest. Only the ground it lands on or rolls over counts. A bunker holds it. Out of
// bounds: one stroke, played again (Rule 18.2). Penalty area: one stroke, dropped two club-lengths back along the line
// of flight from where it last crossed the edge (Rule 17.1d); where nothing there can be played, stroke and distance.
inline Rest come_to_rest(const HoleMap& map, Point from, Point direction, double carry_yd, double roll_yd) {
  const Point landing = from + carry_yd * direction;
  const HoleMap::GroundProbe probed = map.probe(landing);
  if (probed.ground != Ground::out_of_bounds && probed.ground != Ground::penalty_area) {
    const double roll = roll_yd * roll_factor(probed.ground, map.firmness());
    const Point end = landing + roll * direction;
    // With nothing but fairway and rough within reach, a ball that would end on the ground it landed on stayed there.
    if (roll <= probed.clearance_yd || (roll <= probed.trouble_yd && map.ground_at(end) == probed.ground)) {
      return {end, lie_on(probed.ground), 0, false};
    }
  }
  return roll_out(map, from, direction, landing, probed, roll_yd);
}

inline double roll_factor(Ground ground, Firmness firmness) {
  static constexpr double by_firmness[] = {0.6, 1.0, 1.35};
  //                               green, out of bounds, penalty area, bunker, trees, fairway, rough
  static constexpr double by_ground[] = {0.7, 0.0, 0.0, 0.0, 0.3, 1.0, 0.4};
  return by_ground[static_cast<std::size_t>(ground)] * by_firmness[static_cast<std::size_t>(firmness)];
}

inline Lie lie_on(Ground ground) {
  static constexpr Lie by_ground[] = {Lie::green,    Lie::rough,   Lie::rough, Lie::bunker,
                                      Lie::recovery, Lie::fairway, Lie::rough};
  return by_ground[static_cast<std::size_t>(ground)];
}

}  // namespace yardworth
