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

TEST_CASE("a curve has the interval of what was asked about, and numbers the places where hazards come into reach") {
  GainReport report = sample_with_scores();
  report.curve[1].into_reach = {{7, {2, Ground::bunker, HazardSide::left, 208.0, 228.0, false}},
                                {11, {0, Ground::penalty_area, HazardSide::across, 203.0, 215.0, false}}};
  report.curve[2].into_reach = {{4, {0, Ground::trees, HazardSide::right, 240.0, 260.0, false}}};
  const std::string without = gain_svg(report);
  test::check_well_formed(without);
  for (const char* words : {">1. at 20: hole 7, bunker left at 208-228; hole 11, penalty area<", ">across at 203-215<",
                            ">2. at 40: hole 4, trees right at 240-260<", ">1<", ">2<"}) {
    CAPTURE(words);
    CHECK(says(without, words));
  }
  CHECK_FALSE(says(without, "re-solved"));
  report.result.interval = SavedInterval{0.9, 1.0, 3.0, 200, PolicyChoice::best};
  const std::string with = gain_svg(report);
  test::check_well_formed(with);
  CHECK(says(with, "1.0 to 3.0"));
  CHECK(with.size() > without.size());
  for (CurvePoint& point : report.curve) point.into_reach.clear();
  CHECK_FALSE(says(gain_svg(report), "come into reach"));
}

// Rings 14 pixels wide on a scale where 1 is 7.4 pixels: two that are 1 apart cannot stand side by side.
TEST_CASE("numbered places that lie close together stand in rows below each other") {
  const auto height = [](std::vector<Point> pins) {
    report::Sheet sheet;
    report::add_lines(sheet, {{{{{0.0, 0.0}, {40.0, 1.0}}, false, false, false}}, {}, std::move(pins), {}, "x"});
    return sheet.top;
  };
  const double one_row = height({{0.0, 0.0}, {10.0, 0.2}, {20.0, 0.5}});
  CHECK(height({{0.0, 0.0}, {1.0, 0.0}}) > one_row);
  CHECK(height({{0.0, 0.0}, {1.0, 0.0}, {10.0, 0.2}, {11.0, 0.3}}) == height({{0.0, 0.0}, {1.0, 0.0}}));
  CHECK(height({}) < one_row);
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

TEST_CASE("what a moved hazard does to whom is drawn band by band and tee by tee") {
  BandsReport report = test::sample_changed_bands();
  for (ChangedHole& hole : report.result.golfers[0].changed) hole.with.before.hazards[0].found = 0.25;
  report.result.golfers[1].cannot_finish = {{4, 0.0}};
  const std::string svg = bands_svg(report);
  test::check_well_formed(svg);
  // A quarter of a stroke more, and found by 25 of 100 in place of the 12 or 13 that 0.125 is rounded to.
  for (const char* words : {">Hole 4, the bunker right moved: men<", ">Hole 4, the bunker right moved: women<",
                            ">0.25, 12 to 25<", ">0.00, 12<", ">cannot finish<", ">middle tees<"}) {
    CAPTURE(words);
    CHECK(says(svg, words));
  }
  CHECK_FALSE(says(svg, "Strokes saved a round"));
}

TEST_CASE("a heading that is too long for a line goes on in the next one") {
  report::Sheet sheet;
  sheet.heading("Hole 14, the out of bounds in the middle moved: women");
  const std::string svg = sheet.panel().svg;
  CHECK(says(svg, " women<"));
  CHECK_FALSE(says(svg, "..."));
}

TEST_CASE("two logs are drawn side by side: carries, intervals and gaps before and after") {
  BagReport bag;
  ClubChange driver;
  driver.club = "driver";
  driver.before.carry_yd = {200.0, 196.0, 204.0, 2.0, 10.0};
  driver.before.gap_yd = Estimate{30.0, 25.0, 35.0, 3.0, 10.0};
  driver.after.carry_yd = {212.0, 208.0, 216.0, 2.0, 10.0};
  driver.after.gap_yd = Estimate{38.0, 32.0, 44.0, 3.0, 10.0};
  driver.carry_yd = {12.0, 7.0, 17.0, 3.0, 20.0};
  driver.verdict = ClubChange::Verdict::real;
  ClubChange iron = driver;
  iron.club = "7-iron <b>";
  iron.verdict = ClubChange::Verdict::cannot_tell;
  ClubMeasure wedge;
  wedge.club = "sand wedge";
  wedge.carry_yd = {70.0, 68.0, 72.0, 1.0, 10.0};
  bag.comparison = BagComparison{"<before>", "after", {}, {}, {driver, iron}, {}, {"sand wedge"}};
  bag.comparison->measured_after.clubs = {wedge};
  const std::string svg = bag_svg(bag);
  test::check_well_formed(svg);
  for (const char* words : {">driver<", ">200, gap 30<", ">now: real<", ">212, gap 38<", ">7-iron &lt;b&gt;<",
                            ">now: cannot tell<", ">sand wedge<", ">70<", "driver 12 yards longer (7 to 17): real."}) {
    CAPTURE(words);
    CHECK(says(svg, words));
  }
  CHECK_FALSE(says(svg, "<before>"));
  // What is before is hollow and dashed.
  CHECK(says(svg, "stroke-dasharray=\"3 2.5\""));
  bag.comparison->changes = {iron};
  CHECK(says(bag_svg(bag), "Of no club can it be told yet that its carry changed."));
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
  report::add_lines(sheet,
                    {{{{{1.0, 0.0}}, false, false, true}}, {{1.0, "here"}}, {{1.0, 0.0}}, {{1.0, 0.0, 0.0, 0.0}}, "x"});
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
