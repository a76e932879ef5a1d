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

HazardChange moved_by(int hole, int hazard, double along_yd, double right_yd) {
  HazardChange change = move_of(hole, hazard);
  change.along_yd = along_yd;
  change.right_yd = right_yd;
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

TEST_CASE("a hazard moved as a whole keeps its shape") {
  const Course course = test::scenario_course();
  // Hole 4, hazard 2: right, 236 to 256, 9 to 22 from the line.
  const Hazard strip = hole(changed(course, {moved_by(4, 2, -30.0, 5.0)}).course, 4).hazards[1];
  CHECK(strip.side == Side::right);
  CHECK(strip.from_yd == 206.0);
  CHECK(strip.to_yd == 226.0);
  CHECK(strip.near_yd == 14.0);
  CHECK(strip.far_yd == 27.0);
  const Hazard beyond = hole(changed(course, {moved_by(4, 2, 0.0, -40.0)}).course, 4).hazards[1];
  CHECK(beyond.side == Side::left);
  CHECK(beyond.near_yd == 18.0);
  CHECK(beyond.far_yd == 31.0);
  const Hazard over = hole(changed(course, {moved_by(4, 2, 4.0, -12.0)}).course, 4).hazards[1];
  CHECK_FALSE(over.side.has_value());
  REQUIRE(over.corners.size() == 4);
  CHECK(over.corners[0].right_yd == -3.0);
  CHECK(over.corners[2].right_yd == 10.0);
  CHECK(over.corners[0].along_yd == 240.0);
  CHECK(over.corners[2].along_yd == 260.0);
  // Hole 1: water across from 338 to 352, and a polygon from [-22, 380].
  const Hazard across = hole(changed(course, {moved_by(1, 2, -20.0, 0.0)}).course, 1).hazards[1];
  CHECK(across.side == Side::across);
  CHECK(across.from_yd == 318.0);
  CHECK(across.far_yd == farthest_out_yd);
  const Hazard polygon = hole(changed(course, {moved_by(1, 5, -100.0, 3.0)}).course, 1).hazards[4];
  REQUIRE(polygon.corners.size() == 4);
  CHECK(polygon.corners[0].right_yd == -19.0);
  CHECK(polygon.corners[0].along_yd == 280.0);
  CHECK(polygon.corners[3].right_yd == -21.0);
  CHECK(polygon.corners[3].along_yd == 297.0);
}

TEST_CASE("a move as a whole may be in one direction, of another kind, and back") {
  HazardChange wet = move_of(4, 2);
  wet.right_yd = 2.0;
  wet.kind = HazardKind::penalty_area;
  const Course course = test::scenario_course();
  const Hazard is = hole(changed(course, {wet}).course, 4).hazards[1];
  CHECK(is.kind == HazardKind::penalty_area);
  CHECK(is.from_yd == 236.0);
  CHECK(is.near_yd == 11.0);
  const Hazard back =
      hole(changed(course, {moved_by(4, 2, 3.0, -31.0), moved_by(4, 2, -3.0, 31.0)}).course, 4).hazards[1];
  CHECK(back.side == Side::right);
  CHECK(back.from_yd == 236.0);
  CHECK(back.near_yd == 9.0);
  CHECK(back.far_yd == 22.0);
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
  HazardChange both_ways = moved_by(4, 2, 5.0, 0.0);
  both_ways.from_yd = 200.0;
  HazardChange of_new = addition(4, HazardKind::bunker, Side::left, 200.0, 210.0);
  of_new.right_yd = 3.0;
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
           Fault{both_ways, "from: found from beside along, expected either how far it moves or where it lies"},
           Fault{of_new, "right: found right of a hazard that is added, expected a hazard that is there"},
           Fault{moved_by(4, 2, nan, 0.0), "along: found nan, which is not a finite number, expected a number"},
           Fault{moved_by(4, 2, 0.0, 1600.0), "right: found 1600, expected a number from -1500 to 1500 yards"},
           Fault{moved_by(4, 2, 0.0, 300.0), "near: found 309 yards: a hazard wholly off the hole"},
           Fault{moved_by(4, 2, 400.0, 0.0), "from: found 636 yards: a hazard wholly off the hole"},
           Fault{moved_by(4, 5, 300.0, 0.0), "found a hazard wholly off the hole, expected a hazard on the hole"},
           Fault{moved_by(4, 5, 1000.0, 0.0), "along: found 1386, expected a number from -200 to 1300 yards"},
           Fault{moved_by(4, 5, 0.0, -450.0), "right: found -445, expected a number from -400 to 400 yards"},
           Fault{moved_by(1, 2, 0.0, 9.0), "right: found right of a hazard across the hole, expected along alone"},
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
