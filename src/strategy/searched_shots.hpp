#pragma once

#include <vector>

#include "strategy/policy.hpp"

namespace yardworth {

// A shot that a search has weighed at a state.
struct SearchedShot {
  int swing = 0;
  bool ends_at_hole = false;       // else it is played in full
  double off_reference_rad = 0.0;  // its direction, right of the reference direction there
  double strokes = 0.0;
};

// By state; none at the tee and where nothing was searched.
using SearchedShots = std::vector<std::vector<SearchedShot>>;

// What a policy plays between the states that it was looked for at. Of the clubs that it takes at the states around,
// the one that costs the fewest strokes on a straight line between them, and directed likewise; as the nearest state
// has it where the search says nothing of half of them. docs/model.md, "Between states".
Action action_between(const HoleModel& model, const Policy& policy, const SearchedShots& searched, Lie lie, Point from);

}  // namespace yardworth
