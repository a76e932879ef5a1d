#pragma once

#include <string>
#include <utility>
#include <vector>

#include "baseline/published.hpp"
#include "course/set_up.hpp"
#include "yardworth/baseline.hpp"
#include "yardworth/course.hpp"

namespace yardworth::test {

// A straight hole of standard widths without hazards, from one tee.
inline Hole open_hole(int number, double length_yd) {
  Hole hole;
  hole.number = number;
  hole.par = default_par(length_yd);
  hole.length_yd = {length_yd};
  hole.fairway = default_fairway(hole.par, length_yd);
  hole.green = default_green();
  return hole;
}

inline Hazard across(HazardKind kind, double from_yd, double to_yd) {
  Hazard hazard;
  hazard.kind = kind;
  hazard.side = Side::across;
  hazard.from_yd = from_yd;
  hazard.to_yd = to_yd;
  hazard.far_yd = farthest_out_yd;
  return hazard;
}

// Out of bounds from behind the tee to behind the green.
inline Hazard boundary(const Hole& hole, Side side, double near_yd) {
  return hazard_beside(HazardKind::out_of_bounds, side, -60.0, hole.length_yd.front() + 60.0, near_yd, farthest_out_yd);
}

inline Course course_of(std::vector<Hole> holes) {
  Course course;
  course.name = "Test course";
  course.tees = {{"only", {}, {}, {}}};
  course.holes = std::move(holes);
  return course;
}

// 18 holes of standard lengths, 6,300 yards, straight, of standard widths, without hazards.
inline Course standard_course() {
  std::vector<Hole> holes;
  for (const double length : standard_hole_lengths_yd()) {
    holes.push_back(open_hole(static_cast<int>(holes.size()) + 1, length));
  }
  return course_of(std::move(holes));
}

// A par 3 over water, a par 4 with a bunker where drives finish.
inline Course water_and_bunker(Units units) {
  Hole over_water = open_hole(1, 150.0);
  over_water.hazards = {across(HazardKind::penalty_area, 60.0, 120.0)};
  Hole bunkered = open_hole(2, 380.0);
  bunkered.hazards = {hazard_beside(HazardKind::bunker, Side::right, 200.0, 230.0, 8.0, 20.0)};
  Course course = course_of({over_water, bunkered});
  course.units = units;
  return course;
}

}  // namespace yardworth::test
