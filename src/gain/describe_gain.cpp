#include "gain/describe_gain.hpp"

#include "gain/bag_places.hpp"
#include "gain/followed_policy.hpp"
#include "gain/hole_play.hpp"
#include "gain/hole_scores.hpp"
#include "gain/played_from.hpp"
#include "gain/policy_change.hpp"
#include "gain/round_scores.hpp"
#include "gain/tee_shot.hpp"
#include "gain/tee_view.hpp"

namespace yardworth {

namespace {

const Action& tee_shot_of(const HoleModel& model, const PolicyEvaluation& planned) {
  return planned.policy[static_cast<std::size_t>(model.tee_state())];
}

// The tee shots before and after, and what follows them.
void describe_tee_shots(const HoleModels& models, const Action& before, const ActionFrom& next_before,
                        const Action& after, const ActionFrom& next_after, HoleGain& gain) {
  const Golfers& golfers = models.golfers;
  const auto nodes_before = strike_tee_shot(models.before, golfers.before, before, next_before);
  const auto nodes_after = strike_tee_shot(models.after(), golfers.after(), after, next_after);
  gain.before = summarise_tee_shot(models.before, golfers.before, before, nodes_before);
  gain.after = summarise_tee_shot(models.after(), golfers.after(), after, nodes_after);
  gain.next_club_changed = next_club_changed(nodes_before, nodes_after);
  if (gain.par > 3) gain.clubs_shorter = mean_place(gain.after.next_places) - mean_place(gain.before.next_places);
}

// A policy evaluated, and what it plays from any place.
struct Played {
  const PolicyEvaluation& planned;
  ActionFrom from;
};

// How often the hole takes how many strokes before and after.
void describe_scores(const HoleModels& models, const PolicyEvaluation& before, const PolicyEvaluation& after,
                     const FinishesOfChange& finish, HoleGain& gain) {
  gain.scores_before = distribution_of(hole_scores(models.before, before, finish.before));
  gain.scores_after = distribution_of(hole_scores(models.after(), after, finish.after()));
  gain.strokes_variance = gain.scores_before->variance();
}

// How the hole is played before and after.
void describe_plays(const HoleModels& models, const Played& before, const Played& after, HoleGain& gain) {
  const Golfers& golfers = models.golfers;
  const std::vector<HazardView> hazards = hazards_from(models.before.map(), models.before.tee());
  PlayWorkspace workspace;
  gain.play_before =
      describe_play(models.before, golfers.before, before.planned, before.from, gain.par, hazards, workspace);
  gain.play_after =
      describe_play(models.after(), golfers.after(), after.planned, after.from, gain.par, hazards, workspace);
}

void describe_policy(const HoleModels& models, const Played& before, const Played& after,
                     const DescribeOptions& options, HoleGain& gain) {
  if (options.play) describe_plays(models, before, after, gain);
  if (options.finish != nullptr) describe_scores(models, before.planned, after.planned, *options.finish, gain);
  describe_tee_shots(models, tee_shot_of(models.before, before.planned), before.from,
                     tee_shot_of(models.after(), after.planned), after.from, gain);
}

}  // namespace

HoleGain describe_table(const HoleModels& models, const TableAnswer& answer, const HoleGain& about) {
  HoleGain gain = about;
  gain.strokes = answer.strokes;
  describe_tee_shots(models, answer.tee_shot_before, habit_with_tee_shot(models.before, answer.tee_shot_before),
                     answer.tee_shot_after, habit_with_tee_shot(models.after(), answer.tee_shot_after), gain);
  return gain;
}

HoleGain describe_habit(const HoleModels& models, const SolvedHabit& habit, const HoleGain& about,
                        const DescribeOptions& options) {
  HoleGain gain = about;
  gain.strokes = habit.strokes;
  const Action& tee_shot = tee_shot_of(models.before, habit.before);
  describe_policy(models, {habit.before, habit_with_tee_shot(models.before, tee_shot)},
                  {habit.after, habit_as_followed(models, habit.after.policy)}, options, gain);
  return gain;
}

HoleGain describe_best(const HoleModels& models, const SolvedBest& best, const HoleGain& about,
                       const DescribeOptions& options) {
  HoleGain gain = about;
  gain.strokes = best.strokes;
  const Golfers& golfers = models.golfers;
  const PolicyEvaluation& before = best.before.held_out;
  const PolicyEvaluation& after = best.planned_after().held_out;
  describe_policy(models, {before, best_before_from(models, best)}, {after, best_after_from(models, best)}, options,
                  gain);
  gain.policy_change = explain_policy_change({models.before, golfers.before, tee_shot_of(models.before, before)},
                                             {models.after(), golfers.after(), best.kept_tee_shot},
                                             {models.after(), golfers.after(), tee_shot_of(models.after(), after)});
  return gain;
}

}  // namespace yardworth
