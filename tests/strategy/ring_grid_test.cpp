#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "strategy/habit.hpp"
#include "support/prepared_hole.hpp"
#include "support/scenario.hpp"

namespace yardworth {

TEST_CASE("a point lies between its corners, however close the rings are") {
  // Habits that change at places less than a yard apart put several rings into one yard.
  DiscretisationOptions discretisation;
  discretisation.edges_yd = {341.45, 340.9, 201.45, 200.9};
  const RingGrid grid(50.0, 400.0, discretisation);
  for (double distance = 50.0; distance < 400.0; distance += 0.07) {
    const RingGrid::Corners corners = grid.corners({0.6 * distance, 0.8 * distance}, distance);
    CAPTURE(distance);
    REQUIRE(corners.ring_share >= 0.0);
    REQUIRE(corners.ring_share <= 1.0);
    REQUIRE(grid.radii()[corners.ring] <= distance + 1e-9);
    REQUIRE(grid.radii()[corners.ring + 1] >= distance - 1e-9);
  }
}

TEST_CASE("every edge has a ring close on each side, in whatever order they come") {
  DiscretisationOptions discretisation;
  discretisation.edges_yd = {120.3, 341.4, 201.2, 260.9};
  const RingGrid grid(50.0, 400.0, discretisation);
  for (const double edge : discretisation.edges_yd) {
    CAPTURE(edge);
    for (const double wanted : {edge - 0.5, edge + 0.5}) {
      double off = 1.0;
      for (const double radius : grid.radii()) off = std::min(off, std::abs(radius - wanted));
      CHECK(off < 0.5);
    }
  }
}

namespace {

struct Prepared {
  explicit Prepared(std::size_t index, const DiscretisationOptions& discretisation = search_options())
      : player(test::scenario_member("weekend-16-man")),
        baseline(test::baseline_of(player)),
        mesh(discretisation),
        hole(test::scenario_course().holes[index], Firmness::normal, test::middle_tee, player, baseline, mesh) {}

  Player player;
  Baseline baseline;
  test::Mesh mesh;
  test::PreparedHole hole;
};

}  // namespace

TEST_CASE("states are kept within the corridor, and a ball beyond it counts at the nearest place of its ring") {
  const Prepared prepared(6);
  const HoleModel& model = prepared.hole.model;
  const LineOfPlay& line = prepared.hole.map.line();
  for (StateId state = 0; state < model.tee_state(); ++state) {
    const Point place = model.place_of(state);
    REQUIRE(distance_yd(place, line.at(line.nearest(place).along_yd)) <= corridor_yd + 1.0);
    REQUIRE(model.nearest_state(model.lie_of(state), place) == state);
  }
  const Point far = line.to_plane({corridor_yd + 150.0, 100.0});
  const Continuation continuation = model.continuation({far, Lie::rough, 0, false});
  REQUIRE(continuation.kind == Continuation::Kind::between_states);
  for (const auto state : continuation.state) {
    const Point place = model.place_of(static_cast<StateId>(state));
    CHECK(model.lie_of(static_cast<StateId>(state)) == Lie::rough);
    CHECK(std::abs(distance_yd(place, model.pin()) - distance_yd(far, model.pin())) <= search_options().ring_yd);
    CHECK(distance_yd(far, place) <= 150.0 + 2.0 * search_options().arc_yd);
  }
}

TEST_CASE("a ring that nowhere comes near the line of play keeps its places") {
  DiscretisationOptions few;
  few.ring_yd = few.arc_yd = 450.0;
  const Prepared prepared(6, few);
  const HoleModel& model = prepared.hole.model;
  for (const double off_yd : {60.0, 300.0, 700.0}) {
    const Continuation continuation = model.continuation({model.pin() + Point{0.0, off_yd}, Lie::fairway, 0, false});
    for (const auto state : continuation.state) CHECK(state < static_cast<std::uint32_t>(model.state_count()));
  }
}

TEST_CASE(
    "near a state a plan plays its own club to the hole, not the habit's, and the next one where it falls short") {
  const Prepared prepared(0);
  const HoleModel& model = prepared.hole.model;
  const LineOfPlay& line = prepared.hole.map.line();
  const std::vector<Swing>& swings = model.swings(Lie::fairway);
  const StateId state = model.nearest_state(Lie::fairway, line.at(line.length_yd() - 120.0));
  const Point place = model.place_of(state);
  const double distance = distance_yd(place, model.pin());
  const double green = roll_factor(Ground::green, Firmness::normal);
  const Action habit = habit_action(model, Lie::fairway, place);
  REQUIRE(habit.swing > 0);
  const auto played_to = [&](int swing, double to) {
    return swings[static_cast<std::size_t>(swing)].carry_for(to, green);
  };
  const auto action_of = [&](int swing, double from_hole) {
    Policy policy(static_cast<std::size_t>(model.state_count()));
    policy[static_cast<std::size_t>(state)] = {swing, played_to(swing, distance), heading_rad(place, model.pin()), 0};
    const Point there = model.pin() + (from_hole / distance) * (place - model.pin());
    return action_near(model, policy, Lie::fairway, there);
  };
  // A club longer than the habit's: the policy's own stays.
  const Action longer = action_of(habit.swing - 1, distance - 3.0);
  CHECK(longer.swing == habit.swing - 1);
  CHECK(longer.carry_yd == doctest::Approx(played_to(habit.swing - 1, distance - 3.0)));
  // The habit's where it no longer reaches: the next one.
  const double reach = swings[static_cast<std::size_t>(habit.swing)].total_yd(green);
  const Action short_of_it = action_of(habit.swing, reach + 1.0);
  CHECK(short_of_it.swing < habit.swing);
}

}  // namespace yardworth
