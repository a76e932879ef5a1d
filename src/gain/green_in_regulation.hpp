#pragma once

#include "gain/strike_outcomes.hpp"

namespace yardworth {

// The probability that a ball lies on the green after at most par - 2 strokes. Where the baseline has taken over and a
// stroke is left, the golfer's own stroke at the hole counts. Par 3 or more.
double green_in_regulation(const HoleModel& model, const PolicyEvaluation& planned, int par, StrikeOutcomes& outcomes);

}  // namespace yardworth
