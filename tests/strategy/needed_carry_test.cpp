#include "strategy/needed_carry.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <map>
#include <string>

#include "core/plane.hpp"
#include "course/hazard_kind.hpp"
#include "course/hole_map.hpp"
#include "support/courses.hpp"
#include "support/scenario.hpp"

namespace yardworth {
namespace {

// The map is looked at in cells of 3 yards, so that a gap is right to 3.
constexpr double cell_yd = 3.0;

double needed(const Hole& hole) {
  const HoleMap map(hole, Firmness::normal);
  return needed_carry_yd(map, map.tee(hole.length_yd.front()));
}

// Worked by hand from the files: `to` less `from` of what lies across; of the ditch of hole 11, 10 yards along the hole
// and slanting by 147 in 210, 10 x 210 / sqrt(210^2 + 147^2) = 8.2. What can be walked round needs no carry.
TEST_CASE("what the holes of two courses need to be carried is what lies across them") {
  const std::map<std::string, std::map<int, double>> across = {
      {"courses/heron-ferry/course.yaml", {{1, 14.0}, {8, 13.0}, {11, 8.2}, {18, 15.0}}},
      {"courses/marsh-end/course.yaml", {{3, 12.0}}}};
  for (const auto& entry : across) {
    const std::string& file = entry.first;
    const std::map<int, double>& carries = entry.second;
    const Reading<Course> course = read_course(test::text_of(file), file);
    REQUIRE(course.ok());
    for (const Hole& hole : course.value->holes) {
      CAPTURE(file);
      CAPTURE(hole.number);
      const auto carry = carries.find(hole.number);
      if (carry == carries.end()) {
        CHECK(needed(hole) == 0.0);
      } else {
        CHECK(std::abs(needed(hole) - carry->second) <= cell_yd);
      }
    }
  }
}

// Water on one side of land that is 20 yards wide on that side of the line.
Hazard water_beside(Side side, double from_yd, double to_yd) {
  return hazard_beside(HazardKind::penalty_area, side, from_yd, to_yd, 20.0, farthest_out_yd);
}

// 260 yards of water with two islands in it: the first 40 from the tee's bank, the second 90 from that and 70 from the
// green's. The widest gap is 90; without the second island 190.
TEST_CASE("islands are stepped on where they make the widest gap less") {
  Hole stones = test::open_hole(1, 400.0);
  stones.hazards = {test::across(HazardKind::penalty_area, 60.0, 100.0),
                    water_beside(Side::left, 100.0, 130.0),
                    water_beside(Side::right, 100.0, 130.0),
                    test::across(HazardKind::penalty_area, 130.0, 220.0),
                    water_beside(Side::left, 220.0, 250.0),
                    water_beside(Side::right, 220.0, 250.0),
                    test::across(HazardKind::penalty_area, 250.0, 320.0)};
  CHECK(std::abs(needed(stones) - 90.0) <= cell_yd);

  Hole one = stones;
  one.hazards.push_back(test::across(HazardKind::penalty_area, 220.0, 250.0));
  CHECK(std::abs(needed(one) - 190.0) <= cell_yd);
}

TEST_CASE("what has to be carried is what cannot be played") {
  for (const HazardKind kind : all_hazard_kinds) {
    Hole hole = test::open_hole(1, 400.0);
    hole.hazards = {test::across(kind, 100.0, 180.0)};
    CAPTURE(name(kind));
    CHECK(std::abs(needed(hole) - (is_playable(facts_of(kind).ground) ? 0.0 : 80.0)) <= cell_yd);
  }
}

}  // namespace
}  // namespace yardworth
