#include "gain/better_policy.hpp"

#include <limits>
#include <optional>
#include <utility>

#include "core/numerics.hpp"
#include "strategy/state_values.hpp"

namespace yardworth {

namespace {

// A policy taken from one grid to another may leave some place of that only for itself: it is then no better than any.
std::optional<PolicyEvaluation> evaluate_if_finished(const HoleModel& model, const ActionOf& play,
                                                     const PolicyEvaluation& row_source) {
  try {
    return evaluate_policy(model, play, {model, row_source});
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

// What a search found, on the held-out grid.
class Found {
 public:
  Found(const HoleModel& search, const HoleModel& held_out, const PolicyStart& start, const Policy& warm_start,
        const BestPolicy& best)
      : search_(search),
        model_(held_out),
        start_(start),
        warm_start_(warm_start),
        searched_{search, best.exact.policy, best.shots} {}

  // Where the search left its start as it was, that.
  Action play(StateId state) const {
    const Lie lie = model_.lie_of(state);
    const Point place = model_.place_of(state);
    const auto near = static_cast<std::size_t>(search_.nearest_state(lie, place));
    const bool left_alone = searched_.policy[near].swing < 0 || searched_.policy[near] == warm_start_[near];
    if (!left_alone) return action_between(searched_, lie, place);
    const Action& started_with = start_.held_out.policy[static_cast<std::size_t>(state)];
    return started_with.swing >= 0 ? started_with : start_.on_held_out(state);
  }

  std::shared_ptr<const LookAhead> look_ahead(const PolicyEvaluation& played) const {
    return std::make_shared<const LookAhead>(searched_, model_, filled_values(model_, played.value),
                                             balls_around({model_, played}, search_.discretisation().options()));
  }

  // The same with another club where looking ahead asks for it.
  Action play(StateId state, const PolicyEvaluation& played, const LookAhead& ahead) const {
    const auto other = action_ahead(searched_, ahead, model_.lie_of(state), model_.place_of(state));
    if (other) return *other;
    const Action& known = played.policy[static_cast<std::size_t>(state)];
    return known.swing >= 0 ? known : play(state);
  }

 private:
  const HoleModel& search_;
  const HoleModel& model_;
  const PolicyStart& start_;
  const Policy& warm_start_;
  const Searched searched_;
};

FoundPolicy search_from(const HoleModel& search, const HoleModel& held_out_model, PolicyStart& start,
                        const PolicyIterationOptions& options) {
  PolicyEvaluation warm_start = evaluate_policy(search, start.on_search);
  FoundPolicy policy;
  policy.searched = find_best_policy(search, start.on_search, warm_start, options);
  const Found found(search, held_out_model, start, warm_start.policy, policy.searched);
  const auto evaluate = [&](const ActionOf& play, const PolicyEvaluation& row_source) {
    return evaluate_if_finished(held_out_model, play, row_source);
  };
  std::optional<PolicyEvaluation> held_out = evaluate([&](StateId state) { return found.play(state); }, start.held_out);
  if (held_out) {
    policy.look_ahead = found.look_ahead(*held_out);
    held_out = evaluate([&](StateId state) { return found.play(state, *held_out, *policy.look_ahead); }, *held_out);
  }
  if (held_out && held_out->at_tee < start.held_out.at_tee - numerics::worth_other_shots) {
    policy.held_out = std::move(*held_out);
    policy.kept = policy.searched.exact.policy;
  } else {
    policy.held_out = std::move(start.held_out);
    policy.look_ahead = nullptr;
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
