#pragma once

#include <functional>
#include <utility>
#include <vector>

#include "strategy/policy.hpp"
#include "strategy/reached_graph.hpp"
#include "strategy/transition.hpp"
#include "yardworth/diagnostics.hpp"

namespace yardworth {

// Expected strokes by state under a policy; NaN for states that are not reached, or hardly ever.
struct PolicyEvaluation {
  std::vector<double> value;
  std::vector<double> visits;  // by state: balls that come to it, of one from each root, in one walk (pass_on_walking)
  Policy policy;               // with an action for every reached state
  std::vector<Row> rows;       // by state; null for states that are not reached
  double at_tee = 0.0;
  double baseline_bound = 0.0;  // strokes of at_tee that may rest on the baseline outside the short game
  int states = 0;               // reached
  int components = 0;           // strong components of the graph of reached states
  int largest_component = 0;    // states in the largest of them
};

// Evaluates a policy exactly: the strong components of the graph of states reached from the roots, in reverse
// topological order, and a sparse linear solve inside each (P. Dai, Mausam, D. Weld, J. Goldsmith, "Topological Value
// Iteration Algorithms", JAIR 42, 2011). Throws CannotFinish when the policy never holes out from a state.
PolicyEvaluation evaluate_policy(const HoleModel& model, const ActionOf& action_of);

// A policy evaluated, and the golfer on the hole that it was evaluated for.
struct EvaluatedPolicy {
  const HoleModel& model;
  const PolicyEvaluation& policy;
};

// The same for a policy and clubs that are mostly those of a policy evaluated before, on the same map from the same
// tee: rows are taken over where the action, its swing and the stride are the same, so that the result is what it is
// without.
PolicyEvaluation evaluate_policy(const HoleModel& model, const ActionOf& action_of, const EvaluatedPolicy& row_source);

// The same from any roots, with the rows given, to the last state that is reached; the result has no policy.
PolicyEvaluation evaluate_rows(const HoleModel& model, const RowOf& row_of, const std::vector<StateId>& roots);
PolicyEvaluation evaluate_rows(const HoleModel& model, const RowOf& row_of, const std::vector<StateId>& roots,
                               EvaluationWorkspace& workspace);

// The same for a policy from any roots, which the habit fills in where it is silent and balls come.
PolicyEvaluation evaluate_from(const HoleModel& model, const std::vector<StateId>& roots, Policy policy);

// The same from the tee, for whatever says what is played from a state and the row that this has at a stride. States
// that hardly a ball comes to are taken to be worth as much more than the baseline as others of their lie, as long as
// no more than numerics::most_on_baseline strokes may be wrong by it.
using Play = std::function<std::pair<Action, Row>(StateId, int stride)>;
PolicyEvaluation evaluate_from_tee(const HoleModel& model, const Play& play);

// Builds the rows of a model, or takes them from a policy evaluated before. All must outlive it.
class ReusedRows {
 public:
  ReusedRows(const HoleModel& model, const EvaluatedPolicy& row_source)
      : model_(model), row_source_(row_source), builder_(model) {}
  Row row(StateId state, const Action& action, int stride);

 private:
  const HoleModel& model_;
  const EvaluatedPolicy row_source_;  // two references, kept: what they refer to outlives this, the pair need not
  TransitionBuilder builder_;
};

}  // namespace yardworth
