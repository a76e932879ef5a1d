#pragma once

#include <cstdint>

#include "core/numerics.hpp"
#include "strategy/policy_evaluation.hpp"
#include "strategy/searched_shots.hpp"

namespace yardworth {

// How the best policy is looked for.
struct PolicyIterationOptions {
  // Swings are first weighed on a few nodes of the lattice; those that come out more than this many strokes behind the
  // best are not struck as closely as their state deserves (HoleModel::stride_for).
  double screen_margin = numerics::screen_margin;
  // Of the aims of a swing those that look nearly as good as the best, and this many beside them, are struck closely.
  int fine_aims = numerics::fine_aims;
  // States with fewer expected visits than this over Discretisation::sampling_density, of one ball from the tee, are
  // left as the start plays them. 0: all are improved, at every node.
  double least_visits = numerics::least_visits;
  // In the far tails of the strikes from a state strike one node in three (strikes.hpp).
  bool thin_tails = true;
  // Try everything everywhere: nothing is screened, narrowed or left, and no bound saves a strike.
  bool complete = false;
  // A state is not tried again while nothing it may lead to has moved by more than this, in strokes. A complete search
  // allows numerics::complete_tolerance at most.
  double tolerance = numerics::search_tolerance;
  // A handful of exact evaluations is the rule. Where rounding makes the search go round among policies of the same
  // worth it ends after so many, with one of them.
  int most_evaluations = numerics::most_evaluations;
  // Aims are searched this far beyond the hole and the reference direction, in direction spreads.
  int aim_reach_sd = numerics::aim_reach_sd;
};

// The best policy of a hole and its expected strokes.
struct BestPolicy {
  PolicyEvaluation exact;           // the policy evaluated exactly, by state; NaN for states that no policy met reaches
  std::vector<double> value;        // the same, with the guess for states that were not considered
  SearchedShots shots;              // that were weighed, by state
  int considered = 0;               // states
  int sweeps = 0;                   // policy iterations
  std::int64_t sampled_swings = 0;  // swings struck as closely as their state deserves
};

// Policy iteration, each sweep nearest states first with the values just found and then an exact evaluation, from a
// policy and its value; an action is only ever left for a better one, so that the result is never worse than the start.
// States that no policy met on the way reaches are not solved: their value is guessed from the baseline, in their
// favour. Throws CannotFinish like evaluate_policy.
BestPolicy find_best_policy(const HoleModel& model, const ActionOf& start, const PolicyEvaluation& warm_start,
                            const PolicyIterationOptions& options = {});

// The proof on demand: by how many strokes any action at any considered state, one that was screened out included,
// beats the policy's own by one step (the largest Bellman residual).
double largest_bellman_residual(const HoleModel& model, const BestPolicy& best,
                                const PolicyIterationOptions& options = {});

}  // namespace yardworth
