#include "gain/better_policy.hpp"

#include <limits>
#include <optional>
#include <utility>

#include "core/numerics.hpp"
#include "strategy/state_values.hpp"

namespace yardworth {

namespace {

// A policy taken from one grid to another may leave some place of that only for itself: it is then no better than any.
std::optional<PolicyEvaluation> evaluate_if_finished(const HoleModel& model, const ActionOf& near,
                                                     const LookAhead& look_ahead, const PolicyEvaluation& row_source) {
  ReusedRows rows(model, {model, row_source});
  try {
    return evaluate_from_tee(model, [&](StateId state, int stride) {
      std::optional<Action> ahead;
      if (state != model.tee_state()) ahead = look_ahead.action(model.lie_of(state), model.place_of(state));
      const Action action = ahead ? *ahead : near(state);
      return std::pair{action, rows.row(state, action, stride)};
    });
  } catch (const CannotFinish&) {
    return std::nullopt;
  }
}

// The start and nothing else: what was looked for says nothing of any state.
FoundPolicy start_alone(const HoleModel& search, PolicyStart start) {
  FoundPolicy policy;
  policy.kept.resize(static_cast<std::size_t>(search.state_count()));
  policy.searched.exact.policy = policy.kept;
  policy.searched.exact.value.assign(policy.kept.size(), std::numeric_limits<double>::quiet_NaN());
  policy.searched.exact.at_tee = start.held_out.at_tee;
  policy.searched.value = filled_values(search, policy.searched.exact.value);
  policy.held_out = std::move(start.held_out);
  return policy;
}

FoundPolicy search_from(const HoleModel& search, const HoleModel& held_out_model, PolicyStart& start,
                        const PolicyIterationOptions& options) {
  PolicyEvaluation warm_start = evaluate_policy(search, start.on_search);
  FoundPolicy policy;
  policy.searched = find_best_policy(search, start.on_search, warm_start, options);
  const Policy& found = policy.searched.exact.policy;
  const ActionOf play = [&](StateId state) {
    const Lie lie = held_out_model.lie_of(state);
    const Point place = held_out_model.place_of(state);
    const auto near = static_cast<std::size_t>(search.nearest_state(lie, place));
    const bool left_alone = found[near].swing < 0 || found[near] == warm_start.policy[near];
    if (!left_alone) return action_between(search, found, policy.searched.shots, lie, place);
    const Action& started_with = start.held_out.policy[static_cast<std::size_t>(state)];
    return started_with.swing >= 0 ? started_with : start.on_held_out(state);
  };
  const auto look_ahead = std::make_shared<const LookAhead>(search, found, policy.searched.value);
  std::optional<PolicyEvaluation> held_out = evaluate_if_finished(held_out_model, play, *look_ahead, start.held_out);
  if (held_out && held_out->at_tee < start.held_out.at_tee - numerics::worth_other_shots) {
    policy.held_out = std::move(*held_out);
    policy.look_ahead = look_ahead;
    policy.kept = found;
  } else {
    policy.held_out = std::move(start.held_out);
    policy.kept = std::move(warm_start.policy);
  }
  return policy;
}

}  // namespace

FoundPolicy better_policy(const HoleModel& search, const HoleModel& held_out_model, PolicyStart start,
                          const PolicyIterationOptions& options) {
  try {
    return search_from(search, held_out_model, start, options);
  } catch (const CannotFinish& error) {
    if (!start.enough) throw SearchCannotFinish(error.what());
    return start_alone(search, std::move(start));
  }
}

}  // namespace yardworth
