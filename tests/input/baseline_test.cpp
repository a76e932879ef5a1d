#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "baseline/published.hpp"
#include "input/derived_table.hpp"
#include "input/samples.hpp"
#include "yardworth/read.hpp"

namespace yardworth {
namespace {

using samples::changed;
using samples::lines;

void check_same(const BaselineColumn& a, const BaselineColumn& b) {
  CHECK(a.distance == b.distance);
  CHECK(a.strokes == b.strokes);
}

std::vector<std::string> findings_in(const std::string& text) { return lines(read_baseline(text, "f").findings); }

const std::string small = R"(format: yardworth/baseline/1
name: small
source: made up
band: 6-12
gender: women
tee: [[100, 3.1], [300, 4.2]]
fairway: [[20, 2.5], [300, 4.0]]
rough: [[20, 2.7], [300, 4.2]]
bunker: [[20, 2.8], [300, 4.4]]
recovery: [[100, 4.0], [300, 4.6]]
green: [[3, 1.1], [30, 2.0]]
)";

TEST_CASE("every key of a baseline is read") {
  const auto reading = read_baseline(small, "f");
  CHECK(lines(reading.findings) == std::vector<std::string>{});
  REQUIRE(reading.ok());
  CHECK(reading.value->name == "small");
  CHECK(reading.value->source == "made up");
  CHECK(reading.value->band == Band::from_6_to_12);
  CHECK(reading.value->gender == Gender::women);
  check_same(reading.value->tee, {{100.0, 300.0}, {3.1, 4.2}});
  check_same(reading.value->recovery, {{100.0, 300.0}, {4.0, 4.6}});
  check_same(reading.value->green, {{3.0, 30.0}, {1.1, 2.0}});
}

TEST_CASE("a table that is written is read back to the last bit") {
  for (BaselineTable table : {tour_table(), derived_table(Band::bogey, Gender::women)}) {
    table.name = "quotes \" ' and: # [signs] \n \x1B \xC3\xA9";
    table.source += ", 50% more";
    table.tee.strokes[0] = 1.0 / 3.0 + 3.0;
    const auto reading = read_baseline(write_baseline(table), "f");
    CHECK(lines(reading.findings) == std::vector<std::string>{});
    REQUIRE(reading.ok());
    const BaselineTable& back = *reading.value;
    CHECK(back.name == table.name);
    CHECK(back.source == table.source);
    CHECK(back.band == table.band);
    CHECK(back.gender == table.gender);
    check_same(back.tee, table.tee);
    check_same(back.fairway, table.fairway);
    check_same(back.rough, table.rough);
    check_same(back.bunker, table.bunker);
    check_same(back.recovery, table.recovery);
    check_same(back.green, table.green);
  }
}

TEST_CASE("slips in a baseline") {
  CHECK(findings_in(changed(small, "[300, 4.2]]\nfairway", "[90, 4.2]]\nfairway")) ==
        std::vector<std::string>{"6:20: fault: tee[1][0]: found 90, expected more than the 100 of the row before"});
  CHECK(findings_in(changed(small, "[30, 2.0]", "[30, .inf]")) ==
        std::vector<std::string>{"11:24: fault: green[1][1]: found .inf, which is not a finite number, expected a "
                                 "number from 0 to 20 strokes"});
  CHECK(
      findings_in(changed(small, "band: 6-12\n", "")) ==
      std::vector<std::string>{
          "1:1: fault: band: found nothing: the required key is missing, expected one of tour, scratch, below 6, 6-12, "
          "13-20, bogey, 21 and over"});
  CHECK(findings_in(changed(small, "bunker:", "lake:")) ==
        std::vector<std::string>{
            "1:1: fault: bunker: found nothing: the required key is missing, expected a list of [distance, strokes]",
            "9:1: fault: lake: found unknown key \"lake\", expected one of format, name, source, band, gender, tee, "
            "fairway, rough, bunker, recovery, green"});
  CHECK(findings_in(changed(small, "[[3, 1.1], [30, 2.0]]", "[[3, 1.1]]")) ==
        std::vector<std::string>{"11:8: fault: green: found a list of 1, expected from 2 to 2000 [distance, strokes]"});
}

}  // namespace
}  // namespace yardworth
