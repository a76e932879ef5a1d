#include "strategy/shot_at_hole.hpp"

#include <algorithm>
#include <cmath>

#include "core/numerics.hpp"

namespace yardworth {

double roll_on_green(const HoleModel& model) { return roll_factor(Ground::green, model.map().firmness()); }

double roll_on_fairway(const HoleModel& model) { return roll_factor(Ground::fairway, model.map().firmness()); }

double carry_to_hole(const HoleModel& model, Point from, const Swing& swing) {
  return swing.carry_for(distance_yd(from, model.pin()), roll_on_green(model));
}

double reference_heading(const HoleModel& model, Point from, const Swing& swing) {
  // A swing played to the hole reaches it to the last digit but not always beyond.
  if (swing.total_yd(roll_on_green(model)) >= distance_yd(from, model.pin()) - numerics::rounding_yd) {
    return heading_rad(from, model.pin());
  }
  return middle_heading(model.map(), from, swing.total_yd(roll_on_fairway(model)));
}

Action in_reference_direction(const HoleModel& model, Lie lie, Point from, int swing, double carry_yd) {
  const Swing& full = model.swings(lie)[static_cast<std::size_t>(swing)];
  Action action{swing, std::min(full.carry_yd, carry_yd), 0.0, 0, model.has_direction_mean()};
  action.reference_heading_rad = reference_heading(model, from, model.swing_of(lie, action));
  return action;
}

bool ends_at_hole(const HoleModel& model, Point from, const Swing& swing) {
  return std::abs(swing.total_yd(roll_on_green(model)) - distance_yd(from, model.pin())) < numerics::rounding_yd;
}

bool is_played_at_green(const HoleModel& model, Lie lie, Point from, const Action& action) {
  const double left = distance_yd(from, model.pin());
  const double total = model.swing_of(lie, action).total_yd(roll_on_green(model));
  return std::abs(total - left) <= numerics::nearly_at_hole * left;
}

std::optional<int> fitting_swing(const std::vector<Swing>& swings,
                                 const std::function<double(const Swing&)>& needed_carry) {
  std::optional<int> best;
  Swing best_swing;
  for (std::size_t i = swings.size(); i-- > 0;) {
    const double carry = needed_carry(swings[i]);
    if (swings[i].carry_yd < carry) continue;
    const Swing swing = played_down(swings[i], carry);
    if (best && !spreads_less(swing, best_swing)) continue;
    best = static_cast<int>(i);
    best_swing = swing;
  }
  return best;
}

std::optional<Action> action_to_hole(const HoleModel& model, Lie lie, Point from) {
  const double distance = distance_yd(from, model.pin());
  const double green = roll_on_green(model);
  const std::vector<Swing>& swings = model.swings(lie);
  const auto index = fitting_swing(swings, [&](const Swing& swing) { return swing.carry_for(distance, green); });
  if (!index) return std::nullopt;
  const Swing& swing = swings[static_cast<std::size_t>(*index)];
  return Action{*index, swing.carry_for(distance, green), heading_rad(from, model.pin()), 0};
}

}  // namespace yardworth
