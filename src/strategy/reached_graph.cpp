#include "strategy/reached_graph.hpp"

#include <algorithm>
#include <boost/graph/compressed_sparse_row_graph.hpp>
#include <boost/graph/strong_components.hpp>
#include <numeric>
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
  reached.visits.assign(static_cast<std::size_t>(model.state_count()), 0.0);
  std::priority_queue<std::pair<double, StateId>> furthest;
  const auto meet = [&](StateId state, double more) {
    int& index = reached.index_of[static_cast<std::size_t>(state)];
    reached.visits[static_cast<std::size_t>(state)] += more;
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
    const double here = reached.visits[static_cast<std::size_t>(state)];
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

namespace {

// Nearest the hole first.
std::vector<std::size_t> by_distance(const ReachedGraph& reached) {
  std::vector<std::size_t> order(reached.states.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return reached.distance_yd[a] < reached.distance_yd[b]; });
  return order;
}

// Of the states from the first place in the order up to the last, between which balls go both ways.
void add_components(const ReachedGraph& reached, const std::vector<std::size_t>& order, std::size_t first,
                    std::size_t last, const std::vector<std::size_t>& place_of, EvaluationWorkspace& workspace,
                    std::vector<Component>& components) {
  auto& edges = workspace.edges;
  edges.clear();
  for (std::size_t place = first; place <= last; ++place) {
    for (const auto& [to, share] : reached.rows[order[place]]->to) {
      const std::size_t other = place_of[static_cast<std::size_t>(reached.index_of[static_cast<std::size_t>(to)])];
      if (other < first) continue;
      edges.emplace_back(static_cast<std::uint32_t>(place - first), static_cast<std::uint32_t>(other - first));
    }
  }
  const Graph graph(boost::edges_are_sorted, edges.begin(), edges.end(), static_cast<std::uint32_t>(last - first + 1),
                    static_cast<std::uint32_t>(edges.size()));
  std::vector<int> number(last - first + 1);
  // Boost numbers strong components in reverse topological order: what a component leads to has a smaller number.
  const int count = boost::strong_components(
      graph, boost::make_iterator_property_map(number.begin(), boost::get(boost::vertex_index, graph)));
  const std::size_t before = components.size();
  components.resize(before + static_cast<std::size_t>(count));
  for (std::size_t i = 0; i < number.size(); ++i) {
    components[before + static_cast<std::size_t>(number[i])].push_back(order[first + i]);
  }
}

}  // namespace

// Nearly all balls go nearer to the hole. In the order of distance a component lies within a stretch that balls go back
// and forth in, from its nearest state to its furthest; what lies in no such stretch is a component alone.
std::vector<Component> strong_components(const ReachedGraph& reached, EvaluationWorkspace& workspace) {
  const std::vector<std::size_t> order = by_distance(reached);
  std::vector<std::size_t> place_of(order.size());
  for (std::size_t place = 0; place < order.size(); ++place) place_of[order[place]] = place;
  std::vector<Component> components;
  components.reserve(order.size());
  std::size_t first = 0;
  std::size_t last = 0;
  for (std::size_t place = 0; place < order.size(); ++place) {
    for (const auto& [to, share] : reached.rows[order[place]]->to) {
      last = std::max(last, place_of[static_cast<std::size_t>(reached.index_of[static_cast<std::size_t>(to)])]);
    }
    last = std::max(last, place);
    if (place < last) continue;
    if (first == last) {
      components.push_back({order[place]});
    } else {
      add_components(reached, order, first, last, place_of, workspace, components);
    }
    first = place + 1;
  }
  return components;
}

}  // namespace yardworth
