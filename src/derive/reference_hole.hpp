#pragma once

#include "yardworth/course.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// The holes that baselines are derived on: one straight hole of every length, from one tee, in one of two set-ups. All
// numbers are common practice, no source; yards.
//
//                                        championship            club
//   fairway, from 100 on                 32 wide                 36 wide
//   its last 100, to 8 before the green  22 wide                 28 wide
//   green, the hole in its middle        27 deep, 22 wide        30 deep, 26 wide
//   the same on a hole below 130         22 deep, 18 wide        as ever
//   bunkers beside the fairway           every 45, by turns,     every 60, by turns
//     (20 long, 9 wide)                  near the green on both sides
//   bunkers beside the green             18 long, 9 wide, on either side of its front
//   bunker before the green              par 4 below 350         none
//   trees on both sides                  36 to 60 off the line   42 to 70
//   out of bounds left, penalty area right: beyond the trees
//
// A fairway begins 30 yards before the green where that is less than 100 from the tee. Championship is how tour
// professionals find a course, club how everybody else does: greens look small where flags stand near edges, rough is
// left to grow, fairways are narrowed.
enum class SetUp { championship, club };

SetUp set_up_of(Band band);

Hole reference_hole(double length_yd, SetUp set_up);

// How far off the line the derivation takes a lie to be.
double reference_off_line_yd(Lie lie, SetUp set_up);

}  // namespace yardworth
