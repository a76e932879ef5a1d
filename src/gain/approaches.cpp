#include "gain/approaches.hpp"

#include <algorithm>
#include <array>
#include <span>
#include <vector>

#include "core/numerics.hpp"
#include "gain/bag_places.hpp"
#include "strategy/expected_visits.hpp"
#include "strategy/shot_at_hole.hpp"

namespace yardworth {

namespace {

constexpr int no_approach = -1;

// Follows balls to their approach, and counts its club.
class Approaches {
 public:
  Approaches(const PlayedHole& played, StrikeOutcomes& outcomes)
      : played_(played),
        model_(played.model),
        order_(played.player),
        planned_(played.planned),
        outcomes_(outcomes),
        by_place_(order_.none()),
        clubs_left_(static_cast<std::size_t>(model_.state_count())) {
    for (const Lie lie : all_lies) {
      for (const Swing& swing : model_.swings(lie)) {
        furthest(lie) = std::max(furthest(lie), swing.total_yd(roll_on_green(model_)));
      }
    }
  }

  std::map<std::string, double> clubs() {
    play_strokes(model_, {numerics::approach_visits_left, numerics::most_strokes_followed},
                 [&](StateId state, double visits_here, Visits& next) {
                   if (has_action(planned_, state)) play_on(state, visits_here, next);
                 });
    std::map<std::string, double> clubs;
    for (std::size_t place = 0; place < by_place_.size(); ++place) {
      if (by_place_[place] > 0.0) clubs[order_.name_of(place)] = by_place_[place];
    }
    return clubs;
  }

 private:
  void play_on(StateId state, double visits_here, Visits& next) {
    const Lie lie = model_.lie_of(state);
    const auto index = static_cast<std::size_t>(state);
    if (lie != Lie::tee) {
      const int club = club_of_approach(lie, model_.place_of(state), planned_.policy[index]);
      if (club != no_approach) return count(club, visits_here);
    }
    if (visits_here < numerics::approach_visits) return pass_on(*planned_.rows[index], state, visits_here, next);
    if (lie == Lie::tee) return play_tee_shot(state, visits_here, next);
    const std::span<const StrikeOutcome> outcomes = outcomes_.of(state);
    std::vector<int>& clubs = clubs_left_[index];
    for (std::size_t i = clubs.size(); i < outcomes.size(); ++i) clubs.push_back(club_left(outcomes[i]));
    for (std::size_t i = 0; i < outcomes.size(); ++i) {
      const double visits = visits_here * outcomes[i].weight;
      if (clubs[i] == no_approach) pass_on(outcomes[i].continuation, state, visits, next);
      if (clubs[i] != no_approach) count(clubs[i], visits);
    }
  }

  void play_tee_shot(StateId tee, double visits_here, Visits& next) {
    for (const TeeShotNode& node : played_.tee_nodes) {
      const double visits = visits_here * node.weight;
      if (!node.rest.replay && order_.is_club(node.next_place)) {
        by_place_[node.next_place] += visits;
      } else {
        pass_on(model_.continuation(node.rest), tee, visits, next);
      }
    }
  }

  // From where no swing comes to the green nobody has to be asked what is played.
  int club_left(const StrikeOutcome& outcome) {
    const Rest& rest = outcome.rest;
    if (outcome.continuation.kind != Continuation::Kind::between_states) return no_approach;
    constexpr double least_share = 1.0 - numerics::nearly_at_hole - numerics::rounding_share;
    if (furthest(rest.lie) < least_share * distance_yd(rest.at, model_.pin())) return no_approach;
    return club_of_approach(rest.lie, rest.at, played_.from(rest.lie, rest.at));
  }

  double& furthest(Lie lie) { return furthest_yd_[static_cast<std::size_t>(lie)]; }

  int club_of_approach(Lie lie, Point from, const Action& action) const {
    if (!is_played_at_green(model_, lie, from, action)) return no_approach;
    return static_cast<int>(model_.swings(lie)[static_cast<std::size_t>(action.swing)].club);
  }

  void count(int club, double visits) { by_place_[order_.place_of(static_cast<std::size_t>(club))] += visits; }

  const PlayedHole& played_;
  const HoleModel& model_;
  BagOrder order_;
  const PolicyEvaluation& planned_;
  StrikeOutcomes& outcomes_;
  std::array<double, all_lies.size()> furthest_yd_{};  // that a swing of a lie goes towards the hole
  BagPlaces by_place_;                                 // balls whose approach is played with the club of a place
  // By state and outcome: the approach that it leaves. Told once, since balls come to a state stroke after stroke.
  std::vector<std::vector<int>> clubs_left_;
};

}  // namespace

std::map<std::string, double> approach_clubs(const PlayedHole& played, StrikeOutcomes& outcomes) {
  return Approaches(played, outcomes).clubs();
}

}  // namespace yardworth
