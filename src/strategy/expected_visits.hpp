#pragma once

#include <functional>
#include <utility>
#include <vector>

#include "core/numerics.hpp"
#include "strategy/transition.hpp"

namespace yardworth {

// Expected visits by state: how many balls are struck from it, of one that begins on the tee, replays included. With
// the transition matrix P of a policy, (I - P^T) visits = one on the tee.
using Visits = std::vector<double>;

inline Visits no_visits(const HoleModel& model) { return Visits(static_cast<std::size_t>(model.state_count()), 0.0); }

inline Visits one_on_tee(const HoleModel& model) {
  Visits visits = no_visits(model);
  visits[static_cast<std::size_t>(model.tee_state())] = 1.0;
  return visits;
}

// One stroke: adds where the visits of a state go under its row; those replayed stay. What holes out goes nowhere.
inline void pass_on(const Transition& row, StateId from, double visits, Visits& to) {
  to[static_cast<std::size_t>(from)] += visits * row.replay;
  for (const auto& [state, share] : row.to()) to[static_cast<std::size_t>(state)] += visits * share;
}

// The same by one outcome of the stroke.
inline void pass_on(const Continuation& continuation, StateId from, double visits, Visits& to) {
  if (continuation.kind == Continuation::Kind::replay) to[static_cast<std::size_t>(from)] += visits;
  if (continuation.kind != Continuation::Kind::between_states) return;
  const std::array<double, 4> shares = continuation.weights();
  for (std::size_t i = 0; i < 4; ++i) to[continuation.state[i]] += visits * shares[i];
}

// A walk over the states, furthest first, comes to each once and then passes on all that has come to it so far: exact
// but for balls that go backwards, whose visits come too late to be passed on. Replays are played at once, or left out,
// so that each ball counts once; or they are, and so are the balls that come back to the state itself, which are else
// lost. add(state, more) takes up what comes to a state.
enum class Replays { played, left_out, played_with_returns };
template <class Add>
void pass_on_walking(const Transition& row, StateId from, double visits, Replays replays, Add add) {
  const bool returns = replays == Replays::played_with_returns;
  double leaving = replays == Replays::left_out ? 1.0 : 1.0 - row.replay;
  if (returns) {
    for (const auto& [state, share] : row.to()) leaving -= state == from ? share : 0.0;
    if (leaving < numerics::never_leaves) return;
  }
  const double leave = visits / leaving;
  for (const auto& [state, share] : row.to()) {
    if (!(returns && state == from)) add(state, leave * share);
  }
}

// When balls are no longer followed: once fewer than least_left are in play, or after most_strokes.
struct FollowedUntil {
  double least_left = numerics::visits_left;
  int most_strokes = numerics::most_strokes_followed;
};

// Plays one ball from the tee, stroke by stroke: play(state, visits, next) for every state that it may lie on, with the
// probability that it does, and adds to `next` where it may lie after the stroke.
template <class Play>
void play_strokes(const HoleModel& model, const FollowedUntil& until, Play play) {
  Visits next = one_on_tee(model);
  std::vector<std::pair<StateId, double>> here;
  for (int stroke = 0; stroke < until.most_strokes; ++stroke) {
    here.clear();
    double in_play = 0.0;
    for (StateId state = 0; state < model.state_count(); ++state) {
      double& visits = next[static_cast<std::size_t>(state)];
      if (visits == 0.0) continue;
      in_play += visits;
      here.emplace_back(state, std::exchange(visits, 0.0));
    }
    if (in_play <= until.least_left) break;
    for (const auto& [state, visits] : here) play(state, visits, next);
  }
}

// The expected visits of every state, given the row of every state that is visited.
using RowAt = std::function<const Transition&(StateId)>;
Visits expected_visits(const HoleModel& model, const RowAt& row_at, const FollowedUntil& until = {});

// The same with the rows by state, as a policy was evaluated with (PolicyEvaluation::rows).
Visits expected_visits(const HoleModel& model, const std::vector<Row>& rows, const FollowedUntil& until = {});

}  // namespace yardworth
