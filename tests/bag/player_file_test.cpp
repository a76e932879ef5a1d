#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "support/drawn_log.hpp"
#include "support/scenario.hpp"
#include "support/words.hpp"
#include "yardworth/bag.hpp"
#include "yardworth/read.hpp"

namespace yardworth {
namespace {

BagResult measured_clubs(double driver_yd, const char* other = "7-iron") {
  RandomEngine engine(41);
  ShotLog log;
  test::add_drawn_shots(log, "Driver", {driver_yd, 15.0, 0.0, radians(5.0), 0.08}, 30, engine);
  test::add_drawn_shots(log, other, {138.0, 8.0, 0.0, radians(4.0), 0.05}, 30, engine);
  BagRequest request;
  request.golfer = golfer_of_index(16.2, Gender::men);
  return measure_bag(log, request);
}

Player read_back(const Reading<std::string>& text) {
  for (const Diagnostic& finding : text.findings) MESSAGE(to_line(finding));
  REQUIRE(text.ok());
  const Reading<Player> player = read_player(*text.value, "written.yaml");
  REQUIRE(player.ok());
  return *player.value;
}

const Club& club_named(const Player& player, const std::string& name) {
  const auto found =
      std::find_if(player.clubs.begin(), player.clubs.end(), [&](const Club& club) { return club.name == name; });
  REQUIRE(found != player.clubs.end());
  return *found;
}

}  // namespace

TEST_CASE("a new player file has the numbers that were measured") {
  const BagResult result = measured_clubs(205.0);
  Player golfer = golfer_of_index(16.2, Gender::women);
  golfer.label = "a \"label\"";
  const Player player = read_back(write_measured_player(result, golfer, std::nullopt, "new.yaml"));
  CHECK(player.handicap_index == 16.2);
  CHECK(player.gender == Gender::women);
  REQUIRE(player.clubs.size() == 2);
  const Club& driver = club_named(player, "Driver");
  CHECK(driver.carry_yd == doctest::Approx(result.clubs[0].carry_yd.value).epsilon(1e-3));
  // 30 shots beside 10 of what is typical (docs/model.md, "Few shots").
  const Club& typical = club_named(golfer, "driver");
  const auto drawn = [](double measured, double of_typical) { return 0.75 * measured + 0.25 * of_typical; };
  const auto drawn_spread = [&](double measured, double of_typical) {
    return std::sqrt(drawn(measured * measured, of_typical * of_typical));
  };
  const ClubMeasure& measured = result.clubs[0];
  CHECK(driver.carry_sd_yd ==
        doctest::Approx(drawn_spread(measured.carry_sd_yd->value, typical.carry_sd_yd)).epsilon(1e-2));
  CHECK(driver.direction_sd_rad ==
        doctest::Approx(drawn_spread(measured.direction_sd_rad->value, typical.direction_sd_rad)).epsilon(1e-2));
  CHECK(driver.poor_strike == doctest::Approx(drawn(measured.poor_strike->value, typical.poor_strike)).epsilon(1e-2));
}

TEST_CASE("a miss to one side is written where it is sure, to the side that it is on, and else left out") {
  RandomEngine engine(43);
  ShotLog log;
  test::add_drawn_shots(log, "driver", {205.0, 15.0, radians(6.0), radians(4.0), 0.08}, 40, engine);
  test::add_drawn_shots(log, "7-iron", {138.0, 8.0, radians(-5.0), radians(3.0), 0.05}, 40, engine);
  test::add_drawn_shots(log, "9-iron", {118.0, 7.0, 0.0, radians(3.0), 0.05}, 40, engine);
  BagRequest request;
  request.golfer = golfer_of_index(16.2, Gender::men);
  const BagResult result = measure_bag(log, request);
  const Player player =
      read_back(write_measured_player(result, golfer_of_index(16.2, Gender::men), std::nullopt, "new.yaml"));
  CHECK(degrees(club_named(player, "driver").direction_mean_rad) == doctest::Approx(6.0).epsilon(0.3));
  CHECK(degrees(club_named(player, "7-iron").direction_mean_rad) == doctest::Approx(-5.0).epsilon(0.3));
  CHECK(club_named(player, "9-iron").direction_mean_rad == 0.0);
}

TEST_CASE("an existing player file keeps its comments, other clubs and keys, in braces and in blocks") {
  const std::string member = test::text_of("courses/heron-ferry/members/weekend-16-man.yaml");
  const BagResult result = measured_clubs(205.0);
  const auto text = write_measured_player(result, test::scenario_member("weekend-16-man"), member, "w.yaml");
  const Player player = read_back(text);
  CHECK(player.label == "weekend 16");
  CHECK(player.clubs.size() == 12);
  CHECK(test::says(*text.value, member.substr(0, member.find("format:"))));
  CHECK(test::says(*text.value, "{club: 5-wood, carry: 172, roll: 12}"));
  CHECK(club_named(player, "driver").roll_yd == 18.0);
  CHECK(club_named(player, "7-iron").carry_yd == doctest::Approx(result.clubs[1].carry_yd.value).epsilon(1e-3));

  const std::string block =
      "format: yardworth/player/1 # first\nclubs:\n  # long\n  - club: driver\n    carry: 150 # from memory\n\n"
      "  # short\n  - club_speed: 70\n    club: 7-iron\n# last\nlabel: \xC3\xA9\nband: bogey\n";
  const auto changed = write_measured_player(result, golfer_of_index(16.2, Gender::men), block, "b.yaml");
  const Player from_block = read_back(changed);
  CHECK(from_block.label == "\xC3\xA9");
  CHECK(club_named(from_block, "7-iron").carry_yd == doctest::Approx(result.clubs[1].carry_yd.value).epsilon(1e-3));
  for (const char* comment : {"# first", "  # long", "# from memory", "  # short", "# last"}) {
    CHECK(test::says(*changed.value, comment));
  }
}

TEST_CASE("clubs move to their place by carry, and new ones are added") {
  const std::string text =
      "format: yardworth/player/1\nlabel: a\nband: bogey\nunits: metres\nclubs:\n  - {club: 3-wood, carry: 180}\n"
      "  - {club: driver, carry: 150}  # short\n";
  const Player player =
      read_back(write_measured_player(measured_clubs(230.0), golfer_of_index(16.2, Gender::men), text, "m.yaml"));
  REQUIRE(player.clubs.size() == 3);
  CHECK(player.clubs[0].name == "driver");
  CHECK(player.clubs[0].carry_yd == doctest::Approx(230.0).epsilon(0.05));
  CHECK(player.clubs[2].name == "7-iron");
}

TEST_CASE("a player file that would have faults is not written, and its faults are told") {
  const Player golfer = golfer_of_index(16.2, Gender::men);
  const auto two_drivers = write_measured_player(measured_clubs(205.0, "driver B"), golfer, std::nullopt, "two.yaml");
  REQUIRE_FALSE(two_drivers.ok());
  CHECK(test::says(to_line(two_drivers.findings.front()), "a second driver"));
  CHECK_FALSE(write_measured_player(measured_clubs(205.0), golfer, "format: yardworth/player/1\n", "bad.yaml").ok());
  const std::string one_line =
      "format: yardworth/player/1\nlabel: a\nband: bogey\nclubs: [{club: driver, carry: 150}, {club: pw, carry: 90}]\n";
  const auto refused = write_measured_player(measured_clubs(205.0), golfer, one_line, "line.yaml");
  REQUIRE_FALSE(refused.ok());
  CHECK(test::says(to_line(refused.findings.front()), "one club a line"));
}

}  // namespace yardworth
