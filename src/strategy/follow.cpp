#include "strategy/follow.hpp"

#include <algorithm>
#include <cmath>

#include "core/numerics.hpp"
#include "strategy/shot_at_hole.hpp"
#include "strategy/state_values.hpp"
#include "strategy/strikes.hpp"

namespace yardworth {

namespace {

// Where among the swings a club of the bag is, if it is.
std::optional<std::size_t> index_of_club(const std::vector<Swing>& swings, std::size_t club) {
  const auto found = std::find_if(swings.begin(), swings.end(), [&](const Swing& swing) { return swing.club == club; });
  if (found == swings.end()) return std::nullopt;
  return static_cast<std::size_t>(found - swings.begin());
}

// The same club to the same full carry with the same roll, however surely it is struck.
bool goes_as_far(const Swing& a, const Swing& b) {
  return a.club == b.club && a.carry_yd == b.carry_yd && a.roll_share == b.roll_share;
}

// The probability that an action ends in a penalty, sand or trees.
double trouble_of(const HoleModel& model, StateId state, const Action& action, int stride) {
  double trouble = 0.0;
  for_each_strike(model, state, action, stride, [&](const Rest& rest, double weight) {
    if (is_trouble(rest.found)) trouble += weight;
  });
  return trouble;
}

}  // namespace

Action follow_action(const HoleModel& model, const HoleModel& planned, Lie lie, Point from, const Action& action) {
  const std::vector<Swing>& now = model.swings(lie);
  const Swing& full = planned.swings(lie)[static_cast<std::size_t>(action.swing)];
  const Swing was = played_down(full, action.carry_yd);
  const double heading = HoleModel::heading_of(was, action);
  const auto same = std::find_if(now.begin(), now.end(), [&](const Swing& swing) { return goes_as_far(swing, full); });
  if (same != now.end()) {
    Action kept = action;
    kept.swing = static_cast<int>(same - now.begin());
    // Aims are steps of the spread: of another spread they would lead elsewhere.
    if (same->direction_scale_rad != full.direction_scale_rad) {
      kept.reference_heading_rad = heading;
      kept.aim = 0;
    }
    return kept;
  }
  const double off_reference = heading - reference_heading(planned, from, was);
  const double distance = distance_yd(from, model.pin());
  const double green = roll_on_green(model);
  // A full swing that came nearly to the hole was chosen by the distance left, and the next club is too.
  if (std::abs(was.total_yd(green) - distance) < numerics::nearly_at_hole * distance) {
    if (auto shot = action_to_hole(model, lie, from)) {
      shot->reference_heading_rad += off_reference;
      shot->allows_for_mean = action.allows_for_mean;
      return *shot;
    }
  }
  if (action.swing == 0 && action.carry_yd >= full.carry_yd) {
    const std::size_t index = index_of_club(now, was.club).value_or(0);
    const double to_hole = now[index].carry_for(distance, green);
    const Swing swing = played_down(now[index], to_hole);
    return {static_cast<int>(index), swing.carry_yd, reference_heading(model, from, swing) + off_reference, 0,
            action.allows_for_mean};
  }
  const auto index = fitting_swing(now, [&](const Swing&) { return action.carry_yd; });
  if (!index) return {0, now.front().carry_yd, heading, 0, action.allows_for_mean};
  return {*index, action.carry_yd, heading, 0, action.allows_for_mean};
}

std::optional<Action> same_shot(const HoleModel& model, const HoleModel& planned, Lie lie, const Action& action) {
  const Swing was = planned.swing_of(lie, action);
  const auto index = index_of_club(model.swings(lie), was.club);
  if (!index) return std::nullopt;
  const Swing& full = model.swings(lie)[*index];
  const double green = roll_on_green(model);
  const double carry = full.carry_for(was.total_yd(green), green);
  if (carry > full.carry_yd) return std::nullopt;
  return Action{static_cast<int>(*index), carry, HoleModel::heading_of(was, action), 0, action.allows_for_mean};
}

Difference difference_of(const HoleModel& model, Lie lie, Point from, const Action& now, const Action& earlier) {
  const Swing fits = model.swing_of(lie, now);
  const Swing stays = model.swing_of(lie, earlier);
  const double green = roll_on_green(model);
  const bool same_total = std::abs(fits.total_yd(green) - stays.total_yd(green)) < numerics::rounding_yd;
  if (fits.club == stays.club) {
    const bool to_short_game = fits.total_yd(green) > distance_yd(from, model.pin()) - short_game_radius_yd;
    return same_total ? Difference::none : to_short_game ? Difference::other : Difference::further;
  }
  const bool same_side = now.allows_for_mean || fits.direction_mean_rad == stays.direction_mean_rad;
  return same_total && same_side && spreads_no_more(fits, stays) ? Difference::none : Difference::other;
}

PolicyEvaluation evaluate_followed(const HoleModel& model, const ActionOf& followed, const EvaluatedPolicy& before,
                                   const EvaluatedPolicy& row_source) {
  ReusedRows rows(model, row_source);
  // The shots to choose from: on the strikes that the chosen one is then valued by, the better-looking of two would owe
  // some of its looks to them.
  const HoleModel to_choose = model.with_other_strikes();
  std::vector<double> value;  // filled when it is first asked for
  const auto strokes = [&](StateId state, const Action& action, int stride) {
    if (value.empty()) value = filled_values(before.model, before.policy.value);
    return struck_value(to_choose, state, action, stride, value);
  };
  // Whether a shot played before is the better one.
  const auto stays = [&](StateId state, const Action& now, const Action& earlier, int stride) {
    const Lie lie = model.lie_of(state);
    const Difference difference = difference_of(model, lie, model.place_of(state), now, earlier);
    if (difference == Difference::none) return false;
    // What goes further from a place that hardly a ball comes to is not worth another look.
    if (difference == Difference::further && stride == model.longest_stride(state)) return false;
    const int other = model.longer_stride(state, stride);
    if (strokes(state, earlier, other) >= strokes(state, now, other)) return false;
    return difference == Difference::other ||
           trouble_of(to_choose, state, now, other) <= trouble_of(to_choose, state, earlier, other);
  };
  return evaluate_from_tee(model, [&](StateId state, int stride) {
    Action action = followed(state);
    const Action& played = before.policy.policy[static_cast<std::size_t>(state)];
    if (played.swing >= 0) {
      const auto earlier = same_shot(model, before.model, model.lie_of(state), played);
      if (earlier && stays(state, action, *earlier, stride)) action = *earlier;
    }
    return std::pair{action, rows.row(state, action, stride)};
  });
}

}  // namespace yardworth
