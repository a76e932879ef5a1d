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

// Whether a ball that finds this ends in what golfers keep away from: a penalty, sand or trees.
inline bool is_trouble(Ground found) { return facts_of(found).trouble; }

// The largest roll factor that there is: that of firm fairway.
inline double longest_roll_factor() { return roll_factor(Ground::fairway, Firmness::firm); }

// The part of come_to_rest that walks the roll yard by yard, meets edges and applies the Rules of Golf. `landed` is the
// ground probe at the landing.
Rest roll_out(const HoleMap& map, Point from, Point direction, Point landing, HoleMap::GroundProbe landed,
              double roll_yd);

// Of that the ground alone on which the ball stops, or which costs the penalty.
Ground ground_rolled_to(const HoleMap& map, Point direction, Point landing, HoleMap::GroundProbe landed,
                        double roll_yd);

// Whether a ball that would roll so far, from a landing to an end, rests there on the ground it landed on, as a glance
// tells: with no edge that counts within reach, a ball that would end on the ground it landed on stayed there.
inline bool stays_on_ground(const HoleMap& map, HoleMap::GroundProbe landed, double roll_yd, Point end) {
  return roll_yd <= landed.clearance_yd || (roll_yd <= landed.edge_free_yd && map.ground_at(end) == landed.ground);
}

// A ball struck from `from` along the unit vector `direction`: it lands carry_yd on, rolls (roll_yd is the roll on a
// normal fairway) and comes to rest. Only the ground it lands on or rolls over counts, and what that costs is said in
// course/ground.hpp. A bunker holds it. Stroke and distance: one stroke, played again (Rule 18.2). Drop: one stroke,
// dropped two club-lengths back along the line of flight from where it last crossed the edge (Rule 17.1d); where
// nothing there can be played, stroke and distance.
inline Rest come_to_rest(const HoleMap& map, Point from, Point direction, double carry_yd, double roll_yd) {
  const Point landing = from + carry_yd * direction;
  const HoleMap::GroundProbe landed = map.probe(landing);
  if (!is_penalised(landed.ground)) {
    const double roll = roll_yd * map.roll_factor_on(landed.ground);
    const Point end = landing + roll * direction;
    if (stays_on_ground(map, landed, roll, end)) return {end, lie_on(landed.ground), 0, false, landed.ground};
  }
  return roll_out(map, from, direction, landing, landed, roll_yd);
}

// What that ball finds (Rest::found), for those who need not know where it is dropped.
inline Ground ground_found(const HoleMap& map, Point from, Point direction, double carry_yd, double roll_yd) {
  const Point landing = from + carry_yd * direction;
  const HoleMap::GroundProbe landed = map.probe(landing);
  const double roll = roll_yd * map.roll_factor_on(landed.ground);
  const bool stays = is_penalised(landed.ground) || stays_on_ground(map, landed, roll, landing + roll * direction);
  return stays ? landed.ground : ground_rolled_to(map, direction, landing, landed, roll_yd);
}

// Where that ball stops, or first comes to ground that costs a penalty: before any Rule moves it.
Point stopped_at(const HoleMap& map, Point from, Point direction, double carry_yd, double roll_yd);

}  // namespace yardworth
