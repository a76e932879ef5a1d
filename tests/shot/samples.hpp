#pragma once

#include <utility>
#include <vector>

#include "yardworth/course.hpp"

namespace yardworth {

// A straight hole with a fairway from 100 yards to 30 short of the hole, and a green 30 deep and 24 wide.
inline Hole sample_hole(double length_yd, double half_width_yd) {
  Hole hole;
  hole.number = 1;
  hole.par = 4;
  hole.length_yd = {length_yd};
  hole.fairway = {{100.0, length_yd - 30.0, half_width_yd, half_width_yd}};
  hole.green = {30.0, 24.0};
  return hole;
}

// A hazard with corners in the line's terms.
inline Hazard sample_hazard(HazardKind kind, std::vector<LinePlace> corners) {
  Hazard hazard;
  hazard.kind = kind;
  hazard.corners = std::move(corners);
  return hazard;
}

// The same as a rectangle.
inline Hazard sample_hazard(HazardKind kind, double left_yd, double right_yd, double from_yd, double to_yd) {
  return sample_hazard(kind, {{left_yd, from_yd}, {right_yd, from_yd}, {right_yd, to_yd}, {left_yd, to_yd}});
}

}  // namespace yardworth
