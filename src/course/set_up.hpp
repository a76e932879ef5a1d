#pragma once

#include <vector>

#include "yardworth/course.hpp"

namespace yardworth {

// The corners of a hazard as the line of play tells them, before the line bends them.
std::vector<LinePlace> corners_of(const Hazard& hazard);

// A hazard along one side of the line.
Hazard hazard_beside(HazardKind kind, Side side, double from_yd, double to_yd, double near_yd, double far_yd);

// Standard set-up, used where a file is silent; docs/formats.md gives the sources.
std::vector<FairwayStretch> default_fairway(int par, double longest_length_yd);
GreenSize default_green();
inline constexpr double farthest_out_yd = 150.0;         // as far from the line as any ball goes
double default_near_yd(HazardKind kind);                 // a side hazard without near
double default_far_yd(HazardKind kind, double near_yd);  // a side hazard without far, > near_yd
int default_par(double longest_length_yd);

}  // namespace yardworth
