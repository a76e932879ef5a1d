#include "strategy/searched_shots.hpp"

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

// What a club costs between states, and how it is directed there, by the states at which it ends where it does here;
// nothing where it was not weighed at all states.
std::optional<SearchedShot> between(const std::vector<SearchedState>& around, const SearchedShot& shot) {
  SearchedShot sum{shot.swing, shot.ends_at_hole, 0.0, 0.0};
  double alike = 0.0;
  for (const SearchedState& state : around) {
    const SearchedShot* const there = same_club(state.shots, shot);
    if (there == nullptr) return std::nullopt;
    sum.strokes += state.share * there->strokes;
    if (there->ends_at_hole != shot.ends_at_hole) continue;
    sum.off_reference_rad += state.share * there->off_reference_rad;
    alike += state.share;
  }
  sum.off_reference_rad /= alike;
  return sum;
}

// Of the clubs that the policy takes at the states around.
std::optional<SearchedShot> best_between(const std::vector<SearchedState>& around) {
  std::optional<SearchedShot> best;
  for (const SearchedState& state : around) {
    for (const SearchedShot& shot : state.shots) {
      if (shot.swing != state.taken.swing) continue;
      const std::optional<SearchedShot> here = between(around, shot);
      if (here && (!best || here->strokes < best->strokes - numerics::as_good_strokes)) best = here;
    }
  }
  return best;
}

}  // namespace

Action action_between(const HoleModel& model, const Policy& policy, const SearchedShots& searched, Lie lie,
                      Point from) {
  const bool is_played = lie != Lie::tee && distance_yd(from, model.pin()) > short_game_radius_yd;
  if (!is_played) return action_near(model, policy, lie, from);
  const std::vector<SearchedState> around = searched_around(model, policy, searched, lie, from);
  double known = 0.0;
  for (const SearchedState& state : around) known += state.share;
  const std::optional<SearchedShot> best = known < numerics::searched_share ? std::nullopt : best_between(around);
  if (!best) return action_near(model, policy, lie, from);
  const Swing& club = model.swings(lie)[static_cast<std::size_t>(best->swing)];
  const double carry = best->ends_at_hole ? carry_to_hole(model, from, club) : club.carry_yd;
  Action action = in_reference_direction(model, lie, from, best->swing, carry);
  action.reference_heading_rad += best->off_reference_rad;
  return action;
}

}  // namespace yardworth
