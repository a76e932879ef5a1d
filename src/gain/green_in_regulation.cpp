#include "gain/green_in_regulation.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "core/numerics.hpp"
#include "player/lies_in_play.hpp"
#include "strategy/expected_visits.hpp"
#include "strategy/habit.hpp"
#include "strategy/strikes.hpp"

namespace yardworth {

namespace {

// The probability that the golfer's own stroke at the hole from inside the short game finds the green, by lie and
// distance, struck from before the green.
class GreenFromShortGame {
 public:
  GreenFromShortGame(const HoleModel& model, std::vector<GreenChance>& known) {
    for (const Lie lie : lies_in_play) {
      for (std::size_t i = 1; i < knots; ++i)
        found(lie)[i] = chance(model, lie, static_cast<double>(i) * step_yd, known);
      // Beside the hole itself nothing is left to miss.
      found(lie)[0] = 1.0;
    }
  }

  double operator()(Lie lie, double distance_yd) const {
    const double at = distance_yd / step_yd;
    const auto below = std::min(static_cast<std::size_t>(at), knots - 2);
    const auto& column = found_[static_cast<std::size_t>(lie)];
    return std::lerp(column[below], column[below + 1], at - static_cast<double>(below));
  }

 private:
  static constexpr double step_yd = numerics::green_step_yd;
  static constexpr auto knots = static_cast<std::size_t>(short_game_radius_yd / step_yd) + 1;
  static_assert(step_yd * (knots - 1) == short_game_radius_yd);

  std::array<double, knots>& found(Lie lie) { return found_[static_cast<std::size_t>(lie)]; }

  static double chance(const HoleModel& model, Lie lie, double distance_yd, std::vector<GreenChance>& known) {
    const LineOfPlay& line = model.map().line();
    const Point from = model.pin() + (-distance_yd) * along_heading(line.heading_at(line.length_yd()));
    const Action action = habit_action(model, lie, from);
    const Swing swing = model.swing_of(lie, action);
    // Struck as it is meant: a mean direction is one of full strikes.
    const double heading = HoleModel::heading_of(swing, action);
    const auto same = std::find_if(known.begin(), known.end(), [&](const GreenChance& chance) {
      return chance.lie == lie && chance.distance_yd == distance_yd && chance.swing == swing &&
             chance.heading_rad == heading;
    });
    if (same != known.end()) return same->found;
    double found = 0.0;
    for_each_strike_from(model, from, swing, strata_of(model, 0, swing), heading, 0,
                         [&](const Rest& rest, double weight) {
                           if (rest.lie == Lie::green && rest.penalty_strokes == 0) found += weight;
                         });
    known.push_back({lie, distance_yd, swing, heading, found});
    return found;
  }

  std::array<std::array<double, knots>, all_lies.size()> found_{};
};

// Expected visits by state and strokes taken so far, followed until the ball is on the green or out of strokes.
class Regulation {
 public:
  Regulation(const HoleModel& model, const PolicyEvaluation& planned, int par, StrikeOutcomes& outcomes,
             std::vector<GreenChance>& known)
      : model_(model), planned_(planned), outcomes_(outcomes), near_(model, known), last_(par - 2) {
    visits_.push_back(one_on_tee(model));
    for (int taken = 1; taken < last_; ++taken) visits_.push_back(no_visits(model));
  }

  double green() {
    for (int taken = 0; taken < last_; ++taken) {
      for (StateId state = 0; state < model_.state_count(); ++state) {
        const double visits_here = visits_[static_cast<std::size_t>(taken)][static_cast<std::size_t>(state)];
        if (visits_here >= numerics::described_visits && has_action(planned_, state)) strike(state, taken, visits_here);
      }
    }
    return green_;
  }

 private:
  // Every stroke takes one more, so that a ball never comes back to where it has been with the same strokes taken.
  void strike(StateId state, int taken, double visits_here) {
    for (const StrikeOutcome& outcome : outcomes_.of(state)) {
      const int now = taken + 1 + outcome.rest.penalty_strokes;
      if (now <= last_) count(state, outcome, now, visits_here * outcome.weight);
    }
  }

  void count(StateId state, const StrikeOutcome& outcome, int taken, double visits_here) {
    const auto& [rest, continuation, weight] = outcome;
    if (continuation.kind == Continuation::Kind::holed) {
      const bool on_green = rest.lie == Lie::green;
      if (on_green) green_ += visits_here;
      if (!on_green && taken < last_) green_ += visits_here * near_(rest.lie, distance_yd(rest.at, model_.pin()));
      return;
    }
    if (taken < last_) pass_on(continuation, state, visits_here, visits_[static_cast<std::size_t>(taken)]);
  }

  const HoleModel& model_;
  const PolicyEvaluation& planned_;
  StrikeOutcomes& outcomes_;
  GreenFromShortGame near_;
  int last_;                    // strokes that the green may take
  std::vector<Visits> visits_;  // by strokes taken
  double green_ = 0.0;
};

}  // namespace

double green_in_regulation(const HoleModel& model, const PolicyEvaluation& planned, int par, StrikeOutcomes& outcomes,
                           std::vector<GreenChance>& known) {
  return Regulation(model, planned, par, outcomes, known).green();
}

}  // namespace yardworth
