#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "strategy/hole_model.hpp"

namespace yardworth {

// Roll of a shot that comes down on the green, or on the fairway, as times that on a fairway of normal firmness.
double roll_on_green(const HoleModel& model);
double roll_on_fairway(const HoleModel& model);

// The carry that a swing needs to end at the hole if it comes down on the green; it may be more than it has.
double carry_to_hole(const HoleModel& model, Point from, const Swing& swing);

// Where aims are reckoned from: the hole for a swing that reaches it, otherwise the middle of the line of play at the
// swing's distance.
double reference_heading(const HoleModel& model, Point from, const Swing& swing);

// Index of the shortest swing that has the carry it needs, or of a longer one that, played down to its own, spreads no
// more in any respect and less in one. None where no swing has it.
std::optional<int> fitting_swing(const std::vector<Swing>& swings,
                                 const std::function<double(const Swing&)>& needed_carry);

// A swing of the lie in its reference direction, played to a carry or in full where it does not have that. The mean
// direction is allowed for, as in all that a search weighs.
Action in_reference_direction(const HoleModel& model, Lie lie, Point from, int swing, double carry_yd);

// Whether a swing ends at the hole, to the last digits, if it comes down on the green.
bool ends_at_hole(const HoleModel& model, Point from, const Swing& swing);

// Whether an action is played at the green: its total there comes within numerics::nearly_at_hole of the distance left.
bool is_played_at_green(const HoleModel& model, Lie lie, Point from, const Action& action);

// The swing played to the hole by the shortest club that reaches it, if any does.
std::optional<Action> action_to_hole(const HoleModel& model, Lie lie, Point from);

}  // namespace yardworth
