#pragma once

#include <boost/random/mersenne_twister.hpp>

#include "shot/swing.hpp"

namespace yardworth {

// Boost.Random: the same numbers on every platform, which std distributions do not promise.
using RandomEngine = boost::random::mt19937_64;

// One strike drawn from the distribution of strike.hpp.
struct Strike {
  double carry_yd = 0.0;
  double direction_rad = 0.0;  // off the aim, right positive
};

Strike draw_strike(const Swing& swing, RandomEngine& engine);

// A whole number of strokes whose mean is `expected` (>= 1): the two whole numbers around it.
int draw_strokes(double expected, RandomEngine& engine);

}  // namespace yardworth
