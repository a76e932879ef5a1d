#include <Eigen/SparseLU>
#include <algorithm>
#include <boost/graph/compressed_sparse_row_graph.hpp>
#include <boost/graph/strong_components.hpp>
#include <cmath>
#include <cstdint>
#include <limits>
#include <queue>

#include "strategy/policy.hpp"
#include "strategy/strikes.hpp"

namespace yardworth {

TransitionBuilder::TransitionBuilder(const HoleModel& model, bool equal_weight)
    : model_(&model), equal_weight_(equal_weight), weight_(static_cast<std::size_t>(model.state_count()), 0.0) {}

void TransitionBuilder::begin(int stride) {
  row_.stride = stride;
  row_.cost = 1.0;
  row_.replay = 0.0;
  row_.to.clear();
  touched_.clear();
}

void TransitionBuilder::add(const Continuation& continuation, double weight) {
  row_.cost += weight * continuation.cost;
  if (continuation.kind == Continuation::Kind::replay) row_.replay += weight;
  if (continuation.kind != Continuation::Kind::between_states) return;
  const std::array<double, 4> shares = continuation.weights();
  for (std::size_t i = 0; i < 4; ++i) {
    if (shares[i] * weight <= 0.0) continue;
    double& sum = weight_[continuation.state[i]];
    if (sum == 0.0) touched_.push_back(static_cast<StateId>(continuation.state[i]));
    sum += weight * shares[i];
  }
}

Row TransitionBuilder::finish() {
  for (const StateId to : touched_) {
    row_.to.emplace_back(to, weight_[static_cast<std::size_t>(to)]);
    weight_[static_cast<std::size_t>(to)] = 0.0;
  }
  return std::make_shared<const Transition>(row_);
}

Row TransitionBuilder::build(StateId state, const Action& action, int stride) {
  begin(stride);
  for_each_strike(*model_, state, action, stride, equal_weight_,
                  [this](const Rest& rest, double weight) { add(model_->continuation(rest), weight); });
  return finish();
}

double action_value(const Transition& row, const std::vector<double>& value) {
  double sum = row.cost;
  for (const auto& [state, weight] : row.to) sum += weight * value[static_cast<std::size_t>(state)];
  const double leaves = 1.0 - row.replay;
  return leaves > 1e-12 ? sum / leaves : std::numeric_limits<double>::infinity();
}

namespace {

// Places that fewer balls than this over Discretisation::sampling_density come to, of one struck from the tee, are not
// worth a look: one ball in 200 comes to any of them, and with a tenth of a stroke of error in each that changes
// nothing that is shown.
constexpr double rare_visits = 5e-5;

using Graph = boost::compressed_sparse_row_graph<boost::directedS, boost::no_property, boost::no_property,
                                                 boost::no_property, std::uint32_t, std::uint32_t>;

// Reached states in the order they were met, with their rows.
struct ReachedGraph {
  std::vector<StateId> states;
  std::vector<double> distance_yd;  // of each from the hole
  std::vector<int> index_of;        // by state; -1: not reached
  std::vector<Row> rows;
  std::vector<StateId> rare;  // those of them that were not followed
};

// Follows the policy from the roots, furthest from the hole first, so that how many balls come to a state is known when
// its turn comes. States that fewer than least_balls come to, of one from each root, are not followed: their row holes
// out at the baseline's expectation.
ReachedGraph reach(const HoleModel& model, const RowOf& row_of, const std::vector<StateId>& roots,
                   double least_visits) {
  ReachedGraph reached;
  reached.index_of.assign(static_cast<std::size_t>(model.state_count()), -1);
  std::vector<double> visits_here(static_cast<std::size_t>(model.state_count()), 0.0);
  std::priority_queue<std::pair<double, StateId>> furthest;
  const auto meet = [&](StateId state, double more) {
    int& index = reached.index_of[static_cast<std::size_t>(state)];
    visits_here[static_cast<std::size_t>(state)] += more;
    if (index >= 0) return;
    index = static_cast<int>(reached.states.size());
    reached.states.push_back(state);
    reached.rows.emplace_back();
    reached.distance_yd.push_back(distance_yd(model.place_of(state), model.pin()));
    furthest.emplace(reached.distance_yd.back(), state);
  };
  for (const StateId root : roots) meet(root, 1.0);
  while (!furthest.empty()) {
    const auto [distance, state] = furthest.top();
    furthest.pop();
    Row row;
    const double here = visits_here[static_cast<std::size_t>(state)];
    if (here < least_visits) {
      Transition holed;
      holed.cost = model.short_game().strokes(model.lie_of(state), distance);
      row = std::make_shared<const Transition>(std::move(holed));
      reached.rare.push_back(state);
    } else {
      row = row_of(state, here);
    }
    for (const auto& [to, share] : row->to) meet(to, here * share);
    reached.rows[static_cast<std::size_t>(reached.index_of[static_cast<std::size_t>(state)])] = std::move(row);
  }
  return reached;
}

std::vector<int> find_components(const ReachedGraph& reached, int& count) {
  thread_local std::vector<std::pair<std::uint32_t, std::uint32_t>> edges;
  edges.clear();
  for (std::size_t i = 0; i < reached.rows.size(); ++i) {
    for (const auto& edge : reached.rows[i]->to) {
      edges.emplace_back(i, reached.index_of[static_cast<std::size_t>(edge.first)]);
    }
  }
  const auto vertices = static_cast<std::uint32_t>(reached.rows.size());
  const Graph graph(boost::edges_are_sorted, edges.begin(), edges.end(), vertices,
                    static_cast<std::uint32_t>(edges.size()));
  std::vector<int> component(reached.rows.size());
  count = boost::strong_components(
      graph, boost::make_iterator_property_map(component.begin(), boost::get(boost::vertex_index, graph)));
  return component;
}

[[noreturn]] void never_ends() {
  throw CannotFinish("the plan never holes out: some place is only ever left for itself");
}

// A strong component: indices into the reached states, nearest the hole first.
using Component = std::vector<std::size_t>;

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
  if (stays > 1.0 - 1e-9) never_ends();
  return sum / (1.0 - stays);
}

// Sweeps of Gauss and Seidel; whether they came to rest.
bool solve_by_sweeps(const ReachedGraph& reached, const Component& members, std::vector<double>& value) {
  constexpr int most_sweeps = 60;
  constexpr double accuracy = 1e-12;
  for (const std::size_t i : members) value[static_cast<std::size_t>(reached.states[i])] = 0.0;
  for (int sweep = 0; sweep < most_sweeps; ++sweep) {
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
    if (moved <= accuracy * largest) return true;
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
  if (!(solved.minCoeff() >= 1.0 && solved.maxCoeff() < 1e6)) never_ends();
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

// Evaluates the policy that says what is played from each state, and the row that this has at a stride.
PolicyEvaluation evaluate_from_tee(const HoleModel& model,
                                   const std::function<std::pair<Action, Row>(StateId, int)>& play) {
  Policy policy(static_cast<std::size_t>(model.state_count()));
  const RowOf row_of = [&](StateId state, double visits_here) {
    auto [action, row] = play(state, model.stride_for(state, visits_here));
    policy[static_cast<std::size_t>(state)] = action;
    return row;
  };
  PolicyEvaluation result = evaluate_rows(model, row_of, {model.tee_state()}, rare_visits / model.sampling_density());
  result.policy = std::move(policy);
  return result;
}

// Builds rows, or takes them from a policy evaluated before.
class ReusedRows {
 public:
  ReusedRows(const HoleModel& model, const EvaluatedPolicy& row_source)
      : model_(model), row_source_(row_source), builder_(model) {}

  Row row(StateId state, const Action& action, int stride) {
    const auto index = static_cast<std::size_t>(state);
    const Lie lie = model_.lie_of(state);
    const Row& known = row_source_.policy.rows[index];
    const bool same = row_source_.policy.policy[index] == action && known && known->stride == stride &&
                      row_source_.model.swing_of(lie, action) == model_.swing_of(lie, action);
    return same ? known : builder_.build(state, action, stride);
  }

 private:
  const HoleModel& model_;
  const EvaluatedPolicy& row_source_;
  TransitionBuilder builder_;
};

// The probability that an action ends in a penalty, sand or trees.
double trouble_of(const HoleModel& model, StateId state, const Action& action, int stride) {
  double trouble = 0.0;
  for_each_strike(model, state, action, stride, [&](const Rest& rest, double weight) {
    if (finds_trouble(rest)) trouble += weight;
  });
  return trouble;
}

}  // namespace

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

PolicyEvaluation evaluate_followed(const HoleModel& model, const ActionOf& followed, const EvaluatedPolicy& before,
                                   const EvaluatedPolicy& row_source) {
  ReusedRows rows(model, row_source);
  std::vector<double> value;  // filled when it is first asked for
  const auto costs_less = [&](const Row& a, const Row& b) {
    if (value.empty()) value = filled_values(before.model, before.policy.value);
    return action_value(*a, value) < action_value(*b, value);
  };
  const auto finds_more_trouble = [&](StateId state, const Action& now, const Action& earlier, int stride) {
    return trouble_of(model, state, now, stride) > trouble_of(model, state, earlier, stride);
  };
  return evaluate_from_tee(model, [&](StateId state, int stride) {
    const Action now = followed(state);
    Row row = rows.row(state, now, stride);
    const Action& played = before.policy.policy[static_cast<std::size_t>(state)];
    if (played.swing < 0) return std::pair{now, row};
    const Lie lie = model.lie_of(state);
    const auto earlier = same_shot(model, before.model, lie, played);
    if (!earlier) return std::pair{now, row};
    const Difference difference = difference_of(model, lie, model.place_of(state), now, *earlier);
    // What goes further from a place that hardly a ball comes to is not worth another look.
    const bool seldom = difference == Difference::further && stride == largest_lattice_stride;
    if (difference == Difference::none || seldom) return std::pair{now, row};
    Row stays = rows.row(state, *earlier, stride);
    if (!costs_less(stays, row)) return std::pair{now, row};
    if (difference == Difference::further && finds_more_trouble(state, now, *earlier, stride)) {
      return std::pair{now, row};
    }
    return std::pair{*earlier, stays};
  });
}

std::vector<double> filled_values(const HoleModel& model, const std::vector<double>& known) {
  std::vector<double> value = known;
  for (StateId state = 0; state < model.state_count(); ++state) {
    double& here = value[static_cast<std::size_t>(state)];
    if (!std::isnan(here)) continue;
    here = model.short_game().strokes(model.lie_of(state), distance_yd(model.place_of(state), model.pin()));
  }
  return value;
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

PolicyEvaluation evaluate_rows(const HoleModel& model, const RowOf& row_of, const std::vector<StateId>& roots,
                               double least_visits) {
  PolicyEvaluation result;
  result.value.assign(static_cast<std::size_t>(model.state_count()), std::numeric_limits<double>::quiet_NaN());
  ReachedGraph reached = reach(model, row_of, roots, least_visits);
  const std::vector<int> component = find_components(reached, result.components);
  std::vector<Component> members(static_cast<std::size_t>(result.components));
  for (std::size_t i = 0; i < component.size(); ++i) members[static_cast<std::size_t>(component[i])].push_back(i);
  const auto nearer = [&](std::size_t a, std::size_t b) { return reached.distance_yd[a] < reached.distance_yd[b]; };
  // Boost numbers strong components in reverse topological order: what a component leads to has a smaller number.
  std::vector<int> local(reached.rows.size(), -1);
  for (auto& group : members) {
    std::stable_sort(group.begin(), group.end(), nearer);
    solve_component(reached, group, local, result.value);
    result.largest_component = std::max(result.largest_component, static_cast<int>(group.size()));
  }
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

}  // namespace yardworth
