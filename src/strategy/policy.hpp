#pragma once

#include <functional>
#include <vector>

#include "strategy/hole_model.hpp"

namespace yardworth {

// A policy by state: what is played from it. Entries with swing -1 have not been asked for yet.
using Policy = std::vector<Action>;

// What is played from a state.
using ActionOf = std::function<Action(StateId)>;

// What is played from any place of the hole, not only from a state.
using ActionFrom = std::function<Action(Lie lie, Point from)>;

// What a policy by state says of any place: the action of the nearest state (HoleModel::nearest_state), turned and
// fitted to the place. Habit where the policy is silent.
Action action_near(const HoleModel& model, const Policy& policy, Lie lie, Point from);

}  // namespace yardworth
