#pragma once

#include <functional>
#include <map>
#include <string>
#include <vector>

#include "yardworth/gain/tee_view.hpp"
#include "yardworth/strategy/plan.hpp"

namespace yardworth {

// What a plan plays from any place.
using ActionFrom = std::function<Action(Lie lie, Point from)>;

// How a hole is played under a plan, beyond its expected strokes. Everything is a sum over the strike lattices and the
// rows of the plan, nothing is drawn. docs/model.md, "How a hole is played".

// A hazard as the tee shots of a plan meet it: probabilities.
struct HazardMet {
  int hazard = 0;  // index into Hole::hazards
  std::string words;
  double from_yd = 0.0;  // from the tee in use, along the line of play
  double to_yd = 0.0;
  double found = 0.0;
  double reached = 0.0;  // finishes level with where it begins, or beyond
  double cleared = 0.0;  // finishes beyond its end
};

struct HolePlay {
  double strokes_variance = 0.0;     // of one play
  double green_in_regulation = 0.0;  // the ball is on the green after at most par - 2 strokes
  // The club of the approach: the first stroke after the tee shot that is played at the green from beyond the short
  // game. Sums to the probability that there is one; empty on par 3s.
  std::map<std::string, double> approach;
  std::vector<HazardMet> hazards;  // in the order in which the ball meets them
};

// The expected number of balls struck from each state in one play of the hole, replays included.
std::vector<double> expected_visits(const HoleModel& model, const PlanValue& planned);

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
double strokes_variance(const HoleModel& model, const PlanValue& planned, VarianceOf short_game = short_game_variance);

// action_from says what the plan plays from any place: clubs are told by where the balls lie, not by the states around.
// Words are in the units given; par 3 to 6.
HolePlay describe_play(const HoleModel& model, const Player& player, const PlanValue& planned,
                       const ActionFrom& action_from, int par, Units units);

}  // namespace yardworth
