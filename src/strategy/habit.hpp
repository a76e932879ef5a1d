#pragma once

#include <vector>

#include "strategy/policy.hpp"

namespace yardworth {

// The habit of most club golfers, at any place: the club that reaches the hole, the shortest one, played to the
// distance; where none reaches, the longest whose straight shot down the middle ends in no trouble, struck a spread of
// its carry longer or shorter, or else as it is meant, or the longest of all. Of clubs that reach, one that spreads
// more in every respect than another is never taken.
Action habit_action(const HoleModel& model, Lie lie, Point from);

// The habit at every state. `model` must outlive it.
ActionOf habit_of(const HoleModel& model);

// The distances from the hole at which the habit changes its club abruptly, because the longest one begins or ceases to
// end in trouble or to have its margin: found along the middle of the line, from fairway and rough.
std::vector<double> habit_edges_yd(const HoleModel& model);

}  // namespace yardworth
