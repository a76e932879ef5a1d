#include <doctest/doctest.h>
#include <fmt/format.h>
#include <stdlib.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>
#include <vector>

#include "cli/command.hpp"
#include "support/words.hpp"

// A change of the driver's strike in place of yards, for gain and strategy.

namespace {

using yardworth::cli::Outcome;

const std::string courses = YARDWORTH_SOURCE_DIR "/courses/";

using yardworth::test::says;

// Arguments are separated by blanks.
Outcome run_words(const std::string& arguments) {
  std::istringstream words(arguments);
  std::vector<std::string> all;
  for (std::string word; words >> word;) all.push_back(word);
  return yardworth::cli::run(all, {});
}

nlohmann::json json_of(const std::string& arguments) {
  const Outcome outcome = run_words(arguments + " --format json");
  REQUIRE_MESSAGE(outcome.status == 0, outcome.err);
  return nlohmann::json::parse(outcome.out);
}

const std::string quick_gain = "gain --plan habit --method table ";
const std::string steep = "--from-delivery club-speed-mph=94 attack-deg=-3 dynamic_loft_deg=18 ";

}  // namespace

TEST_CASE("a better strike is worth what its yards are, said as yards") {
  const auto by_strike = json_of(quick_gain + steep + "--to attack-deg=2 dynamic-loft-deg=15");
  const double driver = by_strike["change"]["driver_carry_yd"];
  const double irons = by_strike["change"]["irons_carry_yd"];
  const auto delivery = json_of(
      "delivery --club-speed-mph 94 --attack-deg -3 --dynamic-loft-deg 18 --to attack-deg=2 --to dynamic-loft-deg=15");
  const double carry = delivery["flight"]["carry_yd"];
  CHECK(driver == doctest::Approx(delivery["after"]["flight"]["carry_yd"].get<double>() - carry).epsilon(1e-9));
  CHECK(driver > 5.0);
  // Common practice, no source: the irons gain 5 to 7 yards where the driver gains 20.
  CHECK(irons / driver * 20.0 >= 5.0);
  CHECK(irons / driver * 20.0 <= 7.0);
  const auto by_yards = json_of(quick_gain + fmt::format("--driver {} --irons {}", driver, irons));
  CHECK(by_strike["round"]["strokes_saved"].get<double>() ==
        doctest::Approx(by_yards["round"]["strokes_saved"].get<double>()).epsilon(1e-12));
}

TEST_CASE("what is not said of the strike before is the player's own, where the file gives it") {
  std::string file = (std::filesystem::temp_directory_path() / "yardworth-own-strike-XXXXXX").string();
  const int opened = ::mkstemp(file.data());
  REQUIRE(opened >= 0);
  ::close(opened);
  std::ofstream(file) << "format: yardworth/player/1\nlabel: pupil\nhandicap_index: 18\ngender: men\nunits: yards\n"
                         "clubs:\n  - {club: driver, club_speed: 100, attack_deg: -3, dynamic_loft_deg: 18}\n"
                         "  - {club: 7-iron, carry: 140}\n";
  const std::string own = quick_gain + "--player " + file;
  const Outcome told = run_words(own + " --from-delivery attack-deg=-3 --to attack-deg=1");
  CHECK(told.status == 0);
  CHECK_FALSE(says(told.out, "Assumed, as is typical of a driver"));
  const auto by_own = json_of(own + " --from-delivery attack-deg=-3 --to attack-deg=1");
  const auto by_all =
      json_of(own + " --from-delivery club-speed-mph=100 attack-deg=-3 dynamic-loft-deg=18 path-deg=0 " +
              "face-deg=0 --to attack-deg=1");
  std::filesystem::remove(file);
  CHECK(by_own["change"] == by_all["change"]);
  CHECK(by_own["change"] != json_of(quick_gain + "--from-delivery attack-deg=-3 --to attack-deg=1")["change"]);
}

TEST_CASE("a strike and its mirror image are worth the same") {
  const auto right = json_of(quick_gain + "--from-delivery path-deg=-4 face-deg=-1 --to path-deg=2 --to face-deg=1");
  const auto left = json_of(quick_gain + "--from-delivery path-deg=4 face-deg=1 --to path-deg=-2 --to face-deg=-1");
  CHECK(right["change"]["driver_carry_yd"].get<double>() ==
        doctest::Approx(left["change"]["driver_carry_yd"].get<double>()).epsilon(1e-6));
}

TEST_CASE("what is said of the irons counts, and what is assumed of them is told") {
  const std::string better = quick_gain + steep + "--to attack-deg=2 ";
  const Outcome assumed = run_words(better);
  REQUIRE_MESSAGE(assumed.status == 0, assumed.err);
  CHECK(says(assumed.out, "The driver's strike: attack angle -3.0 -> 2.0"));
  CHECK(says(assumed.out, "6 yards for every 20 of the driver"));
  CHECK(says(assumed.out, "common practice, no source"));
  CHECK(says(assumed.out, "qualified"));
  CHECK(says(assumed.out, "medical professional"));
  CHECK(says(run_words(quick_gain + "--from-delivery attack-deg=-3 --to attack-deg=2").out,
             "Assumed, as is typical of a driver: club head speed 94.0 mph, dynamic loft"));
  CHECK(json_of(better + "--irons 0")["change"]["irons_carry_yd"] == 0.0);
  CHECK(json_of(better + "--irons 4")["change"]["irons_carry_yd"] == 4.0);
  CHECK_FALSE(says(run_words(better + "--irons 0").out, "Assumed of the irons"));
}

TEST_CASE("on a course in metres the strike's carry is told in metres") {
  const Outcome outcome =
      run_words(quick_gain + steep + "--to attack-deg=2 --course " + courses + "marsh-end/course.yaml");
  REQUIRE_MESSAGE(outcome.status == 0, outcome.err);
  CHECK(says(outcome.out, " metres in still air"));
  CHECK(says(outcome.out, "6 metres for every 20 of the driver"));
}

TEST_CASE("a curve may go beyond the yards of a strike, and strategy takes strikes too") {
  CHECK(json_of(quick_gain + steep + "--to attack-deg=2 --to 20 --step 10")["curve"].size() == 3);
  const auto strategy = json_of("strategy --hole 3 " + steep + "--to attack-deg=2 dynamic-loft-deg=15");
  CHECK(strategy["change"]["driver_carry_yd"] > 5.0);
}

TEST_CASE("strikes that cannot be, and options that contradict each other, are told") {
  struct Refused {
    std::string arguments, words;
  };
  for (const Refused& refused : {
           Refused{"gain --to attack-deg=2", "--to attack-deg=2 needs --from-delivery"},
           Refused{"gain --from-delivery attack-deg=-1", "--from-delivery needs --to KEY=VALUE"},
           Refused{"gain --driver 5 --from-delivery attack-deg=-1 --to attack-deg=2", "both say what the driver gains"},
           Refused{"gain --from-delivery atack-deg=-1 --to attack-deg=2", "the nearest is attack-deg"},
           Refused{"gain --from-delivery club-speed-mph=300 --to attack-deg=2", "expected a number from"},
           Refused{"gain --from-delivery attack-deg=-1 --to attack-deg=up", "--to: found \"attack-deg=up\""},
           Refused{"gain --from-delivery attack-deg=-1 --to attack-deg=15 dynamic-loft-deg=12",
                   "--to dynamic-loft-deg: found 12"},
           Refused{"gain --to 40 50", "--to: found \"50\", expected one number"},
           Refused{"gain --to attack-deg", "--to: found \"attack-deg\", expected a number"},
           Refused{"strategy --to attack-deg=2", "needs --from-delivery"},
       }) {
    CAPTURE(refused.arguments);
    const Outcome outcome = run_words(refused.arguments);
    CHECK(outcome.status == 2);
    CHECK(outcome.out.empty());
    CHECK_MESSAGE(says(outcome.err, refused.words), outcome.err);
  }
}

TEST_CASE("faults of --to are told beside those of the strike before, and none of them twice") {
  const auto lines_of = [](const std::string& arguments) {
    const Outcome outcome = run_words(arguments);
    CHECK(outcome.status == 2);
    return yardworth::test::lines_of(outcome.err);
  };
  for (const char* command : {"gain ", "strategy "}) {
    CAPTURE(command);
    const auto lines = lines_of(std::string(command) +
                                "--from-delivery club-speed-mph=300 atack-deg=-1 --to attack-deg=up lie=3 face-deg=90");
    REQUIRE(lines.size() == 5);
    CHECK(says(lines[0], "--from-delivery: found \"club-speed-mph=300\""));
    CHECK(says(lines[1], "--from-delivery: found \"atack-deg=-1\""));
    CHECK(says(lines[2], "--to: found \"attack-deg=up\""));
    CHECK(says(lines[3], "--to: found \"lie=3\""));
    CHECK(says(lines[4], "--to: found \"face-deg=90\""));
  }
  // Of numbers together: the strike before cannot be, and the one after is another that cannot.
  const auto both = lines_of("gain --from-delivery attack-deg=8 dynamic-loft-deg=5 --to attack-deg=9");
  REQUIRE(both.size() == 2);
  CHECK(says(both[0], "--from-delivery dynamic-loft-deg: found 5, expected a number from the attack angle, 8,"));
  CHECK(says(both[1], "--to dynamic-loft-deg: found 5, expected a number from the attack angle, 9,"));
  CHECK(lines_of("gain --from-delivery attack-deg=8 dynamic-loft-deg=5 --to path-deg=1").size() == 1);
  // What is not known is no fault of the strike after.
  CHECK(lines_of("gain --from-delivery dynamic-loft-deg=99 --to attack-deg=15").size() == 1);
}

TEST_CASE("delivery tells every fault of --to and --table, as gain does") {
  const Outcome outcome = run_words(
      "delivery --attack-deg 8 --dynamic-loft-deg 5 --to attack-deg=up --to lie=3 --table lie=1 --table "
      "attack-deg=2..1:1");
  CHECK(outcome.status == 2);
  const auto lines = yardworth::test::lines_of(outcome.err);
  REQUIRE(lines.size() == 5);
  CHECK(says(lines[0], "--dynamic-loft-deg: found 5, expected a number from the attack angle, 8,"));
  CHECK(says(lines[1], "--to: found \"attack-deg=up\""));
  CHECK(says(lines[2], "--to: found \"lie=3\""));
  CHECK(says(lines[3], "--table: found \"lie=1\""));
  CHECK(says(lines[4], "--table: found \"attack-deg=2..1:1\""));
}
