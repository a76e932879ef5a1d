#pragma once

#include <string>
#include <vector>

#include "yardworth/gain.hpp"

namespace yardworth::report {

// What comes into reach along a curve, for each of its points where anything does: "at 15: hole 7, bunker left at
// 208-228; hole 11, ...". In the units of the course.
std::vector<std::string> into_reach_words(const std::vector<CurvePoint>& curve, Units units);

}  // namespace yardworth::report
