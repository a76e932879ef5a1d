#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numeric>
#include <optional>
#include <utility>
#include <vector>

#include "core/numerics.hpp"
#include "player/lies_in_play.hpp"
#include "strategy/look_ahead.hpp"
#include "strategy/shot_at_hole.hpp"

namespace yardworth::test {

// One step of look-ahead from what a policy plays, without what its search has weighed: of the clubs that the policy
// takes at the states around, played as it plays them, and those beside them in the bag, to the hole where they reach
// it and else in full, the one with the fewest expected strokes, on all equal-weight strikes. Strokes are worked out at
// vertices where balls come to, and read off straight lines between.
class CloseLookAhead {
 public:
  // The policy and the values are by state of the model, which must outlive this.
  CloseLookAhead(const HoleModel& model, const Policy& policy, const std::vector<double>& value, BallsAround around)
      : model_(model), around_(std::move(around)), clubs_(lies_in_play.size() * around_.vertices()) {
    const std::vector<Point> offsets = around_.grid().offsets();
    for (const Lie lie : lies_in_play) {
      for (std::size_t vertex = 0; vertex < around_.vertices(); ++vertex) {
        const std::size_t index = around_.index_of(lie, static_cast<int>(vertex));
        if (around_.at(index) < least_weight) continue;
        clubs_[index] = weigh_clubs({lie, model.pin() + offsets[vertex], value}, policy);
      }
    }
  }

  // Nothing where few balls are around, or the policy says nothing there.
  std::optional<Action> action(Lie lie, Point from) const;

 private:
  static constexpr double least_weight = 1e-3;
  static constexpr double known_share = 0.5;

  // How far a club is played: to the hole where it reaches it and else in full; in full even where that goes beyond the
  // hole; or to a carry that the policy names, as one who stays with a shot of shorter clubs does.
  enum class Length { to_hole, full, named };
  struct Played {
    int swing = 0;
    Length length = Length::to_hole;
    double named_carry_yd = 0.0;
  };
  // A club that may be played from a vertex.
  struct Weighed {
    Played played;
    int aim = 0;
    double strokes = 0.0;
  };
  // None where few balls are.
  using Clubs = std::vector<Weighed>;
  // What the policy plays at a state around a vertex.
  struct Around {
    Played played;
    double off_hole_rad = 0.0;  // where it is aimed, to the right of the hole
  };

  // A place whose clubs are weighed.
  struct Looked {
    Lie lie;
    Point from;
    const std::vector<double>& value;
  };
  // The vertices around a place where something is known, each with its weight.
  struct Known {
    const Clubs* clubs = nullptr;
    double share = 0.0;
  };

  Clubs weigh_clubs(const Looked& at, const Policy& policy) const;
  Weighed weigh(const Looked& at, const Around& near, int swing) const;
  std::vector<Around> policy_around(Lie lie, Point from, const Policy& policy) const;
  Played played_by(Lie lie, Point from, const Action& action) const;
  Action action_of(Lie lie, Point from, const Played& played) const;
  std::array<Known, 4> known_around(Lie lie, Point from) const;

  const HoleModel& model_;
  BallsAround around_;
  std::vector<Clubs> clubs_;  // by lie in play, by vertex
};

// What the policy plays at the states around a place, the nearest first.
inline std::vector<CloseLookAhead::Around> CloseLookAhead::policy_around(Lie lie, Point from,
                                                                         const Policy& policy) const {
  const Continuation here = model_.continuation({from, lie});
  const std::array<double, 4> shares = here.weights();
  std::array<std::size_t, 4> order{};
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return shares[a] > shares[b]; });
  std::vector<Around> around;
  for (const std::size_t i : order) {
    const Action& action = policy[here.state[i]];
    if (shares[i] <= numerics::rounding_share || action.swing < 0) continue;
    const Point place = model_.place_of(static_cast<StateId>(here.state[i]));
    const double heading = HoleModel::heading_of(model_.swing_of(lie, action), action);
    around.push_back({played_by(lie, place, action), heading - heading_rad(place, model_.pin())});
  }
  return around;
}

inline CloseLookAhead::Clubs CloseLookAhead::weigh_clubs(const Looked& at, const Policy& policy) const {
  Clubs clubs;
  const auto add = [&](int swing, const Around& near) {
    const bool known =
        std::any_of(clubs.begin(), clubs.end(), [&](const Weighed& other) { return other.played.swing == swing; });
    if (known || swing < 0 || swing >= static_cast<int>(model_.swings(at.lie).size())) return;
    clubs.push_back(weigh(at, near, swing));
  };
  const std::vector<Around> around = policy_around(at.lie, at.from, policy);
  for (const Around& near : around) add(near.played.swing, near);
  if (around.empty()) return clubs;
  for (const int beside : {-1, 1}) add(around.front().played.swing + beside, around.front());
  return clubs;
}

inline CloseLookAhead::Played CloseLookAhead::played_by(Lie lie, Point from, const Action& action) const {
  const bool is_full = action.carry_yd >= model_.swings(lie)[static_cast<std::size_t>(action.swing)].carry_yd;
  if (is_full) return {action.swing, Length::full, 0.0};
  if (ends_at_hole(model_, from, model_.swing_of(lie, action))) return {action.swing, Length::to_hole, 0.0};
  return {action.swing, Length::named, action.carry_yd};
}

inline Action CloseLookAhead::action_of(Lie lie, Point from, const Played& played) const {
  const Swing& club = model_.swings(lie)[static_cast<std::size_t>(played.swing)];
  double carry = club.carry_yd;
  if (played.length == Length::to_hole) carry = carry_to_hole(model_, from, club);
  if (played.length == Length::named) carry = played.named_carry_yd;
  return in_reference_direction(model_, lie, from, played.swing, carry);
}

// A club aimed as the policy aims near there.
inline CloseLookAhead::Weighed CloseLookAhead::weigh(const Looked& at, const Around& near, int swing) const {
  const Played played = swing == near.played.swing ? near.played : Played{swing, Length::to_hole, 0.0};
  Action action = action_of(at.lie, at.from, played);
  const double heading = heading_rad(at.from, model_.pin()) + near.off_hole_rad;
  const double off = std::remainder(heading - action.reference_heading_rad, 2.0 * pi);
  const double aim_step = model_.swing_of(at.lie, action).direction_scale_rad / numerics::aims_per_sd;
  constexpr double furthest = numerics::largest_aim;
  action.aim = static_cast<int>(std::lround(std::clamp(off / aim_step, -furthest, furthest)));
  return {played, action.aim, strokes_ahead({model_, at.lie, at.from}, action, at.value)};
}

inline std::array<CloseLookAhead::Known, 4> CloseLookAhead::known_around(Lie lie, Point from) const {
  const RingGrid::Corners corners = around_.grid().corners(from - model_.pin(), distance_yd(from, model_.pin()));
  const std::array<double, 4> shares = corners.weights();
  std::array<Known, 4> around{};
  for (std::size_t i = 0; i < shares.size(); ++i) {
    const Clubs& clubs = clubs_[around_.index_of(lie, corners.vertex[i])];
    if (shares[i] > numerics::rounding_share && !clubs.empty()) around[i] = {&clubs, shares[i]};
  }
  return around;
}

inline std::optional<Action> CloseLookAhead::action(Lie lie, Point from) const {
  const std::array<Known, 4> around = known_around(lie, from);
  const double known =
      std::accumulate(around.begin(), around.end(), 0.0, [](double sum, const Known& k) { return sum + k.share; });
  if (known < known_share) return std::nullopt;
  const auto strokes_with = [&](int swing) {
    double strokes = 0.0;
    for (const Known& vertex : around) {
      if (vertex.clubs == nullptr) continue;
      const auto same = std::find_if(vertex.clubs->begin(), vertex.clubs->end(),
                                     [&](const Weighed& other) { return other.played.swing == swing; });
      if (same == vertex.clubs->end()) return std::numeric_limits<double>::infinity();
      strokes += vertex.share * same->strokes;
    }
    return strokes;
  };
  const auto nearest =
      std::max_element(around.begin(), around.end(), [](const Known& a, const Known& b) { return a.share < b.share; });
  const Weighed* best = nullptr;
  double least = std::numeric_limits<double>::infinity();
  for (const Weighed& club : *nearest->clubs) {
    const double strokes = strokes_with(club.played.swing);
    if (strokes >= least - numerics::as_good_strokes) continue;
    least = strokes;
    best = &club;
  }
  if (best == nullptr) return std::nullopt;
  Action action = action_of(lie, from, best->played);
  action.aim = best->aim;
  return action;
}

}  // namespace yardworth::test
