#include "input/units_doubt.hpp"

#include <doctest/doctest.h>

#include <string>

#include "baseline/published.hpp"
#include "input/samples.hpp"
#include "support/courses.hpp"
#include "support/scenario.hpp"
#include "support/words.hpp"
#include "yardworth/read.hpp"

// Lengths that look like metres called yards, or the other way about. The yardage rating, from which a Course Rating
// differs by what obstacles are worth: USGA Course Rating System manual, as quoted.

namespace yardworth {
namespace {

using input::doubt_about_units;

// The course as a file has it that calls its lengths by the other unit.
Course called_otherwise(Course course) {
  const bool yards = course.units == Units::yards;
  course.units = yards ? Units::metres : Units::yards;
  for (Hole& hole : course.holes) {
    for (double& length_yd : hole.length_yd) length_yd *= yards ? 1.0 / metres_per_yard : metres_per_yard;
  }
  return course;
}

Player called_otherwise(Player player) {
  const bool yards = player.units == Units::yards;
  player.units = yards ? Units::metres : Units::yards;
  for (Club& club : player.clubs) club.carry_yd *= yards ? 1.0 / metres_per_yard : metres_per_yard;
  return player;
}

Player times(Player player, double factor) {
  for (Club& club : player.clubs) club.carry_yd *= factor;
  return player;
}

// The standard course at a length, rated as its length asks for, and so many strokes by obstacles.
Course rated(double length_yd, Gender gender, double by_obstacles, Units units = Units::yards) {
  Course course = test::standard_course();
  course.units = units;
  const double factor = length_yd / total_length_yd(course, 0);
  for (Hole& hole : course.holes) hole.length_yd[0] *= factor;
  course.tees[0].rated_for = gender;
  course.tees[0].course_rating = yardage_rating(Band::scratch, gender).strokes(length_yd) + by_obstacles;
  return course;
}

Course course_file(const std::string& file) { return *read_course(test::text_of(file), file).value; }

}  // namespace

TEST_CASE("lengths in metres that are called yards are seen by the Course Ratings") {
  Course in_metres = test::scenario_course();
  in_metres.units = Units::metres;
  const auto heron_ferry = doubt_about_units(called_otherwise(in_metres));
  REQUIRE(heron_ferry);
  CHECK(heron_ferry->found == "Course Ratings 3.4 strokes or more above those of such lengths in yards");
  CHECK(heron_ferry->expected == "units: metres, if they are metres");
  for (const Gender gender : {Gender::men, Gender::women}) {
    CHECK(doubt_about_units(called_otherwise(rated(6300.0, gender, 1.0, Units::metres))));
  }
}

TEST_CASE("lengths in yards that are called metres are seen by the Course Ratings") {
  Course yards = course_file("courses/marsh-end/course.yaml");
  yards.units = Units::yards;
  const auto doubt = doubt_about_units(called_otherwise(yards));
  REQUIRE(doubt);
  CHECK(doubt->found == "Course Ratings 3.1 strokes or more below those of such lengths in metres");
  CHECK(doubt->expected == "units: yards, if they are yards");
}

TEST_CASE("courses that are as they say are left alone, however short or long") {
  for (const char* file :
       {"courses/heron-ferry/course.yaml", "courses/bare-scorecard/course.yaml", "courses/marsh-end/course.yaml"}) {
    CHECK_FALSE(doubt_about_units(course_file(file)));
  }
  for (const Units units : {Units::yards, Units::metres}) {
    for (const double length_yd : {3800.0, 4600.0, 5000.0, 5760.0, 6300.0, 7500.0}) {
      for (const double by_obstacles : {-2.5, 0.0, 2.5}) {
        for (const Gender gender : {Gender::men, Gender::women}) {
          CHECK_FALSE(doubt_about_units(rated(length_yd, gender, by_obstacles, units)));
        }
      }
    }
    // Without ratings nothing tells a short course in yards from one in metres.
    Course unrated = rated(5000.0, Gender::men, 0.0, units);
    unrated.tees[0].course_rating.reset();
    CHECK_FALSE(doubt_about_units(unrated));
    CHECK_FALSE(doubt_about_units(called_otherwise(unrated)));
  }
  // A rating that fits neither is a slip of another kind.
  CHECK_FALSE(doubt_about_units(rated(6300.0, Gender::men, 9.0)));
  // One tee that fits is enough for the units to be right.
  Course one_fits = test::scenario_course();
  one_fits.units = Units::metres;
  one_fits = called_otherwise(one_fits);
  REQUIRE(doubt_about_units(one_fits));
  one_fits.tees[0].course_rating = 68.0;
  CHECK_FALSE(doubt_about_units(one_fits));
}

TEST_CASE("a club table is doubted where every club is far from such golfers, in the direction of the other unit") {
  const Player usual = standard_player(Band::from_13_to_20, Gender::men);
  // A short hitter's carries in metres, called yards; a long hitter's in yards, called metres.
  Player short_in_metres = times(usual, 0.75);
  short_in_metres.units = Units::metres;
  const auto too_short = doubt_about_units(called_otherwise(short_in_metres));
  REQUIRE(too_short);
  CHECK(too_short->found == "carries in yards of which every one is at most 0.69 times that of such golfers");
  CHECK(too_short->expected == "units: metres, if they are metres");
  const auto too_long = doubt_about_units(called_otherwise(times(usual, 1.2)));
  REQUIRE(too_long);
  CHECK(too_long->found == "carries in metres of which every one is at least 1.31 times that of such golfers");
  CHECK(too_long->expected == "units: yards, if they are yards");
  // The unit's own factor alone tells nothing: golfers differ by more.
  CHECK_FALSE(doubt_about_units(called_otherwise(usual)));
  for (const double factor : {0.8, 1.2}) CHECK_FALSE(doubt_about_units(times(usual, factor)));
  // In the wrong direction: nobody's yards, called metres, become fewer.
  CHECK_FALSE(doubt_about_units(times(usual, 1.4)));
  Player few_clubs = times(usual, 0.65);
  CHECK(doubt_about_units(few_clubs));
  few_clubs.clubs.resize(4);
  CHECK_FALSE(doubt_about_units(few_clubs));
  for (const char* member : test::scenario_members) CHECK_FALSE(doubt_about_units(test::scenario_member(member)));
}

TEST_CASE("a doubt about units is advice, at the place of the units") {
  std::string text = samples::course;
  const std::string rating = "course_rating: 35.8";
  REQUIRE(text.find(rating) != std::string::npos);
  // 3218 yards are rated 35.1 without obstacles; 37.0 lies 3.8 above for 18 holes, and 1.0 above if they are metres.
  text.replace(text.find(rating), rating.size(), "course_rating: 37.0");
  const Reading<Course> reading = read_course(text, "f");
  REQUIRE(reading.ok());
  bool told = false;
  for (const Diagnostic& finding : reading.findings) {
    if (!test::says(finding.found, "Course Ratings")) continue;
    told = true;
    CHECK(finding.severity == Severity::advice);
    CHECK(finding.path == "units");
    CHECK(finding.line > 0);
  }
  CHECK(told);
}

}  // namespace yardworth
