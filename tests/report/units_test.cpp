#include <doctest/doctest.h>

#include <regex>
#include <string>

#include "core/distance_words.hpp"
#include "report/sample_bands.hpp"
#include "report/sample_gain.hpp"
#include "support/courses.hpp"
#include "support/scenario.hpp"
#include "support/words.hpp"
#include "yardworth/report.hpp"

// Distances are said in the units of the course, and one of them is one yard.

namespace yardworth {
namespace {

using test::says;
using test::words_of;

// "yard" or "yards" as a word: keys of JSON and headings of CSV end in _yd, and formats begin with the program's name.
bool speaks_of_yards(const std::string& text) {
  static const std::regex word("(^|[^A-Za-z])[Yy]ards?([^A-Za-z]|$)");
  return std::regex_search(text, word);
}

const DistanceChange change = {20.0, 6.0};

std::string gain_reports(const Course& course, Method method) {
  const Player player = test::scenario_member("weekend-16-man");
  GainRequest request;
  request.change = Change::of(change);
  request.method = method;
  const GainReport report{compute_gain(course, player, default_baseline(player), request), {}, {}};
  return gain_text(report) + gain_json(report) + gain_csv(report);
}

std::string strategy_reports(const Course& course) {
  const Player player = test::scenario_member("weekend-16-man");
  StrategyRequest request;
  request.change = Change::of(change);
  const StrategyReport report{compute_strategy(course, player, default_baseline(player), request), {}};
  return strategy_text(report) + strategy_json(report) + strategy_csv(report);
}

std::string bands_reports(const Course& course) {
  BandsRequest request;
  request.bands = {Band::scratch, Band::bogey};
  request.genders = {Gender::women};
  request.change = change;
  const BandsReport report{compute_bands(course, request), 2, {}, {}};
  return bands_text(report) + bands_json(report) + bands_csv(report) + bands_hazards_csv(report);
}

}  // namespace

TEST_CASE("no report on a course in metres speaks of yards") {
  const Course metres = test::water_and_bunker(Units::metres);
  for (const std::string& text : {gain_reports(metres, Method::play), gain_reports(metres, Method::table),
                                  strategy_reports(metres), bands_reports(metres)}) {
    CHECK(says(text, "metres"));
    CHECK_MESSAGE(!speaks_of_yards(text), text);
  }
  // What is looked for is found where it is.
  const Course yards = test::water_and_bunker(Units::yards);
  for (const std::string& text : {gain_reports(yards, Method::play), strategy_reports(yards), bands_reports(yards)}) {
    CHECK(speaks_of_yards(text));
  }
}

TEST_CASE("what cannot be finished is said in the units of the course") {
  const CannotFinish in_yards({{7, 190.0}, {8, 1.0}}, Units::yards);
  CHECK(std::string(in_yards.what()) ==
        "cannot be finished with these clubs in 30 strokes a hole: hole 7 needs a carry of 190 yards; hole 8 needs a "
        "carry of 1 yard");
  const CannotFinish in_metres({{7, 190.0}}, Units::metres);
  CHECK(std::string(in_metres.what()) ==
        "cannot be finished with these clubs in 30 strokes a hole: hole 7 needs a carry of 174 metres");
}

TEST_CASE("one is singular") {
  CHECK(unit_after("1", Units::yards) == "yard");
  CHECK(unit_after("+1", Units::metres) == "metre");
  CHECK(unit_after("-1", Units::yards) == "yard");
  CHECK(unit_after("11", Units::yards) == "yards");
  CHECK(unit_after("0.1", Units::yards) == "yards");
  BandsReport bands = test::sample_bands();
  GainReport gain = test::sample_gain();
  for (const DistanceChange one : {DistanceChange{1.0, 0.0}, DistanceChange{-1.0, 1.0}, DistanceChange{0.0, 1.0}}) {
    bands.result.change = one;
    gain.result.change = Change::of(one);
    CHECK_FALSE(says(words_of(bands_text(bands)), " 1 yards"));
    CHECK_FALSE(says(words_of(gain_text(gain)), " 1 yards"));
  }
  bands.result.change = {1.0, 0.0};
  CHECK(says(bands_sentence(bands.result), "1 more yard of driver carry saves"));
}

}  // namespace yardworth
