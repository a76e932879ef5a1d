#include "cli/hazard_text.hpp"

#include <doctest/doctest.h>

#include <string>

#include "course/set_up.hpp"
#include "support/courses.hpp"
#include "support/scenario.hpp"
#include "support/words.hpp"

namespace yardworth::cli {
namespace {

using test::says;

ChangedCourse changed(const Course& course, const HazardTexts& changes) {
  const Reading<ChangedCourse> reading = change_hazards(course, changes);
  for (const Diagnostic& finding : reading.findings) MESSAGE(to_line(finding));
  REQUIRE(reading.ok());
  return *reading.value;
}

std::string faults(const HazardTexts& changes) {
  const Reading<ChangedCourse> reading = change_hazards(test::scenario_course(), changes);
  CHECK_FALSE(reading.ok());
  std::string lines;
  for (const Diagnostic& finding : reading.findings) lines += to_line(finding) + "\n";
  return lines;
}

const Hole& hole(const Course& course, int number) { return course.holes[static_cast<std::size_t>(number - 1)]; }

}  // namespace

TEST_CASE("the text of a move") {
  const Course course = test::scenario_course();
  const ChangedCourse moved = changed(course, {{"4:2:from=200,to=215"}, {}});
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

TEST_CASE("the text of a move as a whole") {
  const ChangedCourse moved = changed(test::scenario_course(), {{"4:5:along=-20,right=+2.5"}, {}});
  const Hazard& is = hole(moved.course, 4).hazards[4];
  CHECK(is.corners[0].along_yd == 366.0);
  CHECK(is.corners[0].right_yd == 7.5);
}

TEST_CASE("lengths are in the course's units") {
  Course course = test::scenario_course();
  course.units = Units::metres;
  const ChangedCourse whole = changed(course, {{"4:2:along=10"}, {}});
  CHECK(hole(whole.course, 4).hazards[1].from_yd == doctest::Approx(236.0 + 10.0 / 0.9144));
  const ChangedCourse added = changed(course, {{}, {"4:kind=bunker,side=left,from=200,to=212"}});
  CHECK(hole(added.course, 4).hazards.back().from_yd == doctest::Approx(200.0 / 0.9144));
  const ChangedCourse moved = changed(course, {{"4:2:to=240"}, {}});
  CHECK(hole(moved.course, 4).hazards[1].from_yd == doctest::Approx(236.0).epsilon(1e-12));
  CHECK(hole(moved.course, 4).hazards[1].to_yd == doctest::Approx(240.0 / 0.9144));
}

TEST_CASE("every fault is named, with the option it is in") {
  struct Fault {
    HazardTexts changes;
    const char* words;
  };
  for (const Fault& fault : {
           Fault{{{"4"}, {}}, "--move-hazard 4: fault: found \"4\", expected HOLE:NUMBER:key=value"},
           Fault{{{"4:2:"}, {}}, "expected HOLE:NUMBER:key=value"},
           Fault{{{"4:2:from"}, {}}, "found \"from\""},
           Fault{{{"4:2:=5"}, {}}, "found \"=5\""},
           Fault{{{"4:2:from=5,"}, {}}, "found \"\""},
           Fault{{{"44:2:from=5"}, {}}, "hole: found \"44\", expected a hole of Heron Ferry Municipal, 1 to 18"},
           Fault{{{"x:2:from=5"}, {}}, "hole: found \"x\""},
           Fault{{{"4:9:from=5"}, {}}, "number: found \"9\", expected a hazard of hole 4, 1 to 5"},
           Fault{{{"4:0:from=5"}, {}}, "number: found \"0\""},
           Fault{{{"4:2:form=230"}, {}}, "unknown key \"form\", expected \"from\", the nearest known key"},
           Fault{{{"4:2:from=abc"}, {}}, "from: found \"abc\", expected a number from -200 to 1300 yards"},
           Fault{{{"4:2:from=nan"}, {}}, "not a finite number"},
           Fault{{{"4:2:from=300,to=250"}, {}}, "to: found 250 yards, expected more than from: 300 yards"},
           Fault{{{"4:2:from=300"}, {}}, "expected more than from: 300 yards"},
           Fault{{{"4:2:from=700,to=720"}, {}}, "a hazard wholly off the hole"},
           Fault{{{"4:2:near=30"}, {}}, "far: found 22 yards, expected more than near: 30 yards"},
           Fault{{{"4:2:from=200,from=210"}, {}}, "the key \"from\" again"},
           Fault{{{}, {"4:kind=bunkr,side=left,from=1,to=9"}}, "the nearest is bunker"},
           Fault{{{}, {"4:side=left,from=1,to=9"}}, "kind: found nothing: the required key is missing"},
           Fault{{{}, {"kind=bunker"}}, "--add-hazard kind=bunker: fault: found \"kind=bunker\", expected HOLE:key="},
           Fault{{{}, {"4:kind=bunker,side=across,from=1,to=9,near=3"}}, "near and far only with side left or right"},
           Fault{{{}, {"1:kind=trees,side=left,from=235,to=243,near=50,far=90"}}, "inside the corner at 240 yards"},
           Fault{{{"4:x:from=5"}, {}}, "number: found \"x\", expected the number of a hazard"},
           Fault{{{}, {"4:kind=bunker,polygon=5"}},
                 "unknown key \"polygon\", expected one of kind, side, from, to, near, far, along, right"},
           Fault{{{"4:2:side=lft"}, {}},
                 "side: found \"lft\", expected one of left, right, across; the nearest is left"},
       }) {
    CAPTURE(fault.words);
    CHECK(says(faults(fault.changes), fault.words));
  }
  // All at once.
  const std::string both = faults({{"4:2:form=2"}, {"44:kind=bunker"}});
  CHECK(says(both, "form"));
  CHECK(says(both, "\"44\""));
  Course bare = test::standard_course();
  const Reading<ChangedCourse> none = change_hazards(bare, {{"1:1:from=5"}, {}});
  CHECK(says(to_line(none.findings.front()), "hole 1, which has none; --add-hazard adds one"));
}

TEST_CASE("moves come before additions, and nothing asked changes nothing") {
  const ChangedCourse both = changed(test::scenario_course(),
                                     {{"4:2:near=20,far=31", "4:2:side=left"}, {"4:kind=trees,side=left,from=1,to=9"}});
  REQUIRE(both.hazards.size() == 2);
  CHECK_FALSE(both.hazards[0].added);
  CHECK(both.hazards[1].added);
  CHECK(hole(both.course, 4).hazards[1].side == Side::left);
  CHECK(hole(both.course, 4).hazards[1].far_yd == 31.0);
  CHECK(changed(test::scenario_course(), {}).hazards.empty());
}

}  // namespace yardworth::cli
