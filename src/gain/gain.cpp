#include "yardworth/gain.hpp"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

#include "core/numerics.hpp"
#include "core/telling.hpp"
#include "gain/bag_places.hpp"
#include "gain/describe_gain.hpp"
#include "gain/finish_holes.hpp"
#include "gain/golfers.hpp"
#include "gain/handicap.hpp"
#include "gain/request_rules.hpp"
#include "gain/round_gain.hpp"
#include "gain/round_scores.hpp"
#include "gain/solve_hole.hpp"
#include "gain/table_method.hpp"
#include "gain/what_was_asked.hpp"
#include "yardworth/read.hpp"

namespace yardworth {

namespace {

HoleGains gains_on(const Hole& hole, std::size_t tee, const HoleModels& models, const Baseline& baseline,
                   const GainRequest& request, const FinishesOfChange* finish) {
  HoleGain about;
  about.number = hole.number;
  about.par = hole.par;
  about.length_yd = hole.length_yd[tee];
  HoleGains both;
  if (request.method == Method::table) {
    both.habit = describe_table(models, answer_by_table(models, baseline), about);
    return both;
  }
  SolveOptions wanted;
  wanted.habit = request.policy != PolicyChoice::best;
  wanted.best = request.policy != PolicyChoice::habit;
  const SolvedHole solved = solve_hole(models, wanted);
  const DescribeOptions answer{request.describe_play, finish};
  // With both policies the answer is the best one.
  const DescribeOptions beside{false, finish};
  if (solved.habit) both.habit = describe_habit(models, *solved.habit, about, wanted.best ? beside : answer);
  if (solved.best) both.best = describe_best(models, *solved.best, about, answer);
  return both;
}

std::optional<PolicyGain> gather(const std::vector<HoleGains>& holes, std::optional<HoleGain> HoleGains::*which) {
  PolicyGain gain;
  for (const HoleGains& hole : holes) {
    if (!(hole.*which)) return std::nullopt;
    gain.holes.push_back(*(hole.*which));
    gain.round.add(gain.holes.back().strokes);
  }
  return gain;
}

std::vector<Note> notes_of(const GainRequest& request, const Player& player) {
  using Kind = Note::Kind;
  std::vector<Note> notes;
  if (request.method == Method::play) {
    notes.push_back({Kind::own_shots_then_baseline, short_game_radius_yd});
  } else {
    notes.push_back({Kind::tee_shot_then_baseline});
  }
  notes.push_back({Kind::typical_spreads});
  // A step of the change that moves nothing saves nothing, which would else look like an answer.
  for (const ChangeStep step : steps_without_effect(player, request.change)) {
    const Kind kind = step == ChangeStep::driver_carry  ? Kind::no_driver_to_change
                      : step == ChangeStep::irons_carry ? Kind::no_irons_to_change
                                                        : Kind::step_without_effect;
    notes.push_back({kind, 0.0, {}, step});
  }
  return notes;
}

}  // namespace

// Holes are worked in parallel, but put together in their order.
std::vector<HoleGains> compute_hole_gains(const Course& course, const Player& player, const Baseline& baseline,
                                          const GainRequest& request) {
  require_valid(course, player, request);
  const std::size_t tee = tee_of(course, player, request.tee);
  const Golfers golfers = golfers_of(player, baseline, request.change);
  const HolesAsked asked{
      holes_wanted(course, request.holes), course.firmness, course.units, tee, golfers, baseline, request.threads};
  std::optional<FinishesOfChange> finish;
  if (request.spread_of_score && request.method == Method::play) finish.emplace(golfers, baseline);
  std::vector<HoleGains> holes(asked.holes.size());
  finish_holes(asked, [&](std::size_t i, const HoleModels& models) {
    holes[i] = gains_on(*asked.holes[i], tee, models, baseline, request, finish ? &*finish : nullptr);
  });
  return holes;
}

std::optional<UnfinishedHole> compute_hole_gain(const HoleAsked& asked, const GainRequest& request, HoleGains& gains) {
  return finish_hole(asked, [&](const HoleModels& models) {
    gains = gains_on(asked.hole, asked.tee, models, asked.baseline, request, asked.finish);
  });
}

namespace {

// What the scores of the holes make of the round.
void add_scores(const Course& course, const Player& player, const GainRequest& request, GainResult& result) {
  const std::size_t tee = tee_of(course, player, request.tee);
  const std::size_t holes = result.answer().holes.size();
  result.handicap_needs = handicap_needs(course, tee, player, holes);
  if (result.handicap_needs.empty()) result.handicap = handicap_terms(course, tee, player);
  result.mark = mark_of(holes, request.mark, result.answer().round.before);
  const std::vector<int> marks = marks_of(holes, result.mark);
  for (auto* gain : {&result.habit, &result.best}) {
    if (*gain) (*gain)->scores = scores_of(**gain, course, marks, result.handicap);
  }
}

}  // namespace

GainResult put_together(const Course& course, const Player& player, const Baseline& baseline,
                        const GainRequest& request, const std::vector<HoleGains>& holes) {
  GainResult result;
  say_what_was_asked(result, course, tee_of(course, player, request.tee), player, baseline);
  result.method = request.method;
  result.policy = request.method == Method::table ? PolicyChoice::habit : request.policy;
  result.change = request.change;
  if (const auto reference = reference_iron(player)) result.reference_iron = player.clubs[*reference].name;
  result.habit = gather(holes, &HoleGains::habit);
  result.best = gather(holes, &HoleGains::best);
  const Player after = golfer_after(player, request.change);
  for (auto* gain : {&result.habit, &result.best}) {
    if (*gain) (*gain)->second_shot = second_shot_change((*gain)->holes, player, after);
  }
  result.replanning_computed = result.best.has_value();
  double most = 0.0;
  for (const auto* gain : {&result.habit, &result.best}) {
    if (!*gain) continue;
    for (const HoleGain& hole : (*gain)->holes) most = std::max(most, hole.strokes.before);
  }
  add_caution_of_many_strokes(most, result.cautions);
  if (result.method == Method::play && request.spread_of_score) add_scores(course, player, request, result);
  result.notes = notes_of(request, player);
  add_note_of_misses(player, result.notes);
  return result;
}

GainResult compute_gain(const Course& course, const Player& player, const GainRequest& request) {
  require_valid(course, player, request);
  return compute_gain(course, player, default_baseline(player), request);
}

GainResult compute_gain(const Course& course, const Player& player, const Baseline& baseline,
                        const GainRequest& request) {
  return put_together(course, player, baseline, request, compute_hole_gains(course, player, baseline, request));
}

namespace {

// Names the hazards that as many tee shots reach as never before, and adds them to those that were so far.
std::vector<HazardInReach> new_in_reach(const PolicyGain& answer, std::set<std::pair<int, int>>& reached) {
  std::vector<HazardInReach> hazards;
  for (const HoleGain& hole : answer.holes) {
    if (!hole.play_after) continue;
    for (const HazardMet& met : hole.play_after->hazards) {
      if (met.reached < telling::within_reach) continue;
      if (reached.emplace(hole.number, met.hazard.hazard).second) hazards.push_back({hole.number, met.hazard});
    }
  }
  return hazards;
}

}  // namespace

std::vector<CurvePoint> compute_curve(const Course& course, const Player& player, const Baseline& baseline,
                                      const GainRequest& request, double limit_yd, double step_yd) {
  require_valid_curve(course, request, limit_yd, step_yd);
  std::vector<CurvePoint> curve;
  const double irons_per_yard =
      request.change.driver_carry_yd != 0.0 ? request.change.irons_carry_yd / request.change.driver_carry_yd : 0.0;
  const auto steps = static_cast<int>(std::floor(limit_yd / step_yd + numerics::curve_rounding));
  std::set<std::pair<int, int>> reached;  // holes and their hazards
  for (int i = 0; i <= steps; ++i) {
    GainRequest here = request;
    here.change.driver_carry_yd = i * step_yd;
    here.change.irons_carry_yd = irons_per_yard * here.change.driver_carry_yd;
    if (here.policy == PolicyChoice::both) here.policy = PolicyChoice::best;
    // A point is four values and what tee shots reach: what else a gain tells would be worked out for nothing.
    here.describe_play = here.method == Method::play;
    here.spread_of_score = false;
    const GainResult point = compute_gain(course, player, baseline, here);
    std::vector<HazardInReach> into_reach = new_in_reach(point.answer(), reached);
    // What today's tee shots reach does not come into reach.
    if (i == 0) into_reach.clear();
    curve.push_back({here.change.carry(), point.answer().round, std::move(into_reach)});
  }
  return curve;
}

}  // namespace yardworth
