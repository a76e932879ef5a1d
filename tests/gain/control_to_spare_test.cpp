#include <doctest/doctest.h>

#include <cmath>
#include <cstdio>

#include "support/scenario.hpp"
#include "yardworth/gain.hpp"
#include "yardworth/units.hpp"

namespace yardworth {

namespace {

GainRequest habit_on_a_few_holes(const Change& change) {
  GainRequest request;
  request.change = change;
  request.policy = PolicyChoice::habit;
  request.spread_of_score = false;
  request.holes = {1, 4, 9};
  return request;
}

double habit_strokes(const Player& player) {
  const GainRequest request = habit_on_a_few_holes({});
  return compute_gain(test::scenario_course(), player, test::baseline_of(test::scenario_member("weekend-16-man")),
                      request)
      .answer()
      .round.before;
}

}  // namespace

// What is found is put back: a golfer as much wilder scores as before the change.
TEST_CASE("a golfer who loses what control there is to spare saves nothing") {
  const Course course = test::scenario_course();
  const Player player = test::scenario_member("weekend-16-man");
  const GainRequest request = habit_on_a_few_holes({20.0, 6.0});
  const auto spare = compute_control_to_spare(course, player, test::baseline_of(player), request);
  REQUIRE(spare);
  REQUIRE(spare->direction_sd_rad);
  REQUIRE(spare->poor_strike);
  std::printf("to spare: %.2f degrees, %.1f poor strikes in 100\n", degrees(*spare->direction_sd_rad),
              100.0 * *spare->poor_strike);
  Player wider = lengthen(player, 20.0, 6.0);
  Player poorer = wider;
  for (Club& club : wider.clubs) club.direction_sd_rad += *spare->direction_sd_rad;
  for (Club& club : poorer.clubs) club.poor_strike += *spare->poor_strike;
  const double before = habit_strokes(player);
  const double saved = before - habit_strokes(lengthen(player, 20.0, 6.0));
  // Found to seven bits: a hundredth of what is saved, and what the grid's own edges move.
  CHECK(std::abs(habit_strokes(wider) - before) < 0.02 * saved);
  CHECK(std::abs(habit_strokes(poorer) - before) < 0.02 * saved);
}

TEST_CASE("where nothing is saved there is no control to spare") {
  const Course course = test::scenario_course();
  const Player player = test::scenario_member("weekend-16-man");
  const Baseline baseline = test::baseline_of(player);
  CHECK_FALSE(compute_control_to_spare(course, player, baseline, habit_on_a_few_holes({0.0, 0.0})));
  CHECK_FALSE(compute_control_to_spare(course, player, baseline, habit_on_a_few_holes({-10.0, 0.0})));
}

}  // namespace yardworth
