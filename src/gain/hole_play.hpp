#pragma once

#include <functional>
#include <map>
#include <string>
#include <vector>

#include "strategy/policy_evaluation.hpp"
#include "yardworth/gain.hpp"

namespace yardworth {

// What a policy plays from any place.
using ActionFrom = std::function<Action(Lie lie, Point from)>;

// The expected number of balls struck from each state in one play of the hole, replays included.
std::vector<double> expected_visits(const HoleModel& model, const PolicyEvaluation& planned);

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

// action_from says what the policy plays from any place: clubs are told by where the balls lie, not by the states
// around. Par 3 to 6.
HolePlay describe_play(const HoleModel& model, const Player& player, const PolicyEvaluation& planned,
                       const ActionFrom& action_from, int par);

}  // namespace yardworth
