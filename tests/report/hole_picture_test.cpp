#include "report/picture/hole_picture.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <regex>

#include "core/plane.hpp"
#include "report/hazard_place.hpp"
#include "report/picture/labels.hpp"
#include "report/picture/plan_drawing.hpp"
#include "report/picture/svg.hpp"
#include "support/courses.hpp"
#include "support/scenario.hpp"
#include "support/well_formed.hpp"
#include "support/words.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using test::check_well_formed;
using test::says;

StrategyResult drawn_strategy(const Course& course, const Player& player, std::vector<int> holes, int threads = 0) {
  StrategyRequest request;
  request.holes = std::move(holes);
  request.change = Change{20.0, 6.0};
  request.drawing = true;
  request.threads = threads;
  return compute_strategy(course, player, request);
}

const std::vector<std::string> hostile_names = {"<script>alert(1)</script>",
                                                "\"'><svg onload=x>",
                                                "]]> & &amp; <!--",
                                                "\xD7\xA9\xD7\x9C\xD7\x95\xD7\x9D \xE2\x80\xAE evil",
                                                "\xF0\x9F\x8F\x8C\xEF\xB8\x8F\xF0\x9F\x8F\xBD emoji",
                                                std::string(300, 'W'),
                                                "\x01\x1B[31m\x7F\xC2\x85",
                                                "\xEF\xBF\xBE\xEF\xBF\xBF",
                                                "\xFF\xC0 not UTF-8",
                                                "a\xCC\x81\xCC\x82\xCC\x83\xCC\x84"};

// Everything between < and >, without what stands between tags.
std::string tags_of(const std::string& svg) {
  std::string tags;
  for (std::size_t at = svg.find('<'); at != std::string::npos; at = svg.find('<', at + 1)) {
    tags += svg.substr(at, svg.find('>', at) - at + 1);
  }
  return tags;
}

}  // namespace

TEST_CASE("a picture of a hole has what it is to say") {
  const StrategyResult result = drawn_strategy(test::scenario_course(), test::scenario_member("weekend-16-man"), {7});
  const std::string svg = strategy_svg(result);
  for (const char* words : {">Hole 7, par 4, 396 yards<", ">before: driver<", ">after: driver<", ">leaves ", ">then ",
                            ">bunker<", ">out of bounds<", ">trees<", "208, carry 228", "found ", "half finish inside",
                            "50 yards", "qualified coach"}) {
    CAPTURE(words);
    CHECK(says(svg, words));
  }
  check_well_formed(svg);
  // Stands by itself.
  for (const char* reach_out : {"href", "<script", "<image", "@import", "<style"}) CHECK_FALSE(says(svg, reach_out));
  CHECK_FALSE(std::regex_search(svg, std::regex("nan|inf[^o]")));
}

TEST_CASE("pictures are the same bytes on any number of threads") {
  const Course course = test::scenario_course();
  const Player player = test::scenario_member("scratch-man");
  const std::string one = strategy_svg(drawn_strategy(course, player, {2, 6, 16}, 1));
  CHECK(strategy_svg(drawn_strategy(course, player, {2, 6, 16}, 3)) == one);
  check_well_formed(one);
}

TEST_CASE("hostile names are shown as text and break nothing") {
  Course course = test::water_and_bunker(Units::metres);
  for (const std::string& name : hostile_names) {
    CAPTURE(name);
    StrategyResult result = drawn_strategy(course, standard_player(Band::from_13_to_20, Gender::men), {2});
    result.course = result.player = result.tee = name;
    HoleDrawing& drawing = *result.holes.front().drawing;
    drawing.before.result.club = drawing.after->result.next_club = name;
    result.holes.front().after->tee_shot.club = name;
    const std::string svg = strategy_svg(result);
    check_well_formed(svg);
    for (const char* element : {"<script", "onload", "alert", "evil", "<!--", "]]"}) {
      CHECK_FALSE(says(tags_of(svg), element));
    }
    CHECK(svg.find_first_of("\x01\x1B\x7F") == std::string::npos);
    CHECK_FALSE(says(svg, "\xE2\x80\xAE"));
    Course named = course;
    named.name = named.tees.front().name = name;
    check_well_formed(course_svg(named));
  }
}

TEST_CASE("what was understood of a course is drawn, hole by hole") {
  const std::string svg = course_svg(test::scenario_course());
  for (int hole = 1; hole <= 18; ++hole) CHECK(says(svg, ">Hole " + std::to_string(hole) + ", par "));
  CHECK(says(svg, ">across, 338 to 352<"));
  CHECK(says(svg, ">18 degrees left<"));
  CHECK(says(svg, "back 398, middle 376, forward 318 yards; stroke index 11"));
  CHECK(svg.size() < 1000000);
  check_well_formed(svg);
}

TEST_CASE("labels stand apart inside the frame, and what has no room is counted") {
  std::vector<report::Label> labels;
  for (int i = 0; i < 60; ++i) {
    const double y = 100.0 + (i * 37) % 90;
    labels.push_back(
        {{180.0, y}, i % 2 == 0 ? report::Column::left : report::Column::right, {"bunker", "200, carry 220"}, i});
  }
  const report::LabelLayout layout = report::place_labels(labels, 50.0, 550.0);
  CHECK(layout.placed.size() + layout.left_out == labels.size());
  CHECK(layout.left_out > 0);
  for (const report::PlacedLabel& a : layout.placed) {
    CHECK(a.top >= 50.0);
    CHECK(a.top + a.height() <= 550.0);
    CHECK(a.label.rank < 40);
    for (const report::PlacedLabel& b : layout.placed) {
      if (&a == &b || a.label.column != b.label.column) continue;
      CHECK((a.top + a.height() <= b.top || b.top + b.height() <= a.top));
    }
  }
}

TEST_CASE("words are cut to their width") {
  CHECK(report::fit_text("driver", 100.0, 10.0) == "driver");
  const std::string cut = report::fit_text(std::string(300, 'W'), 100.0, 10.0);
  CHECK(report::text_width(cut, 10.0) <= 100.0);
  CHECK(cut.ends_with("..."));
  for (const std::string& name : hostile_names) {
    CHECK(report::text_width(report::fit_text(name, 60.0, 11.0, true), 11.0, true) <= 60.0);
    for (const std::string& line : report::wrap_text(fmt::format("{} {}", name, name), 90.0, 11.0)) {
      CHECK(report::text_width(line, 11.0) <= 90.0);
    }
  }
  CHECK(report::px(-0.04) == "0.0");
  // Advance widths of DejaVu Sans: w 0.818, i 0.278, d 0.635, e 0.615 of the size.
  CHECK(report::text_width("wide", 100.0) == doctest::Approx(234.6));
}

TEST_CASE("a plan lies inside its frame, the green above the tee") {
  for (const Hole& hole : test::scenario_course().holes) {
    CAPTURE(hole.number);
    const PlanView plan = plan_view(hole);
    const report::PlanFrame frame(plan, report::places_to_see(plan), 40.0);
    for (const PlanArea& area : plan.areas) {
      if (area.hazard >= 0) continue;
      for (const Point p : area.outline) CHECK(frame.shows(frame.at(p)));
    }
    const Point tee = frame.at(plan.line.front());
    const Point green = frame.at(plan.line.back());
    CHECK(green.y < tee.y);
    CHECK(green.x == doctest::Approx(tee.x));
    for (std::size_t i = 0; i < hole.hazards.size(); ++i) {
      const auto place = report::place_of_hazard(plan, frame, static_cast<int>(i), {180.0, 200.0});
      REQUIRE(place);
      CHECK(frame.shows(*place));
    }
  }
}

// The numbers of a mark "x,y" of the hazard in hand.
Point mark_of(const std::string& svg, const std::string& name) {
  std::smatch found;
  REQUIRE(std::regex_search(svg, found, std::regex(name + "=\"(-?[0-9.]+),(-?[0-9.]+)\"")));
  return {std::stod(found[1]), std::stod(found[2])};
}

TEST_CASE("a hazard that is moved by hand lies in a frame that stays, at the scale that the picture says") {
  const Course course = test::scenario_course();
  for (const int number : {1, 4, 7}) {
    const Hole& hole = course.holes[static_cast<std::size_t>(number - 1)];
    for (std::size_t i = 0; i < hole.hazards.size(); ++i) {
      CAPTURE(number);
      CAPTURE(i);
      HazardChange change;
      change.hole = number;
      change.hazard = static_cast<int>(i) + 1;
      change.along_yd = 0.0;
      const auto here = change_hazards(course, {change});
      change.along_yd = -10.0;
      const auto moved = change_hazards(course, {change});
      REQUIRE(here.ok());
      REQUIRE(moved.ok());
      const std::string before = report::hazards_svg(course, *here.value, number);
      check_well_formed(before);
      check_well_formed(report::hazards_svg(course, *moved.value, number));
      // On a straight hole its corners go as far as the picture says; a polygon's first corner is its outline's.
      const Point along = mark_of(before, "data-along");
      const Point right = mark_of(before, "data-right");
      CHECK(along.x * right.x + along.y * right.y == doctest::Approx(0.0).epsilon(1e-3));
      CHECK(along.y < 0.0);
      CHECK(right.x > 0.0);
      const PlanView plan = plan_view(hole);
      const report::PlanFrame frame(plan, report::places_to_see(plan), 0.0);
      CHECK(std::hypot(along.x, along.y) == doctest::Approx(frame.pixels_per_yard()).epsilon(1e-3));
      CHECK(std::hypot(right.x, right.y) == doctest::Approx(frame.pixels_per_yard()).epsilon(1e-3));
      if (!hole.doglegs.empty()) continue;
      const auto first_corner = [&](const Course& in) {
        for (const PlanArea& area : plan_view(in.holes[static_cast<std::size_t>(number - 1)]).areas) {
          if (area.hazard == static_cast<int>(i)) return frame.at(area.outline.front());
        }
        return Point{};
      };
      const Point gone = first_corner(moved.value->course) - first_corner(here.value->course);
      CHECK(gone.x == doctest::Approx(-10.0 * along.x).epsilon(0.01));
      CHECK(gone.y == doctest::Approx(-10.0 * along.y).epsilon(0.01));
    }
  }
}

TEST_CASE("where a hazard lies in words") {
  const Course course = test::scenario_course();
  const auto words = [&](int hole, int hazard) {
    return report::hazard_place_words(
        course.holes[static_cast<std::size_t>(hole - 1)].hazards[static_cast<std::size_t>(hazard - 1)], course.units);
  };
  CHECK(words(1, 1) == "bunker, 226 to 244 yards along the hole, 13 to 25 right of its line");
  CHECK(words(1, 2) == "penalty area, 338 to 352 yards along the hole, all across it");
  CHECK(words(1, 3) == "out of bounds, 0 to 398 yards along the hole, 38 or more left of its line");
  CHECK(words(1, 5) == "bunker, 380 to 397 yards along the hole, 13 to 24 left of its line");
  CHECK(words(5, 1) == "bunker, 214 to 232 yards along the hole, 6 left to 8 right of its line");
}

}  // namespace yardworth
