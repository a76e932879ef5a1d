#include "report/picture/charts.hpp"

#include <doctest/doctest.h>

#include <limits>
#include <regex>

#include "report/sample_bands.hpp"
#include "report/sample_gain.hpp"
#include "support/well_formed.hpp"
#include "support/words.hpp"

namespace yardworth {
namespace {

using test::says;

// Widths of what is drawn as bars, in their order.
std::vector<double> bar_widths(const std::string& svg) {
  const std::regex bar("<rect x=\"[0-9.]+\" y=\"[0-9.]+\" width=\"([0-9.]+)\"");
  std::vector<double> widths;
  for (std::sregex_iterator match(svg.begin(), svg.end(), bar), end; match != end; ++match) {
    widths.push_back(std::stod((*match)[1].str()));
  }
  return widths;
}

GainReport sample_with_scores() {
  GainReport report = test::sample_gain();
  PolicyScores scores;
  scores.before.gross = {88, {0.25, 0.5, 0.25}};
  scores.after.gross = {86, {0.25, 0.25, 0.5}};
  scores.before.breaks = {{80, 0.0}, {89, 0.25}};
  scores.after.breaks = {{80, 0.0}, {89, 1.0}};
  report.result.best->scores = scores;
  report.curve = {{{0.0, 0.0}, test::of_carries(92.5, 92.5, 92.5, 92.5)},
                  {{20.0, 6.0}, test::of_carries(92.5, 91.25, 90.9375, 90.75)},
                  {{40.0, 12.0}, test::of_carries(92.5, 90.5, 90.0, 89.5)}};
  return report;
}

}  // namespace

TEST_CASE("bars are as long as their numbers") {
  report::Sheet sheet;
  report::add_bars(sheet, {{"a", 0.0, 2.0, "2"}, {"b", 2.0, 3.0, "1"}, {"all", 0.0, 3.0, "3", true}},
                   report::Joined::yes, "test");
  const std::vector<double> widths = bar_widths(sheet.svg);
  REQUIRE(widths.size() == 3);
  CHECK(widths[0] == doctest::Approx(2.0 * widths[1]).epsilon(0.01));
  CHECK(widths[2] == doctest::Approx(3.0 * widths[1]).epsilon(0.01));
}

TEST_CASE("the charts of a gain say what its report says") {
  const GainReport report = sample_with_scores();
  const std::string svg = gain_svg(report);
  test::check_well_formed(svg);
  for (const char* words :
       {">from the tee shot<", ">1.25 strokes<", ">from the irons<", ">from replanning<", ">saved a round<",
        ">1.75 strokes<", ">hole 1, par 4<", ">0.50<", ">Second shots, before and now<", ">5-iron<", ">50%, now 25%<",
        ">Scores of a round, before and now<", ">89 broken 25%, now 100%<", ">asked about: 20 saves 1.75<",
        ">weekend 16 on Heron Ferry Municipal, middle tees, best plan.<"}) {
    CAPTURE(words);
    CHECK(says(svg, words));
  }
  // A mark that nobody comes near is left out.
  CHECK_FALSE(says(svg, ">80 broken"));
  CHECK_FALSE(std::regex_search(svg, std::regex("nan|inf[^o]")));
  CHECK(gain_svg(report) == svg);
}

TEST_CASE("what is saved is drawn band by band and tee by tee") {
  BandsReport report = test::sample_bands();
  report.result.golfers.back().cannot_finish = {{4, 0.0}};
  const std::string svg = bands_svg(report);
  test::check_well_formed(svg);
  for (const char* words : {">Strokes saved a round: men<", ">Strokes saved a round: women<", ">middle tees<",
                            ">scratch<", ">1.50<", ">1.25<", ">cannot finish<"}) {
    CAPTURE(words);
    CHECK(says(svg, words));
  }
  CHECK_FALSE(says(svg, ">2.00<"));
}

TEST_CASE("the carries of a bag are drawn with their intervals and gaps") {
  BagResult bag;
  bag.units = Units::metres;
  ClubMeasure driver;
  driver.club = "driver <9>";
  driver.carry_yd = {200.0, 194.0, 206.0, 3.0, 10.0};
  driver.gap_yd = Estimate{30.0, 25.0, 35.0, 3.0, 10.0};
  ClubMeasure wood = driver;
  wood.club = "5-wood";
  wood.carry_yd = {170.0, 168.0, 172.0, 1.0, 10.0};
  wood.gap_yd.reset();
  wood.carry_yd.low = -std::numeric_limits<double>::infinity();
  bag.clubs = {driver, wood};
  bag.shots = 40;
  const std::string svg = bag_svg({bag, {}, {}});
  test::check_well_formed(svg);
  // 200 yards are 182.88 metres, 30 are 27.4 and 170 are 155.4.
  for (const char* words :
       {">driver &lt;9&gt;<", ">183, gap 27<", ">5-wood<", ">155<", "too few shots to give an interval"}) {
    CAPTURE(words);
    CHECK(says(svg, words));
  }
}

TEST_CASE("charts hold numbers that are all alike, lost or unknown") {
  report::Sheet sheet;
  report::add_bars(sheet, {{"nothing", 0.0, 0.0, "0"}}, report::Joined::no, "test");
  report::add_bars(sheet, {{"lost", 0.0, -1.0, "-1"}}, report::Joined::no, "test");
  report::add_pairs(sheet, {{"never", 0.0, 0.0, "0"}});
  constexpr double infinity = std::numeric_limits<double>::infinity();
  report::add_intervals(sheet, {{"unknown", 100.0, -infinity, infinity, "100"}});
  report::add_lines(sheet, {{{{1.0, 0.0}}, false, false, true}}, {{1.0, "here"}}, "x");
  CHECK_FALSE(std::regex_search(sheet.svg, std::regex("nan|inf")));
  test::check_well_formed(report::svg_file({sheet.panel()}, "title", "description"));
  CHECK(says(sheet.svg, "url(#test-down)"));
}

TEST_CASE("steps of an axis are 1, 2 or 5 times a power of ten") {
  CHECK(report::axis_step(40.0, 5) == doctest::Approx(10.0));
  CHECK(report::axis_step(1.75, 5) == doctest::Approx(0.5));
  CHECK(report::axis_step(0.04, 4) == doctest::Approx(0.01));
  CHECK(report::axis_step(7.0, 7) == doctest::Approx(1.0));
  CHECK(report::axis_step(8.0, 5) == doctest::Approx(2.0));
}

TEST_CASE("hostile names in charts are shown as text") {
  GainReport report = sample_with_scores();
  report.result.player = "<script>&\"' ]]>";
  report.result.course = std::string(300, 'W') + "\x01";
  report.result.best->holes.front().before.next_shares = {{"<b>5-iron\xE2\x80\xAE", 1.0}};
  const std::string svg = gain_svg(report);
  test::check_well_formed(svg);
  CHECK_FALSE(says(svg, "<script"));
  CHECK_FALSE(says(svg, "<b>"));
}

}  // namespace yardworth
