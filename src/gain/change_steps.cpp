#include <algorithm>

#include "yardworth/gain.hpp"

namespace yardworth {

namespace {

// What of a single club a step is about.
bool asks_of_club(const OwnChange& own, ChangeStep step) {
  switch (step) {
    case ChangeStep::club_carry:
      return own.carry_yd != 0.0 || own.roll_yd != 0.0;
    case ChangeStep::carry_spread:
      return own.carry_sd_share != 0.0;
    case ChangeStep::direction_spread:
      return own.direction_sd_share != 0.0;
    case ChangeStep::mean_direction:
      return own.direction_mean_rad != 0.0;
    case ChangeStep::poor_strikes:
      return own.poor_strike != 0.0;
    case ChangeStep::driver_carry:
    case ChangeStep::irons_carry:
    case ChangeStep::short_game:
    case ChangeStep::putting:
      break;
  }
  return false;
}

double of_all(const Change& change, ChangeStep step) {
  switch (step) {
    case ChangeStep::driver_carry:
      return change.driver_carry_yd;
    case ChangeStep::irons_carry:
      return change.irons_carry_yd;
    case ChangeStep::club_carry:
      break;
    case ChangeStep::carry_spread:
      return change.carry_sd_share;
    case ChangeStep::direction_spread:
      return change.direction_sd_share;
    case ChangeStep::mean_direction:
      return change.direction_mean_rad;
    case ChangeStep::poor_strikes:
      return change.poor_strike;
    case ChangeStep::short_game:
      return change.short_game_share;
    case ChangeStep::putting:
      return change.putting_share;
  }
  return 0.0;
}

}  // namespace

std::vector<ChangeStep> steps_asked(const Change& change) {
  std::vector<ChangeStep> steps;
  for (const ChangeStep step : all_change_steps) {
    const bool of_clubs = std::any_of(change.clubs.begin(), change.clubs.end(),
                                      [&](const OwnChange& own) { return asks_of_club(own, step); });
    if (of_clubs || of_all(change, step) != 0.0) steps.push_back(step);
  }
  return steps;
}

bool is_carry_alone(const Change& change) {
  const std::vector<ChangeStep> steps = steps_asked(change);
  return std::all_of(steps.begin(), steps.end(), [](ChangeStep step) { return step <= ChangeStep::irons_carry; });
}

bool is_counted(Method method, ChangeStep step) {
  if (method == Method::play) return true;
  switch (step) {
    case ChangeStep::irons_carry:
    case ChangeStep::club_carry:
    case ChangeStep::short_game:
    case ChangeStep::putting:
      return false;
    case ChangeStep::driver_carry:
    case ChangeStep::carry_spread:
    case ChangeStep::direction_spread:
    case ChangeStep::mean_direction:
    case ChangeStep::poor_strikes:
      break;
  }
  return true;
}

double StepValues::after_step(ChangeStep step) const {
  double strokes = before;
  for (const StepValue& value : steps) {
    if (value.step <= step) strokes = value.strokes;
  }
  return strokes;
}

double StepValues::from(ChangeStep step) const {
  double earlier = before;
  for (const StepValue& value : steps) {
    if (value.step == step) return earlier - value.strokes;
    earlier = value.strokes;
  }
  return 0.0;
}

void StepValues::add(const StepValues& hole, double weight) {
  before += weight * hole.before;
  for (std::size_t i = 0; i < hole.steps.size(); ++i) {
    if (i == steps.size()) steps.push_back({hole.steps[i].step, 0.0});
    steps[i].strokes += weight * hole.steps[i].strokes;
  }
  replanned += weight * hole.replanned;
}

}  // namespace yardworth
