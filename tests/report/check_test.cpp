#include <doctest/doctest.h>

#include <string>

#include "input/samples.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

std::string summary_of(const std::string& text) {
  const auto reading = read_any(text, "f");
  REQUIRE(reading.ok());
  return summarise(*reading.value);
}

TEST_CASE("a course in a line") {
  CHECK(summary_of(samples::course) ==
        "course \"Test Nine\": 9 holes, par 35; back 3218, forward 2548 yards; 2 bunkers, 1 penalty area; 1 dogleg");
  CHECK(summary_of(samples::changed(samples::course, "units: yards", "units: metres"))
            .find("back 3218, forward 2548 metres") != std::string::npos);
  CHECK(summary_of(samples::changed(samples::course, "Test Nine", "\"a\\e[1mb\"")).find("course \"a\\x1B[1mb\"") == 0);
}

TEST_CASE("a player in a line") {
  CHECK(summary_of(samples::player) ==
        "player \"weekend 16\": Handicap Index 16.2, band 13-20, men; 4 clubs, carry 196 to 131 yards; widest gap 24 "
        "between driver and 5-wood");
  CHECK(summary_of(samples::changed(samples::player, "16.2", "-1.4")).find("Handicap Index +1.4, band below 6") !=
        std::string::npos);
  CHECK(summary_of(
            "format: yardworth/player/1\nlabel: x\nband: bogey\ngender: women\nclubs: [{club: 7-iron, carry: 90}]\n") ==
        "player \"x\": band bogey, women; 1 club, carry 90 to 90 yards");
}

TEST_CASE("a player who misses to one side, in a line") {
  const std::string all = samples::changed(samples::player, "handicap_index:", "direction_mean: -1\nhandicap_index:");
  CHECK(summary_of(all).ends_with("; every club misses 1 degree to the left on average"));
  const std::string driver = samples::changed(samples::player, "carry: 196", "carry: 196, direction_mean: 8");
  CHECK(summary_of(driver).ends_with("; the driver misses 8 degrees to the right on average"));
  const std::string two = samples::changed(driver, "carry: 131", "carry: 131, direction_mean: -2.5");
  CHECK(summary_of(two).find("to the right on average, the ") != std::string::npos);
  CHECK(summary_of(two).ends_with(" 2.5 degrees to the left"));
}

TEST_CASE("a baseline in a line") {
  BaselineTable table;
  table.name = "n";
  table.source = "s";
  for (auto* column : {&table.tee, &table.fairway, &table.rough, &table.bunker, &table.recovery, &table.green}) {
    *column = {{20.0, 600.0}, {2.0, 5.0}};
  }
  CHECK(summarise(table) ==
        "baseline \"n\": band tour, men; tee 20 to 600, fairway 20 to 600, rough 20 to 600, bunker 20 to 600, recovery "
        "20 "
        "to 600 yards; green 20 to 600 feet; source: s");
}

}  // namespace
}  // namespace yardworth
