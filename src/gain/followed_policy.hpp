#pragma once

#include <functional>

#include "gain/hole_models.hpp"
#include "strategy/policy_evaluation.hpp"

namespace yardworth {

// The policy before, followed with other clubs. Models and policy must outlive it.
ActionOf followed(const HoleModel& model, const HoleModel& planned, const Policy& policy);

// The habit of a golfer who keeps a tee shot. The model must outlive it.
ActionFrom habit_with_tee_shot(const HoleModel& model, const Action& tee_shot);

// The habit as a policy follows it: from places where that stays with a shot played before the clubs changed, that one.
// Model and policy must outlive it.
ActionFrom habit_as_followed(const HoleModel& model, const Policy& policy);

// A policy made before a change, evaluated as it is followed with a longer driver, and with longer irons too
// (evaluate_followed). `row_source` may have rows for the last.
struct FollowedPolicy {
  PolicyEvaluation driver_longer;
  PolicyEvaluation all_longer;
};
using Following = std::function<ActionOf(const HoleModel& model)>;
FollowedPolicy follow_policy(const HoleModels& models, const PolicyEvaluation& before, const Following& follow,
                             const PolicyEvaluation* row_source = nullptr);

}  // namespace yardworth
