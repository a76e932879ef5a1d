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

// By indices of reached states; of those as far the one met later.
bool is_further(const ReachedGraph& reached, std::size_t a, std::size_t b) {
  const double off = reached.distance_yd[a] - reached.distance_yd[b];
  return off > 0.0 || (off == 0.0 && a > b);
}

}  // namespace

ReachedGraph reach(const HoleModel& model, const RowOf& row_of, const std::vector<StateId>& roots,
                   const FollowedTo& followed_to) {
  ReachedGraph reached;
  reached.index_of.assign(static_cast<std::size_t>(model.state_count()), -1);
  reached.visits.assign(static_cast<std::size_t>(model.state_count()), 0.0);
  std::priority_queue<std::pair<double, StateId>> furthest;
  const auto meet_first = [&](StateId state) {
    const int index = static_cast<int>(reached.states.size());
    reached.index_of[static_cast<std::size_t>(state)] = index;
    reached.states.push_back(state);
    reached.rows.emplace_back();
    reached.furthest_to.push_back(static_cast<std::size_t>(index));
    reached.distance_yd.push_back(distance_yd(model.place_of(state), model.pin()));
    furthest.emplace(reached.distance_yd.back(), state);
  };
  for (const StateId root : roots) {
    reached.visits[static_cast<std::size_t>(root)] += 1.0;
    if (reached.index_of[static_cast<std::size_t>(root)] < 0) meet_first(root);
  }
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
    const auto index = static_cast<std::size_t>(reached.index_of[static_cast<std::size_t>(state)]);
    std::size_t furthest_to = index;
    pass_on_walking(*row, state, here, followed_to.replays, [&](StateId to, double more) {
      const auto at = static_cast<std::size_t>(to);
      reached.visits[at] += more;
      if (reached.index_of[at] < 0) meet_first(to);
      const auto other = static_cast<std::size_t>(reached.index_of[at]);
      if (is_further(reached, other, furthest_to)) furthest_to = other;
    });
    reached.furthest_to[index] = furthest_to;
    reached.rows[index] = std::move(row);
  }
  return reached;
}

namespace {

// Nearly all balls go nearer to the hole. In the order of distance a component lies within a stretch that balls go back
// and forth in, from its nearest state to its furthest; what lies in no such stretch is a component alone.
class ComponentsByDistance {
 public:
  ComponentsByDistance(const ReachedGraph& reached, EvaluationWorkspace& workspace)
      : reached_(reached), edges_(workspace.edges), order_(reached.states.size()), place_of_(order_.size()) {
    std::vector<std::pair<double, std::size_t>> nearest_first;
    nearest_first.reserve(order_.size());
    for (std::size_t i = 0; i < order_.size(); ++i) nearest_first.emplace_back(reached.distance_yd[i], i);
    std::sort(nearest_first.begin(), nearest_first.end());
    for (std::size_t place = 0; place < order_.size(); ++place) {
      order_[place] = nearest_first[place].second;
      place_of_[order_[place]] = place;
    }
  }

  Components find() {
    Components components(order_.size());
    std::size_t first = 0;
    std::size_t last = 0;
    for (std::size_t place = 0; place < order_.size(); ++place) {
      last = std::max(last, place_of_[reached_.furthest_to[order_[place]]]);
      if (place < last) continue;
      if (first == last) {
        components.add(order_[place]);
        components.close();
      } else {
        add_within(first, last, components);
      }
      first = place + 1;
    }
    return components;
  }

 private:
  // Those from one place to another, between which balls go both ways.
  void add_within(std::size_t first, std::size_t last, Components& components) {
    const std::vector<int> number = numbers_within(first, last);
    std::vector<std::pair<int, std::size_t>> members;  // by component, in it nearest first
    members.reserve(number.size());
    for (std::size_t i = 0; i < number.size(); ++i) members.emplace_back(number[i], first + i);
    std::sort(members.begin(), members.end());
    for (std::size_t i = 0; i < members.size(); ++i) {
      components.add(order_[members[i].second]);
      if (i + 1 == members.size() || members[i + 1].first != members[i].first) components.close();
    }
  }

  // Boost numbers strong components in reverse topological order: what a component leads to has a smaller number.
  std::vector<int> numbers_within(std::size_t first, std::size_t last) {
    edges_.clear();
    for (std::size_t place = first; place <= last; ++place) {
      for (const auto& [to, share] : reached_.rows[order_[place]]->to()) {
        const std::size_t other = place_of_[static_cast<std::size_t>(reached_.index_of[static_cast<std::size_t>(to)])];
        if (other < first) continue;
        edges_.emplace_back(static_cast<std::uint32_t>(place - first), static_cast<std::uint32_t>(other - first));
      }
    }
    const Graph graph(boost::edges_are_sorted, edges_.begin(), edges_.end(),
                      static_cast<std::uint32_t>(last - first + 1), static_cast<std::uint32_t>(edges_.size()));
    std::vector<int> number(last - first + 1);
    boost::strong_components(graph,
                             boost::make_iterator_property_map(number.begin(), boost::get(boost::vertex_index, graph)));
    return number;
  }

  const ReachedGraph& reached_;
  std::vector<std::pair<std::uint32_t, std::uint32_t>>& edges_;
  std::vector<std::size_t> order_;     // of the reached states, nearest the hole first
  std::vector<std::size_t> place_of_;  // in it, by index
};

}  // namespace

Components strong_components(const ReachedGraph& reached, EvaluationWorkspace& workspace) {
  return ComponentsByDistance(reached, workspace).find();
}

}  // namespace yardworth
