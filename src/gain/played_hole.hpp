#pragma once

#include <utility>
#include <vector>

#include "gain/tee_shot.hpp"
#include "strategy/policy_evaluation.hpp"

namespace yardworth {

// A hole as a golfer plays it under a policy. Holds references.
struct PlayedHole {
  const HoleModel& model;
  const Player& player;
  const PolicyEvaluation& planned;
  ActionFrom from;                     // what is played from any place
  std::vector<TeeShotNode> tee_nodes;  // the tee shot, and what is played next

  const Action& tee_shot() const { return planned.policy[static_cast<std::size_t>(model.tee_state())]; }
};

inline PlayedHole played_hole(const HoleModel& model, const Player& player, const PolicyEvaluation& planned,
                              ActionFrom from) {
  PlayedHole played{model, player, planned, std::move(from), {}};
  played.tee_nodes = strike_tee_shot(model, player, played.tee_shot(), played.from);
  return played;
}

}  // namespace yardworth
