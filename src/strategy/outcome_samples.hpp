#pragma once

#include <boost/container/vector.hpp>
#include <vector>

#include "strategy/candidates.hpp"
#include "strategy/dependencies.hpp"
#include "strategy/transition.hpp"

namespace yardworth {

// Made without values, since every one is written when its node is struck.
using Continuations = boost::container::vector<Continuation>;

// What a candidate's swing leads to from a state at every node of the strike lattices that its range of aims needs.
// This does not depend on any value, so it is struck once and then weighed as often as values move.
struct OutcomeSamples {
  int stride = 1;
  Continuations solid, poor;  // by node, from the leftmost on; empty where such strikes do not occur
};

// Strikes every stride-th node; with thin_tails few in the far tails (strikes.hpp). `used` are samples no longer
// wanted, for their memory.
OutcomeSamples sample_outcomes(const HoleModel& model, StateId state, const Candidate& candidate, int stride,
                               bool thin_tails, OutcomeSamples used = {});

// Sums over the samples of a candidate by aim, from its first aim on.
struct AimSums {
  std::vector<double> strokes;  // expected, with every replay played until it is none; infinite where it never is
  std::vector<double> leaving;  // probability that the shot is not replayed
};

// `worth_by_node` is scratch.
AimSums sums_by_aim(const HoleModel& model, StateId state, const Candidate& candidate, const OutcomeSamples& samples,
                    const std::vector<double>& value, std::vector<double>& worth_by_node);

// The row of one aim of the candidate.
Row row_of_samples(const HoleModel& model, StateId state, const Candidate& candidate, const OutcomeSamples& samples,
                   int aim, TransitionBuilder& builder);

// Adds how likely each state is come to, at most, under any aim of the candidate.
void add_likelihoods(const HoleModel& model, StateId state, const Candidate& candidate, const OutcomeSamples& samples,
                     Likelihoods& likelihoods);

// Expected strokes of one candidate at every aim, struck at every node, given values of states.
std::vector<double> aim_values(const HoleModel& model, StateId state, const Candidate& candidate,
                               const std::vector<double>& value);

}  // namespace yardworth
