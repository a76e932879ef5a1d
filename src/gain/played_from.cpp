#include "gain/played_from.hpp"

#include "gain/followed_policy.hpp"
#include "strategy/follow.hpp"

namespace yardworth {

namespace {

ActionFrom found_from(const HoleModel& search, const HoleModel& model, const FoundPolicy& found) {
  return [&search, &model, &found](Lie lie, Point from) {
    const Searched searched{search, found.searched.exact.policy, found.searched.shots};
    const auto ahead = action_ahead(searched, *found.look_ahead, lie, from);
    return ahead ? *ahead : action_near(model, found.held_out.policy, lie, from);
  };
}

// The policy before, followed with the clubs after; where that stays with shots played before, those.
ActionFrom followed_from(const HoleModels& models, const SolvedBest& best) {
  const ActionFrom before = best_before_from(models, best);
  const ActionFrom now = [&models, before](Lie lie, Point from) {
    return follow_action(models.after(), models.before, lie, from, before(lie, from));
  };
  return played_as_followed(models, best.after->held_out.policy,
                            {followed(models.after(), models.before, best.before.held_out.policy), now, before});
}

}  // namespace

ActionFrom best_before_from(const HoleModels& models, const SolvedBest& best) {
  if (best.before.look_ahead) return found_from(models.search_before, models.before, best.before);
  const PolicyEvaluation& habit = best.before.held_out;
  return habit_with_tee_shot(models.before, habit.policy[static_cast<std::size_t>(models.before.tee_state())]);
}

ActionFrom best_after_from(const HoleModels& models, const SolvedBest& best) {
  if (!best.after) return best_before_from(models, best);
  return best.after->look_ahead ? found_from(models.search_after, models.after(), *best.after)
                                : followed_from(models, best);
}

}  // namespace yardworth
