#include "gain/followed_policy.hpp"

#include "strategy/follow.hpp"
#include "strategy/habit.hpp"

namespace yardworth {

ActionOf followed(const HoleModel& model, const HoleModel& planned, const Policy& policy) {
  return [&](StateId state) {
    const Action& action = policy[static_cast<std::size_t>(state)];
    const Lie lie = model.lie_of(state);
    const Point place = model.place_of(state);
    return action.swing >= 0 ? follow_action(model, planned, lie, place, action) : habit_action(model, lie, place);
  };
}

FollowedPolicy follow_policy(const HoleModels& models, const PolicyEvaluation& before, const Following& follow,
                             const PolicyEvaluation* row_source) {
  const Golfers& golfers = models.golfers;
  const EvaluatedPolicy was{models.before, before};
  FollowedPolicy policy;
  policy.driver_longer =
      golfers.no_driver() ? before : evaluate_followed(models.driver_longer, follow(models.driver_longer), was, was);
  const EvaluatedPolicy driver{models.driver_longer, policy.driver_longer};
  policy.all_longer =
      golfers.no_irons()
          ? policy.driver_longer
          : evaluate_followed(models.after, follow(models.after), driver,
                              row_source != nullptr ? EvaluatedPolicy{models.after, *row_source} : driver);
  return policy;
}

ActionFrom habit_with_tee_shot(const HoleModel& model, const Action& tee_shot) {
  return
      [&model, tee_shot](Lie lie, Point from) { return lie == Lie::tee ? tee_shot : habit_action(model, lie, from); };
}

ActionFrom habit_as_followed(const HoleModel& model, const Policy& policy) {
  return [&](Lie lie, Point from) {
    if (lie == Lie::tee) return policy[static_cast<std::size_t>(model.tee_state())];
    const StateId near = model.nearest_state(lie, from);
    const Action& planned = policy[static_cast<std::size_t>(near)];
    const bool stays = planned.swing >= 0 && !(planned == habit_action(model, lie, model.place_of(near)));
    return stays ? action_near(model, policy, lie, from) : habit_action(model, lie, from);
  };
}

}  // namespace yardworth
