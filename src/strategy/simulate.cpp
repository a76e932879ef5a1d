#include "strategy/simulate.hpp"

#include <cmath>

#include "core/numerics.hpp"
#include "strategy/habit.hpp"

namespace yardworth {

ActionAt habit_at(const HoleModel& model) {
  return [&model](Lie lie, Point from, RandomEngine&) { return habit_action(model, lie, from); };
}

ActionAt policy_at(const HoleModel& model, const Policy& policy) {
  return [&model, &policy](Lie lie, Point from, RandomEngine&) { return action_near(model, policy, lie, from); };
}

Rest draw_rest(const HoleModel& model, Lie lie, Point from, const Action& action, RandomEngine& engine) {
  const Swing swing = model.swing_of(lie, action);
  const Strike strike = draw_strike(swing, engine);
  const Point direction = along_heading(HoleModel::struck_heading_of(swing, action) + strike.direction_rad);
  return come_to_rest(model.map(), from, direction, strike.carry_yd, strike.carry_yd * swing.roll_share);
}

int play_hole(const HoleModel& model, const ActionAt& action_at, RandomEngine& engine) {
  const auto by_baseline = [&model](Lie lie, double distance_yd, RandomEngine& random) {
    return draw_strokes(model.short_game().strokes(lie, distance_yd), random);
  };
  return play_hole(model, action_at, by_baseline, engine);
}

int play_hole(const HoleModel& model, const ActionAt& action_at, const FinishFrom& finish_from, RandomEngine& engine) {
  return play_hole(model, action_at, finish_from, engine, [](int, const Rest&) {});
}

int play_hole(const HoleModel& model, const ActionAt& action_at, const FinishFrom& finish_from, RandomEngine& engine,
              const OnRest& on_rest) {
  Lie lie = Lie::tee;
  Point at = model.tee();
  int strokes = 0;
  while (strokes < numerics::most_strokes_simulated) {
    const Action action = action_at(lie, at, engine);
    const Rest rest = draw_rest(model, lie, at, action, engine);
    on_rest(strokes, rest);
    strokes += 1 + rest.penalty_strokes;
    if (rest.replay) continue;
    at = rest.at;
    lie = rest.lie;
    const double left = distance_yd(at, model.pin());
    if (lie == Lie::green || left <= short_game_radius_yd) {
      return strokes + finish_from(lie, left, engine);
    }
  }
  return numerics::most_strokes_simulated;
}

SampledMean sample_hole(const HoleModel& model, const ActionAt& action_at, int plays, std::uint64_t seed) {
  RandomEngine engine(seed);
  double sum = 0.0;
  double squares = 0.0;
  for (int play = 0; play < plays; ++play) {
    const double strokes = play_hole(model, action_at, engine);
    sum += strokes;
    squares += strokes * strokes;
  }
  SampledMean sampled;
  sampled.mean = sum / plays;
  sampled.spread = std::sqrt(std::max(0.0, squares / plays - sampled.mean * sampled.mean));
  sampled.standard_error = sampled.spread / std::sqrt(static_cast<double>(plays));
  return sampled;
}

}  // namespace yardworth
