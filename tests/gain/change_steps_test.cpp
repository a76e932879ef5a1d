#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "gain/changed_finish.hpp"
#include "gain/golfers.hpp"
#include "shot/putting.hpp"
#include "support/courses.hpp"
#include "support/scenario.hpp"
#include "yardworth/gain.hpp"
#include "yardworth/read.hpp"

namespace yardworth {
namespace {

// Rounding of sums of a few numbers of one size.
constexpr double sum_rounding = 1e-9;

const Player& weekend_16() {
  static const Player player = test::scenario_member("weekend-16-man");
  return player;
}

GainResult gain_by(const Player& player, const Baseline& baseline, const Change& change, PolicyChoice policy) {
  GainRequest request;
  request.change = change;
  request.policy = policy;
  request.spread_of_score = false;
  return compute_gain(test::water_and_bunker(Units::yards), player, baseline, request);
}

GainResult gain_by(const Change& change, PolicyChoice policy) {
  return gain_by(weekend_16(), test::baseline_of(weekend_16()), change, policy);
}

Change change_of_everything() {
  Change change{12.0, 4.0};
  change.clubs = {{"7-iron", 2.0, 0.0, -0.05}};
  change.carry_sd_share = -0.1;
  change.direction_sd_share = -0.1;
  change.direction_mean_rad = radians(-1.0);
  change.poor_strike = -0.02;
  change.short_game_share = -0.1;
  change.putting_share = -0.1;
  return change;
}

std::vector<ChangeStep> steps_of(const StepValues& values) {
  std::vector<ChangeStep> steps;
  for (const StepValue& value : values.steps) steps.push_back(value.step);
  return steps;
}

double sum_of_parts(const StepValues& values) {
  double sum = values.from_replanning();
  for (const ChangeStep step : all_change_steps) sum += values.from(step);
  return sum;
}

bool has_note(const GainResult& result, ChangeStep step) {
  return std::any_of(result.notes.begin(), result.notes.end(), [&](const Note& note) {
    return note.kind == Note::Kind::step_without_effect && note.step == step;
  });
}

}  // namespace

TEST_CASE("a change of everything is taken in the order of its steps, which add up to the whole") {
  const GainResult result = gain_by(change_of_everything(), PolicyChoice::both);
  for (const auto* plan : {&result.best, &result.habit}) {
    const std::vector<ChangeStep> all(all_change_steps.begin(), all_change_steps.end());
    CHECK(steps_of((*plan)->round) == all);
    CHECK(std::abs(sum_of_parts((*plan)->round) - (*plan)->round.strokes_saved()) < sum_rounding);
    StepValues sum;
    for (const HoleGain& hole : (*plan)->holes) {
      CHECK(std::abs(sum_of_parts(hole.strokes) - hole.strokes.strokes_saved()) < sum_rounding);
      sum.add(hole.strokes);
    }
    CHECK(sum.strokes_saved() == (*plan)->round.strokes_saved());
  }
  CHECK(result.habit->round.from(ChangeStep::putting) > 0.0);
  CHECK(result.habit->round.from(ChangeStep::short_game) > 0.0);
  CHECK(result.habit->round.from(ChangeStep::poor_strikes) > 0.0);
}

TEST_CASE("a step that moves nothing saves exactly nothing, and is told") {
  Player never_poor = weekend_16();
  for (Club& club : never_poor.clubs) club.poor_strike = 0.0;
  Change fewer;
  fewer.poor_strike = -0.03;
  const GainResult result = gain_by(never_poor, test::baseline_of(never_poor), fewer, PolicyChoice::both);
  CHECK(result.best->round.steps.empty());
  CHECK(result.best->round.strokes_saved() == 0.0);
  CHECK(result.habit->round.strokes_saved() == 0.0);
  CHECK(has_note(result, ChangeStep::poor_strikes));
  CHECK_FALSE(has_note(gain_by(fewer, PolicyChoice::habit), ChangeStep::poor_strikes));
}

// The other road: the golfer with the other numbers, as a file would have them, without any change. The habit plays the
// same where carries stay, so both are one policy of one golfer.
TEST_CASE("what spreads and poor strikes save is what a golfer of those numbers scores less") {
  const Baseline baseline = test::baseline_of(weekend_16());
  Change change;
  change.carry_sd_share = -0.15;
  change.direction_sd_share = -0.2;
  change.poor_strike = -0.02;
  Player surer = weekend_16();
  for (Club& club : surer.clubs) {
    club.carry_sd_yd *= 0.85;
    club.carry_sd_floor_yd *= 0.85;
    club.direction_sd_rad *= 0.8;
    club.poor_strike = std::max(0.0, club.poor_strike - 0.02);
  }
  const StepValues changed = gain_by(change, PolicyChoice::habit).habit->round;
  const StepValues alone = gain_by(surer, baseline, {}, PolicyChoice::habit).habit->round;
  CHECK(changed.replanned == doctest::Approx(alone.before).epsilon(sum_rounding));
  CHECK(changed.strokes_saved() > 0.05);
}

TEST_CASE("the same yards said of the irons together and of each club by itself are worth the same") {
  const Player& player = weekend_16();
  const double share = 6.0 / player.clubs[*reference_iron(player)].carry_yd;
  Change each;
  for (const Club& club : player.clubs) {
    if (club.kind != ClubKind::driver) each.clubs.push_back({club.name, share * club.carry_yd});
  }
  const StepValues together = gain_by({0.0, 6.0}, PolicyChoice::habit).habit->round;
  const StepValues by_club = gain_by(each, PolicyChoice::habit).habit->round;
  CHECK(together.from_irons() == doctest::Approx(by_club.from(ChangeStep::club_carry)).epsilon(1e-6));
  CHECK(by_club.from_irons() == 0.0);
}

// The other road: a baseline is a table, and the golfer who stands on the better one saves what the step says.
TEST_CASE("putting and short game save what a baseline with the golfer's own difference saves") {
  const Player& player = weekend_16();
  const Baseline baseline = test::baseline_of(player);
  Change change;
  change.short_game_share = -0.2;
  change.putting_share = -0.2;
  const Baseline better = changed_finish(baseline, player.skill, golfer_after(player, change).skill);
  const StepValues changed = gain_by(change, PolicyChoice::habit).habit->round;
  const StepValues alone = gain_by(player, better, {}, PolicyChoice::habit).habit->round;
  CHECK(changed.replanned == doctest::Approx(alone.before).epsilon(sum_rounding));
  CHECK(changed.from(ChangeStep::putting) > 0.0);
}

// The other road: putts drawn stroke by stroke.
TEST_CASE("a putt of 20 feet is worth as much less as putts that are drawn take") {
  constexpr int draws = 200000;
  constexpr double feet = 20.0;
  const Player& player = weekend_16();
  Change change;
  change.putting_share = -0.25;
  const Skill after = golfer_after(player, change).skill;
  const Putting was(player.skill.putting);
  const Putting is(after.putting);
  RandomEngine engine(77);
  double sum = 0.0;
  double squares = 0.0;
  for (int i = 0; i < draws; ++i) {
    const double fewer = was.draw_putts(feet, engine) - is.draw_putts(feet, engine);
    sum += fewer;
    squares += fewer * fewer;
  }
  const double mean = sum / draws;
  const double standard_error = std::sqrt((squares / draws - mean * mean) / draws);
  const Baseline baseline = test::baseline_of(player);
  const double told = baseline.putts(feet) - changed_finish(baseline, player.skill, after).putts(feet);
  // Quadrature and drawing differ by less than this (tests/shot): a putt is tabled on straight lines.
  constexpr double tabled = 0.005;
  CHECK(std::abs(told - mean) < 4.0 * standard_error + tabled);
  CHECK(told > 0.0);
}

TEST_CASE("no value of a changed baseline is less than a stroke, or than that of a nearer place") {
  const Player& player = weekend_16();
  Change change;
  change.short_game_share = change.putting_share = -0.9;
  const Baseline better = changed_finish(test::baseline_of(player), player.skill, golfer_after(player, change).skill);
  for (const Lie lie : all_lies) {
    double nearer = 1.0;
    for (double yards = 0.0; yards <= 100.0; yards += 0.5) {
      CHECK(better.strokes(lie, yards) >= nearer);
      nearer = better.strokes(lie, yards);
    }
  }
}

TEST_CASE("a curve that ends a miss to one side saves under the habit, and a best plan that allows for it keeps it") {
  Player slices = weekend_16();
  for (Club& club : slices.clubs) club.direction_mean_rad = radians(4.0);
  Change straight;
  straight.direction_mean_rad = radians(-4.0);
  const GainResult result = gain_by(slices, test::baseline_of(slices), straight, PolicyChoice::both);
  CHECK(result.habit->round.from(ChangeStep::mean_direction) > 0.02);
  CHECK(std::abs(result.best->round.strokes_saved()) < 0.02);
}

TEST_CASE("method table counts the tee shot's steps alone") {
  GainRequest request;
  request.change = change_of_everything();
  request.method = Method::table;
  const StepValues round = compute_gain(test::water_and_bunker(Units::yards), weekend_16(), request).habit->round;
  for (const ChangeStep step :
       {ChangeStep::irons_carry, ChangeStep::club_carry, ChangeStep::short_game, ChangeStep::putting}) {
    CHECK(round.from(step) == 0.0);
  }
  CHECK(round.from(ChangeStep::driver_carry) > 0.0);
  CHECK(round.from(ChangeStep::direction_spread) > 0.0);
  CHECK(std::abs(sum_of_parts(round) - round.strokes_saved()) < sum_rounding);
}

TEST_CASE("a change that no golfer can have is told with all that is wrong with it") {
  GainRequest request;
  request.change.clubs = {{"8-irn", 4.0}, {"7-iron", 1.0}, {"7 Iron", 1.0}};
  request.change.carry_sd_share = 3.0;
  request.change.putting_share = -0.95;
  request.change.poor_strike = 0.95;
  try {
    compute_gain(test::water_and_bunker(Units::yards), weekend_16(), request);
    FAIL("not refused");
  } catch (const InvalidRequest& error) {
    const std::string text = error.what();
    for (const char* words :
         {"change.clubs[0]", "the nearest is 8-iron", "change.clubs[2]", "each club once", "change.carry_sd_share",
          "found 300, expected a number from -90 to 200 percent", "change.putting_share", "change.poor_strike"}) {
      CHECK_MESSAGE(text.find(words) != std::string::npos, words, "\n", text);
    }
  }
  request.change = {};
  request.change.direction_sd_share = 1.9;
  request.change.clubs = {{"driver", -4.0, 0.0, 0.0, 2.0}};
  CHECK_THROWS_WITH_AS(compute_gain(test::water_and_bunker(Units::yards), weekend_16(), request),
                       doctest::Contains("a change that leaves the driver"), InvalidRequest);
}

}  // namespace yardworth
