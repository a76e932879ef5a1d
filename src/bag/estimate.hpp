#pragma once

#include <vector>

#include "yardworth/bag.hpp"

namespace yardworth {

// Intervals of bag_level. docs/model.md, "What shots say".

// By Student's t; wholly unknown without degrees of freedom.
Estimate normal_estimate(double value, double variance, double freedom);
// Of a spread, by chi-squared of so many degrees of freedom.
Estimate spread_estimate(double sd, double freedom);
// Of a spread whose logarithm has such a variance.
Estimate log_estimate(double value, double log_variance, double freedom);
// Of a probability of which so many of so many were seen, or as good as seen (Jeffreys).
Estimate share_estimate(double seen, double of);

// The mean of values that count as much as their weights, none of which is above 1; nothing where they weigh nothing.
std::optional<Estimate> mean_estimate(const std::vector<double>& values, const std::vector<double>& weights);

// The first less the second, whose spreads may differ (Welch).
Estimate difference(const Estimate& first, const Estimate& second);

}  // namespace yardworth
