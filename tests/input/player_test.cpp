#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "input/samples.hpp"
#include "player/skill.hpp"
#include "yardworth/read.hpp"

namespace yardworth {
namespace {

using samples::changed;
using samples::lines;
using samples::Slip;

std::vector<std::string> player_findings(const std::string& text) { return lines(read_player(text, "f").findings); }

const std::vector<Slip> player_slips = {
    {"carry 0", "carry: 131", "carry: 0",
     "10:27: fault: clubs[3].carry: found 0, expected a number from 5 to 420 yards"},
    {"negative carry", "carry: 131", "carry: -131",
     "10:27: fault: clubs[3].carry: found -131, expected a number from 5 to 420 yards"},
    {"absurd carry", "carry: 196", "carry: 421",
     "7:27: fault: clubs[0].carry: found 421, expected a number from 5 to 420 yards"},
    {"clubs out of order", "carry: 131", "carry: 151",
     "10:5: fault: clubs[3]: found a carry of 151 yards after 150 yards, expected clubs longest first"},
    {"twins", "carry: 131", "carry: 148",
     "10:5: advice: clubs[3]: found only 2 yards between 6-iron and 7-iron, expected at least 3 yards"},
    {"gap", "carry: 131", "carry: 120",
     "10:5: advice: clubs[3]: found a gap of 30 yards between 6-iron and 7-iron, expected at most 25 yards"},
    {"same name", "club: 7-iron", "club: 6-Iron",
     "10:5: fault: clubs[3]: found the club \"6-Iron\" again, expected each club once"},
    {"two drivers", "club: 5-wood", "club: strong driver",
     "8:5: fault: clubs[1]: found a second driver, \"strong driver\", expected one driver at most"},
    {"putter", "club: 7-iron", "club: putter",
     "10:5: fault: clubs[3]: found a putter, expected clubs with a carry; putting comes from the baseline"},
    {"direction", "direction_sd: 6.1", "direction_sd: 61",
     "7:70: fault: clubs[0].direction_sd: found 61, expected a number from 0.1 to 30 degrees"},
    {"direction0", "direction_sd: 6.1", "direction_sd: 0",
     "7:70: fault: clubs[0].direction_sd: found 0, expected a number from 0.1 to 30 degrees"},
    {"carry_sd", "carry_sd: 17", "carry_sd: -1",
     "7:52: fault: clubs[0].carry_sd: found -1, expected a number from 0.1 to 100 yards"},
    {"carry_sd big", "carry_sd: 17", "carry_sd: 99",
     "7:52: fault: clubs[0].carry_sd: found 99 yards, expected at most half the carry, 98 yards"},
    {"poor", "poor_strike: 0.08", "poor_strike: 8",
     "7:88: fault: clubs[0].poor_strike: found 8, expected a number from 0 to 0.9"},
    {"roll", "roll: 18", "roll: -3", "7:38: fault: clubs[0].roll: found -3, expected a number from 0 to 150 yards"},
    {"no index", "handicap_index: 16.2\n", "",
     "1:1: fault: handicap_index: found nothing: the required key is missing, expected a Handicap Index, or a band"},
    {"plus", "handicap_index: 16.2", "handicap_index: +2.1",
     "3:17: fault: handicap_index: found +2.1, expected -2.1 for a plus handicap, 2.1 for any other"},
    {"index", "handicap_index: 16.2", "handicap_index: 60",
     "3:17: fault: handicap_index: found 60, expected a number from -10 to 54"},
    {"band", "handicap_index: 16.2", "band: 13-21",
     "3:7: fault: band: found \"13-21\", expected one of tour, scratch, below 6, 6-12, 13-20, bogey, 21 and over; the "
     "nearest is 13-20"},
    {"no carry", "club: 7-iron, carry: 131", "club: 7-iron",
     "10:5: fault: clubs[3].carry: found nothing: the required key is missing, expected a number of yards, or a "
     "club_speed in its place"},
    {"no clubs", "clubs:\n", "klubs:\n",
     "6:1: fault: klubs: found unknown key \"klubs\", expected \"clubs\", the nearest known key"},
    {"gender", "gender: men", "gender: man",
     "4:9: fault: gender: found \"man\", expected men; the words are men, women"},
};

Player whole_player(const std::string& text) {
  const auto reading = read_player(text, "f");
  CHECK(lines(reading.findings) == std::vector<std::string>{});
  REQUIRE(reading.ok());
  return *reading.value;
}

TEST_CASE("every key of a player is read") {
  const Player player = whole_player(samples::player);
  CHECK(player.label == "weekend 16");
  CHECK(player.handicap_index == 16.2);
  CHECK(player.band == Band::from_13_to_20);
  CHECK(player.gender == Gender::men);
  CHECK(player.units == Units::yards);
  REQUIRE(player.clubs.size() == 4);
  const Club& driver = player.clubs[0];
  CHECK(driver.kind == ClubKind::driver);
  CHECK(driver.carry_yd == 196.0);
  CHECK(driver.roll_yd == 18.0);
  CHECK(driver.carry_sd_yd == 17.0);
  CHECK(driver.direction_sd_rad == doctest::Approx(radians(6.1)));
  CHECK(driver.poor_strike == 0.08);
  CHECK(player.clubs[3].name == "7-iron");
  CHECK(player.clubs[3].number == 7);
}

TEST_CASE("each slip in a player file gives its own line") {
  for (const Slip& slip : player_slips) {
    CAPTURE(slip.name);
    const auto reading = read_player(changed(samples::player, slip.from, slip.to), "f");
    CHECK(lines(reading.findings) == std::vector<std::string>{slip.line});
    CHECK(reading.ok() == !has_fault(reading.findings));
  }
}

TEST_CASE("carries alone are a player; the rest is that of the handicap") {
  const Player player = whole_player(
      "format: yardworth/player/1\nlabel: x\nhandicap_index: 24.4\nclubs: [{club: driver, carry: 170}, {club: 7-iron, "
      "carry: 150}]\n");
  const Skill skill = skill_of(24.4, Gender::men);
  const Club expected = complete_club({"driver", 170.0, {}, {}, {}, {}}, 170.0, skill);
  CHECK(player.band == Band::from_21);
  CHECK(player.clubs[0].roll_yd == expected.roll_yd);
  CHECK(player.clubs[0].direction_sd_rad == expected.direction_sd_rad);
  CHECK(player.clubs[0].carry_sd_yd > 0.0);
  CHECK(player.clubs[1].poor_strike > 0.0);
}

TEST_CASE("a band stands in for an index, and goes before the one it would give") {
  const Player by_band = whole_player(changed(samples::player, "handicap_index: 16.2", "band: 21 and over"));
  CHECK_FALSE(by_band.handicap_index.has_value());
  CHECK(by_band.band == Band::from_21);
  CHECK(by_band.skill.driver_carry_yd == skill_of(Band::from_21, Gender::men).driver_carry_yd);
  const Player both = whole_player(changed(samples::player, "handicap_index: 16.2", "handicap_index: 19\nband: bogey"));
  CHECK(both.band == Band::bogey);
  CHECK(both.handicap_index == 19.0);
}

TEST_CASE("a player in metres") {
  // 22 metres are 24.1 yards; 24 metres are 26.2, a wide gap.
  std::string text = changed(samples::player, "units: yards", "units: metres");
  text = changed(text, "carry: 172", "carry: 174");
  text = changed(text, "carry: 150", "carry: 152");
  const Player player = whole_player(text);
  CHECK(player.clubs[0].carry_yd == doctest::Approx(196.0 / 0.9144));
  CHECK(player.clubs[0].carry_sd_yd == doctest::Approx(17.0 / 0.9144));
  CHECK(player.clubs[0].direction_sd_rad == doctest::Approx(radians(6.1)));
  CHECK(
      player_findings(changed(text, "carry: 152", "carry: 150")) ==
      std::vector<std::string>{
          "9:5: advice: clubs[2]: found a gap of 24 metres between 5-wood and 6-iron, expected at most 22.86 metres"});
}

TEST_CASE("a plus handicap is written as a negative number") {
  const Player player = whole_player(changed(samples::player, "16.2", "-2.1"));
  CHECK(player.handicap_index == -2.1);
  CHECK(player.band == Band::below_6);
}

TEST_CASE("more clubs than a round allows is advice") {
  std::string text = "format: yardworth/player/1\nlabel: x\nband: scratch\nclubs:\n";
  for (int i = 0; i < 14; ++i) {
    text += "  - {club: club " + std::to_string(i) + ", carry: " + std::to_string(230 - 10 * i) + "}\n";
  }
  const auto reading = read_player(text, "f");
  CHECK(reading.ok());
  CHECK(
      lines(reading.findings) ==
      std::vector<std::string>{"5:3: advice: clubs: found 14 clubs, expected at most 13 beside the putter in a round"});
}

}  // namespace
}  // namespace yardworth
