#include <doctest/doctest.h>

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "cli/command.hpp"
#include "support/words.hpp"

// The command `delivery`, called without starting a process.

namespace {

using yardworth::cli::Outcome;

using yardworth::test::says;
using yardworth::test::words_of;

Outcome run_delivery(std::vector<std::string> more) {
  std::vector<std::string> arguments = {"delivery"};
  arguments.insert(arguments.end(), more.begin(), more.end());
  return yardworth::cli::run(arguments, {});
}

const std::vector<std::string> slice = {"--club-speed-mph", "94", "--attack-deg", "-1", "--dynamic-loft-deg", "17",
                                        "--path-deg",       "-4", "--face-deg",   "-1"};

std::vector<std::string> with_slice(std::vector<std::string> more) {
  std::vector<std::string> all = slice;
  all.insert(all.end(), more.begin(), more.end());
  return all;
}

nlohmann::json json_of(const std::vector<std::string>& arguments) {
  const Outcome outcome = run_delivery(arguments);
  REQUIRE(outcome.status == 0);
  return nlohmann::json::parse(outcome.out);
}

}  // namespace

TEST_CASE("delivery: the answer, the losses and the cautions") {
  const Outcome outcome = run_delivery(slice);
  CHECK(outcome.status == 0);
  CHECK_FALSE(says(outcome.out, "Assumed"));
  CHECK(says(outcome.out, "Driver at 94 mph: "));
  CHECK(says(outcome.out, "yards of carry given away"));
  CHECK(says(outcome.out, "A new head"));
  CHECK(says(outcome.out, "with a qualified"));
  CHECK(says(outcome.out, "medical professional"));
  CHECK(says(outcome.out, "authorised golf association"));
  CHECK(outcome.out.rfind("Cautions") > outcome.out.rfind("What it rests on"));
}

TEST_CASE("delivery: what is not given is said to be assumed") {
  CHECK(says(run_delivery({}).out, "Assumed, as is typical of a driver: club head speed 94.0 mph, attack angle -1.0"));
  const Outcome wedge = run_delivery({"--club", "pitching wedge", "--format", "csv"});
  CHECK(says(wedge.err, "Assumed, as is typical of a pitching wedge"));
  CHECK(says(wedge.out, "pitching wedge,now,"));
}

TEST_CASE("delivery: another one beside it") {
  const auto json = json_of(with_slice({"--to", "attack-deg=2", "--to", "dynamic-loft-deg=15", "--format", "json"}));
  CHECK(json["format"] == "yardworth/delivery/1");
  CHECK(json["strike"]["attack_deg"] == doctest::Approx(-1.0));
  CHECK(json["after"]["strike"]["attack_deg"] == doctest::Approx(2.0));
  CHECK(json["after"]["strike"]["dynamic_loft_deg"] == doctest::Approx(15.0));
  CHECK(json["after"]["strike"]["path_deg"] == doctest::Approx(-4.0));
  CHECK(json["after"]["flight"]["smash_factor"] > json["flight"]["smash_factor"]);
  CHECK(says(run_delivery(with_slice({"--to", "attack-deg=2"})).out, "after"));
  CHECK(json_of({"--format", "json"})["after"].is_null());
}

TEST_CASE("delivery: the losses of the JSON add up") {
  const auto json = json_of(with_slice({"--format", "json"}));
  double sum = 0.0;
  for (const auto& loss : json["losses"]) sum += loss["in_turn_yd"].get<double>();
  CHECK(json["losses"].size() == 4);
  CHECK(sum == doctest::Approx(json["together_yd"].get<double>()));
  CHECK(json["together_yd"].get<double>() == doctest::Approx(json["attainable"]["flight"]["carry_yd"].get<double>() -
                                                             json["flight"]["carry_yd"].get<double>()));
  CHECK(json["limits"]["attack_deg"]["high"] == doctest::Approx(3.0));
}

TEST_CASE("delivery: weather and ground") {
  const auto carry = [](std::vector<std::string> more) {
    more.insert(more.end(), {"--format", "json"});
    return json_of(with_slice(more))["flight"]["carry_yd"].get<double>();
  };
  const auto total = [](const char* firmness) {
    return json_of(with_slice({"--firmness", firmness, "--format", "json"}))["flight"]["total_yd"].get<double>();
  };
  const double usual = carry({});
  CHECK(carry({"--temperature-c", "5"}) < usual);
  CHECK(carry({"--altitude-m", "1500"}) > usual);
  CHECK(carry({"--pressure-hpa", "1040"}) < usual);
  CHECK(carry({"--wind-mps", "5"}) < usual);
  CHECK(carry({"--wind-mps", "5", "--wind-from-deg", "180"}) > usual);
  CHECK(total("soft") < total("normal"));
  CHECK(total("normal") < total("firm"));
}

TEST_CASE("delivery: a wind from the side is left out of what is given away") {
  const std::vector<std::string> bent = {"--club-speed-mph", "94", "--attack-deg", "3", "--dynamic-loft-deg", "18.6",
                                         "--face-deg",       "3",  "--path-deg",   "-3"};
  const auto in_wind = [&bent](std::vector<std::string> more) {
    more.insert(more.begin(), bent.begin(), bent.end());
    return more;
  };
  const auto json = json_of(in_wind({"--wind-mps", "15", "--wind-from-deg", "270", "--format", "json"}));
  const auto still = json_of(in_wind({"--format", "json"}));
  CHECK(json["together_yd"].get<double>() > 0.5);
  CHECK(json["together_yd"].get<double>() == doctest::Approx(still["together_yd"].get<double>()));
  const auto& air = json["without_side_wind"];
  CHECK(air["best_carry_yd"].get<double>() - air["own_carry_yd"].get<double>() ==
        doctest::Approx(json["together_yd"].get<double>()));
  CHECK(json["flight"]["carry_yd"].get<double>() != doctest::Approx(still["flight"]["carry_yd"].get<double>()));
  const std::string text = run_delivery(in_wind({"--wind-mps", "15", "--wind-from-deg", "270"})).out;
  CHECK_FALSE(says(text, "no more to gain"));
  CHECK(says(text, "Without the wind from the side: "));
}

TEST_CASE("delivery: loft and attack, which act on each other, are named together") {
  CHECK(says(run_delivery({}).out, "dynamic loft and attack angle together"));
}

TEST_CASE("delivery: the help says what is typical unless given") {
  const std::string help = run_delivery({"--help"}).out;
  std::size_t said = 0;
  for (std::size_t at = help.find("typical of the"); at != std::string::npos; at = help.find("typical of the", at + 1))
    ++said;
  CHECK(said == 3);
}

TEST_CASE("delivery: the board") {
  const auto json = json_of(with_slice({"--table", "--format", "json"}));
  CHECK(json["board"].size() == 7 * 5);
  CHECK(json["board"].front()["club_speed_mph"] == doctest::Approx(80.0));
  CHECK(says(run_delivery(with_slice({"--table"})).out, "attack +3.0"));
  const Outcome csv = run_delivery(with_slice({"--table", "--format", "csv"}));
  CHECK(csv.out.rfind("club,club_speed_mph,attack_deg,dynamic_loft_deg,carry_yd,total_yd\r\n", 0) == 0);
  CHECK(csv.err.empty());
}

TEST_CASE("delivery: the board by the speeds and attack angles that are asked for") {
  const auto json = json_of(
      with_slice({"--table", "club_speed_mph=85..115:10", "--table", "attack_deg=-4..4:2", "--format", "json"}));
  REQUIRE(json["board"].size() == 4 * 5);
  CHECK(json["board"].front()["club_speed_mph"] == doctest::Approx(85.0));
  CHECK(json["board"].front()["attack_deg"] == doctest::Approx(-4.0));
  CHECK(json["board"].back()["club_speed_mph"] == doctest::Approx(115.0));
  CHECK(json["board"].back()["attack_deg"] == doctest::Approx(4.0));
  for (const char* wrong : {"loft=1..2:1", "attack-deg=1..2", "attack-deg=2..1:1", "attack-deg=0..1:0",
                            "attack-deg=0..1:0.001", "attack-deg=-90..1:5", "attack-deg=nan..1:5", "attack-deg"}) {
    const Outcome refused = run_delivery(with_slice({"--table", wrong}));
    CAPTURE(wrong);
    CHECK(refused.status == 2);
    CHECK(says(refused.err, "--table: found"));
  }
}

TEST_CASE("delivery: the carry of a log stands beside that of its strike, and what was assumed is not the player's") {
  const std::string bay = YARDWORTH_SOURCE_DIR "/courses/heron-ferry/bay/";
  const std::string assumed = words_of(run_delivery({"--from-log", bay + "12-woman-before.csv"}).out);
  CHECK_MESSAGE(says(assumed, "The log's own carry is 140 yards (median of its shots); this strike gives 156."),
                assumed);
  CHECK(says(assumed, "what was assumed and not measured (attack angle, dynamic loft, club path, face angle), range"));
  CHECK(says(assumed,
             "Not in the log: attack angle, dynamic loft, club path, face angle. A recommendation about them is"));
  // The driver of a log that measures all of it carries what its strike gives, so there is nothing to tell.
  const std::string measured = words_of(run_delivery({"--from-log", bay + "weekend-16-before.csv"}).out);
  CHECK(says(measured, "From the log, the median of"));
  CHECK_FALSE(says(measured, "The log's own carry"));
  CHECK_FALSE(says(measured, "Not in the log"));
}

TEST_CASE("delivery: a club of a log goes by its name there, and flies as what it is") {
  const std::string heads = YARDWORTH_SOURCE_DIR "/courses/heron-ferry/bay/weekend-16-heads.csv";
  CHECK(says(run_delivery({"--from-log", heads}).err, "expected --club to be one of driver 9, driver 11"));
  const Outcome nine = run_delivery({"--from-log", heads, "--club", "driver 9"});
  CHECK(nine.status == 0);
  CHECK(says(words_of(nine.out), "strikes with driver 9: club head speed"));
  CHECK(says(nine.out, "Driver at "));
  CHECK(says(run_delivery({"--club", "7i"}).out, "7-iron at "));
  CHECK(says(run_delivery({"--from-log", heads, "--club", "spoon"}).err, "found no shots of spoon"));
}

TEST_CASE("delivery: sessions taken together and strikes too few are told, and of a log no number that is not used") {
  const std::string bay = YARDWORTH_SOURCE_DIR "/courses/heron-ferry/bay/";
  const std::string both = words_of(run_delivery({"--from-log", bay + "senior-20.csv"}).out);
  CHECK(says(both, "The strikes of 2 sessions are taken together: before, after."));
  CHECK_FALSE(says(both, "So few strikes"));
  const std::string log = bay + "weekend-16-before.csv";
  CHECK(says(words_of(run_delivery({"--from-log", log, "--club", "5-wood"}).out), "4 strikes with 5-wood"));
  CHECK(says(words_of(run_delivery({"--from-log", log, "--club", "5-wood"}).out), "So few strikes tell little"));
  const std::string given = words_of(run_delivery({"--from-log", log, "--club-speed-mph", "100"}).out);
  CHECK(says(given, "From the log, the median of"));
  CHECK_FALSE(says(given, "club head speed 94"));
  CHECK_FALSE(says(given, "The log's own carry"));
  CHECK_FALSE(says(given, "sessions are taken together"));
}

TEST_CASE("delivery: what is not understood is refused with what is allowed") {
  struct Refused {
    std::vector<std::string> arguments;
    const char* words;
  };
  for (const Refused& refused : {
           Refused{{"--club-speed-mph", "300"}, "expected a number from 10 to 160"},
           Refused{{"--path-deg", "90"}, "expected a number from -30 to 30"},
           Refused{{"--face-deg", "nan"}, "expected a number from -30 to 30"},
           Refused{{"--attack-deg", "5", "--dynamic-loft-deg", "3"},
                   "--dynamic-loft-deg: found 3, expected a number from"},
           Refused{{"--to", "attack-deg=15", "--dynamic-loft-deg", "12"}, "--to dynamic-loft-deg: found 12"},
           Refused{{"--to", "atack-deg=2"}, "the nearest is attack-deg"},
           Refused{{"--to", "attack-deg"}, "expected \"=\" and a number after it: attack-deg=NUMBER"},
           Refused{
               {"--dynamic-loft-deg", "70", "--attack-deg", "-15"},
               "yardworth: dynamic loft and attack angle: a spin loft of 85 degrees, expected a number from 0 to 80"},
           Refused{{"--to", "dynamic-loft-deg=70", "--attack-deg", "-15", "--dynamic-loft-deg", "10"},
                   "--to: dynamic loft and attack angle: a spin loft of 85 degrees"},
           Refused{{"--to", "attack-deg=up"}, "expected a number from -15 to 15"},
           Refused{{"--club", "putter"}, "expected driver"},
           Refused{{"--firmness", "hard"}, "expected soft"},
           Refused{{"--wind-mps", "60"}, "expected a number from 0 to 25"},
       }) {
    const Outcome outcome = run_delivery(refused.arguments);
    CAPTURE(refused.words);
    CHECK(outcome.status == 2);
    CHECK(outcome.out.empty());
    CHECK_MESSAGE(says(outcome.err, refused.words), outcome.err);
  }
  CHECK(run_delivery({"--output", "/nowhere/at/all.txt"}).status != 0);
}
