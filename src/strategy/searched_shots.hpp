#pragma once

#include <optional>
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

// What a search says of the states of its model: the policy that it has found and the shots that it weighed for it. All
// must outlive it.
struct Searched {
  const HoleModel& model;
  const Policy& policy;
  const SearchedShots& shots;
};

// Whether clubs are chosen there by what a search says: the tee has its own shot, and the short game is not searched.
bool is_between_states(const HoleModel& model, Lie lie, Point from);

// The best shot with every club between the states that were searched, on straight lines: what it costs, and how it is
// directed. Of the clubs that were weighed at all of the states around that say anything; none where these have less
// than half of the place. docs/model.md, "Between states".
std::vector<SearchedShot> shots_between(const Searched& searched, Lie lie, Point from);

// Such a shot as it is played from there.
Action action_of(const HoleModel& model, Lie lie, Point from, const SearchedShot& shot);

// What a policy plays between the states that it was looked for at: of the clubs that it takes at the states around,
// the one that costs the fewest strokes there; as the nearest state has it where the search says nothing of half of
// them.
Action action_between(const Searched& searched, Lie lie, Point from);

// What is played there with a club; nothing where no such shot is known.
std::optional<Action> action_with(const Searched& searched, int swing, Lie lie, Point from);

}  // namespace yardworth
