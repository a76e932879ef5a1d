#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <limits>
#include <utility>
#include <vector>

#include "strategy/candidates.hpp"
#include "strategy/strikes.hpp"
#include "support/prepared_hole.hpp"

namespace yardworth::bench {

// What the search is measured against: the hole as a decision process written down in full, every state that can be
// come to with every action, as a general solver takes it, and solved by value iteration. Every shot is struck once,
// for all aims that share it, and kept. It has what makes such solvers fast (M. L. Puterman, Markov Decision Processes,
// Wiley, 1994, ch. 6.3 and 6.7): Gauss-Seidel sweeps with the states nearest the hole first, the short game's strokes
// to begin with, and an action is weighed again only once values have changed so much that it may be the best.
class StoredProcess {
 public:
  StoredProcess(const HoleModel& model, int aim_reach_sd) : model_(model), index_(states_of(model), unmet) {
    meet(model.tee_state());
    weight_.assign(states_of(model), 0.0);
    for (std::size_t i = 0; i < state_.size(); ++i) add_actions(state_[i], aim_reach_sd);
    first_action_.push_back(cost_.size());
  }

  std::size_t states() const { return state_.size(); }
  std::size_t actions() const { return cost_.size(); }
  std::size_t transitions() const { return to_.size(); }
  double megabytes() const {
    const std::size_t bytes = to_.size() * (sizeof(to_[0]) + sizeof(share_[0])) +
                              cost_.size() * (sizeof(cost_[0]) + sizeof(first_[0]) + sizeof(double));
    return static_cast<double>(bytes) / 1e6;
  }

  struct Solution {
    double at_tee = 0.0;
    int sweeps = 0;
    std::size_t weighed = 0;  // actions, over all sweeps
  };
  // Until no value moves by more than accuracy in a sweep.
  Solution solve(double accuracy) const;

 private:
  static constexpr std::uint32_t unmet = std::numeric_limits<std::uint32_t>::max();
  static std::size_t states_of(const HoleModel& model) { return static_cast<std::size_t>(model.state_count()); }

  std::uint32_t meet(StateId state) {
    std::uint32_t& index = index_[static_cast<std::size_t>(state)];
    if (index == unmet) {
      index = static_cast<std::uint32_t>(state_.size());
      state_.push_back(state);
    }
    return index;
  }

  void add_actions(StateId state, int aim_reach_sd) {
    first_action_.push_back(cost_.size());
    const Lie lie = model_.lie_of(state);
    for (const Candidate& candidate : candidates_at(model_, lie, model_.place_of(state), aim_reach_sd)) {
      const Swing swing = model_.swing_of(lie, candidate.action);
      const std::array<Stratum, 2> strata = strata_of(model_, state, swing);
      strike(state, candidate, swing, strata);
      for (int aim = candidate.first_aim; aim <= candidate.last_aim; ++aim) add_row(aim - candidate.first_aim, strata);
    }
  }

  // Every strike that one of the candidate's aims needs, once.
  void strike(StateId state, const Candidate& candidate, const Swing& swing, const std::array<Stratum, 2>& strata) {
    for (std::size_t kind = 0; kind < strata.size(); ++kind) {
      const Stratum& stratum = strata[kind];
      struck_[kind].clear();
      if (stratum.share <= 0.0) continue;
      const int half = stratum.lattice->half_width();
      strike_nodes(model_, model_.place_of(state), swing, stratum, candidate.action.reference_heading_rad,
                   candidate.first_aim * stratum.steps_per_aim - half,
                   candidate.last_aim * stratum.steps_per_aim + half,
                   [&](int, const Rest& rest) { struck_[kind].push_back(model_.continuation(rest)); });
    }
  }

  void add_row(int aims_from_first, const std::array<Stratum, 2>& strata) {
    double cost = 1.0;
    double replay = 0.0;
    for (std::size_t kind = 0; kind < strata.size(); ++kind) {
      if (struck_[kind].empty()) continue;
      const Continuation* outcome =
          &struck_[kind][static_cast<std::size_t>(aims_from_first * strata[kind].steps_per_aim)];
      for (const double weight : strata[kind].weights())
        add_outcome(*outcome++, strata[kind].share * weight, cost, replay);
    }
    if (replay < 1.0 - 1e-9) {
      keep_row(cost, 1.0 / (1.0 - replay));
    } else {
      for (const std::uint32_t state : touched_) weight_[state] = 0.0;
    }
    touched_.clear();
  }

  void add_outcome(const Continuation& outcome, double weight, double& cost, double& replay) {
    cost += weight * outcome.cost;
    if (outcome.kind == Continuation::Kind::replay) replay += weight;
    if (outcome.kind != Continuation::Kind::between_states) return;
    const std::array<double, 4> shares = outcome.weights();
    for (std::size_t corner = 0; corner < 4; ++corner) {
      if (shares[corner] <= 0.0) continue;
      const std::uint32_t to = meet(static_cast<StateId>(outcome.state[corner]));
      if (weight_[to] == 0.0) touched_.push_back(to);
      weight_[to] += weight * shares[corner];
    }
  }

  // With the same shot again after a replay already summed up.
  void keep_row(double cost, double plays) {
    cost_.push_back(cost * plays);
    first_.push_back(to_.size());
    for (const std::uint32_t state : touched_) {
      to_.push_back(state);
      share_.push_back(static_cast<float>(weight_[state] * plays));
      weight_[state] = 0.0;
    }
  }

  double worth(std::size_t action, const std::vector<double>& value) const {
    const std::size_t end = action + 1 < first_.size() ? first_[action + 1] : to_.size();
    double sum = cost_[action];
    for (std::size_t i = first_[action]; i < end; ++i) sum += static_cast<double>(share_[i]) * value[to_[i]];
    return sum;
  }

  std::vector<double> short_game_values() const {
    std::vector<double> value;
    for (const StateId state : state_) {
      const double left = distance_yd(model_.place_of(state), model_.pin());
      value.push_back(model_.short_game().strokes(model_.lie_of(state), left));
    }
    return value;
  }

  std::vector<std::size_t> nearest_first() const {
    std::vector<std::size_t> order(state_.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    const auto left = [this](std::size_t i) { return distance_yd(model_.place_of(state_[i]), model_.pin()); };
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return left(a) < left(b); });
    return order;
  }

  const HoleModel& model_;
  std::vector<std::uint32_t> index_;  // of a state in state_, or unmet
  std::vector<StateId> state_;        // in the order met
  std::vector<std::size_t> first_action_;
  std::vector<double> cost_;        // by action
  std::vector<std::size_t> first_;  // by action: of its transitions
  std::vector<std::uint32_t> to_;
  std::vector<float> share_;

  std::array<std::vector<Continuation>, 2> struck_;
  std::vector<double> weight_;  // of one row, by index
  std::vector<std::uint32_t> touched_;
};

inline StoredProcess::Solution StoredProcess::solve(double accuracy) const {
  Solution solution;
  std::vector<double> value = short_game_values();
  const std::vector<std::size_t> order = nearest_first();
  // An action that is behind the best of its state is not the best before values have changed by half as much, summed
  // over sweeps: no worth changes by more than the values it comes from.
  std::vector<double> behind_until(actions(), -1.0);
  std::vector<std::pair<std::size_t, double>> weighed;
  double changed = 0.0;
  for (double moved = accuracy + 1.0; moved > accuracy; ++solution.sweeps) {
    moved = 0.0;
    for (const std::size_t state : order) {
      weighed.clear();
      double least = std::numeric_limits<double>::infinity();
      for (std::size_t action = first_action_[state]; action < first_action_[state + 1]; ++action) {
        if (behind_until[action] > changed + moved) continue;
        weighed.emplace_back(action, worth(action, value));
        least = std::min(least, weighed.back().second);
      }
      for (const auto& [action, strokes] : weighed) behind_until[action] = changed + (strokes - least) / 2.0;
      solution.weighed += weighed.size();
      moved = std::max(moved, std::abs(least - value[state]));
      value[state] = least;
    }
    changed += moved;
  }
  solution.at_tee = value[0];
  return solution;
}

}  // namespace yardworth::bench
