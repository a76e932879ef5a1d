#include "gain/approaches.hpp"

#include <array>
#include <cmath>

#include "core/numerics.hpp"
#include "strategy/expected_visits.hpp"
#include "strategy/shot_at_hole.hpp"

namespace yardworth {

namespace {

bool is_played_at_green(const HoleModel& model, Lie lie, Point from, const Action& action) {
  const double left = distance_yd(from, model.pin());
  const double total = model.swing_of(lie, action).total_yd(roll_on_green(model));
  return std::abs(total - left) <= numerics::nearly_at_hole * left;
}

// Follows balls to their approach, and counts its club.
class Approaches {
 public:
  Approaches(const HoleModel& model, const Player& player, const PolicyEvaluation& planned,
             const ActionFrom& action_from, StrikeOutcomes& outcomes)
      : model_(model), player_(player), planned_(planned), action_from_(action_from), outcomes_(outcomes) {}

  std::map<std::string, double> clubs() {
    play_strokes(model_, {numerics::approach_visits_left, numerics::most_strokes_followed},
                 [&](StateId state, double visits_here, Visits& next) {
                   if (has_action(planned_, state)) play_on(state, visits_here, next);
                 });
    return clubs_;
  }

 private:
  void play_on(StateId state, double visits_here, Visits& next) {
    const Lie lie = model_.lie_of(state);
    const Action& action = planned_.policy[static_cast<std::size_t>(state)];
    if (lie != Lie::tee && count_if_approach(lie, model_.place_of(state), action, visits_here)) return;
    if (visits_here < numerics::approach_visits)
      return pass_on(*planned_.rows[static_cast<std::size_t>(state)], state, visits_here, next);
    for (const StrikeOutcome& outcome : outcomes_.of(state)) {
      come_to(state, outcome, visits_here * outcome.weight, next);
    }
  }

  void come_to(StateId state, const StrikeOutcome& outcome, double visits_here, Visits& next) {
    const auto& [rest, continuation, weight] = outcome;
    const bool played_on = continuation.kind == Continuation::Kind::between_states;
    if (played_on && count_if_approach(rest.lie, rest.at, action_from_(rest.lie, rest.at), visits_here)) return;
    pass_on(continuation, state, visits_here, next);
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
  StrikeOutcomes& outcomes_;
  std::map<std::string, double> clubs_;
};

}  // namespace

std::map<std::string, double> approach_clubs(const HoleModel& model, const Player& player,
                                             const PolicyEvaluation& planned, const ActionFrom& action_from,
                                             StrikeOutcomes& outcomes) {
  return Approaches(model, player, planned, action_from, outcomes).clubs();
}

}  // namespace yardworth
