#include "gain/followed_policy.hpp"

#include <memory>

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
  FollowedPolicy policy;
  policy.after = before;
  const HoleModel* earlier = &models.before;
  for (std::size_t i = 0; i < models.steps.size(); ++i) {
    const HoleModel& model = models.steps[i];
    const bool is_last = i + 1 == models.steps.size();
    const EvaluatedPolicy was{*earlier, policy.after};
    policy.after = evaluate_followed(model, follow(model), was,
                                     is_last && row_source != nullptr ? EvaluatedPolicy{model, *row_source} : was);
    policy.steps.push_back({models.golfers.steps[i].step, policy.after.at_tee});
    earlier = &model;
  }
  return policy;
}

ActionFrom habit_with_tee_shot(const HoleModel& model, const Action& tee_shot) {
  return
      [&model, tee_shot](Lie lie, Point from) { return lie == Lie::tee ? tee_shot : habit_action(model, lie, from); };
}

ActionFrom played_as_followed(const HoleModels& models, const Policy& policy, const Followed& follow) {
  // Whether a state plays what it follows, asked once of each: a thousand places may be nearest to one.
  enum class Plays : char { unasked, followed, kept };
  const auto known = std::make_shared<std::vector<Plays>>(policy.size(), Plays::unasked);
  return [&models, &policy, follow, known](Lie lie, Point from) {
    const HoleModel& model = models.after();
    if (lie == Lie::tee) return policy[static_cast<std::size_t>(model.tee_state())];
    const StateId near = model.nearest_state(lie, from);
    const Action& planned = policy[static_cast<std::size_t>(near)];
    if (planned.swing < 0) return follow.now(lie, from);
    Plays& plays = (*known)[static_cast<std::size_t>(near)];
    if (plays == Plays::unasked) plays = planned == follow.at(near) ? Plays::followed : Plays::kept;
    if (plays == Plays::followed) return follow.now(lie, from);
    const auto stays = same_shot(model, models.before, lie, follow.before(lie, from));
    return stays ? *stays : action_near(model, policy, lie, from);
  };
}

ActionFrom habit_as_followed(const HoleModels& models, const Policy& policy) {
  const auto habit_with = [](const HoleModel& model) {
    return [&model](Lie lie, Point from) { return habit_action(model, lie, from); };
  };
  return played_as_followed(models, policy,
                            {habit_of(models.after()), habit_with(models.after()), habit_with(models.before)});
}

}  // namespace yardworth
