#include "gain/hole_play.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <span>
#include <utility>

#include "gain/policies.hpp"
#include "gain/tee_view.hpp"
#include "strategy/habit.hpp"
#include "strategy/shot_at_hole.hpp"
#include "strategy/state_values.hpp"
#include "strategy/strikes.hpp"

namespace yardworth {

namespace {

// Balls that come to a state less often than this, of one struck from the tee, are left out: a hundred such states
// change no probability by more than a hundredth, most of them by nothing.
constexpr double rare_visits = 1e-4;
constexpr int most_strokes = 200;

double distance_left(const HoleModel& model, Point at) { return distance_yd(at, model.pin()); }

bool has_action(const PolicyEvaluation& planned, StateId state) {
  return planned.policy[static_cast<std::size_t>(state)].swing >= 0;
}

// Balls by state, of one struck from the tee.
using VisitsByState = std::vector<double>;

double sum_of(const VisitsByState& visits_here) {
  double sum = 0.0;
  for (const double ball : visits_here) sum += ball;
  return sum;
}

VisitsByState no_visits(const HoleModel& model) {
  return VisitsByState(static_cast<std::size_t>(model.state_count()), 0.0);
}

// Where the balls of one state go under its row.
void send(const PolicyEvaluation& planned, StateId state, double visits_here, VisitsByState& to) {
  const Transition& row = *planned.rows[static_cast<std::size_t>(state)];
  to[static_cast<std::size_t>(state)] += visits_here * row.replay;
  for (const auto& [other, share] : row.to) to[static_cast<std::size_t>(other)] += visits_here * share;
}

// Where the strikes of a state end under the policy. Struck once, since every question comes to the same states.
struct Outcome {
  Rest rest;
  Continuation continuation;
  double weight = 0.0;
};

class Outcomes {
 public:
  // All are kept in `store`, whose memory serves one hole after the other.
  Outcomes(const HoleModel& model, const PolicyEvaluation& planned, std::vector<Outcome>& store)
      : model_(model), planned_(planned), store_(store), places_(static_cast<std::size_t>(model.state_count())) {
    store_.clear();
  }

  // Valid until the next state is asked for.
  std::span<const Outcome> of(StateId state) {
    auto& [first, count] = places_[static_cast<std::size_t>(state)];
    if (count == 0) {
      first = store_.size();
      const auto index = static_cast<std::size_t>(state);
      for_each_strike(model_, state, planned_.policy[index], planned_.rows[index]->stride,
                      [&](const Rest& rest, double weight) {
                        store_.push_back({rest, model_.continuation(rest), weight});
                      });
      count = store_.size() - first;
    }
    return {store_.data() + first, count};
  }

 private:
  const HoleModel& model_;
  const PolicyEvaluation& planned_;
  std::vector<Outcome>& store_;
  std::vector<std::pair<std::size_t, std::size_t>> places_;  // by state: where in the store, and how many
};

std::vector<Outcome>& store_of_thread() {
  thread_local std::vector<Outcome> store;
  return store;
}

}  // namespace

std::vector<double> expected_visits(const HoleModel& model, const PolicyEvaluation& planned) {
  constexpr double gone = 1e-9;
  VisitsByState visits = no_visits(model);
  VisitsByState here = no_visits(model);
  here[static_cast<std::size_t>(model.tee_state())] = 1.0;
  for (int stroke = 0; stroke < most_strokes && sum_of(here) > gone; ++stroke) {
    VisitsByState next = no_visits(model);
    for (StateId state = 0; state < model.state_count(); ++state) {
      const double visits_here = here[static_cast<std::size_t>(state)];
      if (visits_here <= 0.0) continue;
      visits[static_cast<std::size_t>(state)] += visits_here;
      send(planned, state, visits_here, next);
    }
    here = std::move(next);
  }
  return visits;
}

double two_numbers_variance(double expected) {
  const double share = expected - std::floor(expected);
  return share * (1.0 - share);
}

double short_game_variance(double expected) {
  // Drawn with ShortGame::draw_strokes for the golfers of all rows from every lie: near the medians. At 2 strokes,
  // where putts vary less than chips, between the two; around 3 a little less, since the better golfers vary less.
  struct Knot {
    double expected;
    double variance;
  };
  constexpr Knot knots[] = {{1.0, 0.0},  {1.1, 0.09}, {1.3, 0.22}, {1.6, 0.29},  {1.9, 0.2},  {2.0, 0.13}, {2.2, 0.2},
                            {2.4, 0.28}, {2.7, 0.36}, {3.0, 0.46}, {3.3, 0.575}, {3.6, 0.75}, {4.4, 1.16}};
  std::size_t upper = 1;
  while (upper + 1 < std::size(knots) && expected > knots[upper].expected) ++upper;
  const Knot& a = knots[upper - 1];
  const Knot& b = knots[upper];
  const double share = (std::max(1.0, expected) - a.expected) / (b.expected - a.expected);
  return std::lerp(a.variance, b.variance, share);
}

double strokes_variance(const HoleModel& model, const PolicyEvaluation& planned, VarianceOf short_game_spread) {
  const std::vector<double> value = filled_values(model, planned.value);
  const std::vector<double> visits = expected_visits(model, planned);
  double variance = 0.0;
  for (StateId state = 0; state < model.state_count(); ++state) {
    const auto index = static_cast<std::size_t>(state);
    if (visits[index] < rare_visits || !has_action(planned, state)) continue;
    double mean = 0.0;
    double squares = 0.0;
    double short_game = 0.0;
    // A spread to a hundredth is all that is asked for, and few strikes tell that.
    const int stride = model.fitting_stride(state, largest_lattice_stride);
    for_each_strike(model, state, planned.policy[index], stride, [&](const Rest& rest, double weight) {
      const Continuation continuation = model.continuation(rest);
      double worth = continuation.worth(value);
      if (continuation.kind == Continuation::Kind::replay) worth += value[index];
      if (continuation.kind == Continuation::Kind::holed) {
        short_game += weight * short_game_spread(worth - rest.penalty_strokes);
      }
      mean += weight * worth;
      squares += weight * worth * worth;
    });
    variance += visits[index] * (std::max(0.0, squares - mean * mean) + short_game);
  }
  return variance;
}

namespace {

// The probability that the golfer's own stroke at the hole from inside the short game finds the green, by lie and
// distance, struck from before the green.
class GreenFromShortGame {
 public:
  explicit GreenFromShortGame(const HoleModel& model) {
    for (const Lie lie : {Lie::fairway, Lie::rough, Lie::bunker, Lie::recovery}) {
      for (std::size_t i = 1; i < knots; ++i) found(lie)[i] = chance(model, lie, static_cast<double>(i) * step_yd);
      // Beside the hole itself nothing is left to miss.
      found(lie)[0] = 1.0;
    }
  }

  double operator()(Lie lie, double distance_yd) const {
    const double at = std::min(distance_yd / step_yd, static_cast<double>(knots - 1) - 1e-9);
    const auto below = static_cast<std::size_t>(at);
    const auto& column = found_[static_cast<std::size_t>(lie)];
    return std::lerp(column[below], column[below + 1], at - static_cast<double>(below));
  }

 private:
  static constexpr double step_yd = 5.0;
  static constexpr std::size_t knots = 11;
  static_assert(step_yd * (knots - 1) == short_game_radius_yd);

  std::array<double, knots>& found(Lie lie) { return found_[static_cast<std::size_t>(lie)]; }

  static double chance(const HoleModel& model, Lie lie, double distance_yd) {
    const LineOfPlay& line = model.map().line();
    const Point from = model.pin() + (-distance_yd) * along_heading(line.heading_at(line.length_yd()));
    const Action action = habit_action(model, lie, from);
    const Swing swing = model.swing_of(lie, action);
    double found = 0.0;
    for_each_strike_from(model, from, swing, strata_of(model, 0, swing), HoleModel::heading_of(swing, action), 0,
                         [&](const Rest& rest, double weight) {
                           if (rest.lie == Lie::green && rest.penalty_strokes == 0) found += weight;
                         });
    return found;
  }

  std::array<std::array<double, knots>, all_lies.size()> found_{};
};

// Balls by state and strokes taken so far, followed until they are on the green or out of strokes.
class Regulation {
 public:
  Regulation(const HoleModel& model, const PolicyEvaluation& planned, int par, Outcomes& outcomes)
      : model_(model), planned_(planned), outcomes_(outcomes), near_(model), last_(par - 2) {
    for (int taken = 0; taken < last_; ++taken) balls_.push_back(no_visits(model));
    balls_.front()[static_cast<std::size_t>(model.tee_state())] = 1.0;
  }

  double green() {
    for (int taken = 0; taken < last_; ++taken) {
      for (StateId state = 0; state < model_.state_count(); ++state) {
        const double visits_here = balls_[static_cast<std::size_t>(taken)][static_cast<std::size_t>(state)];
        if (visits_here >= rare_visits && has_action(planned_, state)) strike(state, taken, visits_here);
      }
    }
    return green_;
  }

 private:
  // Every stroke takes one more, so that a ball never comes back to where it has been with the same strokes taken.
  void strike(StateId state, int taken, double visits_here) {
    for (const Outcome& outcome : outcomes_.of(state)) {
      const int now = taken + 1 + outcome.rest.penalty_strokes;
      if (now <= last_) count(state, outcome, now, visits_here * outcome.weight);
    }
  }

  void count(StateId state, const Outcome& outcome, int taken, double visits_here) {
    const auto& [rest, continuation, weight] = outcome;
    if (continuation.kind == Continuation::Kind::holed) {
      const bool on_green = rest.lie == Lie::green;
      if (on_green) green_ += visits_here;
      if (!on_green && taken < last_) green_ += visits_here * near_(rest.lie, distance_left(model_, rest.at));
      return;
    }
    if (taken == last_) return;
    VisitsByState& next = balls_[static_cast<std::size_t>(taken)];
    if (continuation.kind == Continuation::Kind::replay) {
      next[static_cast<std::size_t>(state)] += visits_here;
      return;
    }
    const std::array<double, 4> shares = continuation.weights();
    for (std::size_t i = 0; i < 4; ++i) next[continuation.state[i]] += visits_here * shares[i];
  }

  const HoleModel& model_;
  const PolicyEvaluation& planned_;
  Outcomes& outcomes_;
  GreenFromShortGame near_;
  int last_;  // strokes that the green may take
  std::vector<VisitsByState> balls_;
  double green_ = 0.0;
};

bool is_played_at_green(const HoleModel& model, Lie lie, Point from, const Action& action) {
  const double left = distance_left(model, from);
  const double total = model.swing_of(lie, action).total_yd(roll_factor(Ground::green, model.map().firmness()));
  return std::abs(total - left) <= nearly_at_hole * left;
}

// Follows balls to their approach, and counts its club.
class Approaches {
 public:
  Approaches(const HoleModel& model, const Player& player, const PolicyEvaluation& planned,
             const ActionFrom& action_from, Outcomes& outcomes)
      : model_(model), player_(player), planned_(planned), action_from_(action_from), outcomes_(outcomes) {}

  std::map<std::string, double> clubs() {
    constexpr double gone = 1e-6;
    VisitsByState here = no_visits(model_);
    here[static_cast<std::size_t>(model_.tee_state())] = 1.0;
    for (int stroke = 0; stroke < most_strokes && sum_of(here) > gone; ++stroke) {
      next_ = no_visits(model_);
      for (StateId state = 0; state < model_.state_count(); ++state) {
        const double visits_here = here[static_cast<std::size_t>(state)];
        if (visits_here > 0.0 && has_action(planned_, state)) play_on(state, visits_here);
      }
      here = next_;
    }
    return clubs_;
  }

 private:
  void play_on(StateId state, double visits_here) {
    // Few balls are not worth striking.
    constexpr double few = 1e-3;
    const Lie lie = model_.lie_of(state);
    const Action& action = planned_.policy[static_cast<std::size_t>(state)];
    if (lie != Lie::tee && count_if_approach(lie, model_.place_of(state), action, visits_here)) return;
    if (visits_here < few) return send(planned_, state, visits_here, next_);
    for (const Outcome& outcome : outcomes_.of(state)) come_to(state, outcome, visits_here * outcome.weight);
  }

  void come_to(StateId state, const Outcome& outcome, double visits_here) {
    const auto& [rest, continuation, weight] = outcome;
    if (continuation.kind == Continuation::Kind::replay) next_[static_cast<std::size_t>(state)] += visits_here;
    if (continuation.kind != Continuation::Kind::between_states) return;
    if (count_if_approach(rest.lie, rest.at, action_from_(rest.lie, rest.at), visits_here)) return;
    const std::array<double, 4> shares = continuation.weights();
    for (std::size_t i = 0; i < 4; ++i) next_[continuation.state[i]] += visits_here * shares[i];
  }

  bool count_if_approach(Lie lie, Point from, const Action& action, double visits_here) {
    if (!is_played_at_green(model_, lie, from, action)) return false;
    clubs_[player_.clubs[model_.swings(lie)[static_cast<std::size_t>(action.swing)].club].name] += visits_here;
    return true;
  }

  const HoleModel& model_;
  const Player& player_;
  const PolicyEvaluation& planned_;
  const ActionFrom& action_from_;
  Outcomes& outcomes_;
  VisitsByState next_;
  std::map<std::string, double> clubs_;
};

// How far along the line of play, from the tee, the tee shots finish, with their probabilities. A ball that a penalty
// takes elsewhere counts where it came down.
struct Finished {
  double along_yd = 0.0;
  double weight = 0.0;
};

std::vector<Finished> finishes(const HoleModel& model, const Action& tee_shot) {
  const Swing swing = model.swing_of(Lie::tee, tee_shot);
  const double heading = HoleModel::heading_of(swing, tee_shot);
  const double tee_along = model.map().line().nearest(model.tee()).along_yd;
  std::vector<Finished> all;
  for_each_tee_flight(model, swing, heading, [&](Point direction, double carry, double weight) {
    const Rest rest = come_to_rest(model.map(), model.tee(), direction, carry, carry * swing.roll_share);
    const Point end = rest.penalty_strokes > 0 ? model.tee() + carry * direction : rest.at;
    all.push_back({model.map().line().nearest(end).along_yd - tee_along, weight});
  });
  return all;
}

std::vector<HazardMet> hazards_met(const HoleModel& model, const Action& tee_shot) {
  const std::vector<double> chances = hazard_chances(model, tee_shot);
  const std::vector<Finished> ends = finishes(model, tee_shot);
  std::vector<HazardMet> met;
  for (const HazardView& view : hazards_from(model.map(), model.tee())) {
    HazardMet hazard;
    hazard.hazard = view;
    hazard.found = chances[static_cast<std::size_t>(view.hazard)];
    for (const Finished& end : ends) {
      if (end.along_yd >= view.from_yd) hazard.reached += end.weight;
      if (end.along_yd > view.to_yd) hazard.cleared += end.weight;
    }
    met.push_back(std::move(hazard));
  }
  return met;
}

}  // namespace

HolePlay describe_play(const HoleModel& model, const Player& player, const PolicyEvaluation& planned,
                       const ActionFrom& action_from, int par) {
  HolePlay play;
  Outcomes outcomes(model, planned, store_of_thread());
  play.strokes_variance = strokes_variance(model, planned);
  play.green_in_regulation = Regulation(model, planned, par, outcomes).green();
  if (par > 3) play.approach = Approaches(model, player, planned, action_from, outcomes).clubs();
  play.hazards = hazards_met(model, planned.policy[static_cast<std::size_t>(model.tee_state())]);
  return play;
}

}  // namespace yardworth
