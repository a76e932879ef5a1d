#pragma once

#include <string>

#include "strategy/policy.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// A tee shot that a policy asks for, with the golfer who plays it. Holds references.
struct PlannedTeeShot {
  const HoleModel& model;
  const Player& player;
  Action action;
};

// Aims that finish closer together than this are the same aim.
inline constexpr double same_aim_yd = 4.0;

// Why the tee shot of the best policy is another one after a change, in a golfer's words with distances from the tee in
// use: "the carry over the penalty area at 214 is now on", "driver would now reach the bunker right at 250-262, so
// 5-wood". `followed` is the policy before, kept with the clubs after. Empty when the new policy asks for the same club
// as that and the aim finishes within same_aim_yd: a shot at the hole that only needs less club is no new policy.
std::string explain_policy_change(const PlannedTeeShot& before, const PlannedTeeShot& followed,
                                  const PlannedTeeShot& after, Units units);

}  // namespace yardworth
