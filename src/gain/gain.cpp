#include "yardworth/gain/gain.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "gain/plans.hpp"
#include "yardworth/gain/plan_change.hpp"
#include "yardworth/gain/tee_shot.hpp"

namespace yardworth {

namespace {

// The three golfers of the question.
struct Golfers {
  Player before;
  Player driver_longer;
  Player all_longer;
};

Golfers lengthen_all(const Player& player, const DistanceChange& change) {
  const Golfers golfers{player, lengthen(player, change.driver_carry_yd, 0.0),
                        lengthen(player, change.driver_carry_yd, change.irons_carry_yd)};
  require_carries(golfers.all_longer);
  return golfers;
}

// What all holes share.
struct Setting {
  const Golfers& golfers;
  const Baseline& baseline;
  const GainRequest& request;
  Units units;
  StrikeLattices lattices = StrikeLattices(searching());
};

// One hole for the three golfers.
struct HoleSetting {
  HoleSetting(const Setting& setting, const HoleMap& map, Point tee, const Resolution& resolution)
      : models(map, tee, setting.golfers.before, setting.golfers.all_longer, setting.baseline, setting.lattices,
               resolution),
        driver_longer(map, tee, setting.golfers.driver_longer, setting.baseline, setting.lattices,
                      judging(models.resolution)) {}

  HoleModels models;
  HoleModel driver_longer;
};

ActionOf by_place(const HoleModel& model, const ActionFrom& action_from) {
  return [&model, action_from](StateId state) { return action_from(model.lie_of(state), model.place_of(state)); };
}

// The habit of a golfer who keeps the tee club of the plan before.
ActionFrom habit_with_tee_shot(const HoleModel& model, const Action& tee_shot) {
  return
      [&model, tee_shot](Lie lie, Point from) { return lie == Lie::tee ? tee_shot : habit_action(model, lie, from); };
}

// The tee shots before and after, and what follows them.
void describe_tee_shots(const HoleSetting& setting, const Golfers& golfers, const Action& before,
                        const ActionFrom& next_before, const Action& after, const ActionFrom& next_after,
                        HoleGain& gain) {
  const auto nodes_before = strike_tee_shot(setting.models.before, golfers.before, before, next_before);
  const auto nodes_after = strike_tee_shot(setting.models.after, golfers.all_longer, after, next_after);
  gain.before = summarise_tee_shot(setting.models.before, golfers.before, before, nodes_before);
  gain.after = summarise_tee_shot(setting.models.after, golfers.all_longer, after, nodes_after);
  gain.next_club_changed = next_club_changed(nodes_before, nodes_after);
}

// Whether a part of the change leaves every club as it was: it then saves exactly nothing.
bool no_driver(const Golfers& golfers) { return same_carries(golfers.before, golfers.driver_longer); }
bool no_irons(const Golfers& golfers) { return same_carries(golfers.driver_longer, golfers.all_longer); }

// The habit plan before, evaluated: a value of its own, and where the search for the best plan begins.
PlanValue evaluate_habit(const HoleModel& model) { return evaluate_plan(model, habit_of(model)); }

// How the hole is played before and after, and how much its strokes vary.
void describe_plays(const Setting& setting, const HoleSetting& hole, const PlanValue& before,
                    const ActionFrom& from_before, const PlanValue& after, const ActionFrom& from_after,
                    HoleGain& gain) {
  if (!setting.request.describe_play) {
    if (setting.request.spread_of_score) gain.strokes_variance = strokes_variance(hole.models.before, before);
    return;
  }
  gain.play_before =
      describe_play(hole.models.before, setting.golfers.before, before, from_before, gain.par, setting.units);
  gain.play_after =
      describe_play(hole.models.after, setting.golfers.all_longer, after, from_after, gain.par, setting.units);
  gain.strokes_variance = gain.play_before->strokes_variance;
}

// Method table: the habit's tee shot, and the baseline from there.
void value_by_table(const Setting& setting, const std::vector<TeeShotNode>& before,
                    const std::vector<TeeShotNode>& driver_longer, const HoleModel& model, FourValues& strokes) {
  strokes.before = table_strokes(model, setting.baseline, before);
  strokes.driver_longer = table_strokes(model, setting.baseline, driver_longer);
  // The table knows nothing of the player's irons.
  strokes.all_longer = strokes.driver_longer;
}

// The habit before and after the change, as far as it has been evaluated.
struct HabitValues {
  PlanValue before;
  std::optional<PlanValue> after;
};

HoleGain habit_gain(const Setting& setting, const HoleSetting& hole, HabitValues& values, HoleGain gain) {
  const PlanValue& value_before = values.before;
  const HoleModel& before = hole.models.before;
  const Action tee_before = habit_action(before, Lie::tee, before.tee());
  const Action tee_driver = follow_action(hole.driver_longer, before, Lie::tee, before.tee(), tee_before);
  const Action tee_after = follow_action(hole.models.after, before, Lie::tee, before.tee(), tee_before);
  const ActionFrom from_before = habit_with_tee_shot(before, tee_before);
  const ActionFrom from_driver = habit_with_tee_shot(hole.driver_longer, tee_driver);
  const ActionFrom from_after = habit_with_tee_shot(hole.models.after, tee_after);
  describe_tee_shots(hole, setting.golfers, tee_before, from_before, tee_after, from_after, gain);
  FourValues& strokes = gain.strokes;
  if (setting.request.method == Method::table) {
    value_by_table(setting, strike_tee_shot(before, setting.golfers.before, tee_before, from_before),
                   strike_tee_shot(hole.driver_longer, setting.golfers.driver_longer, tee_driver, from_driver), before,
                   strokes);
  } else {
    const auto value = [&](const HoleModel& model, const ActionFrom& from) {
      return evaluate_plan(model, by_place(model, from), before, value_before);
    };
    const PlanValue driver = no_driver(setting.golfers) ? value_before : value(hole.driver_longer, from_driver);
    values.after = no_irons(setting.golfers) ? driver : value(hole.models.after, from_after);
    const PlanValue& after = *values.after;
    strokes.before = value_before.at_tee;
    strokes.driver_longer = driver.at_tee;
    strokes.all_longer = after.at_tee;
    // With both plans the answer is the best one.
    if (setting.request.plan == PlanChoice::habit) {
      describe_plays(setting, hole, value_before, from_before, after, from_after, gain);
    }
  }
  strokes.replanned = strokes.all_longer;
  return gain;
}

HoleGain best_gain(const Setting& setting, const HoleSetting& hole, const HabitValues& habit, HoleGain gain) {
  const HoleModel& before = hole.models.before;
  const JudgedPlan planned_before = plan_before(hole.models, habit.before);
  const PlanValue& best_before = planned_before.judged;
  const Plan& plan = best_before.plan;
  FourValues& strokes = gain.strokes;
  strokes.before = best_before.at_tee;
  strokes.driver_longer = strokes.all_longer = strokes.replanned = strokes.before;
  PlanValue planned_after = best_before;
  if (!no_driver(setting.golfers)) {
    const ActionOf plan_before = followed(hole.driver_longer, before, plan);
    strokes.driver_longer = evaluate_plan(hole.driver_longer, plan_before, before, best_before).at_tee;
  }
  if (!no_driver(setting.golfers) || !no_irons(setting.golfers)) {
    const ActionOf start = followed(hole.models.after, before, plan);
    // With other irons hardly a swing is that of before, but many are those of the habit.
    const PlanValue kept = habit.after && !no_irons(setting.golfers)
                               ? evaluate_plan(hole.models.after, start, hole.models.after, *habit.after)
                               : evaluate_plan(hole.models.after, start, before, best_before);
    strokes.all_longer = no_irons(setting.golfers) ? strokes.driver_longer : kept.at_tee;
    planned_after = plan_after(hole.models, planned_before, kept).judged;
    strokes.replanned = std::min(strokes.all_longer, planned_after.at_tee);
  }
  const Plan& plan_after = planned_after.plan;
  describe_plays(setting, hole, best_before, near_plan(before, plan), planned_after,
                 near_plan(hole.models.after, plan_after), gain);
  const auto tee = static_cast<std::size_t>(before.tee_state());
  describe_tee_shots(hole, setting.golfers, plan[tee], near_plan(before, plan), plan_after[tee],
                     near_plan(hole.models.after, plan_after), gain);
  const Action kept = follow_action(hole.models.after, before, Lie::tee, before.tee(), plan[tee]);
  gain.plan_change = explain_plan_change(
      {before, setting.golfers.before, plan[tee]}, {hole.models.after, setting.golfers.all_longer, kept},
      {hole.models.after, setting.golfers.all_longer, plan_after[tee]}, setting.units);
  return gain;
}

struct BothGains {
  std::optional<HoleGain> habit;
  std::optional<HoleGain> best;
  std::string failure;  // why the hole cannot be finished
};

BothGains gain_on(const Setting& setting, const Hole& hole, const HoleMap& map, const Resolution& resolution) {
  const HoleSetting here(setting, map, map.tee(hole.length_yd[setting.request.tee]), resolution);
  HoleGain gain;
  gain.number = hole.number;
  gain.par = hole.par;
  gain.length_yd = hole.length_yd[setting.request.tee];
  BothGains both;
  const bool table = setting.request.method == Method::table;
  HabitValues habit;
  if (!table) habit.before = evaluate_habit(here.models.before);
  if (table || setting.request.plan != PlanChoice::best) both.habit = habit_gain(setting, here, habit, gain);
  if (!table && setting.request.plan != PlanChoice::habit) both.best = best_gain(setting, here, habit, gain);
  return both;
}

BothGains hole_gain(const Setting& setting, const Hole& hole, Firmness firmness) {
  const HoleMap map(hole, firmness);
  BothGains both;
  both.failure =
      finish_or_say_why(map, map.tee(hole.length_yd[setting.request.tee]), hole.number,
                        [&](const Resolution& resolution) { both = gain_on(setting, hole, map, resolution); });
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

std::optional<PlanGain> gather(const std::vector<BothGains>& holes, std::optional<HoleGain> BothGains::*which) {
  PlanGain gain;
  for (const BothGains& hole : holes) {
    if (!(hole.*which)) return std::nullopt;
    gain.holes.push_back(*(hole.*which));
    add(gain.round, gain.holes.back().strokes);
  }
  return gain;
}

// A part of the change that no club takes saves nothing, which would else look like an answer.
void note_clubs_missed(const GainRequest& request, const Golfers& golfers, std::vector<std::string>& notes) {
  if (request.change.driver_carry_yd != 0.0 && no_driver(golfers)) {
    notes.push_back("The player has no driver, so the change of its carry moves no club.");
  }
  if (request.change.irons_carry_yd != 0.0 && no_irons(golfers)) {
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

std::string_view name(Method method) { return method == Method::table ? "table" : "play"; }

std::string_view name(PlanChoice plan) {
  return plan == PlanChoice::habit ? "habit" : plan == PlanChoice::best ? "best" : "both";
}

GainResult compute_gain(const Course& course, const Player& player, const Baseline& baseline,
                        const GainRequest& request) {
  const Golfers golfers = lengthen_all(player, request.change);
  const Setting setting{golfers, baseline, request, course.units};
  const std::vector<BothGains> holes = all_holes(course, setting);
  GainResult result;
  say_what_was_asked(result, course, request.tee, player, baseline);
  result.method = request.method;
  result.plan = request.method == Method::table ? PlanChoice::habit : request.plan;
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
  const auto steps = static_cast<int>(std::floor(limit_yd / step_yd + 1e-9));
  for (int i = 0; i <= steps; ++i) {
    GainRequest here = request;
    here.change.driver_carry_yd = i * step_yd;
    here.change.irons_carry_yd = irons_per_yard * here.change.driver_carry_yd;
    if (here.plan == PlanChoice::both) here.plan = PlanChoice::best;
    // A point is four values: what else a gain tells would be worked out for nothing.
    here.describe_play = here.spread_of_score = false;
    curve.push_back({here.change, compute_gain(course, player, baseline, here).answer().round});
  }
  return curve;
}

}  // namespace yardworth
