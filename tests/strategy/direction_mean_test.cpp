#include <doctest/doctest.h>

#include <cmath>
#include <cstdio>

#include "course/set_up.hpp"
#include "input/derived_table.hpp"
#include "strategy/follow.hpp"
#include "strategy/strikes.hpp"
#include "support/courses.hpp"
#include "support/prepared_hole.hpp"
#include "yardworth/gain.hpp"
#include "yardworth/read.hpp"

// Golfers whose shots start to one side of where they are aimed. What is held here is geometry: a mirrored golfer on a
// mirrored hole, and that where a shot is aimed costs nothing.

namespace yardworth {
namespace {

Player with_mean(Player player, double degrees_right) {
  player.skill.direction_mean_rad = radians(degrees_right);
  for (Club& club : player.clubs) club.direction_mean_rad = radians(degrees_right);
  return player;
}

Player standard_with_mean(double degrees_right) {
  return with_mean(standard_player(Band::from_13_to_20, Gender::men), degrees_right);
}

Baseline own_baseline() { return Baseline(derived_table(Band::from_13_to_20, Gender::men)); }

Hole guarded_hole(Side side, double turn) {
  Hole hole = test::open_hole(1, 390.0);
  hole.doglegs = {{230.0, turn}};
  hole.hazards = {hazard_beside(HazardKind::penalty_area, side, 150.0, 260.0, 22.0, 60.0)};
  return hole;
}

HoleGain gain_on(const Hole& hole, const Player& player, const Change& change, PolicyChoice policy) {
  GainRequest request;
  request.change = change;
  request.policy = policy;
  request.describe_play = true;
  return compute_gain(test::course_of({hole}), player, own_baseline(), request).answer().holes.front();
}

}  // namespace

TEST_CASE("a golfer who misses to the left plays a hole as one who misses to the right plays its mirror image") {
  const Hole right = guarded_hole(Side::right, radians(20.0));
  const Hole left = guarded_hole(Side::left, radians(-20.0));
  for (const PolicyChoice policy : {PolicyChoice::habit, PolicyChoice::best}) {
    CAPTURE(name(policy));
    const HoleGain misses_right = gain_on(right, standard_with_mean(4.0), {20.0, 6.0}, policy);
    const HoleGain misses_left = gain_on(left, standard_with_mean(-4.0), {20.0, 6.0}, policy);
    // Carries go by turns along the directions, from left to right; so mirror images are sums over other strikes.
    CHECK(std::abs(misses_right.strokes.before - misses_left.strokes.before) < 0.02);
    CHECK(std::abs(misses_right.strokes.replanned - misses_left.strokes.replanned) < 0.02);
    CHECK(std::abs(misses_right.before.penalty - misses_left.before.penalty) < 0.01);
    // On the other side the water costs less.
    const HoleGain away = gain_on(right, standard_with_mean(-4.0), {20.0, 6.0}, policy);
    if (policy == PolicyChoice::habit) CHECK(away.before.penalty < misses_right.before.penalty - 0.05);
  }
}

TEST_CASE("a mean direction of nothing changes not a digit") {
  const Hole hole = guarded_hole(Side::right, 0.0);
  const Player player = standard_player(Band::from_13_to_20, Gender::men);
  const HoleGain without = gain_on(hole, player, {20.0, 6.0}, PolicyChoice::best);
  const HoleGain with = gain_on(hole, standard_with_mean(0.0), {20.0, 6.0}, PolicyChoice::best);
  CHECK(with.strokes.before == without.strokes.before);
  CHECK(with.strokes.followed() == without.strokes.followed());
  CHECK(with.strokes.replanned == without.strokes.replanned);
}

// Elementary: an angle that does not depend on the carry turns the mean of all finishes by itself.
TEST_CASE("the habit's tee shots end to the side by the mean direction, the best plan's where they would") {
  const Hole hole = test::open_hole(1, 400.0);
  const Baseline baseline = own_baseline();
  const test::Mesh mesh;
  const double mean_deg = 5.0;
  const auto mean_finish = [&](const HoleModel& model, const Action& action) {
    Point mean{0.0, 0.0};
    for_each_strike(model, model.tee_state(), action, 1,
                    [&](const Rest& rest, double weight) { mean = mean + weight * rest.at; });
    return mean;
  };
  const test::PreparedHole here(hole, Firmness::normal, 0, standard_with_mean(mean_deg), baseline, mesh);
  const auto tee = static_cast<std::size_t>(here.model.tee_state());
  const Action habit = habit_action(here.model, Lie::tee, here.model.tee());
  const Swing swing = here.model.swing_of(Lie::tee, habit);
  CHECK(HoleModel::aimed_heading_of(swing, habit) == 0.0);
  const Point finish = mean_finish(here.model, habit);
  CHECK(degrees(std::atan2(finish.x, finish.y)) == doctest::Approx(mean_deg).epsilon(0.03));
  const Action best = test::best_policy(here.model).exact.policy[tee];
  const Swing planned = here.model.swing_of(Lie::tee, best);
  CHECK(best.allows_for_mean);
  CHECK(HoleModel::struck_heading_of(planned, best) == HoleModel::heading_of(planned, best));
  CHECK(HoleModel::aimed_heading_of(planned, best) ==
        doctest::Approx(HoleModel::heading_of(planned, best) - radians(mean_deg)));
  CHECK(std::abs(mean_finish(here.model, best).x) < 4.0);
}

TEST_CASE("where a shot is aimed is free: the best plan of a bare hole costs the same with a mean direction") {
  for (const double length : {160.0, 400.0, 520.0}) {
    const Hole hole = test::open_hole(1, length);
    const HoleGain without =
        gain_on(hole, standard_player(Band::from_13_to_20, Gender::men), {20.0, 6.0}, PolicyChoice::best);
    for (const double mean : {-3.0, 6.0}) {
      CAPTURE(length);
      CAPTURE(mean);
      const HoleGain best = gain_on(hole, standard_with_mean(mean), {20.0, 6.0}, PolicyChoice::best);
      const HoleGain habit = gain_on(hole, standard_with_mean(mean), {20.0, 6.0}, PolicyChoice::habit);
      std::printf("%3.0f yards, mean direction %+.0f degrees: best plan %.4f and %.4f without, habit %.4f\n", length,
                  mean, best.strokes.before, without.strokes.before, habit.strokes.before);
      // States that hardly a ball comes to are left to the start of the search, the habit.
      CHECK(std::abs(best.strokes.before - without.strokes.before) < 0.01);
      CHECK(std::abs(best.strokes.replanned - without.strokes.replanned) < 0.01);
      CHECK(habit.strokes.before > without.strokes.before + 0.01);
    }
  }
}

TEST_CASE("more carry never loses strokes on a hole without hazards with a mean direction too") {
  // As tests/gain/change_test.cpp has it for golfers without one.
  constexpr double accuracy = 0.01;
  double worst = 1.0;
  for (const double length : {150.0, 185.0, 345.0, 400.0, 500.0}) {
    const Hole hole = test::open_hole(1, length);
    for (const double mean : {-6.0, 3.0}) {
      Player player = standard_with_mean(mean);
      // Irons that miss to the other side, and a club between that does not at all.
      for (std::size_t i = 4; i < player.clubs.size(); ++i)
        player.clubs[i].direction_mean_rad *= i % 2 == 0 ? -0.5 : 0.0;
      for (const PolicyChoice policy : {PolicyChoice::habit, PolicyChoice::best}) {
        CAPTURE(length);
        CAPTURE(mean);
        CAPTURE(name(policy));
        const StepValues strokes = gain_on(hole, player, {20.0, 6.0}, policy).strokes;
        for (const double part : {strokes.from_tee(), strokes.from_irons(), strokes.from_replanning()}) {
          CHECK(part >= -accuracy);
          worst = std::min(worst, part);
        }
        CHECK(strokes.strokes_saved() >= -accuracy);
      }
    }
  }
  std::printf("least part of a saving on a hole with mean directions %+.6f\n", worst);
}

TEST_CASE("a mean direction is read for all clubs, and for one of them, in degrees") {
  const std::string text =
      "format: yardworth/player/1\nlabel: x\nhandicap_index: 16\ndirection_mean: 2.5\nclubs:\n"
      "  - {club: driver, carry: 200, direction_mean: -4}\n  - {club: 3-wood, carry: 185}\n";
  const Reading<Player> reading = read_player(text, "f");
  REQUIRE(reading.ok());
  CHECK(reading.value->skill.direction_mean_rad == doctest::Approx(radians(2.5)));
  CHECK(reading.value->clubs[0].direction_mean_rad == doctest::Approx(radians(-4.0)));
  CHECK(reading.value->clubs[1].direction_mean_rad == doctest::Approx(radians(2.5)));
  const std::string wrong =
      "format: yardworth/player/1\nlabel: x\nhandicap_index: 16\ndirection_mean: 25\nclubs:\n"
      "  - {club: driver, carry: 200, direction_mean: left}\n  - {club: 3-wood, carry: 185, direction_mean: -20.5}\n";
  const Reading<Player> faults = read_player(wrong, "f");
  REQUIRE(faults.findings.size() == 3);
  CHECK(to_line(faults.findings[0]) ==
        "f:4:17: fault: direction_mean: found 25, expected a number from -20 to 20 degrees");
  CHECK(to_line(faults.findings[1]) ==
        "f:6:48: fault: clubs[0].direction_mean: found \"left\", expected a number from -20 to 20 degrees");
  CHECK(to_line(faults.findings[2]) ==
        "f:7:48: fault: clubs[1].direction_mean: found -20.5, expected a number from -20 to 20 degrees");
}

}  // namespace yardworth
