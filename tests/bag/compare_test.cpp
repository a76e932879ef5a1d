#include <doctest/doctest.h>
#include <fmt/format.h>

#include <boost/random/normal_distribution.hpp>
#include <cmath>
#include <string>
#include <vector>

#include "bag/equal_speed.hpp"
#include "bag/estimate.hpp"
#include "support/drawn_log.hpp"
#include "yardworth/bag.hpp"

namespace yardworth {
namespace {

const Mixture before_lessons{196.0, 17.0, 0.0, radians(6.1), 0.08};

ShotLog drawn_log_of(const std::string& file, const Mixture& truth, int count, RandomEngine& engine) {
  ShotLog log;
  log.file = file;
  test::add_drawn_shots(log, "driver", truth, count, engine);
  return log;
}

Mixture longer_by(double yards) {
  Mixture after = before_lessons;
  after.carry_yd += yards;
  return after;
}

// Shots at speeds about a mean that carry what such a speed does, and something on top.
ShotLog speed_log(double mean_mph, double extra_yd, int count, RandomEngine& engine) {
  ShotLog log;
  log.file = fmt::format("{} mph", mean_mph);
  log.clubs = {"driver"};
  log.sessions = {""};
  boost::random::normal_distribution<double> normal;
  for (int i = 0; i < count; ++i) {
    Shot shot;
    shot.line = i + 2;
    const double mph = mean_mph + 2.0 * normal(engine);
    shot.club_speed_mps = from_mph(mph);
    shot.carry_yd = 196.0 + 2.5 * (mph - 94.0) + extra_yd + 6.0 * normal(engine);
    log.shots.push_back(shot);
  }
  return log;
}

}  // namespace

// Student's sleep data (Biometrika 6, 1908; dataset `sleep` of R): t.test(extra ~ group) of R gives t = -1.8608 and
// 17.776 degrees of freedom for the difference -1.58 (from memory).
TEST_CASE("a difference is Welch's") {
  const std::vector<double> one = {0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0};
  const std::vector<double> other = {1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};
  const std::vector<double> whole(10, 1.0);
  const Estimate change = difference(*mean_estimate(one, whole), *mean_estimate(other, whole));
  CHECK(change.value == doctest::Approx(-1.58));
  CHECK(change.value / change.standard_error == doctest::Approx(-1.8608).epsilon(1e-4));
  CHECK(change.freedom == doctest::Approx(17.776).epsilon(1e-4));
}

TEST_CASE("a difference of numbers that are known as good as exactly has its degrees of freedom") {
  const Estimate change = difference({2.0, 2.0, 2.0, 1e-89, 5.0}, {1.0, 1.0, 1.0, 1e-89, 5.0});
  CHECK(change.value == 1.0);
  CHECK(change.freedom == doctest::Approx(10.0));
}

TEST_CASE("a large change is real, none is not, and more shots would tell") {
  RandomEngine engine(21);
  const ShotLog before = drawn_log_of("before.csv", before_lessons, 40, engine);
  const BagComparison large = compare_bags(before, drawn_log_of("after.csv", longer_by(20.0), 40, engine));
  REQUIRE(large.changes.size() == 1);
  CHECK(large.changes[0].verdict == ClubChange::Verdict::real);
  CHECK(large.changes[0].carry_yd.value == doctest::Approx(20.0).epsilon(0.4));
  CHECK_FALSE(large.changes[0].more_shots.has_value());
  CHECK(large.before == "before.csv");

  const BagComparison small = compare_bags(before, drawn_log_of("after.csv", longer_by(4.0), 12, engine));
  const ClubChange& change = small.changes[0];
  if (change.verdict == ClubChange::Verdict::cannot_tell && change.more_shots) {
    const double shots = 2.0 / (1.0 / 40.0 + 1.0 / 12.0);
    const double more = static_cast<double>(*change.more_shots);
    CHECK(std::abs(change.carry_yd.value) > 1.6 * change.carry_yd.standard_error * std::sqrt(shots / (shots + more)));
  }
  CHECK(change.carry_sd_ratio->low < 1.0);
  CHECK(change.carry_sd_ratio->high > 1.0);
  CHECK(change.poor_strike->low < 0.0);
  CHECK(change.poor_strike->high > 0.0);
}

TEST_CASE("the same shots twice have not changed") {
  RandomEngine engine(22);
  const ShotLog log = drawn_log_of("log.csv", before_lessons, 30, engine);
  const ClubChange change = compare_bags(log, log).changes.front();
  CHECK(change.carry_yd.value == 0.0);
  CHECK(change.verdict == ClubChange::Verdict::cannot_tell);
  CHECK_FALSE(change.more_shots.has_value());
  CHECK(change.carry_sd_ratio->value == 1.0);
}

TEST_CASE("shots that were hit harder were not hit better") {
  RandomEngine engine(23);
  const ShotLog before = speed_log(94.0, 0.0, 40, engine);
  const ClubChange harder = compare_bags(before, speed_log(98.0, 0.0, 40, engine)).changes.front();
  CHECK(harder.carry_yd.low > 0.0);
  REQUIRE(harder.at_equal_club_speed_yd.has_value());
  CHECK(harder.at_equal_club_speed_yd->low < 0.0);
  CHECK(harder.at_equal_club_speed_yd->high > 0.0);
  CHECK(harder.verdict == ClubChange::Verdict::cannot_tell);
  CHECK(to_mph(harder.club_speed_mps->value) == doctest::Approx(4.0).epsilon(0.3));

  // 30 mph faster with spreads of 2: a line through either log says nothing of the other's speeds.
  const ClubChange other = compare_bags(before, speed_log(124.0, 0.0, 40, engine)).changes.front();
  CHECK(!other.at_equal_club_speed_yd.has_value());
  CHECK(other.club_speed_mps.has_value());

  const ClubChange better = compare_bags(before, speed_log(94.0, 12.0, 40, engine)).changes.front();
  CHECK(better.at_equal_club_speed_yd->value == doctest::Approx(12.0).epsilon(0.3));
  CHECK(better.verdict == ClubChange::Verdict::real);
}

TEST_CASE("carries that follow from the speed alone leave nothing to tell at equal speed, whatever their spreads") {
  ShotLog before, after;
  for (ShotLog* log : {&before, &after}) {
    log->file = log == &before ? "a" : "b";
    log->clubs = {"driver"};
    log->sessions = {""};
    for (int i = 0; i < 8; ++i) {
      Shot shot;
      const double mps = 40.0 + i + (log == &after ? 2.0 : 0.0);
      shot.club_speed_mps = mps;
      shot.carry_yd = 5.0 * mps;
      log->shots.push_back(shot);
    }
  }
  const ClubChange change = compare_bags(before, after).changes.front();
  REQUIRE(change.at_equal_club_speed_yd.has_value());
  CHECK(change.at_equal_club_speed_yd->value == doctest::Approx(0.0).epsilon(1e-6));
}

TEST_CASE("clubs on one side alone, and clubs of few shots, are told of") {
  RandomEngine engine(24);
  ShotLog before = drawn_log_of("before.csv", before_lessons, 20, engine);
  ShotLog after = drawn_log_of("after.csv", before_lessons, 3, engine);
  test::add_drawn_shots(before, "7-iron", {131.0, 9.0, 0.0, radians(4.4), 0.06}, 10, engine);
  test::add_drawn_shots(after, "8-iron", {120.0, 9.0, 0.0, radians(4.4), 0.06}, 10, engine);
  BagRequest request;
  request.golfer = golfer_of_index(16.0, Gender::men);
  const BagComparison comparison = compare_bags(before, after, request);
  REQUIRE(comparison.changes.size() == 1);
  CHECK(comparison.changes[0].verdict == ClubChange::Verdict::too_few_shots);
  CHECK(comparison.only_before == std::vector<std::string>{"7-iron"});
  CHECK(comparison.only_after == std::vector<std::string>{"8-iron"});
}

TEST_CASE("two clubs of a log are compared as one that changed") {
  RandomEngine engine(25);
  ShotLog log;
  log.file = "heads.csv";
  test::add_drawn_shots(log, "driver A", before_lessons, 30, engine);
  test::add_drawn_shots(log, "driver B", longer_by(25.0), 30, engine);
  const BagComparison comparison = compare_clubs(*shots_of_club(log, "driver a"), *shots_of_club(log, "Driver B"));
  REQUIRE(comparison.changes.size() == 1);
  CHECK(comparison.changes[0].club == "driver B against driver A");
  CHECK(comparison.changes[0].verdict == ClubChange::Verdict::real);
}

}  // namespace yardworth
