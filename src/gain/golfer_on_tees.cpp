#include "gain/golfer_on_tees.hpp"

#include <algorithm>

#include "core/numerics.hpp"
#include "gain/round_gain.hpp"
#include "strategy/habit.hpp"
#include "strategy/kept_shots.hpp"
#include "strategy/shot_at_hole.hpp"
#include "yardworth/limits.hpp"

namespace yardworth {

namespace {

Discretisation with_few_states(const Discretisation& search) {
  DiscretisationOptions options = search.options();
  options.ring_yd = options.arc_yd = numerics::habit_edge_grid_yd;
  return search.with(options);
}

GainRequest request_of(const CourseOnTees& course, std::size_t tee) {
  GainRequest request;
  request.tee = tee;
  request.change = Change::of(course.change);
  request.policy = course.policy;
  return request;
}

HoleOutcome outcome_of(HoleGain gain) {
  HoleOutcome outcome;
  outcome.strokes = gain.strokes;
  if (gain.scores_before) outcome.scores_before = std::move(*gain.scores_before);
  if (gain.scores_after) outcome.scores_after = std::move(*gain.scores_after);
  outcome.next_before = std::move(gain.before.next_places);
  outcome.next_after = std::move(gain.after.next_places);
  return outcome;
}

void add(BagPlaces& sum, const BagPlaces& places, double weight) {
  sum.resize(std::max(sum.size(), places.size()), 0.0);
  for (std::size_t i = 0; i < places.size(); ++i) sum[i] += weight * places[i];
}

// The numbers of all parts, from the lowest of them on.
ScoreDistribution mix(const std::vector<WeightedOutcome>& parts, ScoreDistribution HoleOutcome::*which) {
  ScoreDistribution mixed = parts.front().outcome->*which;
  for (const WeightedOutcome& part : parts) mixed.lowest = std::min(mixed.lowest, (part.outcome->*which).lowest);
  mixed.probability.clear();
  for (const WeightedOutcome& part : parts) {
    const ScoreDistribution& scores = part.outcome->*which;
    const auto ahead = static_cast<std::size_t>(scores.lowest - mixed.lowest);
    if (mixed.probability.size() < ahead + scores.probability.size()) {
      mixed.probability.resize(ahead + scores.probability.size(), 0.0);
    }
    for (std::size_t i = 0; i < scores.probability.size(); ++i) {
      mixed.probability[ahead + i] += part.weight * scores.probability[i];
    }
  }
  return mixed;
}

}  // namespace

CourseOnTees::CourseOnTees(const Course& of, std::vector<std::size_t> from, DistanceChange asked, PolicyChoice plan)
    : course(of),
      tees(std::move(from)),
      change(asked),
      policy(plan),
      search(search_grid()),
      few_states(with_few_states(search)) {
  for (const Hole& hole : course.holes) maps.emplace_back(hole, course.firmness);
}

GolferOnTees golfer_on_tees(const Player& player, const Baseline& baseline, const DistanceChange& change) {
  return {player, baseline, golfers_of(player, baseline, Change::of(change)), std::nullopt};
}

void know_finish(GolferOnTees& golfer) { golfer.finish.emplace(golfer.golfers, golfer.baseline); }

bool keeps_carries(const Player& player, const DistanceChange& change) {
  const Player longer = lengthen(player, change.driver_carry_yd, change.irons_carry_yd);
  return std::all_of(longer.clubs.begin(), longer.clubs.end(),
                     [](const Club& club) { return club.carry_yd >= limits::least_carry_yd; });
}

std::vector<HoleFromTee> play_hole(const CourseOnTees& course, const GolferOnTees& golfer, std::size_t hole,
                                   const std::vector<bool>& wanted) {
  std::vector<HoleFromTee> from_tees(course.tees.size());
  KeptShots shots;
  for (std::size_t i = 0; i < course.tees.size(); ++i) {
    if (!wanted[i]) continue;
    const HoleAsked asked{
        course.course.holes[hole], course.maps[hole], course.tees[i], golfer.golfers,
        golfer.baseline,           course.search,     &shots,         golfer.finish ? &*golfer.finish : nullptr};
    HoleGains gains;
    from_tees[i].unfinished = compute_hole_gain(asked, request_of(course, course.tees[i]), gains);
    if (!from_tees[i].unfinished) from_tees[i].outcome = outcome_of(std::move(gains.best ? *gains.best : *gains.habit));
  }
  return from_tees;
}

std::vector<int> habit_tee_shots(const CourseOnTees& course, const GolferOnTees& golfer, std::size_t hole) {
  std::vector<int> shots;
  for (const std::size_t tee : course.tees) {
    const Point from = course.maps[hole].tee(course.course.holes[hole].length_yd[tee]);
    const HoleModel model(course.maps[hole], from, golfer.player, golfer.baseline, course.few_states);
    const bool at_hole = action_to_hole(model, Lie::tee, from).has_value();
    shots.push_back(at_hole ? at_the_hole : habit_action(model, Lie::tee, from).swing);
  }
  return shots;
}

HoleOutcome mix(const std::vector<WeightedOutcome>& parts) {
  HoleOutcome mixed;
  for (const auto& [outcome, weight] : parts) {
    mixed.strokes.add(outcome->strokes, weight);
    add(mixed.next_before, outcome->next_before, weight);
    add(mixed.next_after, outcome->next_after, weight);
  }
  mixed.scores_before = mix(parts, &HoleOutcome::scores_before);
  mixed.scores_after = mix(parts, &HoleOutcome::scores_after);
  return mixed;
}

}  // namespace yardworth
