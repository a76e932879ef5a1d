#pragma once

#include <string>

#include "yardworth/course.hpp"
#include "yardworth/units.hpp"

namespace yardworth::report {

// Where a hazard lies as a file counts it, whether it is a strip or a polygon: yards along the line of play from the
// longest tee and, right of the line positive, across it.
struct HazardPlace {
  double from_yd = 0.0;
  double to_yd = 0.0;
  double left_yd = 0.0;   // its edge on the left
  double right_yd = 0.0;  // and on the right
};
HazardPlace place_of(const Hazard& hazard);

// "bunker, 226 to 244 yards along the hole, 13 to 25 right of its line".
std::string hazard_place_words(const Hazard& hazard, Units units);

}  // namespace yardworth::report
