#include <algorithm>
#include <cmath>
#include <optional>

#include "strategy/policy.hpp"

namespace yardworth {

namespace {

double roll_on_green(const HoleModel& model) { return roll_factor(Ground::green, model.map().firmness()); }

double roll_on_fairway(const HoleModel& model) { return roll_factor(Ground::fairway, model.map().firmness()); }

// Index of the shortest swing that has the carry it needs, or of a longer one that, played down to its own, spreads no
// more in any respect.
std::optional<int> fitting_swing(const std::vector<Swing>& swings,
                                 const std::function<double(const Swing&)>& needed_carry) {
  std::optional<int> best;
  Swing best_swing;
  for (std::size_t i = swings.size(); i-- > 0;) {
    const double carry = needed_carry(swings[i]);
    if (swings[i].carry_yd < carry) continue;
    const Swing swing = played_down(swings[i], carry);
    if (best && !spreads_no_more(swing, best_swing)) continue;
    best = static_cast<int>(i);
    best_swing = swing;
  }
  return best;
}

// Where among the swings a club of the bag is, if it is.
std::optional<std::size_t> index_of_club(const std::vector<Swing>& swings, std::size_t club) {
  const auto found = std::find_if(swings.begin(), swings.end(), [&](const Swing& swing) { return swing.club == club; });
  if (found == swings.end()) return std::nullopt;
  return static_cast<std::size_t>(found - swings.begin());
}

// Whether the straight, solid shot stays out of trouble.
bool is_sensible(const HoleModel& model, Point from, const Swing& swing, double heading) {
  return !finds_trouble(
      come_to_rest(model.map(), from, along_heading(heading), swing.carry_yd, swing.carry_yd * swing.roll_share));
}

Action full_action(const HoleModel& model, Point from, const std::vector<Swing>& swings, std::size_t index) {
  const Swing& swing = swings[index];
  return {static_cast<int>(index), swing.carry_yd, reference_heading(model, from, swing), 0};
}

}  // namespace

double reference_heading(const HoleModel& model, Point from, const Swing& swing) {
  // A swing played to the hole reaches it to the last digit but not always beyond.
  if (swing.total_yd(roll_on_green(model)) >= distance_yd(from, model.pin()) - 1e-6) {
    return heading_rad(from, model.pin());
  }
  return middle_heading(model.map(), from, swing.total_yd(roll_on_fairway(model)));
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

Action habit_action(const HoleModel& model, Lie lie, Point from) {
  if (const auto action = action_to_hole(model, lie, from)) return *action;
  const std::vector<Swing>& swings = model.swings(lie);
  for (std::size_t i = 0; i < swings.size(); ++i) {
    const Action action = full_action(model, from, swings, i);
    if (is_sensible(model, from, swings[i], action.reference_heading_rad)) return action;
  }
  return full_action(model, from, swings, 0);
}

ActionOf habit_of(const HoleModel& model) {
  return [&model](StateId state) { return habit_action(model, model.lie_of(state), model.place_of(state)); };
}

std::vector<double> habit_edges_yd(const HoleModel& model) {
  const LineOfPlay& line = model.map().line();
  const auto lay_up = [&](Lie lie, double along) {
    // A shot at the hole changes its club smoothly.
    const bool at_hole = action_to_hole(model, lie, line.at(along)).has_value();
    return at_hole ? -1 : habit_action(model, lie, line.at(along)).swing;
  };
  std::vector<double> edges;
  for (const Lie lie : {Lie::fairway, Lie::rough}) {
    int before = lay_up(lie, 0.0);
    for (double along = 1.0; along < line.length_yd() - short_game_radius_yd; along += 1.0) {
      const int here = lay_up(lie, along);
      if (here != before && here >= 0 && before >= 0) {
        double low = along - 1.0;
        double high = along;
        for (int halving = 0; halving < 6; ++halving) {
          const double middle = 0.5 * (low + high);
          (lay_up(lie, middle) == before ? low : high) = middle;
        }
        edges.push_back(distance_yd(line.at(high), model.pin()));
      }
      before = here;
    }
  }
  return edges;
}

Action follow_action(const HoleModel& model, const HoleModel& planned, Lie lie, Point from, const Action& action) {
  const std::vector<Swing>& now = model.swings(lie);
  const Swing& full = planned.swings(lie)[static_cast<std::size_t>(action.swing)];
  if (const auto same = std::find(now.begin(), now.end(), full); same != now.end()) {
    Action kept = action;
    kept.swing = static_cast<int>(same - now.begin());
    return kept;
  }
  const Swing was = played_down(full, action.carry_yd);
  const double heading = HoleModel::heading_of(was, action);
  const double off_reference = heading - reference_heading(planned, from, was);
  const double distance = distance_yd(from, model.pin());
  const double green = roll_on_green(model);
  // A full swing that came nearly to the hole was chosen by the distance left, and the next club is too.
  if (std::abs(was.total_yd(green) - distance) < nearly_at_hole * distance) {
    if (auto shot = action_to_hole(model, lie, from)) {
      shot->reference_heading_rad += off_reference;
      return *shot;
    }
  }
  if (action.swing == 0 && action.carry_yd >= full.carry_yd) {
    const std::size_t index = index_of_club(now, was.club).value_or(0);
    const double to_hole = now[index].carry_for(distance, green);
    const Swing swing = played_down(now[index], to_hole);
    return {static_cast<int>(index), swing.carry_yd, reference_heading(model, from, swing) + off_reference, 0};
  }
  const auto index = fitting_swing(now, [&](const Swing&) { return action.carry_yd; });
  if (!index) return {0, now.front().carry_yd, heading, 0};
  return {*index, action.carry_yd, heading, 0};
}

std::optional<Action> same_shot(const HoleModel& model, const HoleModel& planned, Lie lie, const Action& action) {
  const Swing was = planned.swing_of(lie, action);
  const auto index = index_of_club(model.swings(lie), was.club);
  if (!index) return std::nullopt;
  const Swing& full = model.swings(lie)[*index];
  const double green = roll_on_green(model);
  const double carry = full.carry_for(was.total_yd(green), green);
  if (carry > full.carry_yd) return std::nullopt;
  return Action{static_cast<int>(*index), carry, HoleModel::heading_of(was, action), 0};
}

Difference difference_of(const HoleModel& model, Lie lie, Point from, const Action& now, const Action& earlier) {
  // What is lost in rounding, in yards and as a share.
  constexpr double little = 1e-6;
  const Swing fits = model.swing_of(lie, now);
  Swing stays = model.swing_of(lie, earlier);
  const double green = roll_on_green(model);
  const bool same_total = std::abs(fits.total_yd(green) - stays.total_yd(green)) < little;
  if (fits.club == stays.club) {
    const bool to_short_game = fits.total_yd(green) > distance_yd(from, model.pin()) - short_game_radius_yd;
    return same_total ? Difference::none : to_short_game ? Difference::other : Difference::further;
  }
  stays.carry_sd_share *= 1.0 + little;
  stays.direction_scale_rad *= 1.0 + little;
  stays.roll_share *= 1.0 + little;
  return same_total && spreads_no_more(fits, stays) ? Difference::none : Difference::other;
}

namespace {

// A planned action moved from its state to a place near by.
Action moved(const HoleModel& model, StateId state, const Action& action, Point from) {
  const Lie lie = model.lie_of(state);
  const Point place = model.place_of(state);
  const Swing swing = model.swing_of(lie, action);
  const double heading = HoleModel::heading_of(swing, action);
  const double off_reference = heading - reference_heading(model, place, swing);
  Action here = action;
  const double to_hole = distance_yd(place, model.pin());
  const double green = roll_on_green(model);
  if (std::abs(swing.total_yd(green) - to_hole) < 1e-6) {
    // The same club played to the distance; where it does not reach, the one that fits.
    const Swing& full = model.swings(lie)[static_cast<std::size_t>(action.swing)];
    const double carry = full.carry_for(distance_yd(from, model.pin()), green);
    const auto longer = carry > full.carry_yd ? action_to_hole(model, lie, from) : std::nullopt;
    if (longer) {
      here = *longer;
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
