#include "strategy/searched_shots.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <string>
#include <utility>
#include <vector>

#include "gain/solve_hole.hpp"
#include "strategy/shot_at_hole.hpp"
#include "support/courses.hpp"
#include "support/prepared_hole.hpp"
#include "support/scenario.hpp"

// What is played between the states of a search, with numbers that can be worked out by hand.

namespace yardworth::test {
namespace {

struct BetweenTwo {
  BetweenTwo() : hole(open_hole(1, 400.0), Firmness::normal, 0, player, baseline, mesh) {
    // On a ring, so that only two states are around the places between them.
    left = model().nearest_state(Lie::fairway, {-20.0, 150.0});
    const Continuation beside = model().continuation({model().place_of(left) + Point{4.0, 0.0}, Lie::fairway});
    for (const std::uint32_t state : beside.state) {
      const Point there = model().place_of(static_cast<StateId>(state));
      const bool same_ring = std::abs(distance_yd(there, model().pin()) - ring_yd()) < 1e-6;
      if (same_ring && static_cast<StateId>(state) != left) right = static_cast<StateId>(state);
    }
    policy.resize(static_cast<std::size_t>(model().state_count()));
    shots.resize(policy.size());
  }

  const HoleModel& model() const { return hole.model; }
  double ring_yd() const { return distance_yd(model().place_of(left), model().pin()); }
  // So much of the way from the left state to the right one, on their ring.
  Point place(double share) const {
    const Point chord =
        model().place_of(left) + share * (model().place_of(right) - model().place_of(left)) - model().pin();
    return model().pin() + (ring_yd() / distance_yd(chord, {})) * chord;
  }
  double share_of_right(Point from) const {
    const Continuation here = model().continuation({from, Lie::fairway});
    const std::array<double, 4> shares = here.weights();
    double share = 0.0;
    for (std::size_t i = 0; i < shares.size(); ++i) {
      if (static_cast<StateId>(here.state[i]) == right) share += shares[i];
    }
    return share;
  }
  Searched searched() const { return {model(), policy, shots}; }
  Action played(Point from) const { return action_between(searched(), Lie::fairway, from); }
  void take(StateId state, std::vector<SearchedShot> weighed) {
    policy[static_cast<std::size_t>(state)] = {weighed.front().swing, 0.0, 0.0, 0, false};
    shots[static_cast<std::size_t>(state)] = std::move(weighed);
  }

  Player player = standard_player(Band::from_13_to_20, Gender::men);
  Baseline baseline = Baseline(tour_table());
  Mesh mesh;
  PreparedHole hole;
  StateId left = 0, right = 0;
  Policy policy;
  SearchedShots shots;
};

constexpr int wood = 1;
constexpr int hybrid = 2;

}  // namespace

TEST_CASE(
    "between two states the club changes where their straight lines cross, and the direction goes from one to the "
    "other") {
  BetweenTwo hole;
  REQUIRE(hole.left != hole.right);
  // The wood costs 4.0 on the left and 4.6 on the right, the hybrid 4.1 and 4.2: they cross a fifth of the way along.
  hole.take(hole.left, {{wood, false, 0.02, 4.0}, {hybrid, false, 0.05, 4.1}});
  hole.take(hole.right, {{hybrid, false, -0.03, 4.2}, {wood, false, 0.00, 4.6}});
  CHECK(hole.played(hole.place(0.1)).swing == wood);
  CHECK(hole.played(hole.place(0.3)).swing == hybrid);
  const Point middle = hole.place(0.5);
  const Action action = hole.played(middle);
  const Swing swing = hole.model().swing_of(Lie::fairway, action);
  const double off = HoleModel::heading_of(swing, action) - reference_heading(hole.model(), middle, swing);
  const double right = hole.share_of_right(middle);
  CHECK(right == doctest::Approx(0.5).epsilon(0.1));
  CHECK(off == doctest::Approx((1.0 - right) * 0.05 - right * 0.03).epsilon(1e-6));
  CHECK(action.carry_yd == hole.model().swings(Lie::fairway)[hybrid].carry_yd);
}

TEST_CASE(
    "a club that only one of two states has weighed is not played between them, and a state that says nothing leaves "
    "it to the nearest") {
  BetweenTwo hole;
  hole.take(hole.left, {{wood, false, 0.0, 4.0}});
  hole.take(hole.right, {{hybrid, false, 0.0, 4.2}, {wood, false, 0.0, 4.6}});
  CHECK(hole.played(hole.place(0.9)).swing == wood);
  hole.shots[static_cast<std::size_t>(hole.right)].clear();
  const Point nearer_right = hole.place(0.6);
  CHECK(hole.played(nearer_right) == action_near(hole.model(), hole.policy, Lie::fairway, nearer_right));
}

TEST_CASE("every club that both of two states have weighed has a shot between them, and can be asked for") {
  BetweenTwo hole;
  hole.take(hole.left, {{wood, false, 0.02, 4.0}, {hybrid, false, 0.05, 4.1}, {3, false, 0.0, 4.3}});
  hole.take(hole.right, {{hybrid, false, -0.03, 4.2}, {wood, false, 0.00, 4.6}});
  const Point middle = hole.place(0.5);
  const double right = hole.share_of_right(middle);
  const std::vector<SearchedShot> shots = shots_between(hole.searched(), Lie::fairway, middle);
  REQUIRE(shots.size() == 2);
  for (const SearchedShot& shot : shots) {
    const double there = shot.swing == wood ? 4.0 + right * 0.6 : 4.1 + right * 0.1;
    CHECK(shot.strokes == doctest::Approx(there).epsilon(1e-6));
    CHECK(action_with(hole.searched(), shot.swing, Lie::fairway, middle) ==
          action_of(hole.model(), Lie::fairway, middle, shot));
  }
  CHECK(!action_with(hole.searched(), 3, Lie::fairway, middle));
}

// Of the few strikes of a place that is left to the start none may get away, where of more some do. Such a search gave
// up its grid, and the hole was worked out once more.
TEST_CASE("searches of hitters who hardly get over the water come to an end on the first grid") {
  const Course course = scenario_course();
  for (const auto& on_hole : {std::pair{"junior", 7}, std::pair{"24-man", 10}}) {
    const std::string member = on_hole.first;
    const int number = on_hole.second;
    CAPTURE(member);
    const Player player = scenario_member(member);
    const Baseline baseline = baseline_of(player);
    const Golfers golfers = golfers_of(player, baseline, {20.0, 6.0});
    const Hole& hole = course.holes[static_cast<std::size_t>(number - 1)];
    const HoleMap map(hole, course.firmness);
    const HoleModels models(map, map.tee(hole.length_yd[middle_tee]), golfers, baseline,
                            HoleModels::Grids::of(search_grid_for(hole)));
    SolveOptions best;
    best.best = true;
    CHECK_NOTHROW(solve_hole(models, best));
  }
}

}  // namespace yardworth::test
