#include "strategy/searched_shots.hpp"

#include <algorithm>
#include <boost/container/small_vector.hpp>
#include <boost/container/static_vector.hpp>
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
using Around = boost::container::static_vector<SearchedState, 4>;

// None where the search says nothing of half of the place.
Around searched_around(const Searched& searched, Lie lie, Point from) {
  if (!is_between_states(searched.model, lie, from)) return {};
  const Continuation here = searched.model.continuation({from, lie});
  const std::array<double, 4> shares = here.weights();
  Around around;
  double known = 0.0;
  for (std::size_t i = 0; i < shares.size(); ++i) {
    const std::size_t state = here.state[i];
    if (shares[i] <= numerics::rounding_share || searched.shots[state].empty()) continue;
    around.push_back({searched.shots[state], searched.policy[state], shares[i]});
    known += shares[i];
  }
  if (known < numerics::searched_share) around.clear();
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
std::optional<SearchedShot> between(const Around& around, const SearchedShot& shot) {
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

// Of the shots with some clubs. What one of the same club costs that ends alike is the same from whichever state.
template <class IsWanted>
std::optional<SearchedShot> best_between(const Around& around, IsWanted is_wanted) {
  std::optional<SearchedShot> best;
  boost::container::small_vector<std::pair<int, bool>, 8> tried;
  for (const SearchedState& state : around) {
    for (const SearchedShot& shot : state.shots) {
      if (!is_wanted(state, shot)) continue;
      const std::pair kind{shot.swing, shot.ends_at_hole};
      if (std::find(tried.begin(), tried.end(), kind) != tried.end()) continue;
      tried.push_back(kind);
      const std::optional<SearchedShot> here = between(around, shot);
      if (here && (!best || here->strokes < best->strokes - numerics::as_good_strokes)) best = here;
    }
  }
  return best;
}

std::optional<SearchedShot> best_with(const Around& around, int swing) {
  return best_between(around, [swing](const SearchedState&, const SearchedShot& shot) { return shot.swing == swing; });
}

}  // namespace

bool is_between_states(const HoleModel& model, Lie lie, Point from) {
  return lie != Lie::tee && distance_yd(from, model.pin()) > short_game_radius_yd;
}

std::vector<SearchedShot> shots_between(const Searched& searched, Lie lie, Point from) {
  const Around around = searched_around(searched, lie, from);
  std::vector<SearchedShot> shots;
  for (const SearchedState& state : around) {
    for (const SearchedShot& shot : state.shots) {
      const auto same_swing = [&](const SearchedShot& other) { return other.swing == shot.swing; };
      if (std::any_of(shots.begin(), shots.end(), same_swing)) continue;
      if (const auto best = best_with(around, shot.swing)) shots.push_back(*best);
    }
  }
  return shots;
}

Action action_of(const HoleModel& model, Lie lie, Point from, const SearchedShot& shot) {
  const Swing& club = model.swings(lie)[static_cast<std::size_t>(shot.swing)];
  const double carry = shot.ends_at_hole ? carry_to_hole(model, from, club) : club.carry_yd;
  Action action = in_reference_direction(model, lie, from, shot.swing, carry);
  action.reference_heading_rad += shot.off_reference_rad;
  return action;
}

Action action_between(const Searched& searched, Lie lie, Point from) {
  const HoleModel& model = searched.model;
  const auto best =
      best_between(searched_around(searched, lie, from),
                   [](const SearchedState& state, const auto& shot) { return shot.swing == state.taken.swing; });
  return best ? action_of(model, lie, from, *best) : action_near(model, searched.policy, lie, from);
}

std::optional<Action> action_with(const Searched& searched, int swing, Lie lie, Point from) {
  const auto best = best_with(searched_around(searched, lie, from), swing);
  if (!best) return std::nullopt;
  return action_of(searched.model, lie, from, *best);
}

}  // namespace yardworth
