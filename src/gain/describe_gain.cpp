#include "gain/describe_gain.hpp"

#include "gain/bag_places.hpp"
#include "gain/followed_policy.hpp"
#include "gain/hole_play.hpp"
#include "gain/hole_scores.hpp"
#include "gain/played_from.hpp"
#include "gain/played_hole.hpp"
#include "gain/policy_change.hpp"
#include "gain/round_scores.hpp"
#include "gain/tee_view.hpp"

namespace yardworth {

namespace {

// A tee shot, node by node.
struct TeeShot {
  const Action& action;
  const std::vector<TeeShotNode>& nodes;
};

// The tee shots before and after, and what follows them.
void describe_tee_shots(const HoleModels& models, const TeeShot& before, const TeeShot& after, HoleGain& gain) {
  const Golfers& golfers = models.golfers;
  gain.before = summarise_tee_shot(models.before, golfers.before, before.action, before.nodes);
  gain.after = summarise_tee_shot(models.after(), golfers.after(), after.action, after.nodes);
  gain.next_club_changed = next_club_changed(before.nodes, after.nodes);
  if (gain.par > 3) gain.clubs_shorter = mean_place(gain.after.next_places) - mean_place(gain.before.next_places);
}

// How often the hole takes how many strokes before and after.
void describe_scores(const HoleModels& models, const PolicyEvaluation& before, const PolicyEvaluation& after,
                     const FinishesOfChange& finish, HoleGain& gain) {
  gain.scores_before = distribution_of(hole_scores(models.before, before, finish.before));
  gain.scores_after = distribution_of(hole_scores(models.after(), after, finish.after()));
  gain.strokes_variance = gain.scores_before->variance();
}

// How the hole is played before and after.
void describe_plays(const PlayedHole& before, const PlayedHole& after, HoleGain& gain) {
  const std::vector<HazardView> hazards = hazards_from(before.model.map(), before.model.tee());
  PlayWorkspace workspace;
  gain.play_before = describe_play(before, gain.par, hazards, workspace);
  gain.play_after = describe_play(after, gain.par, hazards, workspace);
}

void describe_policy(const HoleModels& models, const PlayedHole& before, const PlayedHole& after,
                     const DescribeOptions& options, HoleGain& gain) {
  if (options.play) describe_plays(before, after, gain);
  if (options.finish != nullptr) describe_scores(models, before.planned, after.planned, *options.finish, gain);
  describe_tee_shots(models, {before.tee_shot(), before.tee_nodes}, {after.tee_shot(), after.tee_nodes}, gain);
}

}  // namespace

HoleGain describe_table(const HoleModels& models, const TableAnswer& answer, const HoleGain& about) {
  HoleGain gain = about;
  gain.strokes = answer.strokes;
  const Golfers& golfers = models.golfers;
  const auto nodes_of = [](const HoleModel& model, const Player& player, const Action& tee_shot) {
    return strike_tee_shot(model, player, tee_shot, habit_with_tee_shot(model, tee_shot));
  };
  describe_tee_shots(models, {answer.tee_shot_before, nodes_of(models.before, golfers.before, answer.tee_shot_before)},
                     {answer.tee_shot_after, nodes_of(models.after(), golfers.after(), answer.tee_shot_after)}, gain);
  return gain;
}

HoleGain describe_habit(const HoleModels& models, const SolvedHabit& habit, const HoleGain& about,
                        const DescribeOptions& options) {
  HoleGain gain = about;
  gain.strokes = habit.strokes;
  const Golfers& golfers = models.golfers;
  const Action& tee_shot = habit.before.policy[static_cast<std::size_t>(models.before.tee_state())];
  describe_policy(
      models, played_hole(models.before, golfers.before, habit.before, habit_with_tee_shot(models.before, tee_shot)),
      played_hole(models.after(), golfers.after(), habit.after, habit_as_followed(models, habit.after.policy)), options,
      gain);
  return gain;
}

HoleGain describe_best(const HoleModels& models, const SolvedBest& best, const HoleGain& about,
                       const DescribeOptions& options) {
  HoleGain gain = about;
  gain.strokes = best.strokes;
  const Golfers& golfers = models.golfers;
  const PlayedHole before =
      played_hole(models.before, golfers.before, best.before.held_out, best_before_from(models, best));
  const PlayedHole after =
      played_hole(models.after(), golfers.after(), best.planned_after().held_out, best_after_from(models, best));
  describe_policy(models, before, after, options, gain);
  gain.policy_change = explain_policy_change({models.before, golfers.before, before.tee_shot(), &before.tee_nodes},
                                             {models.after(), golfers.after(), best.kept_tee_shot},
                                             {models.after(), golfers.after(), after.tee_shot(), &after.tee_nodes});
  return gain;
}

}  // namespace yardworth
