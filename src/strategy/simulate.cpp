#include "yardworth/strategy/simulate.hpp"

#include <boost/random/uniform_01.hpp>
#include <cmath>

namespace yardworth {

namespace {

constexpr int longest_hole_strokes = 200;

// A planned action moved from its state to a place near by.
Action moved(const HoleModel& model, StateId state, const Action& action, Point from) {
  const Lie lie = model.lie_of(state);
  const Point place = model.place_of(state);
  const Swing swing = model.swing_of(lie, action);
  const double heading = HoleModel::heading_of(swing, action);
  const double off_reference = heading - reference_heading(model, place, swing);
  Action here = action;
  const double to_hole = distance_yd(place, model.pin());
  const double green = roll_factor(Ground::green, model.map().firmness());
  if (std::abs(swing.total_yd(green) - to_hole) < 1e-6) {
    if (const auto shot = action_to_hole(model, lie, from)) here = *shot;
  }
  const Swing now = model.swing_of(lie, here);
  here.reference_heading_rad = reference_heading(model, from, now) + off_reference;
  here.aim = 0;
  return here;
}

}  // namespace

ActionAt habit_at(const HoleModel& model) {
  return [&model](Lie lie, Point from, RandomEngine&) { return habit_action(model, lie, from); };
}

ActionAt plan_at(const HoleModel& model, const Plan& plan) {
  return [&model, &plan](Lie lie, Point from, RandomEngine& engine) {
    if (lie == Lie::tee) return plan[static_cast<std::size_t>(model.tee_state())];
    const Settled settled = model.settle({from, lie, 0, false});
    boost::random::uniform_01<double> uniform;
    double left = uniform(engine);
    const std::array<double, 4> weights = settled.weights();
    for (std::size_t i = 0; i < 4; ++i) {
      left -= weights[i];
      const StateId state = settled.state[i];
      const Action& action = plan[static_cast<std::size_t>(state)];
      if (left < 0.0 && action.swing >= 0) return moved(model, state, action, from);
    }
    return habit_action(model, lie, from);
  };
}

int play_hole(const HoleModel& model, const ActionAt& action_at, RandomEngine& engine) {
  Lie lie = Lie::tee;
  Point at = model.tee();
  int strokes = 0;
  while (strokes < longest_hole_strokes) {
    const Action action = action_at(lie, at, engine);
    const Swing swing = model.swing_of(lie, action);
    const Strike strike = draw_strike(swing, engine);
    const Point direction = along_heading(HoleModel::heading_of(swing, action) + strike.direction_rad);
    const Rest rest = come_to_rest(model.map(), at, direction, strike.carry_yd, strike.carry_yd * swing.roll_share);
    strokes += 1 + rest.penalty_strokes;
    if (rest.replay) continue;
    at = rest.at;
    lie = rest.lie;
    const double left = distance_yd(at, model.pin());
    if (lie == Lie::green || left <= short_game_radius_yd) {
      return strokes + draw_strokes(model.short_game().strokes(lie, left), engine);
    }
  }
  return longest_hole_strokes;
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
