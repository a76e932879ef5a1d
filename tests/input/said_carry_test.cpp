#include <doctest/doctest.h>

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "cli/command.hpp"
#include "input/samples.hpp"
#include "player/skill.hpp"
#include "support/words.hpp"
#include "yardworth/report.hpp"

// A player file that says how a club is struck in place of its carry.

namespace yardworth {
namespace {

using test::says;

const std::string struck = R"(format: yardworth/player/1
label: by speed
handicap_index: 16.2
units: yards
clubs:
  - {club: driver, club_speed: 94, attack_deg: -2, dynamic_loft_deg: 16, path_deg: -3, face_deg: 1, roll: 18}
  - {club: 5-wood, carry: 172}
  - {club: 7i, club_speed: 74}
  - {club: pitching wedge, club_speed: 68, attack_deg: -6}
)";

Player read_struck(const std::string& text) {
  const auto reading = read_player(text, "f");
  REQUIRE_MESSAGE(reading.ok(), (reading.findings.empty() ? "" : to_line(reading.findings.front())));
  return *reading.value;
}

std::vector<std::string> faults_in(const std::string& text) {
  std::vector<Diagnostic> faults;
  for (const Diagnostic& finding : read_player(text, "f").findings) {
    if (finding.severity == Severity::fault) faults.push_back(finding);
  }
  return samples::lines(faults);
}

// By the command, a second road: other options, other units, its own report.
double carry_of_command(std::vector<std::string> arguments) {
  arguments.insert(arguments.begin(), "delivery");
  arguments.insert(arguments.end(), {"--format", "json"});
  const cli::Outcome outcome = cli::run(arguments, {});
  REQUIRE_MESSAGE(outcome.status == 0, outcome.err);
  return nlohmann::json::parse(outcome.out)["flight"]["carry_yd"];
}

TEST_CASE("a strike in a file carries as the command delivery tells") {
  const Player player = read_struck(struck);
  REQUIRE(player.clubs.size() == 4);
  CHECK(player.clubs[0].carry_yd ==
        doctest::Approx(carry_of_command({"--club-speed-mph", "94", "--attack-deg", "-2", "--dynamic-loft-deg", "16",
                                          "--path-deg", "-3", "--face-deg", "1"}))
            .epsilon(1e-12));
  CHECK(player.clubs[1].carry_yd == 172.0);
  CHECK(player.clubs[2].carry_yd ==
        doctest::Approx(carry_of_command({"--club", "7-iron", "--club-speed-mph", "74"})).epsilon(1e-12));
  CHECK(player.clubs[3].carry_yd ==
        doctest::Approx(carry_of_command({"--club", "pitching wedge", "--club-speed-mph", "68", "--attack-deg", "-6"}))
            .epsilon(1e-12));
}

TEST_CASE("what a strike leaves out of a club is of the skill, and what a file leaves out of a strike is recorded") {
  const Player player = read_struck(struck);
  CHECK(player.clubs[0].roll_yd == 18.0);
  const Club same = complete_club({"7i", player.clubs[2].carry_yd, {}, {}, {}, {}}, player.clubs[0].carry_yd,
                                  skill_of(16.2, Gender::men));
  CHECK(player.clubs[2].roll_yd == same.roll_yd);
  CHECK(player.clubs[2].carry_sd_yd == same.carry_sd_yd);
  REQUIRE(player.strikes.size() == 3);
  const auto typical = [&](std::size_t i) {
    std::string keys;
    for (const StruckClub::Number& number : player.strikes[i].numbers) keys += number.typical ? number.key + " " : "";
    return keys;
  };
  CHECK(typical(0).empty());
  CHECK(player.strikes[1].club == "7i");
  CHECK(typical(1) == "attack_deg dynamic_loft_deg path_deg face_deg ");
  CHECK(typical(2) == "dynamic_loft_deg path_deg face_deg ");
  CHECK(player.strikes[2].numbers[1].value == doctest::Approx(-6.0));
  CHECK(player.strikes[2].numbers[0].value == doctest::Approx(68.0));
}

TEST_CASE("the speed of a file in metres is in metres a second") {
  const std::string text =
      "format: yardworth/player/1\nlabel: x\nhandicap_index: 16.2\nunits: metres\n"
      "clubs: [{club: driver, club_speed: 42}]\n";
  const Player player = read_struck(text);
  // 42 m/s at 0.44704 m/s for a mile an hour.
  CHECK(player.clubs[0].carry_yd ==
        doctest::Approx(carry_of_command({"--club-speed-mph", "93.95132426628490"})).epsilon(1e-9));
  CHECK(says(summarise(player), "driver at 42.0 m/s, carry "));
  CHECK(
      faults_in(samples::changed(text, "club_speed: 42", "club_speed: 94")) ==
      std::vector<std::string>{"5:36: fault: clubs[0].club_speed: found 94, expected a number from 4.47 to 71.53 m/s"});
}

TEST_CASE("what is understood has carry, roll and total, and names what is typical") {
  const Player player = read_struck(struck);
  const std::string words = summarise(player);
  CHECK_MESSAGE(says(words, "driver at 94.0 mph, carry "), words);
  CHECK(says(words, " and roll 18.0, "));
  CHECK(says(words, "7i at 74.0 mph"));
  CHECK(says(words, "(typical: attack angle -4.3, dynamic loft 25.0, club path 0.0, face angle 0.0, in degrees)"));
  CHECK(says(words, "(typical: dynamic loft 36.0, club path 0.0, face angle 0.0, in degrees)"));
}

TEST_CASE("every fault of a strike is told at once, at its place") {
  std::string text = samples::changed(struck, "club_speed: 94, attack_deg: -2", "club_speed: 300, attack_deg: -99");
  text = samples::changed(text, "carry: 172", "carry: 172, club_speed: 90");
  text = samples::changed(text, "club: 7i, club_speed: 74", "club: 52-degree wedge, club_speed: 74");
  text = samples::changed(text, "club_speed: 68, attack_deg: -6", "club_speed: fast, face_dge: 1");
  CHECK(
      faults_in(text) ==
      std::vector<std::string>{
          "6:32: fault: clubs[0].club_speed: found 300, expected a number from 10 to 160 mph",
          "6:49: fault: clubs[0].attack_deg: found -99, expected a number from -15 to 15 degrees",
          "7:27: fault: clubs[1].carry: found a carry beside a club_speed, expected one of them, from which the other "
          "follows",
          "8:41: fault: clubs[2].club_speed: found the speed of a 52-degree wedge, expected a carry; the flight is "
          "known of driver, 3-wood, 5-wood, 4-hybrid, 4-iron, 5-iron, 6-iron, 7-iron, 8-iron, 9-iron, pitching wedge "
          "alone",
          "9:40: fault: clubs[3].club_speed: found \"fast\", expected a number from 10 to 160 mph",
          "9:46: fault: clubs[3].face_dge: found unknown key \"face_dge\", expected \"face_deg\", the nearest known "
          "key",
      });
}

TEST_CASE("a strike that cannot be, or that is only half said, is named where the file says it") {
  struct Row {
    const char* from;
    const char* to;
    std::vector<std::string> faults;
  };
  for (
      const Row& row : {
          Row{"club_speed: 74",
              "club_speed: 74, dynamic_loft_deg: -1",
              {"8:50: fault: clubs[2].dynamic_loft_deg: found -1, expected a number from 0 to 70 degrees"}},
          Row{"attack_deg: -6",
              "attack_deg: 3, dynamic_loft_deg: 2",
              {"9:77: fault: clubs[3].dynamic_loft_deg: found a dynamic loft of 2 degrees, expected a number from the "
               "attack angle, 3, to 70 degrees"}},
          Row{"attack_deg: -2, dynamic_loft_deg: 16",
              "attack_deg: 15",
              {"6:48: fault: clubs[0].attack_deg: found a dynamic loft of 14 degrees, typical of a driver, expected a "
               "number from the attack angle, 15, to 70 degrees"}},
          Row{"attack_deg: -6",
              "attack_deg: -15, dynamic_loft_deg: 70",
              {"9:56: fault: clubs[3].attack_deg: found a spin loft of 85 degrees, expected a number from 0 to 80 "
               "degrees"}},
          Row{"carry: 172",
              "carry: 172, attack_deg: -3",
              {"7:44: fault: clubs[1].attack_deg: found attack_deg beside a carry, expected club_speed in place of the "
               "carry"}},
          Row{"carry: 172",
              "attack_deg: -3",
              {"7:5: fault: clubs[1].club_speed: found nothing: the required key is missing, expected a number from 10 "
               "to 160 mph"}},
          Row{"carry: 172",
              "club_sped: 90",
              {"7:20: fault: clubs[1].club_sped: found unknown key \"club_sped\", expected \"club_speed\", the nearest "
               "known key"}},
          Row{"club_speed: 68, attack_deg: -6",
              "club_speed: 10",
              {"9:40: fault: clubs[3].club_speed: found a strike that carries 2.735 yards, expected one that carries "
               "from "
               "5 to 420 yards"}},
      }) {
    CAPTURE(row.to);
    CHECK(faults_in(samples::changed(struck, row.from, row.to)) == row.faults);
  }
}

TEST_CASE("clubs longest first counts for carries that follow from strikes") {
  const auto faults = faults_in(samples::changed(struck, "club: 7i, club_speed: 74", "club: 7i, club_speed: 120"));
  REQUIRE(faults.size() == 1);
  CHECK(says(faults.front(), "expected clubs longest first"));
}

}  // namespace
}  // namespace yardworth
