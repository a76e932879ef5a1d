#include "strategy/policy.hpp"

#include <algorithm>
#include <cmath>

#include "core/numerics.hpp"
#include "strategy/habit.hpp"
#include "strategy/shot_at_hole.hpp"

namespace yardworth {

namespace {

// An action of a policy moved from its state to a place near by.
Action moved(const HoleModel& model, StateId state, const Action& action, Point from) {
  const Lie lie = model.lie_of(state);
  const Point place = model.place_of(state);
  const Swing swing = model.swing_of(lie, action);
  const double heading = HoleModel::heading_of(swing, action);
  const double off_reference = heading - reference_heading(model, place, swing);
  Action here = action;
  if (ends_at_hole(model, place, swing)) {
    // The same club played to the distance; where it does not reach, the one that fits.
    const Swing& full = model.swings(lie)[static_cast<std::size_t>(action.swing)];
    const double carry = carry_to_hole(model, from, full);
    const auto longer = carry > full.carry_yd ? action_to_hole(model, lie, from) : std::nullopt;
    if (longer) {
      here = *longer;
      here.allows_for_mean = action.allows_for_mean;
    } else {
      here.carry_yd = std::min(carry, full.carry_yd);
    }
  }
  const Swing now = model.swing_of(lie, here);
  here.reference_heading_rad = reference_heading(model, from, now) + off_reference;
  here.aim = 0;
  return here;
}

}  // namespace

Action action_near(const HoleModel& model, const Policy& policy, Lie lie, Point from) {
  if (lie == Lie::tee) return policy[static_cast<std::size_t>(model.tee_state())];
  if (distance_yd(from, model.pin()) <= short_game_radius_yd) return habit_action(model, lie, from);
  const StateId state = model.nearest_state(lie, from);
  const Action& action = policy[static_cast<std::size_t>(state)];
  return action.swing >= 0 ? moved(model, state, action, from) : habit_action(model, lie, from);
}

}  // namespace yardworth
