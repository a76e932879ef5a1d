#include "strategy/habit.hpp"

#include <cmath>
#include <optional>

#include "core/numerics.hpp"
#include "strategy/kept_shots.hpp"
#include "strategy/shot_at_hole.hpp"

namespace yardworth {

namespace {

// A lay-up stays out of trouble if it is struck so many spreads of its carry longer or shorter than it is meant to be:
// common practice, no source.
constexpr double margin_sd = 1.0;

// Whether the straight, solid shot of a carry stays out of trouble.
bool is_sensible(const HoleModel& model, Point from, const Swing& swing, Point direction, double carry_yd) {
  return !is_trouble(ground_found(model.map(), from, direction, carry_yd, carry_yd * swing.roll_share));
}

// Whether there is nothing but open ground on the way, and no edge of anything else, from one distance to another: as
// far as the nearest such edge may be, step by step.
bool is_open(const HoleMap& map, Point from, Point direction, double first_yd, double last_yd) {
  HoleMap::GroundProbe probed = map.probe(from + first_yd * direction);
  if (is_trouble(probed.ground)) return false;
  for (double at = first_yd; at < last_yd; probed = map.probe(from + at * direction)) {
    if (probed.edge_free_yd == 0) return false;
    at += probed.edge_free_yd;
  }
  return true;
}

// Whether it does so with the margin, if the shot as it is meant does. On open ground no shot need be followed.
bool has_margin(const HoleModel& model, Point from, const Swing& swing, Point direction) {
  const double longest = swing.solid_carry_yd(margin_sd) * (1.0 + swing.roll_share * longest_roll_factor());
  if (is_open(model.map(), from, direction, swing.solid_carry_yd(-margin_sd), longest)) return true;
  const double margin = margin_sd * swing.carry_sd_share;
  const double steps = std::ceil(margin * swing.carry_yd / numerics::habit_margin_step_yd);
  for (double step = steps; step > 0.0; --step) {
    const double deviate = step / steps * margin_sd;
    if (!is_sensible(model, from, swing, direction, swing.solid_carry_yd(deviate))) return false;
    if (!is_sensible(model, from, swing, direction, swing.solid_carry_yd(-deviate))) return false;
  }
  return true;
}

Action full_action(const HoleModel& model, Point from, const std::vector<Swing>& swings, std::size_t index) {
  const Swing& swing = swings[index];
  return {static_cast<int>(index), swing.carry_yd, reference_heading(model, from, swing), 0};
}

Action choose_by_habit(const HoleModel& model, Lie lie, Point from) {
  if (const auto action = action_to_hole(model, lie, from)) return *action;
  const std::vector<Swing>& swings = model.swings(lie);
  std::optional<Action> without_margin;
  for (std::size_t i = 0; i < swings.size(); ++i) {
    const Action action = full_action(model, from, swings, i);
    const Point direction = along_heading(action.reference_heading_rad);
    if (!is_sensible(model, from, swings[i], direction, swings[i].carry_yd)) continue;
    // Among trees golfers are content to get out; a spread is up to half of the carry there.
    if (lie == Lie::recovery || has_margin(model, from, swings[i], direction)) return action;
    if (!without_margin) without_margin = action;
  }
  return without_margin ? *without_margin : full_action(model, from, swings, 0);
}

}  // namespace

Action habit_action(const HoleModel& model, Lie lie, Point from) {
  KeptShots* const kept = model.kept_shots();
  if (kept == nullptr) return choose_by_habit(model, lie, from);
  return kept->habit_of(model.bag_number(), lie, from, [&] { return choose_by_habit(model, lie, from); });
}

ActionOf habit_of(const HoleModel& model) {
  return [&model](StateId state) { return habit_action(model, model.lie_of(state), model.place_of(state)); };
}

namespace {

std::vector<double> find_habit_edges(const HoleModel& model) {
  const LineOfPlay& line = model.map().line();
  const auto lay_up = [&](Lie lie, double along) {
    // A shot at the hole changes its club smoothly.
    const bool at_hole = action_to_hole(model, lie, line.at(along)).has_value();
    return at_hole ? -1 : habit_action(model, lie, line.at(along)).swing;
  };
  constexpr double step_yd = numerics::habit_edge_step_yd;
  std::vector<double> edges;
  for (const Lie lie : {Lie::fairway, Lie::rough}) {
    int before = lay_up(lie, 0.0);
    for (double along = step_yd; along < line.length_yd() - short_game_radius_yd; along += step_yd) {
      const int here = lay_up(lie, along);
      if (here != before && here >= 0 && before >= 0) {
        double low = along - step_yd;
        double high = along;
        for (int halving = 0; halving < numerics::habit_edge_halvings; ++halving) {
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

}  // namespace

std::vector<double> habit_edges_yd(const HoleModel& model) {
  KeptShots* const kept = model.kept_shots();
  if (kept == nullptr) return find_habit_edges(model);
  return kept->habit_edges_of(model.bag_number(), [&] { return find_habit_edges(model); });
}

}  // namespace yardworth
