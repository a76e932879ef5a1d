#include "strategy/reached_graph.hpp"

#include <algorithm>
#include <boost/graph/compressed_sparse_row_graph.hpp>
#include <boost/graph/strong_components.hpp>
#include <queue>

#include "strategy/expected_visits.hpp"

namespace yardworth {

namespace {

using Graph = boost::compressed_sparse_row_graph<boost::directedS, boost::no_property, boost::no_property,
                                                 boost::no_property, std::uint32_t, std::uint32_t>;

}  // namespace

ReachedGraph reach(const HoleModel& model, const RowOf& row_of, const std::vector<StateId>& roots,
                   const FollowedTo& followed_to) {
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
    if (here < followed_to.least_visits) {
      row = holed_for(model.short_game().strokes(model.lie_of(state), distance));
      reached.rare.push_back(state);
    } else {
      row = row_of(state, here);
    }
    pass_on_walking(*row, state, here, followed_to.replays, meet);
    reached.rows[static_cast<std::size_t>(reached.index_of[static_cast<std::size_t>(state)])] = std::move(row);
  }
  return reached;
}

std::vector<Component> strong_components(const ReachedGraph& reached, EvaluationWorkspace& workspace) {
  std::size_t edge_count = 0;
  for (const Row& row : reached.rows) edge_count += row->to.size();
  auto& edges = workspace.edges;
  edges.resize(edge_count);
  auto edge = edges.begin();
  for (std::size_t i = 0; i < reached.rows.size(); ++i) {
    for (const auto& [to, share] : reached.rows[i]->to) {
      *edge++ = {static_cast<std::uint32_t>(i),
                 static_cast<std::uint32_t>(reached.index_of[static_cast<std::size_t>(to)])};
    }
  }
  const auto vertices = static_cast<std::uint32_t>(reached.rows.size());
  const Graph graph(boost::edges_are_sorted, edges.begin(), edges.end(), vertices,
                    static_cast<std::uint32_t>(edges.size()));
  std::vector<int> component(reached.rows.size());
  // Boost numbers strong components in reverse topological order: what a component leads to has a smaller number.
  const int count = boost::strong_components(
      graph, boost::make_iterator_property_map(component.begin(), boost::get(boost::vertex_index, graph)));
  std::vector<Component> members(static_cast<std::size_t>(count));
  for (std::size_t i = 0; i < component.size(); ++i) members[static_cast<std::size_t>(component[i])].push_back(i);
  const auto nearer = [&](std::size_t a, std::size_t b) { return reached.distance_yd[a] < reached.distance_yd[b]; };
  for (Component& group : members) std::stable_sort(group.begin(), group.end(), nearer);
  return members;
}

}  // namespace yardworth
