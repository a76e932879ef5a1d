#include "gain/hazards_met.hpp"

#include <doctest/doctest.h>

#include "course/set_up.hpp"
#include "gain/tee_shot.hpp"
#include "input/derived_table.hpp"
#include "shot/area_found.hpp"
#include "strategy/strikes.hpp"
#include "support/courses.hpp"
#include "support/prepared_hole.hpp"
#include "yardworth/bands.hpp"
#include "yardworth/strategy.hpp"

namespace yardworth {
namespace {

Course guarded_course() {
  Hole hole = test::open_hole(1, 400.0);
  hole.hazards = {hazard_beside(HazardKind::bunker, Side::right, 190.0, 215.0, 12.0, 26.0),
                  hazard_beside(HazardKind::penalty_area, Side::left, 150.0, 330.0, 24.0, 60.0),
                  test::across(HazardKind::penalty_area, 235.0, 250.0)};
  return test::course_of({hole});
}

Baseline own_baseline() { return Baseline(derived_table(Band::from_13_to_20, Gender::men)); }

}  // namespace

TEST_CASE("what is told of a hazard is the same number in gain, strategy and bands") {
  const Course course = guarded_course();
  const Player player = standard_player(Band::from_13_to_20, Gender::men);
  const DistanceChange change{20.0, 0.0};
  GainRequest of_gain;
  of_gain.change = Change::of(change);
  of_gain.policy = PolicyChoice::best;
  of_gain.describe_play = true;
  const HoleGain gain = compute_gain(course, player, own_baseline(), of_gain).answer().holes.front();
  StrategyRequest of_strategy;
  of_strategy.change = Change::of(change);
  const HoleStrategy strategy = compute_strategy(course, player, own_baseline(), of_strategy).holes.front();
  BandsRequest of_bands;
  of_bands.bands = {Band::from_13_to_20};
  of_bands.genders = {Gender::men};
  of_bands.change = change;
  of_bands.policy = PolicyChoice::best;
  const BandHole bands = compute_bands(course, of_bands).golfers.front().holes.front();
  REQUIRE(strategy.hazards.size() == 3);
  REQUIRE(gain.play_before->hazards.size() == 3);
  REQUIRE(bands.before.hazards.size() == 3);
  for (std::size_t i = 0; i < 3; ++i) {
    CAPTURE(i);
    const HazardMet& before = gain.play_before->hazards[i];
    const HazardMet& after = gain.play_after->hazards[i];
    CHECK(strategy.hazards[i].hazard == before.hazard);
    CHECK(strategy.hazards[i].before == before.found);
    CHECK(*strategy.hazards[i].after == after.found);
    CHECK(bands.before.hazards[i].found == before.found);
    CHECK(bands.before.hazards[i].reached == before.reached);
    CHECK(bands.before.hazards[i].cleared == before.cleared);
    CHECK(bands.after.hazards[i].found == after.found);
    CHECK(before.found + before.cleared <= before.reached + 1e-12);
  }
}

// The strikes that are told of and those that the tee shot is valued by are the same, to the last digit: an edge cannot
// lie between them.
TEST_CASE("a hazard is found by the very strikes that the tee shot is told by") {
  const Course course = guarded_course();
  const Hole& hole = course.holes.front();
  const Player player = standard_player(Band::from_13_to_20, Gender::men);
  const Baseline baseline = own_baseline();
  const test::Mesh mesh;
  const test::PreparedHole here(hole, Firmness::normal, 0, player, baseline, mesh);
  const HoleModel& model = here.model;
  const Action action = habit_action(model, Lie::tee, model.tee());
  const Swing swing = model.swing_of(Lie::tee, action);
  std::vector<Rest> struck;
  for_each_strike(model, model.tee_state(), action, 1, [&](const Rest& rest, double) { struck.push_back(rest); });
  std::size_t i = 0;
  for_each_tee_flight(
      model, swing, HoleModel::heading_of(swing, action), 1, [&](Point direction, double carry, double) {
        const Rest rest = come_to_rest(model.map(), model.tee(), direction, carry, carry * swing.roll_share);
        CHECK(rest.at.x == struck[i].at.x);
        CHECK(rest.at.y == struck[i].at.y);
        ++i;
      });
  CHECK(i == struck.size());
}

}  // namespace yardworth
