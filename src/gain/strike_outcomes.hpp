#pragma once

#include <span>
#include <utility>
#include <vector>

#include "strategy/policy_evaluation.hpp"

namespace yardworth {

inline bool has_action(const PolicyEvaluation& planned, StateId state) {
  return planned.policy[static_cast<std::size_t>(state)].swing >= 0;
}

// Where one strike ends, what follows it, and its probability.
struct StrikeOutcome {
  Rest rest;
  Continuation continuation;
  double weight = 0.0;
};

// Where the strikes of each state end under a policy. Struck once, since every question comes to the same states.
class StrikeOutcomes {
 public:
  // All are kept in `store`, whose memory serves one policy after the other; it must not be used elsewhere meanwhile.
  StrikeOutcomes(const HoleModel& model, const PolicyEvaluation& planned, std::vector<StrikeOutcome>& store);

  // Valid until another state is asked for.
  std::span<const StrikeOutcome> of(StateId state);

 private:
  const HoleModel& model_;
  const PolicyEvaluation& planned_;
  std::vector<StrikeOutcome>& store_;
  std::vector<std::pair<std::size_t, std::size_t>> places_;  // by state: where in the store, and how many
};

}  // namespace yardworth
