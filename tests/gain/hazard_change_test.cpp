#include <doctest/doctest.h>

#include <limits>
#include <string>

#include "course/set_up.hpp"
#include "support/courses.hpp"
#include "support/scenario.hpp"
#include "support/words.hpp"
#include "yardworth/change.hpp"

namespace yardworth {
namespace {

using test::says;

HazardChange move_of(int hole, int hazard) {
  HazardChange change;
  change.hole = hole;
  change.hazard = hazard;
  return change;
}

HazardChange moved_to(int hole, int hazard, double from_yd, double to_yd) {
  HazardChange change = move_of(hole, hazard);
  change.from_yd = from_yd;
  change.to_yd = to_yd;
  return change;
}

HazardChange addition(int hole, HazardKind kind, Side side, double from_yd, double to_yd) {
  HazardChange change;
  change.hole = hole;
  change.kind = kind;
  change.side = side;
  change.from_yd = from_yd;
  change.to_yd = to_yd;
  return change;
}

ChangedCourse changed(const Course& course, const std::vector<HazardChange>& changes) {
  const Reading<ChangedCourse> reading = change_hazards(course, changes);
  for (const Diagnostic& finding : reading.findings) MESSAGE(to_line(finding));
  REQUIRE(reading.ok());
  return *reading.value;
}

std::string faults(const std::vector<HazardChange>& changes) {
  const Reading<ChangedCourse> reading = change_hazards(test::scenario_course(), changes);
  CHECK_FALSE(reading.ok());
  std::string lines;
  for (const Diagnostic& finding : reading.findings) lines += to_line(finding) + "\n";
  return lines;
}

const Hole& hole(const Course& course, int number) { return course.holes[static_cast<std::size_t>(number - 1)]; }

}  // namespace

TEST_CASE("a moved hazard is what a file with it there would say") {
  const Course course = test::scenario_course();
  const ChangedCourse moved = changed(course, {moved_to(4, 2, 200.0, 215.0)});
  REQUIRE(moved.hazards.size() == 1);
  CHECK(moved.hazards[0].hole == 4);
  CHECK(moved.hazards[0].hazard == 1);
  CHECK_FALSE(moved.hazards[0].added);
  const Hazard& was = hole(course, 4).hazards[1];
  const Hazard& is = hole(moved.course, 4).hazards[1];
  CHECK(is.from_yd == 200.0);
  CHECK(is.to_yd == 215.0);
  CHECK(is.side == was.side);
  CHECK(is.near_yd == was.near_yd);
  CHECK(is.far_yd == was.far_yd);
  CHECK(is.kind == was.kind);
  // Nothing else moved.
  CHECK(hole(moved.course, 4).hazards[0].from_yd == hole(course, 4).hazards[0].from_yd);
  CHECK(hole(moved.course, 4).hazards.size() == hole(course, 4).hazards.size());
}

TEST_CASE("side, width and kind may move too, and a hazard twice") {
  HazardChange width = move_of(4, 2);
  width.near_yd = 20.0;
  width.far_yd = 31.0;
  HazardChange side = move_of(4, 2);
  side.side = Side::left;
  side.kind = HazardKind::penalty_area;
  const ChangedCourse moved = changed(test::scenario_course(), {width, side});
  REQUIRE(moved.hazards.size() == 1);
  const Hazard& is = hole(moved.course, 4).hazards[1];
  CHECK(is.side == Side::left);
  CHECK(is.kind == HazardKind::penalty_area);
  CHECK(is.near_yd == 20.0);
  CHECK(is.far_yd == 31.0);
  CHECK(is.from_yd == 236.0);
}

TEST_CASE("a hazard that comes to lie across the hole, or beside it, has the width of such a one") {
  HazardChange change = move_of(4, 2);
  change.side = Side::across;
  const ChangedCourse across = changed(test::scenario_course(), {change});
  CHECK(hole(across.course, 4).hazards[1].far_yd == farthest_out_yd);
  change = move_of(1, 2);
  change.side = Side::left;
  const ChangedCourse beside = changed(test::scenario_course(), {change});
  CHECK(hole(beside.course, 1).hazards[1].near_yd == default_near_yd(HazardKind::penalty_area));
}

TEST_CASE("a polygon becomes a strip when all of it is said") {
  HazardChange change = moved_to(1, 5, 200.0, 210.0);
  CHECK(says(faults({change}), "side: found nothing: the required key is missing"));
  change.side = Side::left;
  const ChangedCourse moved = changed(test::scenario_course(), {change});
  const Hazard& is = hole(moved.course, 1).hazards[4];
  CHECK(is.corners.empty());
  CHECK(is.kind == HazardKind::bunker);
  CHECK(is.from_yd == 200.0);
}

TEST_CASE("an added hazard comes last, with the defaults of a file") {
  const Course course = test::scenario_course();
  const ChangedCourse added = changed(course, {addition(4, HazardKind::bunker, Side::left, 230.0, 245.0)});
  REQUIRE(hole(added.course, 4).hazards.size() == hole(course, 4).hazards.size() + 1);
  CHECK(added.hazards.front().added);
  CHECK(added.hazards.front().hazard == hole(course, 4).hazards.size());
  const Hazard& is = hole(added.course, 4).hazards.back();
  CHECK(is.near_yd == default_near_yd(HazardKind::bunker));
  CHECK(is.far_yd == default_far_yd(HazardKind::bunker, is.near_yd));
}

TEST_CASE("a change is in yards whatever the course speaks, and findings speak as it does") {
  Course course = test::scenario_course();
  course.units = Units::metres;
  CHECK(hole(changed(course, {moved_to(4, 2, 200.0, 215.0)}).course, 4).hazards[1].from_yd == 200.0);
  const auto refused = change_hazards(course, {moved_to(4, 2, 300.0 / 0.9144, 250.0 / 0.9144)});
  REQUIRE(refused.findings.size() == 1);
  CHECK(says(to_line(refused.findings[0]), "to: found 250 metres, expected more than from: 300 metres"));
}

TEST_CASE("every fault of every change is named, with the change it is in") {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  HazardChange narrow = move_of(4, 2);
  narrow.near_yd = 30.0;
  HazardChange in_corner = addition(1, HazardKind::trees, Side::left, 235.0, 243.0);
  in_corner.near_yd = 50.0;
  in_corner.far_yd = 90.0;
  HazardChange across = addition(4, HazardKind::bunker, Side::across, 1.0, 9.0);
  across.near_yd = 3.0;
  HazardChange bare;
  bare.hole = 4;
  struct Fault {
    HazardChange change;
    const char* words;
  };
  for (const Fault& fault : {
           Fault{moved_to(44, 2, 1.0, 5.0), "hole: found \"44\", expected a hole of Heron Ferry Municipal, 1 to 18"},
           Fault{moved_to(4, 9, 1.0, 5.0), "number: found \"9\", expected a hazard of hole 4, 1 to 5"},
           Fault{moved_to(4, 0, 1.0, 5.0), "number: found \"0\""},
           Fault{moved_to(4, 2, nan, 5.0),
                 "from: found nan, which is not a finite number, expected a number from -200"},
           Fault{moved_to(4, 2, 1.0, 5000.0), "to: found 5000, expected a number from -200 to 1300 yards"},
           Fault{moved_to(4, 2, 300.0, 250.0), "to: found 250 yards, expected more than from: 300 yards"},
           Fault{moved_to(4, 2, 700.0, 720.0), "a hazard wholly off the hole"},
           Fault{narrow, "far: found 22 yards, expected more than near: 30 yards"},
           Fault{in_corner, "inside the corner at 240 yards"},
           Fault{across, "near and far only with side left or right"},
           Fault{bare, "kind: found nothing: the required key is missing, expected one of bunker, penalty_area"},
           Fault{bare, "to: found nothing: the required key is missing, expected a number of yards"},
       }) {
    CAPTURE(fault.words);
    const std::string told = faults({fault.change});
    CHECK_MESSAGE(says(told, fault.words), told);
    CHECK(says(told, "change of hole "));
  }
  narrow.name = "the narrow one";
  const std::string both = faults({narrow, moved_to(44, 1, 1.0, 5.0)});
  CHECK(says(both, "the narrow one: fault: far"));
  CHECK(says(both, "change of hole 44: fault: hole"));
  const auto none = change_hazards(test::standard_course(), {moved_to(1, 1, 1.0, 5.0)});
  CHECK(says(to_line(none.findings.front()), "expected a hazard of hole 1, which has none"));
}

TEST_CASE("nothing asked, nothing changed") { CHECK(changed(test::scenario_course(), {}).hazards.empty()); }

}  // namespace yardworth
