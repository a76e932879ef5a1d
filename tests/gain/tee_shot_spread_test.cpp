#include "gain/tee_shot_spread.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "core/contours.hpp"
#include "shot/sample.hpp"
#include "strategy/habit.hpp"
#include "support/prepared_hole.hpp"
#include "support/scenario.hpp"
#include "yardworth/strategy.hpp"

namespace yardworth {
namespace {

constexpr int draws = 20000;  // the standard error of a share is at most 0.0035
constexpr double agreed_share = 0.02;

// Balls struck at random, another road than the lattices that the outlines are made from.
std::vector<Point> drawn_finishes(const HoleModel& model, const Action& action, std::uint64_t seed) {
  RandomEngine engine(seed);
  const Swing swing = model.swing_of(Lie::tee, action);
  std::vector<Point> finishes;
  for (int i = 0; i < draws; ++i) {
    const Strike strike = draw_strike(swing, engine);
    const Point direction = along_heading(HoleModel::struck_heading_of(swing, action) + strike.direction_rad);
    finishes.push_back(
        stopped_at(model.map(), model.tee(), direction, strike.carry_yd, strike.carry_yd * swing.roll_share));
  }
  return finishes;
}

double share_inside(const FinishRegion& region, const std::vector<Point>& finishes) {
  int inside = 0;
  for (const Point p : finishes) inside += inside_outlines(region.outlines, p) ? 1 : 0;
  return static_cast<double>(inside) / static_cast<double>(finishes.size());
}

}  // namespace

TEST_CASE("the outlines hold the shares of tee shots that they say") {
  const Course course = test::scenario_course();
  const test::Mesh mesh(held_out_options(search_options()));
  double furthest = 0.0;
  for (const char* member : {"scratch-man", "weekend-16-man", "28-woman", "junior"}) {
    const Player player = test::scenario_member(member);
    const Baseline baseline = test::baseline_of(player);
    for (const Hole& hole : course.holes) {
      CAPTURE(member);
      CAPTURE(hole.number);
      const test::PreparedHole prepared(hole, course.firmness, test::middle_tee, player, baseline, mesh);
      const HoleModel& model = prepared.model;
      const Action action = habit_action(model, Lie::tee, model.tee());
      const auto regions = finish_regions(model, action, {0.5, 0.9});
      const auto finishes = drawn_finishes(model, action, 20261129 + static_cast<std::uint64_t>(hole.number));
      REQUIRE(regions.size() == 2);
      for (const FinishRegion& region : regions) {
        const double share = share_inside(region, finishes);
        CHECK(std::abs(share - region.share) <= agreed_share);
        furthest = std::max(furthest, std::abs(share - region.share));
      }
    }
  }
  MESSAGE("shares inside differ by at most " << furthest);
}

TEST_CASE("a golfer who misses to one side has outlines there") {
  const Course course = test::scenario_course();
  Player player = test::scenario_member("weekend-16-man");
  const Baseline baseline = test::baseline_of(player);
  const test::Mesh mesh;
  const auto middle_of = [&](const Player& golfer) {
    const test::PreparedHole prepared(course.holes[3], course.firmness, test::middle_tee, golfer, baseline, mesh);
    const Action action = habit_action(prepared.model, Lie::tee, prepared.model.tee());
    const Polygon outline = finish_regions(prepared.model, action, {0.5}).front().outlines.front();
    double right = 0.0;
    for (const Point p : outline) right += p.x / static_cast<double>(outline.size());
    return right;
  };
  const double straight = middle_of(player);
  for (Club& club : player.clubs) club.direction_mean_rad = radians(4.0);
  // Four degrees at 200 yards are 14.
  CHECK(middle_of(player) > straight + 8.0);
}

TEST_CASE("a strategy has drawings only where they are asked for, and nothing else moves with them") {
  const Course course = test::scenario_course();
  const Player player = test::scenario_member("weekend-16-man");
  StrategyRequest request;
  request.holes = {6};
  request.change = Change{20.0, 6.0};
  const StrategyResult without = compute_strategy(course, player, request);
  request.drawing = true;
  const StrategyResult with = compute_strategy(course, player, request);
  CHECK_FALSE(without.holes.front().drawing);
  REQUIRE(with.holes.front().drawing);
  CHECK(with.holes.front().before.tee_shot.strokes == without.holes.front().before.tee_shot.strokes);
  const HoleDrawing& drawing = *with.holes.front().drawing;
  REQUIRE(drawing.after);
  CHECK(drawing.plan.tees.size() == course.tees.size());
  CHECK(drawing.plan.tees[test::middle_tee] == drawing.tee);
  REQUIRE(drawing.before.hazards.size() == with.holes.front().hazards.size());
  for (std::size_t i = 0; i < drawing.before.hazards.size(); ++i) {
    CHECK(drawing.before.hazards[i].found == with.holes.front().hazards[i].before);
    CHECK(drawing.after->hazards[i].found == with.holes.front().hazards[i].after);
  }
}

}  // namespace yardworth
