#pragma once

#include <cstdint>
#include <functional>
#include <utility>
#include <vector>

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
  std::vector<StateId> rare;  // those of them that were not followed
};

// Follows rows from the roots, furthest from the hole first, so that how often a state is come to is known, but for
// balls that go backwards or are replayed, when its turn comes. States with fewer expected visits than least_visits are
// not followed: their row holes out at the baseline's expectation.
ReachedGraph reach(const HoleModel& model, const RowOf& row_of, const std::vector<StateId>& roots, double least_visits);

// Memory that evaluations one after the other may share.
struct EvaluationWorkspace {
  std::vector<std::pair<std::uint32_t, std::uint32_t>> edges;  // by index of reached states
};

// A strong component: indices into the reached states, nearest the hole first.
using Component = std::vector<std::size_t>;

// The strong components of the graph in reverse topological order: all that one leads to comes before it.
std::vector<Component> strong_components(const ReachedGraph& reached, EvaluationWorkspace& workspace);

}  // namespace yardworth
