#pragma once

#include <functional>
#include <vector>

#include "gain/hole_models.hpp"
#include "strategy/policy_evaluation.hpp"

namespace yardworth {

// The policy before, followed with other clubs. Models and policy must outlive it.
ActionOf followed(const HoleModel& model, const HoleModel& planned, const Policy& policy);

// The habit of a golfer who keeps a tee shot. The model must outlive it.
ActionFrom habit_with_tee_shot(const HoleModel& model, const Action& tee_shot);

// What a golfer who follows plays: from a state with the clubs after, from any place with those, and from there before.
struct Followed {
  ActionOf at;
  ActionFrom now, before;
};

// A policy of the golfer after as it is followed from any place: where it stays with a shot played before the clubs
// changed, the one that was played from there. Models and policy must outlive it; it remembers what it was asked, so
// one thread may ask at a time.
ActionFrom played_as_followed(const HoleModels& models, const Policy& policy, const Followed& follow);

// The same of the habit.
ActionFrom habit_as_followed(const HoleModels& models, const Policy& policy);

// A policy made before a change, evaluated as it is followed after each step of it (evaluate_followed).
struct FollowedPolicy {
  std::vector<StepValue> steps;  // what it is worth, by Golfers::steps
  PolicyEvaluation after;        // all of them; the policy before where there are none
};
using Following = std::function<ActionOf(const HoleModel& model)>;
// `row_source` may have rows for the last step.
FollowedPolicy follow_policy(const HoleModels& models, const PolicyEvaluation& before, const Following& follow,
                             const PolicyEvaluation* row_source = nullptr);

}  // namespace yardworth
