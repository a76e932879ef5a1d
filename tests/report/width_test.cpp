#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <string>

#include "report/text.hpp"
#include "support/scenario.hpp"
#include "support/words.hpp"
#include "yardworth/report.hpp"

// Text fits the terminal that it is written for, and what matters is there at any width.

namespace yardworth {
namespace {

using test::lines_of;
using test::says;

constexpr std::size_t widths[] = {60, 80, 100};

// Characters, not bytes: what continues a character in UTF-8 is none.
std::size_t characters_of(const std::string& line) {
  const auto begins = [](char c) { return (static_cast<unsigned char>(c) & 0xc0U) != 0x80U; };
  return static_cast<std::size_t>(std::count_if(line.begin(), line.end(), begins));
}

void check_fits(const std::string& what, const std::function<std::string(std::size_t)>& text_of) {
  CAPTURE(what);
  for (const std::size_t width : widths) {
    CAPTURE(width);
    const std::string text = text_of(width);
    for (const std::string& line : lines_of(text)) CHECK_MESSAGE(characters_of(line) <= width, line);
    CHECK(says(text, "Cautions"));
  }
}

// The scenario's holes 3 to 6, its longest tee shots and its hazards among them.
Course few_holes() {
  Course course = test::scenario_course();
  course.holes = {course.holes.begin() + 2, course.holes.begin() + 6};
  return course;
}

GainReport gain(PolicyChoice policy) {
  const Player player = test::scenario_member("weekend-16-man");
  GainRequest request;
  request.tee = test::middle_tee;
  request.change = {20.0, 6.0};
  request.policy = policy;
  return {compute_gain(test::scenario_course(), player, request), {}, {"Assumed: built-in course, middle tees."}};
}

}  // namespace

TEST_CASE("a gain fits the terminal, and loses no strokes there") {
  GainReport report = gain(PolicyChoice::both);
  check_fits("gain", [&](std::size_t width) { return gain_text(report, false, width); });
  std::vector<std::string> lines = lines_of(gain_text(report, false, 60));
  // Columns may lie further apart than the words in them.
  const auto both_blank = [](char a, char b) { return a == ' ' && b == ' '; };
  for (std::string& line : lines) line.erase(std::unique(line.begin(), line.end(), both_blank), line.end());
  for (const HoleGain& hole : report.result.answer().holes) {
    const std::string end = fmt::format("{} {} {}", fixed(hole.strokes.before, 2), fixed(hole.strokes.replanned, 2),
                                        fixed(hole.strokes.strokes_saved(), 2));
    const std::string begin = fmt::format(" {} ", hole.number);
    CHECK_MESSAGE(std::any_of(lines.begin(), lines.end(),
                              [&](const std::string& line) { return line.starts_with(begin) && line.ends_with(end); }),
                  end);
  }
  CHECK(says(gain_text(report, false, 60), "Left out for want of room: yards, yards left, clubs shorter.\n"));
  for (const double carry_yd : {0.0, 20.0}) report.curve.push_back({{carry_yd, 6.0}, report.result.answer().round});
  check_fits("gain with a curve", [&](std::size_t width) { return gain_text(report, false, width); });
}

TEST_CASE("a strategy fits the terminal") {
  const Player player = test::scenario_member("weekend-16-man");
  StrategyRequest request;
  request.tee = test::middle_tee;
  request.change = Change{20.0, 6.0};
  StrategyReport report{compute_strategy(test::scenario_course(), player, request), {"Assumed: middle tees."}};
  report.result.holes[0].proof_before = OptimalityProof{2.5e-9, 812, 0.0041};
  check_fits("strategy", [&](std::size_t width) { return strategy_text(report, false, width); });
  report.result.holes = {report.result.holes[10]};
  check_fits("strategy --hole", [&](std::size_t width) { return strategy_text(report, false, width); });
}

TEST_CASE("bands fit the terminal") {
  const Course course = few_holes();
  BandsRequest request;
  BandsReport report{compute_bands(course, request), {}, {"Assumed: built-in course."}, {}};
  report.asking = {"--tee NAME --gender men", "--hole N", "--plan best", "--format json"};
  const auto text_of = [&](std::size_t width) { return bands_text(report, false, width); };
  check_fits("bands", text_of);
  report.hole = 4;
  check_fits("bands --hole", text_of);
  report.result.replanning_computed = true;
  report.result.change.irons_carry_yd = 6.0;
  check_fits("bands --irons --plan best", text_of);
  for (BandOnTee& golfer : report.result.golfers) golfer.changed = {{golfer.holes[1], golfer.holes[1]}};
  report.result.changed_hazards = {{4, 0, false}};
  check_fits("bands --move-hazard", text_of);
  request.tees = {test::middle_tee};
  request.genders = {Gender::men};
  report = {compute_bands(course, request), 4, {}, {}};
  check_fits("bands --tee", text_of);
  CHECK(says(text_of(60), "Approach shots by club"));
}

TEST_CASE("a bag fits the terminal") {
  std::string text = "club,carry_yd,total_yd,offline_yd,club_speed_mph,ball_speed_mph\n";
  for (const char* club : {"driver", "an iron of a name that is longer than any iron deserves"}) {
    for (const int carry : {196, 204, 199, 210, 188, 201, 110, 400}) {
      text += fmt::format("{},{},{},{},94,133\n", club, carry, carry + 17, carry - 195);
    }
  }
  const BagReport report{measure_bag(*read_shot_log(text, "log.csv").value), {}, {"Assumed: nothing."}};
  check_fits("bag", [&](std::size_t width) { return bag_text(report, false, width); });
  for (const std::size_t width : widths) {
    CHECK(says(test::words_of(bag_text(report, false, width)), "smash factor"));
  }
}

TEST_CASE("a delivery fits the terminal") {
  DeliveryRequest request;
  request.club = *typical_club("driver");
  request.delivery = typical_delivery(request.club, from_mph(94.0));
  DeliveryReport report{compute_delivery(request), {"Assumed: nothing."}};
  const auto text_of = [&](std::size_t width) { return delivery_text(report, false, width); };
  check_fits("delivery", text_of);
  request.after = request.delivery;
  request.after->attack_rad = radians(2.0);
  for (double attack = -8.0; attack <= 8.0; attack += 1.0) request.board_attacks_rad.push_back(radians(attack));
  request.board_speeds_mps = {from_mph(94.0), from_mph(104.0)};
  report.result = compute_delivery(request);
  check_fits("delivery --to --table", text_of);
}

}  // namespace yardworth
