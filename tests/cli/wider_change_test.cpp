#include <doctest/doctest.h>
#include <stdlib.h>
#include <unistd.h>

#include <cmath>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>
#include <vector>

#include "cli/command.hpp"
#include "support/words.hpp"

// A change of more than the carry of driver and irons, for gain and strategy.

namespace {

using yardworth::cli::Outcome;
using yardworth::test::says;
using yardworth::test::words_of;

const std::string courses_folder = YARDWORTH_SOURCE_DIR "/courses/";
const std::string bay_folder = courses_folder + "heron-ferry/bay/";

// Arguments are separated by blanks.
Outcome run_said(const std::string& arguments) {
  std::istringstream words(arguments);
  std::vector<std::string> all;
  for (std::string word; words >> word;) all.push_back(word);
  return yardworth::cli::run(all, {});
}

nlohmann::json answer_of(const std::string& arguments) {
  const Outcome outcome = run_said(arguments + " --format json");
  REQUIRE_MESSAGE(outcome.status == 0, outcome.err);
  return nlohmann::json::parse(outcome.out);
}

const std::string habit_gain = "gain --plan habit ";

}  // namespace

TEST_CASE("all that may change is said by options, and each step is told") {
  const std::string options =
      "--driver +5 --irons +2 --club 9-iron=+5 --carry-sd -10% --direction-sd -10% --direction-mean -1 "
      "--poor-strike -3% --short-game -5% --putting -5%";
  const auto json = answer_of(habit_gain + options);
  const auto& steps = json["round"]["steps"];
  REQUIRE(steps.size() == 9);
  double sum = 0.0;
  for (const auto& step : steps) sum += step["strokes_saved"].get<double>();
  CHECK(std::abs(sum - json["round"]["strokes_saved"].get<double>()) < 1e-9);
  CHECK(json["change"]["clubs"][0]["club"] == "9-iron");
  CHECK(json["change"]["putting_share"] == doctest::Approx(-0.05));
  CHECK(json["change"]["poor_strike_probability"] == doctest::Approx(-0.03));
  const Outcome text = run_said(habit_gain + options);
  const std::string told = words_of(text.out);
  CHECK(says(told, "3 fewer poor strikes in 100"));
  CHECK(says(told, "5% less spread in putting save"));
  CHECK(says(told, "Where it comes from"));
  CHECK(says(told, "qualified coach"));
}

TEST_CASE("a change of putting alone is told without a word of carry") {
  const Outcome outcome = run_said(habit_gain + "--putting -10%");
  REQUIRE(outcome.status == 0);
  CHECK(says(words_of(outcome.out), "10% less spread in putting saves"));
  CHECK_FALSE(says(outcome.out, "Assumed, with neither"));
  CHECK(run_said("strategy --hole 1 --direction-sd -10%").status == 0);
}

TEST_CASE("what cannot change is refused in the words of the options") {
  CHECK(says(run_said(habit_gain + "--putting -5").err,
             "--putting: found \"-5\", expected a percentage from -90% to 200%"));
  CHECK(says(run_said(habit_gain + "--club 9-iron").err, "such as 9-iron=+5"));
  const Outcome several = run_said(habit_gain + "--club 9-irn=+5 --club 3-spoon=2");
  CHECK(several.status == 2);
  CHECK(says(several.err, "--club: found \"9-irn\""));
  CHECK(says(several.err, "the nearest is 9-iron"));
  CHECK(says(several.err, "3-spoon"));
  CHECK(says(run_said(habit_gain + "--to 20 --putting -5%").err, "a curve of added carry alone"));
  CHECK(says(run_said(habit_gain + "--draws 20").err, "--draws needs --from-log"));
  CHECK(says(run_said(habit_gain + "--sessions a b").err, "--sessions needs --from-log"));
  CHECK(says(run_said(habit_gain + "--after x.yaml --driver +5").err, "--after says all that changes"));
}

TEST_CASE("beside what was measured a curve is along the usual change, and its picture has the interval") {
  const std::string bay = std::string(YARDWORTH_SOURCE_DIR) + "/courses/heron-ferry/bay/weekend-16-";
  const std::string picture =
      (std::filesystem::temp_directory_path() / ("yardworth-curve-" + std::to_string(::getpid()) + ".svg")).string();
  const auto measured = answer_of("gain --method table --from-log " + bay + "before.csv " + bay +
                                  "after.csv --draws 5 --to 20 --step 10 --svg " + picture);
  const auto usual = answer_of("gain --method table --to 20 --step 10");
  CHECK(measured["curve"].size() == 3);
  CHECK(measured["curve"] == usual["curve"]);
  std::ostringstream drawn;
  drawn << std::ifstream(picture).rdbuf();
  std::filesystem::remove(picture);
  CHECK(says(drawn.str(), "what was measured"));
}

TEST_CASE("a second player file is what changes, and what is alike in both stays") {
  std::string file = (std::filesystem::temp_directory_path() / "yardworth-after-XXXXXX").string();
  const int opened = ::mkstemp(file.data());
  REQUIRE(opened >= 0);
  ::close(opened);
  const auto write = [&](const std::string& path, int driver, const std::string& iron) {
    std::ofstream(path) << "format: yardworth/player/1\nlabel: pupil\nhandicap_index: 18\ngender: men\nunits: yards\n"
                        << "clubs:\n  - {club: driver, carry: " << driver << "}\n  - {club: " << iron
                        << ", carry: 140}\n";
  };
  const std::string before = file + ".yaml";
  write(before, 190, "7-iron");
  write(file, 205, "7-iron");
  const auto by_file = answer_of(habit_gain + "--player " + before + " --after " + file);
  const auto by_yards = answer_of(habit_gain + "--player " + before + " --driver 15");
  CHECK(by_file["round"]["strokes_saved"] == by_yards["round"]["strokes_saved"]);
  CHECK(by_file["change"]["driver_carry_yd"] == 15.0);
  write(file, 205, "8-iron");
  const Outcome other = run_said(habit_gain + "--player " + before + " --after " + file);
  CHECK(other.status == 2);
  CHECK(says(other.err, "7-iron"));
  CHECK(says(other.err, "8-iron"));
  std::filesystem::remove(file);
  std::filesystem::remove(before);
}

TEST_CASE("logs of the bay become strokes with an interval, the same with every number of threads") {
  const std::string logs = habit_gain + "--from-log " + bay_folder + "weekend-16-before.csv " + bay_folder +
                           "weekend-16-after.csv --draws 12 ";
  const auto json = answer_of(logs + "--threads 1");
  CHECK(json["interval"]["draws"] == 12);
  CHECK(json["interval"]["level"] == doctest::Approx(0.9));
  CHECK(json["interval"]["low"] < json["interval"]["high"]);
  CHECK(json["interval"]["plan"] == "habit");
  CHECK(answer_of(logs + "--threads 3") == json);
  CHECK(answer_of(logs + "--seed 2")["interval"] != json["interval"]);
  const std::string told = words_of(run_said(logs).out);
  CHECK(says(told, "Measured: driver"));
  CHECK(says(told, "90 in 100 of 12 draws"));
  CHECK(says(told, "qualified coach"));
  const Outcome sessions =
      run_said(habit_gain + "--from-log " + bay_folder + "senior-20.csv --sessions before after --draws 0");
  CHECK(sessions.status == 0);
  CHECK_FALSE(says(sessions.out, "draws of what was measured"));
  CHECK(run_said("strategy --hole 1 --from-log " + bay_folder + "senior-20.csv --sessions before after").status == 0);
  CHECK(says(run_said(habit_gain + "--from-log " + bay_folder + "senior-20.csv").err, "needs two logs"));
}
