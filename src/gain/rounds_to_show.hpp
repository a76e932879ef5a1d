#pragma once

#include <optional>

#include "yardworth/gain.hpp"

namespace yardworth {

// How many rounds before a change, and as many after it, are needed before a difference of two means is likely to be
// seen: of equal samples from two spreads of standard deviation sd, each needs
//
//   n = 2 (z_0.975 + z_0.8)^2 sd^2 / difference^2
//
// for a two-sided test at the 5% level that finds the difference 80 times in 100 (D. C. Montgomery, Design and Analysis
// of Experiments, Wiley, chapter on simple comparative experiments; from memory). The spread is taken as known. At
// least 1, not rounded up; nothing for a difference of 0. sd >= 0.
std::optional<double> rounds_per_side(double difference, double sd);

}  // namespace yardworth
