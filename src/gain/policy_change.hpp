#pragma once

#include "gain/tee_shot.hpp"
#include "yardworth/player.hpp"
#include "yardworth/tee_view.hpp"

namespace yardworth {

// A tee shot that a policy asks for, with the golfer who plays it. Holds references.
struct PlannedTeeShot {
  const HoleModel& model;
  const Player& player;
  Action action;
  const std::vector<TeeShotNode>* struck = nullptr;  // node by node, where that is known
};

// Why the tee shot of the best policy is another one after a change. `kept` is the policy before, followed with the
// clubs after. None when the new policy asks for the same club as that and the aim finishes within
// telling::same_aim_yd.
PolicyChange explain_policy_change(const PlannedTeeShot& before, const PlannedTeeShot& kept,
                                   const PlannedTeeShot& after);

}  // namespace yardworth
