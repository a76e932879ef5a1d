#include "strategy/dot.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <tuple>
#include <utility>
#include <vector>

#include "core/numerics.hpp"
#include "strategy/expected_visits.hpp"
#include "strategy/strikes.hpp"
#include "yardworth/diagnostics.hpp"

namespace yardworth {

namespace {

// What is drawn as one node: the ends first, then lies by stretches of distance.
struct Group {
  enum class Kind { tee, lie, short_game, green };
  Kind kind = Kind::lie;
  Lie lie = Lie::fairway;
  int stretch = 0;

  friend bool operator<(const Group& a, const Group& b) {
    return std::tie(a.kind, a.lie, a.stretch) < std::tie(b.kind, b.lie, b.stretch);
  }
};

struct Node {
  double visits = 0.0;
  double strokes = 0.0;                 // summed over the visits
  std::map<std::string, double> clubs;  // visits by club
};

struct Drawing {
  std::map<Group, Node> nodes;
  std::map<std::pair<Group, Group>, std::array<double, 2>> edges;  // visits without and with a penalty stroke
};

Group group_of(const HoleModel& model, StateId state, double step_yd) {
  if (state == model.tee_state()) return {Group::Kind::tee, Lie::tee, 0};
  const double distance = distance_yd(model.place_of(state), model.pin());
  return {Group::Kind::lie, model.lie_of(state), static_cast<int>(std::floor(distance / step_yd))};
}

// One outcome of the shot that the policy plays from a state.
template <class Visit>
void for_each_outcome(const HoleModel& model, StateId state, const Action& action, Visit visit) {
  for_each_strike(model, state, action, 1, [&](const Rest& rest, double weight) {
    const Continuation continuation = model.continuation(rest);
    if (continuation.kind != Continuation::Kind::between_states) {
      visit(rest, continuation.kind == Continuation::Kind::replay ? state : StateId{-1}, weight);
      return;
    }
    const std::array<double, 4> shares = continuation.weights();
    for (std::size_t i = 0; i < 4; ++i) {
      if (shares[i] > 0.0) visit(rest, static_cast<StateId>(continuation.state[i]), weight * shares[i]);
    }
  });
}

// Expected visits by rows struck at every node.
Visits visits_at_every_node(const HoleModel& model, const Policy& policy) {
  std::vector<Row> rows(policy.size());
  TransitionBuilder builder(model);
  const auto row_at = [&](StateId state) -> const Transition& {
    Row& row = rows[static_cast<std::size_t>(state)];
    if (!row) row = builder.build(state, policy[static_cast<std::size_t>(state)]);
    return *row;
  };
  return expected_visits(model, row_at, {numerics::visits_left, numerics::most_strokes_drawn});
}

Drawing draw(const HoleModel& model, const Player& player, const PolicyEvaluation& planned, double step_yd) {
  Drawing drawing;
  const Visits visits = visits_at_every_node(model, planned.policy);
  for (StateId state = 0; state < model.state_count(); ++state) {
    const auto index = static_cast<std::size_t>(state);
    if (visits[index] < numerics::drawn_visits) continue;
    const Action& action = planned.policy[index];
    const Group from = group_of(model, state, step_yd);
    Node& node = drawing.nodes[from];
    node.visits += visits[index];
    node.strokes += visits[index] * planned.value[index];
    node.clubs[player.clubs[model.swing_of(model.lie_of(state), action).club].name] += visits[index];
    for_each_outcome(model, state, action, [&](const Rest& rest, StateId to, double weight) {
      const Group end{rest.lie == Lie::green ? Group::Kind::green : Group::Kind::short_game, Lie::green, 0};
      const Group group = to < 0 ? end : group_of(model, to, step_yd);
      drawing.edges[{from, group}][rest.penalty_strokes > 0 ? 1 : 0] += visits[index] * weight;
      if (to < 0) drawing.nodes[group].visits += visits[index] * weight;
    });
  }
  return drawing;
}

std::string id_of(const Group& group) {
  return fmt::format("s{}_{}_{}", static_cast<int>(group.kind), static_cast<int>(group.lie), group.stretch);
}

std::string label_of(const Group& group, const Node& node, double step_yd) {
  std::string place;
  switch (group.kind) {
    case Group::Kind::tee:
      place = "tee";
      break;
    case Group::Kind::short_game:
      return fmt::format("short game\\n{:.2f} visits", node.visits);
    case Group::Kind::green:
      return fmt::format("green\\n{:.2f} visits", node.visits);
    case Group::Kind::lie:
      place = fmt::format("{} {:.0f}-{:.0f}", name(group.lie), group.stretch * step_yd, (group.stretch + 1) * step_yd);
      break;
  }
  const auto club = std::max_element(node.clubs.begin(), node.clubs.end(),
                                     [](const auto& a, const auto& b) { return a.second < b.second; });
  return fmt::format("{}\\n{}\\n{:.2f} visits, {:.2f} strokes", place, dot_label(club->first), node.visits,
                     node.strokes / node.visits);
}

}  // namespace

std::string dot_label(const std::string& text) {
  std::string label;
  for (const char c : escape_control(text)) {
    if (c == '"' || c == '\\') label += '\\';
    label += c;
    if (c == '&') label += "amp;";
  }
  return label;
}

std::string policy_graph_dot(const HoleModel& model, const Player& player, const PolicyEvaluation& planned,
                             const std::string& title, const DotOptions& options) {
  const Drawing drawing = draw(model, player, planned, options.distance_step_yd);
  std::string dot = fmt::format(
      "digraph plan {{\n  label=\"{}\";\n  labelloc=t;\n  rankdir=TB;\n  node [shape=box, fontname=\"sans-serif\"];\n"
      "  edge [fontname=\"sans-serif\"];\n",
      dot_label(title));
  // An edge may lead to a group that balls come to so rarely that it has no node.
  const auto drawn = [&](const Group& group) {
    const auto node = drawing.nodes.find(group);
    return node != drawing.nodes.end() && node->second.visits >= options.least_visits;
  };
  for (const auto& [group, node] : drawing.nodes) {
    if (drawn(group)) {
      dot += fmt::format("  {} [label=\"{}\"];\n", id_of(group), label_of(group, node, options.distance_step_yd));
    }
  }
  for (const auto& [ends, visits] : drawing.edges) {
    const auto& [from, to] = ends;
    if (!drawn(from) || !drawn(to)) continue;
    for (const std::size_t penalty : {std::size_t{0}, std::size_t{1}}) {
      const double probability = visits[penalty] / drawing.nodes.at(from).visits;
      if (probability < options.least_probability) continue;
      dot += fmt::format("  {} -> {} [label=\"{:.0f}%{}\"{}];\n", id_of(from), id_of(to), 100.0 * probability,
                         penalty == 1 ? ", penalty" : "", penalty == 1 ? ", style=dashed" : "");
    }
  }
  return dot + "}\n";
}

}  // namespace yardworth
