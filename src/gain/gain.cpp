#include "yardworth/gain.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/numerics.hpp"
#include "core/parallel.hpp"
#include "gain/hole_play.hpp"
#include "gain/policies.hpp"
#include "gain/policy_change.hpp"
#include "gain/strokes_variance.hpp"
#include "gain/tee_shot.hpp"
#include "strategy/follow.hpp"
#include "strategy/habit.hpp"

namespace yardworth {

namespace {

// What all holes share.
struct Setting {
  const Golfers& golfers;
  const Baseline& baseline;
  const GainRequest& request;
  Discretisation search = search_grid();  // its lattices serve all holes
};

ActionOf by_place(const HoleModel& model, const ActionFrom& action_from) {
  return [&model, action_from](StateId state) { return action_from(model.lie_of(state), model.place_of(state)); };
}

// The habit of a golfer who keeps the tee club of the policy before.
ActionFrom habit_with_tee_shot(const HoleModel& model, const Action& tee_shot) {
  return
      [&model, tee_shot](Lie lie, Point from) { return lie == Lie::tee ? tee_shot : habit_action(model, lie, from); };
}

// The habit as a policy follows it: from places where that stays with a shot played before the clubs changed, that one.
ActionFrom habit_as_followed(const HoleModel& model, const Policy& policy) {
  return [&](Lie lie, Point from) {
    if (lie == Lie::tee) return policy[static_cast<std::size_t>(model.tee_state())];
    const StateId near = model.nearest_state(lie, from);
    const Action& planned = policy[static_cast<std::size_t>(near)];
    const bool stays = planned.swing >= 0 && !(planned == habit_action(model, lie, model.place_of(near)));
    return stays ? action_near(model, policy, lie, from) : habit_action(model, lie, from);
  };
}

// The tee shots before and after, and what follows them.
void describe_tee_shots(const HoleModels& models, const Golfers& golfers, const Action& before,
                        const ActionFrom& next_before, const Action& after, const ActionFrom& next_after,
                        HoleGain& gain) {
  const auto nodes_before = strike_tee_shot(models.before, golfers.before, before, next_before);
  const auto nodes_after = strike_tee_shot(models.after, golfers.all_longer, after, next_after);
  gain.before = summarise_tee_shot(models.before, golfers.before, before, nodes_before);
  gain.after = summarise_tee_shot(models.after, golfers.all_longer, after, nodes_after);
  gain.next_club_changed = next_club_changed(nodes_before, nodes_after);
}

// The habit policy before, evaluated: a value of its own, and where the search for the best policy begins.
PolicyEvaluation evaluate_habit(const HoleModel& model) { return evaluate_policy(model, habit_of(model)); }

// How the hole is played before and after, and how much its strokes vary.
void describe_plays(const Setting& setting, const HoleModels& models, const PolicyEvaluation& before,
                    const ActionFrom& from_before, const PolicyEvaluation& after, const ActionFrom& from_after,
                    HoleGain& gain) {
  if (!setting.request.describe_play) {
    if (setting.request.spread_of_score) gain.strokes_variance = strokes_variance(models.before, before);
    return;
  }
  PlayWorkspace workspace;
  gain.play_before = describe_play(models.before, setting.golfers.before, before, from_before, gain.par, workspace);
  gain.play_after = describe_play(models.after, setting.golfers.all_longer, after, from_after, gain.par, workspace);
  gain.strokes_variance = gain.play_before->strokes_variance;
}

// A tee shot and what the table makes of it.
struct TableShot {
  Action action;
  double strokes = 0.0;
};

TableShot shot_by_table(const Setting& setting, const HoleModel& model, const Player& player, const Action& action) {
  const auto nodes = strike_tee_shot(model, player, action, habit_with_tee_shot(model, action));
  return {action, table_strokes(model, setting.baseline, nodes)};
}

// The tee shot of a policy followed with other clubs: where the table likes it better, the one played before.
TableShot follow_by_table(const Setting& setting, const HoleModel& model, const Player& player,
                          const HoleModel& before_model, const TableShot& before) {
  const Action now = follow_action(model, before_model, Lie::tee, model.tee(), before.action);
  const TableShot fits = shot_by_table(setting, model, player, now);
  const auto earlier = same_shot(model, before_model, Lie::tee, before.action);
  if (!earlier || difference_of(model, Lie::tee, model.tee(), now, *earlier) != Difference::other) return fits;
  const TableShot stays = shot_by_table(setting, model, player, *earlier);
  return stays.strokes < fits.strokes ? stays : fits;
}

// Method table: the habit's tee shot, and the baseline from there.
HoleGain table_gain(const Setting& setting, const HoleModels& models, HoleGain gain) {
  const Golfers& golfers = setting.golfers;
  const HoleModel& model = models.before;
  const TableShot before = shot_by_table(setting, model, golfers.before, habit_action(model, Lie::tee, model.tee()));
  const TableShot driver = follow_by_table(setting, models.driver_longer, golfers.driver_longer, model, before);
  const TableShot after = follow_by_table(setting, models.after, golfers.all_longer, models.driver_longer, driver);
  describe_tee_shots(models, golfers, before.action, habit_with_tee_shot(model, before.action), after.action,
                     habit_with_tee_shot(models.after, after.action), gain);
  // The table knows nothing of the player's irons.
  gain.strokes = {before.strokes, driver.strokes, driver.strokes, driver.strokes};
  return gain;
}

// The habit before and after the change.
struct HabitValues {
  PolicyEvaluation before, after;
};

HabitValues habit_gain(const Setting& setting, const HoleModels& models, PolicyEvaluation value_before,
                       HoleGain& gain) {
  const HoleModel& before = models.before;
  const auto tee = static_cast<std::size_t>(before.tee_state());
  const Action tee_before = value_before.policy[tee];
  const auto follow = [&](const HoleModel& model) {
    return by_place(model,
                    habit_with_tee_shot(model, follow_action(model, before, Lie::tee, before.tee(), tee_before)));
  };
  FollowedPolicy followed = follow_policy(setting.golfers, models, value_before, follow);
  const PolicyEvaluation& after = followed.all_longer;
  gain.strokes = {value_before.at_tee, followed.driver_longer.at_tee, after.at_tee, after.at_tee};
  const ActionFrom from_before = habit_with_tee_shot(before, tee_before);
  const ActionFrom from_after = habit_as_followed(models.after, after.policy);
  describe_tee_shots(models, setting.golfers, tee_before, from_before, after.policy[tee], from_after, gain);
  // With both policies the answer is the best one.
  if (setting.request.policy == PolicyChoice::habit) {
    describe_plays(setting, models, value_before, from_before, after, from_after, gain);
  }
  return {std::move(value_before), std::move(followed.all_longer)};
}

HoleGain best_gain(const Setting& setting, const HoleModels& models, PolicyEvaluation habit_before,
                   const PolicyEvaluation* habit_after, HoleGain gain) {
  const Golfers& golfers = setting.golfers;
  const HoleModel& before = models.before;
  const FoundPolicy planned_before = policy_before(models, std::move(habit_before));
  const PolicyEvaluation& best_before = planned_before.held_out;
  const Policy& policy = best_before.policy;
  const auto follow = [&](const HoleModel& model) { return followed(model, before, policy); };
  // With other irons hardly a swing is that of before, but many are those of the habit.
  FollowedPolicy kept = follow_policy(golfers, models, best_before, follow, golfers.no_irons() ? nullptr : habit_after);
  gain.strokes = {best_before.at_tee, kept.driver_longer.at_tee, kept.all_longer.at_tee, kept.all_longer.at_tee};
  const auto tee = static_cast<std::size_t>(before.tee_state());
  const Action kept_tee = kept.all_longer.policy[tee];
  std::optional<PolicyEvaluation> planned;  // afresh
  if (!golfers.no_driver() || !golfers.no_irons()) {
    planned = policy_after(models, planned_before, std::move(kept.all_longer)).held_out;
    gain.strokes.replanned = std::min(gain.strokes.all_longer, planned->at_tee);
  }
  const PolicyEvaluation& planned_after = planned ? *planned : best_before;
  const Policy& policy_after = planned_after.policy;
  describe_plays(setting, models, best_before, near_policy(before, policy), planned_after,
                 near_policy(models.after, policy_after), gain);
  describe_tee_shots(models, golfers, policy[tee], near_policy(before, policy), policy_after[tee],
                     near_policy(models.after, policy_after), gain);
  gain.policy_change =
      explain_policy_change({before, golfers.before, policy[tee]}, {models.after, golfers.all_longer, kept_tee},
                            {models.after, golfers.all_longer, policy_after[tee]});
  return gain;
}

struct BothGains {
  std::optional<HoleGain> habit;
  std::optional<HoleGain> best;
  std::string failure;  // why the hole cannot be finished
};

BothGains gain_on(const Setting& setting, const Hole& hole, const HoleMap& map, const Discretisation& discretisation) {
  const HoleModels models(map, map.tee(hole.length_yd[setting.request.tee]), setting.golfers, setting.baseline,
                          discretisation);
  HoleGain gain;
  gain.number = hole.number;
  gain.par = hole.par;
  gain.length_yd = hole.length_yd[setting.request.tee];
  BothGains both;
  if (setting.request.method == Method::table) {
    both.habit = table_gain(setting, models, gain);
    return both;
  }
  HabitValues habit{evaluate_habit(models.before), {}};
  const bool habit_asked = setting.request.policy != PolicyChoice::best;
  if (habit_asked) habit = habit_gain(setting, models, std::move(habit.before), both.habit.emplace(gain));
  if (setting.request.policy != PolicyChoice::habit) {
    both.best = best_gain(setting, models, std::move(habit.before), habit_asked ? &habit.after : nullptr, gain);
  }
  return both;
}

BothGains hole_gain(const Setting& setting, const Hole& hole, Firmness firmness) {
  const HoleMap map(hole, firmness);
  BothGains both;
  both.failure = finish_or_say_why(
      setting.search, map, map.tee(hole.length_yd[setting.request.tee]), hole.number,
      [&](const Discretisation& discretisation) { both = gain_on(setting, hole, map, discretisation); });
  return both;
}

void add(FourValues& sum, const FourValues& values) {
  sum.before += values.before;
  sum.driver_longer += values.driver_longer;
  sum.all_longer += values.all_longer;
  sum.replanned += values.replanned;
}

// Holes are worked in parallel, but put together in their order.
std::vector<BothGains> all_holes(const Course& course, const Setting& setting) {
  std::vector<BothGains> holes(course.holes.size());
  std::vector<double> lengths;
  for (const Hole& hole : course.holes) lengths.push_back(hole.length_yd[setting.request.tee]);
  work_in_parallel(setting.request.threads, lengths,
                   [&](std::size_t i) { holes[i] = hole_gain(setting, course.holes[i], course.firmness); });
  std::vector<std::string> failures;
  for (const BothGains& hole : holes) failures.push_back(hole.failure);
  throw_unfinished(failures);
  return holes;
}

std::optional<PolicyGain> gather(const std::vector<BothGains>& holes, std::optional<HoleGain> BothGains::*which) {
  PolicyGain gain;
  for (const BothGains& hole : holes) {
    if (!(hole.*which)) return std::nullopt;
    gain.holes.push_back(*(hole.*which));
    add(gain.round, gain.holes.back().strokes);
  }
  return gain;
}

// A part of the change that no club takes saves nothing, which would else look like an answer.
void note_clubs_missed(const GainRequest& request, const Golfers& golfers, std::vector<std::string>& notes) {
  if (request.change.driver_carry_yd != 0.0 && golfers.no_driver()) {
    notes.push_back("The player has no driver, so the change of its carry moves no club.");
  }
  if (request.change.irons_carry_yd != 0.0 && golfers.no_irons()) {
    notes.push_back("The player has no club but the driver, so the change of the irons moves no club.");
  }
}

std::vector<std::string> notes_of(const GainRequest& request, const Golfers& golfers, Units units) {
  std::vector<std::string> notes;
  if (request.method == Method::play) {
    notes.push_back(fmt::format(
        "The player's own shots are played until the ball lies within {:.0f} {} of the hole; from there the "
        "baseline counts.",
        from_yards(short_game_radius_yd, units), name(units)));
  } else {
    notes.push_back("One tee shot is played, and the baseline counts from where it finishes.");
  }
  notes.push_back("Spreads and poor strikes that the player's file does not give are typical of the Handicap Index.");
  note_clubs_missed(request, golfers, notes);
  return notes;
}

}  // namespace

GainResult compute_gain(const Course& course, const Player& player, const Baseline& baseline,
                        const GainRequest& request) {
  const Golfers golfers = lengthen_all(player, request.change);
  const Setting setting{golfers, baseline, request};
  const std::vector<BothGains> holes = all_holes(course, setting);
  GainResult result;
  say_what_was_asked(result, course, request.tee, player, baseline);
  result.method = request.method;
  result.policy = request.method == Method::table ? PolicyChoice::habit : request.policy;
  result.change = request.change;
  if (const auto reference = reference_iron(player)) result.reference_iron = player.clubs[*reference].name;
  result.habit = gather(holes, &BothGains::habit);
  result.best = gather(holes, &BothGains::best);
  result.replanning_computed = result.best.has_value();
  result.notes = notes_of(request, golfers, course.units);
  return result;
}

std::vector<CurvePoint> compute_curve(const Course& course, const Player& player, const Baseline& baseline,
                                      const GainRequest& request, double limit_yd, double step_yd) {
  std::vector<CurvePoint> curve;
  const double irons_per_yard =
      request.change.driver_carry_yd != 0.0 ? request.change.irons_carry_yd / request.change.driver_carry_yd : 0.0;
  const auto steps = static_cast<int>(std::floor(limit_yd / step_yd + numerics::curve_rounding));
  for (int i = 0; i <= steps; ++i) {
    GainRequest here = request;
    here.change.driver_carry_yd = i * step_yd;
    here.change.irons_carry_yd = irons_per_yard * here.change.driver_carry_yd;
    if (here.policy == PolicyChoice::both) here.policy = PolicyChoice::best;
    // A point is four values: what else a gain tells would be worked out for nothing.
    here.describe_play = here.spread_of_score = false;
    curve.push_back({here.change, compute_gain(course, player, baseline, here).answer().round});
  }
  return curve;
}

}  // namespace yardworth
