#include "strategy/policy_evaluation.hpp"

#include <Eigen/SparseLU>
#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>

#include "core/numerics.hpp"
#include "strategy/habit.hpp"
#include "strategy/state_values.hpp"

namespace yardworth {

namespace {

// A hole that takes very many strokes is no more to be finished than one that takes all there are.
void require_few_enough(const PolicyEvaluation& evaluation) {
  if (evaluation.at_tee <= numerics::most_strokes_of_hole) return;
  throw CannotFinish("the plan takes more strokes than a hole may");
}

[[noreturn]] void never_ends() {
  throw CannotFinish("the plan never holes out: some place is only ever left for itself");
}

// The linear equations of the reached states, whatever a stroke from each costs: strokes, or what rests on the
// baseline.
struct Equations {
  const ReachedGraph& reached;
  std::vector<double> cost;  // by index of reached states
  double accuracy = 0.0;     // of sweeps, as a share of the largest value
  double least = 0.0;        // that a value can be but for nonsense
};

// What a state is worth by its row, given values of states; its own comes from the row alone.
double worth_of_row(const Equations& equations, std::size_t index, const std::vector<double>& value) {
  const Transition& row = *equations.reached.rows[index];
  const StateId self = equations.reached.states[index];
  double sum = equations.cost[index];
  double stays = row.replay;
  for (const auto& [state, weight] : row.to()) {
    if (state == self) {
      stays += weight;
    } else {
      sum += weight * value[static_cast<std::size_t>(state)];
    }
  }
  if (stays > 1.0 - numerics::never_leaves) never_ends();
  return sum / (1.0 - stays);
}

// Sweeps of Gauss and Seidel; whether they came to rest.
bool solve_by_sweeps(const Equations& equations, Component members, std::vector<double>& value) {
  const std::vector<StateId>& states = equations.reached.states;
  for (const std::size_t i : members) value[static_cast<std::size_t>(states[i])] = 0.0;
  for (int sweep = 0; sweep < numerics::component_sweeps; ++sweep) {
    double moved = 0.0;
    double largest = 0.0;
    for (const std::size_t i : members) {
      double& here = value[static_cast<std::size_t>(states[i])];
      const double next = worth_of_row(equations, i, value);
      moved = std::max(moved, std::abs(next - here));
      largest = std::max(largest, next);
      here = next;
    }
    if (moved <= equations.accuracy * largest) return true;
  }
  return false;
}

// A sparse LU factorisation, which also finds out a component that nothing leaves. `local` is scratch: -1 everywhere.
void solve_by_factors(const Equations& equations, Component members, std::vector<int>& local,
                      std::vector<double>& value) {
  const ReachedGraph& reached = equations.reached;
  for (std::size_t i = 0; i < members.size(); ++i) local[members[i]] = static_cast<int>(i);
  const auto size = static_cast<Eigen::Index>(members.size());
  std::vector<Eigen::Triplet<double>> entries;
  Eigen::VectorXd cost(size);
  for (std::size_t i = 0; i < members.size(); ++i) {
    const Transition& row = *reached.rows[members[i]];
    double sum = equations.cost[members[i]];
    entries.emplace_back(static_cast<int>(i), static_cast<int>(i), 1.0 - row.replay);
    for (const auto& [state, weight] : row.to()) {
      const int other = local[static_cast<std::size_t>(reached.index_of[static_cast<std::size_t>(state)])];
      if (other >= 0) {
        entries.emplace_back(static_cast<int>(i), other, -weight);
      } else {
        sum += weight * value[static_cast<std::size_t>(state)];
      }
    }
    cost[static_cast<Eigen::Index>(i)] = sum;
  }
  for (const std::size_t i : members) local[i] = -1;
  Eigen::SparseMatrix<double> matrix(size, size);
  matrix.setFromTriplets(entries.begin(), entries.end());
  Eigen::SparseLU<Eigen::SparseMatrix<double>> solver;
  solver.compute(matrix);
  if (solver.info() != Eigen::Success) never_ends();
  const Eigen::VectorXd solved = solver.solve(cost);
  // A singular component shows as nonsense, not always as a failed factorisation.
  if (!(solved.minCoeff() >= equations.least && solved.maxCoeff() < numerics::most_strokes_of_state)) never_ends();
  for (std::size_t i = 0; i < members.size(); ++i) {
    value[static_cast<std::size_t>(reached.states[members[i]])] = solved[static_cast<Eigen::Index>(i)];
  }
}

// Solves value = cost + replay * value + P value within one component, whose outside is already known. Its members come
// nearest the hole first, and nearly every ball goes towards it: the matrix is nearly lower triangular, and a few
// sweeps solve it to the last digit. What they do not solve is factorised.
void solve_component(const Equations& equations, Component members, std::vector<int>& local,
                     std::vector<double>& value) {
  if (members.size() == 1) {
    const std::size_t index = members.front();
    value[static_cast<std::size_t>(equations.reached.states[index])] = worth_of_row(equations, index, value);
  } else if (!solve_by_sweeps(equations, members, value)) {
    solve_by_factors(equations, members, local, value);
  }
}

// The values by state of such equations; NaN where nothing is reached.
std::vector<double> solve(const Equations& equations, const Components& components) {
  std::vector<double> value(equations.reached.index_of.size(), std::numeric_limits<double>::quiet_NaN());
  std::vector<int> local(equations.reached.rows.size(), -1);
  for (std::size_t i = 0; i < components.size(); ++i) solve_component(equations, components[i], local, value);
  return value;
}

// How far from what they are assumed to be worth the states may be at which evaluation stopped: as far as the furthest
// evaluated one of their lie.
std::vector<double> furthest_by_lie(const HoleModel& model, const ReachedGraph& reached, const AboveBaseline& above,
                                    const std::vector<double>& value) {
  std::vector<double> furthest(all_lies.size(), 0.0);
  for (const StateId state : reached.states) {
    double& largest = furthest[static_cast<std::size_t>(model.lie_of(state))];
    const double assumed = assumed_value(model, above, state);
    largest = std::max(largest, std::abs(value[static_cast<std::size_t>(state)] - assumed));
  }
  return furthest;
}

// The baseline bound of the value of the roots, of the largest of them.
double baseline_bound(const HoleModel& model, const ReachedGraph& reached, const Components& components,
                      const std::vector<StateId>& roots, const AboveBaseline& above, const std::vector<double>& value) {
  const std::vector<double> furthest = furthest_by_lie(model, reached, above, value);
  Equations equations{reached, std::vector<double>(reached.rows.size(), 0.0), numerics::bound_accuracy,
                      -numerics::most_on_baseline};
  for (const StateId state : reached.rare) {
    const auto index = static_cast<std::size_t>(reached.index_of[static_cast<std::size_t>(state)]);
    equations.cost[index] = furthest[static_cast<std::size_t>(model.lie_of(state))];
  }
  const std::vector<double> bound = solve(equations, components);
  double largest = 0.0;
  for (const StateId root : roots) largest = std::max(largest, bound[static_cast<std::size_t>(root)]);
  return largest;
}

// Takes the states at which evaluation stopped to be worth the baseline and as much more as others of their lie are on
// average, of those that were evaluated with the baseline alone.
AboveBaseline assume_more_than_baseline(const HoleModel& model, const std::vector<double>& value, ReachedGraph& reached,
                                        Equations& equations) {
  std::vector<double> known = value;
  for (const StateId state : reached.rare) {
    known[static_cast<std::size_t>(state)] = std::numeric_limits<double>::quiet_NaN();
  }
  const AboveBaseline above = mean_above_baseline(model, known);
  for (const StateId state : reached.rare) {
    const auto index = static_cast<std::size_t>(reached.index_of[static_cast<std::size_t>(state)]);
    equations.cost[index] = assumed_value(model, above, state);
    reached.rows[index] = holed_for(equations.cost[index]);
  }
  return above;
}

PolicyEvaluation evaluate_followed_to(const HoleModel& model, const RowOf& row_of, const std::vector<StateId>& roots,
                                      const FollowedTo& followed_to, EvaluationWorkspace& workspace) {
  ReachedGraph reached = reach(model, row_of, roots, followed_to);
  const Components components = strong_components(reached, workspace);
  Equations equations{reached, {}, numerics::component_accuracy, 1.0};
  for (const Row& row : reached.rows) equations.cost.push_back(row->cost);
  PolicyEvaluation result;
  result.value = solve(equations, components);
  if (!reached.rare.empty()) {
    const AboveBaseline above = assume_more_than_baseline(model, result.value, reached, equations);
    result.value = solve(equations, components);
    result.baseline_bound = baseline_bound(model, reached, components, roots, above, result.value);
  }
  for (std::size_t i = 0; i < components.size(); ++i) {
    result.largest_component = std::max(result.largest_component, static_cast<int>(components[i].size()));
  }
  result.components = static_cast<int>(components.size());
  result.visits = std::move(reached.visits);
  result.rows.resize(static_cast<std::size_t>(model.state_count()));
  for (std::size_t i = 0; i < reached.states.size(); ++i) {
    result.rows[static_cast<std::size_t>(reached.states[i])] = std::move(reached.rows[i]);
  }
  for (const StateId state : reached.rare) {
    result.value[static_cast<std::size_t>(state)] = std::numeric_limits<double>::quiet_NaN();
  }
  result.states = static_cast<int>(reached.states.size() - reached.rare.size());
  result.at_tee = result.value[static_cast<std::size_t>(model.tee_state())];
  return result;
}

}  // namespace

PolicyEvaluation evaluate_rows(const HoleModel& model, const RowOf& row_of, const std::vector<StateId>& roots) {
  EvaluationWorkspace workspace;
  return evaluate_rows(model, row_of, roots, workspace);
}

PolicyEvaluation evaluate_rows(const HoleModel& model, const RowOf& row_of, const std::vector<StateId>& roots,
                               EvaluationWorkspace& workspace) {
  return evaluate_followed_to(model, row_of, roots, {}, workspace);
}

PolicyEvaluation evaluate_from_tee(const HoleModel& model, const Play& play) {
  EvaluationWorkspace workspace;
  Policy policy;
  const RowOf row_of = [&](StateId state, double visits_here) {
    const int stride = model.stride_for(state, visits_here);
    auto [action, row] = play(state, stride);
    if (stride > 1 && is_never_left(*row, state)) std::tie(action, row) = play(state, 1);
    policy[static_cast<std::size_t>(state)] = action;
    return row;
  };
  const auto evaluate = [&](const FollowedTo& followed_to) {
    policy.assign(static_cast<std::size_t>(model.state_count()), {});
    PolicyEvaluation evaluation = evaluate_followed_to(model, row_of, {model.tee_state()}, followed_to, workspace);
    evaluation.policy = std::move(policy);
    return evaluation;
  };
  FollowedTo followed_to{model.evaluated_visits()};
  PolicyEvaluation first = evaluate(followed_to);
  require_few_enough(first);
  if (first.baseline_bound <= numerics::most_on_baseline) return first;
  followed_to.replays = Replays::played_with_returns;
  PolicyEvaluation further;
  for (int more = 1; more == 1 || further.baseline_bound > numerics::most_on_baseline; ++more) {
    followed_to.least_visits *= more < numerics::evaluations_with_fewer_visits ? numerics::fewer_visits_share : 0.0;
    further = evaluate(followed_to);
  }
  require_few_enough(further);
  // The bound supposes the worst of every place. Where the first evaluation turns out to be near enough, it stays.
  const double off = std::abs(further.at_tee - first.at_tee) + further.baseline_bound;
  if (off > numerics::most_on_baseline) return further;
  first.baseline_bound = off;
  return first;
}

PolicyEvaluation evaluate_policy(const HoleModel& model, const ActionOf& action_of) {
  TransitionBuilder builder(model);
  return evaluate_from_tee(model, [&](StateId state, int stride) {
    const Action action = action_of(state);
    return std::pair{action, builder.build(state, action, stride)};
  });
}

PolicyEvaluation evaluate_policy(const HoleModel& model, const ActionOf& action_of, const EvaluatedPolicy& row_source) {
  ReusedRows rows(model, row_source);
  return evaluate_from_tee(model, [&](StateId state, int stride) {
    const Action action = action_of(state);
    return std::pair{action, rows.row(state, action, stride)};
  });
}

PolicyEvaluation evaluate_from(const HoleModel& model, const std::vector<StateId>& roots, Policy policy) {
  TransitionBuilder builder(model);
  const ActionOf habit = habit_of(model);
  const RowOf row_of = [&](StateId state, double visits_here) {
    Action& action = policy[static_cast<std::size_t>(state)];
    if (action.swing < 0) action = habit(state);
    return builder.build(state, action, model.stride_for(state, visits_here));
  };
  PolicyEvaluation value = evaluate_rows(model, row_of, roots);
  value.policy = std::move(policy);
  return value;
}

Row ReusedRows::row(StateId state, const Action& action, int stride) {
  const auto index = static_cast<std::size_t>(state);
  const Lie lie = model_.lie_of(state);
  const Row& known = row_source_.policy.rows[index];
  // What a shot leads to is another matter where the short game is worth something else.
  const bool same = &row_source_.model.short_game() == &model_.short_game() &&
                    row_source_.policy.policy[index] == action && known && known->stride == stride &&
                    row_source_.model.swing_of(lie, action) == model_.swing_of(lie, action);
  return same ? known : builder_.build(state, action, stride);
}

}  // namespace yardworth
