#pragma once

#include <cstdint>
#include <functional>
#include <span>
#include <utility>
#include <vector>

#include "strategy/expected_visits.hpp"
#include "strategy/transition.hpp"

namespace yardworth {

// The row of a state, of whose expected visits, for one ball from each root, so many are known when it is asked for.
using RowOf = std::function<Row(StateId, double visits_here)>;

// The states that a policy reaches from some roots, in the order they were met, with their rows.
struct ReachedGraph {
  std::vector<StateId> states;
  std::vector<double> distance_yd;  // of each from the hole
  std::vector<int> index_of;        // by state: its place in states; -1: not reached
  std::vector<Row> rows;
  std::vector<std::size_t> furthest_to;  // index of the furthest from the hole of each and those that its row leads to
  std::vector<double> visits;            // by state: how many balls have come to it, of one from each root
  std::vector<StateId> rare;             // those of them that were not followed
};

// How far rows are followed: to states with so many expected visits, counted so (pass_on_walking).
struct FollowedTo {
  double least_visits = 0.0;
  Replays replays = Replays::left_out;
};

// Follows rows from the roots, furthest from the hole first, so that how often a state is come to is known, but for
// balls that go backwards, when its turn comes. States with fewer expected visits are not followed: their row holes out
// at the baseline's expectation.
ReachedGraph reach(const HoleModel& model, const RowOf& row_of, const std::vector<StateId>& roots,
                   const FollowedTo& followed_to);

// Memory that evaluations one after the other may share.
struct EvaluationWorkspace {
  std::vector<std::pair<std::uint32_t, std::uint32_t>> edges;  // by index of reached states
};

// A strong component: indices into the reached states, nearest the hole first.
using Component = std::span<const std::size_t>;

// Components one after the other.
class Components {
 public:
  explicit Components(std::size_t members) { members_.reserve(members); }

  void add(std::size_t member) { members_.push_back(member); }
  // What was added since the last one is a component.
  void close() { ends_.push_back(members_.size()); }

  std::size_t size() const { return ends_.size(); }
  Component operator[](std::size_t i) const {
    const std::size_t first = i == 0 ? 0 : ends_[i - 1];
    return {members_.data() + first, ends_[i] - first};
  }

 private:
  std::vector<std::size_t> members_;
  std::vector<std::size_t> ends_;
};

// The strong components of the graph in reverse topological order: all that one leads to comes before it.
Components strong_components(const ReachedGraph& reached, EvaluationWorkspace& workspace);

}  // namespace yardworth
