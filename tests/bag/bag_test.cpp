#include "yardworth/bag.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <cmath>
#include <string>

#include "bag/estimate.hpp"
#include "support/drawn_log.hpp"
#include "support/scenario.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/flight.hpp"

namespace yardworth {
namespace {

const Mixture drawn_driver{196.0, 17.0, radians(-1.0), radians(6.1), 0.08};
const Mixture drawn_iron{131.0, 9.0, radians(0.5), radians(4.4), 0.06};

bool holds(const Estimate& estimate, double truth) { return estimate.low <= truth && truth <= estimate.high; }

ShotLog log_of_text(const std::string& text) {
  const Reading<ShotLog> reading = read_shot_log(text, "log.csv");
  REQUIRE(reading.ok());
  return *reading.value;
}

bool notes(const BagResult& result, BagNote::Kind kind) {
  for (const BagNote& note : result.notes) {
    if (note.kind == kind) return true;
  }
  return false;
}

}  // namespace

// Nine in ten intervals have the truth in them; of 200 logs, with three standard errors (6.4%) to spare.
TEST_CASE("the engine's own strikes come back with their parameters inside their intervals, nine times in ten") {
  RandomEngine engine(11);
  constexpr int logs = 200;
  int carry = 0, carry_sd = 0, poor = 0, middle = 0, direction_sd = 0;
  for (int i = 0; i < logs; ++i) {
    ShotLog log;
    test::add_drawn_shots(log, "driver", drawn_driver, 40, engine);
    const ClubMeasure club = measure_bag(log).clubs.front();
    carry += holds(club.carry_yd, drawn_driver.carry_yd) ? 1 : 0;
    carry_sd += holds(*club.carry_sd_yd, drawn_driver.carry_sd_yd) ? 1 : 0;
    poor += holds(*club.poor_strike, drawn_driver.poor_strike) ? 1 : 0;
    middle += holds(*club.direction_mean_rad, drawn_driver.direction_mean_rad) ? 1 : 0;
    direction_sd += holds(*club.direction_sd_rad, drawn_driver.direction_sd_rad) ? 1 : 0;
  }
  MESSAGE("of ", logs, " logs of 40 drives: carry ", carry, ", spread ", carry_sd, ", poor strikes ", poor,
          ", mean direction ", middle, ", spread of direction ", direction_sd);
  for (const int inside : {carry, carry_sd, poor, middle, direction_sd}) {
    CHECK(inside >= 0.836 * logs);
    CHECK(inside <= 0.975 * logs);
  }
}

TEST_CASE("clubs are in the order of their carry, with the gaps between them") {
  RandomEngine engine(12);
  ShotLog log;
  test::add_drawn_shots(log, "7-iron", drawn_iron, 30, engine);
  test::add_drawn_shots(log, "driver", drawn_driver, 30, engine);
  const BagResult result = measure_bag(log);
  REQUIRE(result.clubs.size() == 2);
  const ClubMeasure& driver = result.clubs[0];
  const ClubMeasure& iron = result.clubs[1];
  CHECK(driver.club == "driver");
  REQUIRE(driver.gap_yd.has_value());
  CHECK(driver.gap_yd->value == doctest::Approx(driver.carry_yd.value - iron.carry_yd.value));
  CHECK(driver.gap_yd->high - driver.gap_yd->low > driver.carry_yd.high - driver.carry_yd.low);
  CHECK_FALSE(iron.gap_yd.has_value());
  CHECK(driver.borrowed_share == 0.0);
  CHECK(result.outliers.empty());
}

TEST_CASE("totals, smash factor and speed are means over solid strikes") {
  std::string text = "club,carry_yd,total_yd,club_speed_mph,ball_speed_mph\n";
  for (const int carry : {196, 204, 199, 201, 205, 195}) {
    text += fmt::format("driver,{},{},95,133\n", carry, carry + 18);
  }
  text += "driver,90,150,95,100\n";  // poor
  const ClubMeasure club = measure_bag(log_of_text(text)).clubs.front();
  CHECK(club.carry_yd.value == doctest::Approx(200.0).epsilon(1e-3));
  CHECK(club.total_yd->value == doctest::Approx(218.0).epsilon(1e-3));
  CHECK(club.smash_factor->value == doctest::Approx(1.4).epsilon(1e-3));
  CHECK(to_mph(club.club_speed_mps->value) == doctest::Approx(95.0));
  CHECK(club.poor_strike->value == doctest::Approx(1.0 / 7.0).epsilon(0.02));
  CHECK_FALSE(club.direction_sd_rad.has_value());
}

TEST_CASE("outliers are listed and hardly weigh") {
  RandomEngine engine(13);
  ShotLog log;
  test::add_drawn_shots(log, "driver", drawn_driver, 40, engine);
  const double before = measure_bag(log).clubs.front().carry_yd.value;
  for (const double carry : {390.0, 12.0}) {
    Shot shot = log.shots.front();
    shot.line = static_cast<int>(log.shots.size()) + 2;
    shot.carry_yd = carry;
    shot.offline_yd = 0.0;
    log.shots.push_back(shot);
  }
  const BagResult result = measure_bag(log);
  CHECK(result.clubs.front().shots == 42);
  REQUIRE(result.outliers.size() == 2);
  CHECK(result.outliers[0].line == 42);
  CHECK(result.outliers[0].why == OutlyingShot::Why::longer);
  CHECK(result.outliers[1].why == OutlyingShot::Why::shorter);
  CHECK(result.clubs.front().carry_yd.value == doctest::Approx(before).epsilon(1e-3));
}

TEST_CASE("a club of few shots is borrowed from such golfers, with the weight stated") {
  const ShotLog log =
      log_of_text("club,carry_yd,offline_yd\n7-iron,140,1\n7-iron,150,-3\n7-iron,146,9\n7-iron,144,2\n");
  BagRequest request;
  request.golfer = golfer_of_index(16.0, Gender::men);
  const BagResult result = measure_bag(log, request);
  const ClubMeasure& club = result.clubs.front();
  CHECK(club.borrowed_share == doctest::Approx(10.0 / 14.0));
  CHECK(notes(result, BagNote::Kind::borrowed));
  CHECK(result.handicap_index == 16.0);
  double typical_yd = 0.0;
  for (const Club& known : request.golfer->clubs) {
    if (known.name == "7-iron") typical_yd = known.carry_yd;
  }
  CHECK(club.carry_yd.value > std::min(typical_yd, 145.0));
  CHECK(club.carry_yd.value < std::max(typical_yd, 145.0));
  CHECK(club.carry_borrowed_share > 0.0);
  CHECK(club.carry_borrowed_share < 0.5);
  CHECK(club.carry_sd_yd.has_value());

  const BagResult alone = measure_bag(log);
  CHECK(notes(alone, BagNote::Kind::too_few_shots));
  CHECK(alone.clubs.front().carry_yd.value == 145.0);
  CHECK(std::isinf(alone.clubs.front().carry_yd.high));
  CHECK_FALSE(alone.clubs.front().carry_sd_yd.has_value());
}

TEST_CASE("one shot, shots that are all the same, and names that nobody knows") {
  const BagResult one = measure_bag(log_of_text("club,carry_yd\ndriver,200\n"));
  CHECK(one.clubs.front().carry_yd.value == 200.0);
  CHECK(notes(one, BagNote::Kind::too_few_shots));
  BagRequest request;
  request.golfer = golfer_of_index(16.0, Gender::women);
  CHECK(std::isfinite(measure_bag(log_of_text("club,carry_yd\ndriver,200\n"), request).clubs.front().carry_yd.high));
  CHECK(std::isfinite(measure_bag(log_of_text("club,carry_yd\ndriver,0\n"), request).clubs.front().carry_yd.value));

  std::string same = "club,carry_yd\n";
  for (int i = 0; i < 20; ++i) same += "banana,150\n";
  const BagResult result = measure_bag(log_of_text(same));
  CHECK(notes(result, BagNote::Kind::all_the_same));
  CHECK(notes(result, BagNote::Kind::unknown_club));
  CHECK(result.clubs.front().carry_yd.value == doctest::Approx(150.0));
  CHECK(result.clubs.front().carry_sd_yd->value < 1.0);
}

TEST_CASE("a club that the player's file does not have, and carries that no such golfer has, are told of") {
  BagRequest request;
  request.golfer = test::scenario_member("weekend-16-man");
  request.golfer_has_file = true;
  const ShotLog log = log_of_text("club,carry_yd\n2-iron,150\ndriver,90\n5-iron,70\n6-iron,65\n7-iron,60\n8-iron,55\n");
  const BagResult result = measure_bag(log, request);
  CHECK(notes(result, BagNote::Kind::not_in_bag));
  request.golfer->clubs.clear();
  CHECK_THROWS_AS(measure_bag(log, request), InvalidRequest);
}

TEST_CASE("metres that are called yards are noticed by the flights behind them, and odd smash factors are told of") {
  // Launches and what the flight of the model makes of them, in metres.
  std::string metres = "club,carry_yd,ball_speed_mph,launch_deg,spin_rpm\n";
  std::string yards = metres;
  for (const double speed : {131.0, 133.0, 135.0, 128.0, 134.0, 136.0}) {
    Launch launch;
    launch.ball_speed_mps = from_mph(speed);
    launch.launch_rad = radians(13.0);
    launch.spin_radps = from_rpm(2900.0);
    const double carry_m = fly(launch, FlightConditions{}).carry_m;
    metres += fmt::format("driver,{:.1f},{},13,2900\n", carry_m, speed);
    yards += fmt::format("driver,{:.1f},{},13,2900\n", to_yards(carry_m, Units::metres), speed);
  }
  CHECK(notes(measure_bag(log_of_text(metres)), BagNote::Kind::like_metres));
  CHECK_FALSE(notes(measure_bag(log_of_text(yards)), BagNote::Kind::like_metres));
  CHECK(notes(measure_bag(log_of_text("club,carry_yd,club_speed_mph,ball_speed_mph\ndriver,200,42,135\n")),
              BagNote::Kind::odd_smash));
}

TEST_CASE("the same log gives the same numbers, whatever the order of its clubs") {
  RandomEngine engine(14);
  ShotLog log;
  test::add_drawn_shots(log, "driver", drawn_driver, 20, engine);
  test::add_drawn_shots(log, "7-iron", drawn_iron, 20, engine);
  ShotLog turned = log;
  std::stable_sort(turned.shots.begin(), turned.shots.end(),
                   [](const Shot& a, const Shot& b) { return a.club > b.club; });
  const BagResult a = measure_bag(log);
  const BagResult b = measure_bag(turned);
  for (std::size_t i = 0; i < a.clubs.size(); ++i) CHECK(a.clubs[i].carry_yd.value == b.clubs[i].carry_yd.value);
}

TEST_CASE("intervals of handbook formulas") {
  // R 4.2: qt(0.95, 9) = 1.833113; 4 / sqrt(10) standard error.
  const Estimate mean = normal_estimate(10.0, 16.0 / 10.0, 9.0);
  CHECK(mean.high == doctest::Approx(10.0 + 1.833113 * 4.0 / std::sqrt(10.0)).epsilon(1e-6));
  // R 4.2: qchisq(c(0.05, 0.95), 9) = 3.325113, 16.918978.
  const Estimate spread = spread_estimate(2.0, 9.0);
  CHECK(spread.low == doctest::Approx(2.0 * std::sqrt(9.0 / 16.918978)).epsilon(1e-6));
  CHECK(spread.high == doctest::Approx(2.0 * std::sqrt(9.0 / 3.325113)).epsilon(1e-6));
  // R 4.2: qbeta(c(0.05, 0.95), 2.5, 18.5) = 0.0297..., checked against R itself where it is installed.
  const Estimate share = share_estimate(2.0, 20.0);
  CHECK(share.value == 0.1);
  CHECK(share.low < 0.1);
  CHECK(share.high > 0.1);
  CHECK(std::isinf(normal_estimate(1.0, 1.0, 0.0).high));
}

}  // namespace yardworth
