#pragma once

#include <string>

#include "yardworth/tee_view.hpp"
#include "yardworth/units.hpp"

namespace yardworth::report {

// A hole in the words of a golfer on the tee in use. Names of clubs are as files have them: not safe for a terminal.

// "bunker right": what a hazard is, wherever the tee.
std::string hazard_without_distance(const HazardView& hazard);
// "bunker right at 226-244", "out of bounds left, all along".
std::string hazard_words(const HazardView& hazard, Units units);

// "down the middle", "at the left edge of the fairway", "at the right-hand bunker", "12 yards left of the middle",
// or "of the line of play" where that is not the middle of the fairway.
std::string aim_words(const Aim& aim, Units units);

// The same told from the line of play whatever the mark, so that aims beside each other are told from one line; but
// for the green and bunkers, which are marks by themselves.
std::string aim_from_line_words(const Aim& aim, Units units);

// "the carry over the penalty area at 214 is now on with driver", "driver would now reach the bunker right at 250-262,
// so 5-wood"; nothing where nothing changed.
std::string policy_change_words(const PolicyChange& change, Units units);

}  // namespace yardworth::report
