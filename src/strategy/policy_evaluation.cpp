#include "strategy/policy_evaluation.hpp"

#include <Eigen/SparseLU>
#include <algorithm>
#include <cmath>
#include <limits>

#include "core/numerics.hpp"
#include "strategy/habit.hpp"

namespace yardworth {

namespace {

[[noreturn]] void never_ends() {
  throw CannotFinish("the plan never holes out: some place is only ever left for itself");
}

// What a state is worth by its row, given values of states; its own comes from the row alone.
double worth_of_row(const Transition& row, StateId self, const std::vector<double>& value) {
  double sum = row.cost;
  double stays = row.replay;
  for (const auto& [state, weight] : row.to) {
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
bool solve_by_sweeps(const ReachedGraph& reached, const Component& members, std::vector<double>& value) {
  for (const std::size_t i : members) value[static_cast<std::size_t>(reached.states[i])] = 0.0;
  for (int sweep = 0; sweep < numerics::component_sweeps; ++sweep) {
    double moved = 0.0;
    double largest = 0.0;
    for (const std::size_t i : members) {
      const StateId state = reached.states[i];
      double& here = value[static_cast<std::size_t>(state)];
      const double next = worth_of_row(*reached.rows[i], state, value);
      moved = std::max(moved, std::abs(next - here));
      largest = std::max(largest, next);
      here = next;
    }
    if (moved <= numerics::component_accuracy * largest) return true;
  }
  return false;
}

// A sparse LU factorisation, which also finds out a component that nothing leaves. `local` is scratch: -1 everywhere.
void solve_by_factors(const ReachedGraph& reached, const Component& members, std::vector<int>& local,
                      std::vector<double>& value) {
  for (std::size_t i = 0; i < members.size(); ++i) local[members[i]] = static_cast<int>(i);
  const auto size = static_cast<Eigen::Index>(members.size());
  std::vector<Eigen::Triplet<double>> entries;
  Eigen::VectorXd cost(size);
  for (std::size_t i = 0; i < members.size(); ++i) {
    const Transition& row = *reached.rows[members[i]];
    double sum = row.cost;
    entries.emplace_back(static_cast<int>(i), static_cast<int>(i), 1.0 - row.replay);
    for (const auto& [state, weight] : row.to) {
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
  if (!(solved.minCoeff() >= 1.0 && solved.maxCoeff() < numerics::most_strokes_of_state)) never_ends();
  for (std::size_t i = 0; i < members.size(); ++i) {
    value[static_cast<std::size_t>(reached.states[members[i]])] = solved[static_cast<Eigen::Index>(i)];
  }
}

// Solves value = cost + replay * value + P value within one component, whose outside is already known. Its members come
// nearest the hole first, and nearly every ball goes towards it: the matrix is nearly lower triangular, and a few
// sweeps solve it to the last digit. What they do not solve is factorised.
void solve_component(const ReachedGraph& reached, const Component& members, std::vector<int>& local,
                     std::vector<double>& value) {
  if (members.size() == 1) {
    const StateId state = reached.states[members.front()];
    value[static_cast<std::size_t>(state)] = worth_of_row(*reached.rows[members.front()], state, value);
  } else if (!solve_by_sweeps(reached, members, value)) {
    solve_by_factors(reached, members, local, value);
  }
}

}  // namespace

PolicyEvaluation evaluate_rows(const HoleModel& model, const RowOf& row_of, const std::vector<StateId>& roots,
                               double least_visits) {
  EvaluationWorkspace workspace;
  return evaluate_rows(model, row_of, roots, least_visits, workspace);
}

PolicyEvaluation evaluate_rows(const HoleModel& model, const RowOf& row_of, const std::vector<StateId>& roots,
                               double least_visits, EvaluationWorkspace& workspace) {
  PolicyEvaluation result;
  result.value.assign(static_cast<std::size_t>(model.state_count()), std::numeric_limits<double>::quiet_NaN());
  ReachedGraph reached = reach(model, row_of, roots, least_visits);
  const std::vector<Component> components = strong_components(reached, workspace);
  std::vector<int> local(reached.rows.size(), -1);
  for (const Component& members : components) {
    solve_component(reached, members, local, result.value);
    result.largest_component = std::max(result.largest_component, static_cast<int>(members.size()));
  }
  result.components = static_cast<int>(components.size());
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

PolicyEvaluation evaluate_from_tee(const HoleModel& model, const Play& play) {
  Policy policy(static_cast<std::size_t>(model.state_count()));
  const RowOf row_of = [&](StateId state, double visits_here) {
    auto [action, row] = play(state, model.stride_for(state, visits_here));
    policy[static_cast<std::size_t>(state)] = action;
    return row;
  };
  PolicyEvaluation result =
      evaluate_rows(model, row_of, {model.tee_state()}, numerics::evaluated_visits / model.sampling_density());
  result.policy = std::move(policy);
  return result;
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
  const bool same = row_source_.policy.policy[index] == action && known && known->stride == stride &&
                    row_source_.model.swing_of(lie, action) == model_.swing_of(lie, action);
  return same ? known : builder_.build(state, action, stride);
}

}  // namespace yardworth
