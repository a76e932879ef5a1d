#include "gain/solve_hole.hpp"

#include <algorithm>
#include <utility>

#include "gain/followed_policy.hpp"
#include "strategy/follow.hpp"
#include "strategy/habit.hpp"
#include "strategy/most_strokes.hpp"

namespace yardworth {

namespace {

void require_all_finished(const HoleModels& models, const StepValues& strokes) {
  require_finished(models.before, strokes.before);
  for (const StepValue& value : strokes.steps) require_finished(models.before, value.strokes);
  require_finished(models.before, strokes.replanned);
}

// The policy before as it is followed, or with every shot as it was where that does better: who planned with shorter
// clubs can still play them all.
PolicyEvaluation followed_or_as_before(const HoleModels& models, const PolicyEvaluation& before, const ActionOf& follow,
                                       PolicyEvaluation kept) {
  if (kept.at_tee <= before.at_tee) return kept;
  const ActionOf as_before = [&](StateId state) {
    const Action& action = before.policy[static_cast<std::size_t>(state)];
    if (action.swing < 0) return follow(state);
    return same_shot(models.after(), models.before, models.after().lie_of(state), action).value_or(follow(state));
  };
  PolicyEvaluation stays = evaluate_policy(models.after(), as_before, {models.after(), kept});
  if (stays.at_tee < kept.at_tee) return stays;
  return kept;
}

// The best policy after the change, from the policy before.
FoundPolicy policy_after(const HoleModels& models, const FoundPolicy& before, PolicyEvaluation kept,
                         const PolicyIterationOptions& options) {
  const ActionOf follow = followed(models.after(), models.before, before.held_out.policy);
  PolicyEvaluation start = followed_or_as_before(models, before.held_out, follow, std::move(kept));
  return better_policy(models.search_after, models.after(),
                       {followed(models.search_after, models.search_before, before.kept), follow, std::move(start),
                        models.start_is_enough},
                       options);
}

}  // namespace

SolvedHabit follow_habit(const HoleModels& models, PolicyEvaluation habit) {
  const HoleModel& before = models.before;
  const Action& tee_shot = habit.policy[static_cast<std::size_t>(before.tee_state())];
  const auto follow = [&](const HoleModel& model) -> ActionOf {
    const Action kept = follow_action(model, before, Lie::tee, before.tee(), tee_shot);
    return [&model, play = habit_with_tee_shot(model, kept)](StateId state) {
      return play(model.lie_of(state), model.place_of(state));
    };
  };
  FollowedPolicy followed = follow_policy(models, habit, follow);
  const double after = followed.after.at_tee;
  StepValues strokes{habit.at_tee, std::move(followed.steps), after};
  return {std::move(habit), std::move(followed.after), std::move(strokes)};
}

// One verdict on the hole for all that begin from it.
PolicyEvaluation habit_before(const HoleModels& models) {
  try {
    PolicyEvaluation habit = evaluate_policy(models.before, habit_of(models.before));
    require_finished(models.before, habit.at_tee);
    return habit;
  } catch (const CannotFinish& error) {
    throw HabitCannotFinish(error.what());
  }
}

FoundPolicy policy_before(const HoleModels& models, PolicyEvaluation habit, const PolicyIterationOptions& options) {
  return better_policy(
      models.search_before, models.before,
      {habit_of(models.search_before), habit_of(models.before), std::move(habit), models.start_is_enough}, options);
}

SolvedBest follow_best(const HoleModels& models, FoundPolicy found, const PolicyEvaluation* habit_after,
                       const PolicyIterationOptions& options) {
  const Golfers& golfers = models.golfers;
  SolvedBest best;
  best.before = std::move(found);
  const PolicyEvaluation& before = best.before.held_out;
  const auto follow = [&](const HoleModel& model) { return followed(model, models.before, before.policy); };
  // With more than the driver changed hardly a swing is that of before, but many are those of the habit.
  const bool driver_alone = golfers.steps.size() == 1 && golfers.steps.front().step == ChangeStep::driver_carry;
  FollowedPolicy kept = follow_policy(models, before, follow, driver_alone ? nullptr : habit_after);
  const double after = kept.after.at_tee;
  best.strokes = {before.at_tee, std::move(kept.steps), after};
  best.kept_tee_shot = kept.after.policy[static_cast<std::size_t>(models.after().tee_state())];
  if (golfers.steps.empty()) return best;
  best.after = policy_after(models, best.before, std::move(kept.after), options);
  best.strokes.replanned = std::min(after, best.after->held_out.at_tee);
  return best;
}

SolvedHole solve_hole(const HoleModels& models, const SolveOptions& options) {
  SolvedHole solved;
  PolicyEvaluation habit = habit_before(models);
  if (!options.habit) {
    if (options.best)
      solved.best =
          follow_best(models, policy_before(models, std::move(habit), options.search), nullptr, options.search);
  } else if (options.best) {
    solved.habit = follow_habit(models, habit);
    solved.best = follow_best(models, policy_before(models, std::move(habit), options.search), &solved.habit->after,
                              options.search);
  } else {
    solved.habit = follow_habit(models, std::move(habit));
  }
  if (solved.habit) require_all_finished(models, solved.habit->strokes);
  if (solved.best) require_all_finished(models, solved.best->strokes);
  return solved;
}

}  // namespace yardworth
