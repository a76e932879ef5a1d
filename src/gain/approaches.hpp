#pragma once

#include <map>
#include <string>

#include "gain/strike_outcomes.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// The probabilities that a club plays the approach: the first stroke after the tee shot that is played at the green
// from beyond the short game. By club name. action_from says what the policy plays from any place: clubs are told by
// where the balls lie, not by the states around.
std::map<std::string, double> approach_clubs(const HoleModel& model, const Player& player,
                                             const PolicyEvaluation& planned, const ActionFrom& action_from,
                                             StrikeOutcomes& outcomes);

}  // namespace yardworth
