#pragma once

#include <vector>

namespace yardworth {

// How often so many strokes are taken: probabilities by their number, from 0 on. They sum to 1.
using StrokeCounts = std::vector<double>;

double mean_of(const StrokeCounts& counts);
double variance_of(const StrokeCounts& counts);

// What is left to 1 goes to the largest number: those who take more are counted as if they took that.
void put_rest_last(StrokeCounts& counts);

// Adds weight, in whole strokes around `strokes` (>= 0), so that the mean is that; grows `counts` where it has to.
void add_around(StrokeCounts& counts, double strokes, double weight);

// The same with another mean (not below the least number that has a probability): a share of all moves one stroke up,
// or of all but those at the least number one stroke down, and again where one stroke is not enough.
StrokeCounts with_mean(StrokeCounts counts, double mean);

// The sum of two numbers of strokes that do not depend on one another.
StrokeCounts convolve(const StrokeCounts& a, const StrokeCounts& b);

}  // namespace yardworth
