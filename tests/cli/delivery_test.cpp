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
