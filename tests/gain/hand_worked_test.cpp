#include <doctest/doctest.h>

#include <utility>
#include <vector>

#include "baseline/published.hpp"
#include "gain/tee_shot.hpp"
#include "strategy/habit.hpp"
#include "strategy/policy_evaluation.hpp"

namespace yardworth {
namespace {

// The cases of docs/model.md, "Hand-worked cases", step by step as worked there on paper.

BaselineColumn straight(double near_strokes, double far_strokes) {
  return {{100.0, 200.0}, {near_strokes, far_strokes}};
}

// One club that carries 180 and does not roll, with a spread of 0.06 in direction and of a yard in carry.
Player one_club() {
  Player player;
  player.clubs = {{"7-wood", ClubKind::wood, 7, 180.0, 0.0, 1.0, 0.06, 0.0}};
  return player;
}

Hole straight_hole(double length_yd) {
  Hole hole;
  hole.number = 1;
  hole.par = 4;
  hole.length_yd = {length_yd};
  hole.fairway = {{100.0, 350.0, 16.0, 16.0}};
  hole.green = {30.0, 24.0};
  return hole;
}

TEST_CASE("first case: two outcomes, fairway and rough") {
  const HoleMap map(straight_hole(400.0), Firmness::normal);
  BaselineTable table = tour_table();
  table.fairway = straight(2.8, 3.2);
  table.rough = straight(3.0, 3.5);
  const Baseline baseline(table);
  const Player player = one_club();
  const HoleModel model(map, {0.0, 0.0}, player, baseline, Discretisation());
  // On the fairway 240 yards on, 160 left; in the rough 49 right of it, 168 short of the hole: 175 left.
  const std::vector<TeeShotNode> nodes = {{0.7, {{0.0, 240.0}, Lie::fairway, 0, false}, "7-iron"},
                                          {0.3, {{49.0, 232.0}, Lie::rough, 0, false}, "6-iron"}};
  CHECK(table_strokes(model, baseline, nodes) == doctest::Approx(4.1405).epsilon(1e-10));
}

TEST_CASE("second case: two outcomes, fairway and out of bounds") {
  const HoleMap map(straight_hole(400.0), Firmness::normal);
  BaselineTable table = tour_table();
  table.fairway = straight(2.8, 3.2);
  const Baseline baseline(table);
  const Player player = one_club();
  const HoleModel model(map, {0.0, 0.0}, player, baseline, Discretisation());
  const std::vector<TeeShotNode> nodes = {{0.85, {{0.0, 240.0}, Lie::fairway, 0, false}, "7-iron"},
                                          {0.15, {{0.0, 0.0}, Lie::rough, 1, true}, "driver"}};
  CHECK(std::abs(table_strokes(model, baseline, nodes) - 4.3929411765) < 1e-9);
  // Nothing but out of bounds: there is no answer.
  CHECK_THROWS_AS(table_strokes(model, baseline, {{1.0, {{0.0, 0.0}, Lie::rough, 1, true}, "driver"}}), CannotFinish);
}

TEST_CASE("third case: real strikes, out of bounds on the right, by both methods") {
  Hole hole = straight_hole(180.0);
  hole.par = 3;
  hole.fairway = {};
  Hazard fence;
  fence.kind = HazardKind::out_of_bounds;
  fence.corners = {{9.5, 0.0}, {150.0, 0.0}, {150.0, 260.0}, {9.5, 260.0}};
  hole.hazards = {fence};
  hole.green = {6.0, 6.0};  // clear of the fence
  const HoleMap map(hole, Firmness::normal);
  BaselineTable table = tour_table();
  table.fairway = table.rough = table.bunker = table.recovery = table.tee = straight(2.75, 2.75);
  table.green = {{3.0, 30.0}, {2.75, 2.75}};
  const Baseline baseline(table);
  const Player player = one_club();
  DiscretisationOptions coarse;
  coarse.steps_per_sd = 4;
  coarse.tee_refinement = 1;
  const HoleModel model(map, {0.0, 0.0}, player, baseline, Discretisation(coarse));
  const ActionFrom habit = [&](Lie lie, Point from) { return habit_action(model, lie, from); };
  const Action tee_shot = habit(Lie::tee, model.tee());
  CHECK(tee_shot.carry_yd == doctest::Approx(180.0));
  const std::vector<TeeShotNode> nodes = strike_tee_shot_alone(model, tee_shot, 1);
  REQUIRE(nodes.size() == 33);
  double out = 0.0;
  for (const TeeShotNode& node : nodes) out += node.rest.replay ? node.weight : 0.0;
  CHECK(std::abs(out - 0.1527960937) < 1e-9);
  CHECK(std::abs(table_strokes(model, baseline, nodes) - 4.1107067732) < 1e-9);
  // Every other ball lies within the short game, where method play takes the same baseline.
  const PolicyEvaluation play =
      evaluate_policy(model, [&](StateId state) { return habit(model.lie_of(state), model.place_of(state)); });
  CHECK(std::abs(play.at_tee - 4.1107067732) < 1e-9);
}

}  // namespace
}  // namespace yardworth
