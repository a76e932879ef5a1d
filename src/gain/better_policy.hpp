#pragma once

#include <memory>

#include "strategy/look_ahead.hpp"
#include "strategy/policy_iteration.hpp"
#include "yardworth/diagnostics.hpp"

namespace yardworth {

// Policies are looked for on one grid and set of strikes and evaluated on others: HoleModels says why.

// What a search may begin from: the same policy on both grids, and what it is worth on the held-out one.
struct PolicyStart {
  ActionOf on_search, on_held_out;
  PolicyEvaluation held_out;
  bool enough = false;  // whether it is kept where the search meets a place that it cannot leave
};

// A policy and what it is worth where the search has not looked.
struct FoundPolicy {
  PolicyEvaluation held_out;  // the better, by held-out values, of the start and the one found
  // The clubs of that, where enough balls come to; none where the start was kept.
  std::shared_ptr<const LookAhead> look_ahead;
  Policy kept;          // the same on the grid of the search
  BestPolicy searched;  // what the search found, and what it says of that itself
};

// The search met a place that it cannot leave, though its start holes out: with the start alone there may be an answer.
class SearchCannotFinish : public CannotFinish {
 public:
  using CannotFinish::CannotFinish;
};

// The best policy found from a start. Throws SearchCannotFinish where the start is not enough.
FoundPolicy better_policy(const HoleModel& search, const HoleModel& held_out_model, PolicyStart start,
                          const PolicyIterationOptions& options = {});

}  // namespace yardworth
