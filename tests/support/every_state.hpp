#pragma once

#include <cmath>
#include <vector>

#include "strategy/candidates.hpp"
#include "strategy/strikes.hpp"
#include "support/prepared_hole.hpp"

namespace yardworth::test {

// Every state that some action, at some aim, can lead to from the tee, in the order met; the tee is the first.
inline std::vector<StateId> states_of_all_plans(const HoleModel& model, int aim_reach_sd) {
  std::vector<bool> met(static_cast<std::size_t>(model.state_count()), false);
  std::vector<StateId> states;
  const auto meet = [&](StateId state) {
    if (met[static_cast<std::size_t>(state)]) return;
    met[static_cast<std::size_t>(state)] = true;
    states.push_back(state);
  };
  meet(model.tee_state());
  for (std::size_t i = 0; i < states.size(); ++i) {
    const StateId state = states[i];
    const Lie lie = model.lie_of(state);
    for (const Candidate& candidate : candidates_at(model, lie, model.place_of(state), aim_reach_sd)) {
      const Swing swing = model.swing_of(lie, candidate.action);
      for (const Stratum& stratum : strata_of(model, state, swing)) {
        if (stratum.share <= 0.0) continue;
        const int half = stratum.lattice->half_width();
        strike_nodes(model, model.place_of(state), swing, stratum, candidate.action.reference_heading_rad,
                     candidate.first_aim * stratum.steps_per_aim - half,
                     candidate.last_aim * stratum.steps_per_aim + half, [&](int, const Rest& rest) {
                       const Continuation continuation = model.continuation(rest);
                       if (continuation.kind != Continuation::Kind::between_states) return;
                       const auto weights = continuation.weights();
                       for (std::size_t corner = 0; corner < 4; ++corner) {
                         if (weights[corner] > 0.0) meet(static_cast<StateId>(continuation.state[corner]));
                       }
                     });
      }
    }
  }
  return states;
}

// The habit, evaluated not only where it leads but in all of these states.
inline PolicyEvaluation habit_value_of(const HoleModel& model, const std::vector<StateId>& states) {
  Policy policy(static_cast<std::size_t>(model.state_count()));
  TransitionBuilder builder(model);
  const ActionOf habit = habit_of(model);
  const RowOf row_of = [&](StateId state, double) {
    policy[static_cast<std::size_t>(state)] = habit(state);
    return builder.build(state, policy[static_cast<std::size_t>(state)]);
  };
  PolicyEvaluation value = evaluate_rows(model, row_of, states);
  value.policy = policy;
  return value;
}

// The best policy with nothing left to a guess: a complete search that considers every state of every policy.
inline BestPolicy best_policy_of_all(const HoleModel& model, const std::vector<StateId>& states) {
  return find_best_policy(model, habit_of(model), habit_value_of(model, states), complete_search());
}

// Plain dense value iteration: sweeps over all the states, all candidates and all aims, every shot struck anew, until
// no value moves by more than `accuracy`. Shares with the search nothing but the model.
struct DenseValues {
  std::vector<double> value;
  int sweeps = 0;
};
inline DenseValues iterate_dense(const HoleModel& model, const std::vector<StateId>& states, int aim_reach_sd,
                                 double accuracy) {
  DenseValues dense;
  for (StateId state = 0; state < model.state_count(); ++state) {
    dense.value.push_back(
        model.short_game().strokes(model.lie_of(state), distance_yd(model.place_of(state), model.pin())));
  }
  double moved = accuracy + 1.0;
  while (moved > accuracy) {
    ++dense.sweeps;
    moved = 0.0;
    std::vector<double> next = dense.value;
    for (const StateId state : states) {
      const Lie lie = model.lie_of(state);
      double least = 1e9;
      for (const Candidate& candidate : candidates_at(model, lie, model.place_of(state), aim_reach_sd)) {
        Action action = candidate.action;
        for (action.aim = candidate.first_aim; action.aim <= candidate.last_aim; ++action.aim) {
          double strokes = 1.0;
          double replay = 0.0;
          for_each_strike(model, state, action, 1, [&](const Rest& rest, double weight) {
            const Continuation continuation = model.continuation(rest);
            strokes += weight * continuation.worth(dense.value);
            if (continuation.kind == Continuation::Kind::replay) replay += weight;
          });
          if (replay < 1.0 - 1e-9) least = std::min(least, strokes / (1.0 - replay));
        }
      }
      moved = std::max(moved, std::abs(least - dense.value[static_cast<std::size_t>(state)]));
      next[static_cast<std::size_t>(state)] = least;
    }
    dense.value = std::move(next);
  }
  return dense;
}

}  // namespace yardworth::test
