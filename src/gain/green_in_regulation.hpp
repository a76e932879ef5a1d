#pragma once

#include <vector>

#include "gain/strike_outcomes.hpp"

namespace yardworth {

// How often a shot at the hole from inside the short game finds the green, of shots of the same hole: a golfer's other
// clubs leave the wedges as they were.
struct GreenChance {
  Lie lie = Lie::rough;
  double distance_yd = 0.0;
  Swing swing;
  double heading_rad = 0.0;
  double found = 0.0;
};

// The probability that a ball lies on the green after at most par - 2 strokes. Where the baseline has taken over and a
// stroke is left, the golfer's own stroke at the hole counts. Par 3 or more. `known` serves one golfer after the other.
double green_in_regulation(const HoleModel& model, const PolicyEvaluation& planned, int par, StrikeOutcomes& outcomes,
                           std::vector<GreenChance>& known);

}  // namespace yardworth
