#include "strategy/searched_shots.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <utility>

#include "core/numerics.hpp"
#include "strategy/shot_at_hole.hpp"

namespace yardworth {

namespace {

// A state around a place, and how much of the place is its.
struct SearchedState {
  const std::vector<SearchedShot>& shots;
  const Action& taken;
  double share;
};

// What a club costs at a place between states, and how it is played there.
struct ShotBetween {
  SearchedShot shot;
  double known_share = 0.0;  // of the states at which it ends where it does here
};

std::vector<SearchedState> searched_around(const HoleModel& model, const Policy& policy, const SearchedShots& searched,
                                           Lie lie, Point from) {
  const Continuation here = model.continuation({from, lie});
  const std::array<double, 4> shares = here.weights();
  std::vector<SearchedState> around;
  for (std::size_t i = 0; i < shares.size(); ++i) {
    const std::size_t state = here.state[i];
    if (shares[i] <= numerics::rounding_share || searched[state].empty()) continue;
    around.push_back({searched[state], policy[state], shares[i]});
  }
  return around;
}

// The best shot with the same club, to the hole like it or in full like it where such a one was weighed.
const SearchedShot* same_club(const std::vector<SearchedShot>& shots, const SearchedShot& shot) {
  const SearchedShot* found = nullptr;
  const auto rank = [&](const SearchedShot& other) {
    return std::pair{other.ends_at_hole != shot.ends_at_hole, other.strokes};
  };
  for (const SearchedShot& other : shots) {
    if (other.swing == shot.swing && (found == nullptr || rank(other) < rank(*found))) found = &other;
  }
  return found;
}

// Nothing where the club was not weighed at all states.
std::optional<ShotBetween> between(const std::vector<SearchedState>& around, const SearchedShot& shot) {
  ShotBetween sum{{shot.swing, shot.ends_at_hole, 0.0, 0.0}, 0.0};
  for (const SearchedState& state : around) {
    const SearchedShot* const there = same_club(state.shots, shot);
    if (there == nullptr) return std::nullopt;
    sum.shot.strokes += state.share * there->strokes;
    if (there->ends_at_hole != shot.ends_at_hole) continue;
    sum.shot.off_reference_rad += state.share * there->off_reference_rad;
    sum.known_share += state.share;
  }
  sum.shot.off_reference_rad /= sum.known_share;
  return sum;
}

Action action_of(const HoleModel& model, Lie lie, Point from, const SearchedShot& shot) {
  const Swing& full = model.swings(lie)[static_cast<std::size_t>(shot.swing)];
  const double to_hole = full.carry_for(distance_yd(from, model.pin()), roll_on_green(model));
  Action action{shot.swing, full.carry_yd, 0.0, 0, model.has_direction_mean()};
  if (shot.ends_at_hole) action.carry_yd = std::min(to_hole, full.carry_yd);
  action.reference_heading_rad = reference_heading(model, from, model.swing_of(lie, action)) + shot.off_reference_rad;
  return action;
}

}  // namespace

Action action_between(const HoleModel& model, const Policy& policy, const SearchedShots& searched, Lie lie,
                      Point from) {
  const bool is_played = lie != Lie::tee && distance_yd(from, model.pin()) > short_game_radius_yd;
  if (!is_played) return action_near(model, policy, lie, from);
  const std::vector<SearchedState> around = searched_around(model, policy, searched, lie, from);
  double known = 0.0;
  for (const SearchedState& state : around) known += state.share;
  std::optional<SearchedShot> best;
  double least = std::numeric_limits<double>::infinity();
  for (const SearchedState& state : around) {
    for (const SearchedShot& shot : state.shots) {
      if (shot.swing != state.taken.swing || known < numerics::searched_share) continue;
      const std::optional<ShotBetween> here = between(around, shot);
      if (!here || here->shot.strokes >= least - numerics::as_good_strokes) continue;
      least = here->shot.strokes;
      best = here->shot;
    }
  }
  return best ? action_of(model, lie, from, *best) : action_near(model, policy, lie, from);
}

}  // namespace yardworth
