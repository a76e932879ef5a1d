#pragma once

#include "yardworth/course/course.hpp"

namespace yardworth {

// The set of holes that baselines are derived on: one straight hole of every length, set up alike, all numbers common
// practice, no source. docs/bands.md describes it.
//
//   fairway        32 yards wide from 100 yards on (a third of the way on a short hole), 24 in the last 60 yards,
//                  ending 8 yards in front of the green; none on a hole of par 3 but an apron of the last 30 yards
//   green          27 deep, 22 wide; a bunker 18 long and 9 wide on either side of its front
//   bunkers        20 long and 9 wide beside the fairway, every 45 yards, left and right by turns
//   trees          from 36 to 60 yards off the line on both sides
//   out of bounds  beyond them on the left, a penalty area beyond them on the right
//
// From one tee of that length, in yards.
Hole reference_hole(double length_yd);

// Where the derivation takes a lie to be at a distance from the hole: this far to the side of the line.
inline constexpr double reference_rough_yd = 23.0;
inline constexpr double reference_bunker_yd = 21.0;
inline constexpr double reference_recovery_yd = 42.0;

}  // namespace yardworth
