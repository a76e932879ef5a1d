#pragma once

#include <map>
#include <string>

#include "gain/played_hole.hpp"
#include "gain/strike_outcomes.hpp"

namespace yardworth {

// The probabilities that a club plays the approach: the first stroke after the tee shot that is played at the green
// from beyond the short game. By club name. Clubs are told by where the balls lie, not by the states around.
std::map<std::string, double> approach_clubs(const PlayedHole& played, StrikeOutcomes& outcomes);

}  // namespace yardworth
