#pragma once

#include "course/ground.hpp"
#include "course/hole_map.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// Where a struck ball ends and what it costs beside the stroke itself.
struct Rest {
  Point at;
  Lie lie = Lie::rough;          // where replay is false
  int penalty_strokes = 0;       // 0 or 1
  bool replay = false;           // stroke and distance: played again from where it was struck
  Ground found = Ground::rough;  // what it lay on when it stopped, or what cost the penalty
};

// Whether a ball ends in what golfers keep away from: a penalty, sand or trees.
inline bool finds_trouble(const Rest& rest) { return facts_of(rest.found).trouble; }

// The largest roll factor that there is: that of firm fairway.
inline double longest_roll_factor() { return roll_factor(Ground::fairway, Firmness::firm); }

// The part of come_to_rest that walks the roll yard by yard, meets edges and applies the Rules of Golf. `landed` is the
// ground probe at the landing.
Rest roll_out(const HoleMap& map, Point from, Point direction, Point landing, HoleMap::GroundProbe landed,
              double roll_yd);

// A ball struck from `from` along the unit vector `direction`: it lands carry_yd on, rolls (roll_yd is the roll on a
// normal fairway) and comes to rest. Only the ground it lands on or rolls over counts, and what that costs is said in
// course/ground.hpp. A bunker holds it. Stroke and distance: one stroke, played again (Rule 18.2). Drop: one stroke,
// dropped two club-lengths back along the line of flight from where it last crossed the edge (Rule 17.1d); where
// nothing there can be played, stroke and distance.
inline Rest come_to_rest(const HoleMap& map, Point from, Point direction, double carry_yd, double roll_yd) {
  const Point landing = from + carry_yd * direction;
  const HoleMap::GroundProbe probed = map.probe(landing);
  if (!is_penalised(probed.ground)) {
    const double roll = roll_yd * map.roll_factor_on(probed.ground);
    const Point end = landing + roll * direction;
    // With no edge that counts within reach, a ball that would end on the ground it landed on stayed there.
    if (roll <= probed.clearance_yd || (roll <= probed.edge_free_yd && map.ground_at(end) == probed.ground)) {
      return {end, lie_on(probed.ground), 0, false, probed.ground};
    }
  }
  return roll_out(map, from, direction, landing, probed, roll_yd);
}

}  // namespace yardworth
