#pragma once

#include "strategy/policy_evaluation.hpp"

namespace yardworth {

// The variance, in strokes squared, of strokes of which `expected` (>= 1) are expected. docs/model.md, "Spread of the
// score".
using VarianceOf = double (*)(double expected);

// Of the short game, putts included: what it is for the golfers of the bands, drawn stroke by stroke, whose variance
// depends on hardly anything but how many strokes they expect. Straight lines between a dozen points.
double short_game_variance(double expected);
// Of the two whole numbers around the expectation: the least that whole numbers can have.
double two_numbers_variance(double expected);

// The variance of the strokes of one play of the hole. What is left to play changes by surprises that do not depend on
// one another, so the variance is the sum of their squares over the states that are visited.
double strokes_variance(const HoleModel& model, const PolicyEvaluation& planned,
                        VarianceOf short_game = short_game_variance);

}  // namespace yardworth
