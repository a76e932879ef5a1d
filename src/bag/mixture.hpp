#pragma once

#include <vector>

namespace yardworth {

// The strikes of one club as a mixture of solid and poor ones, the same that the engine plays with, fitted to shots
// that were measured. docs/model.md, "What shots say".

struct StruckShot {
  double carry_yd = 0.0;
  double direction_rad = 0.0;
  bool has_direction = false;
};

struct Mixture {
  double carry_yd = 0.0;     // mean of solid strikes
  double carry_sd_yd = 0.0;  // of solid strikes
  double direction_mean_rad = 0.0;
  double direction_sd_rad = 0.0;  // of solid strikes
  double poor_strike = 0.0;       // probability
};

// What is known of a golfer beside the shots, as so many shots of it.
struct MixturePrior {
  Mixture typical;
  double shots = 0.0;          // behind spreads and poor strikes
  double carry_spread_yd = 0;  // of the carry among such golfers; 0: nothing is known of it
};

// What a shot is, as likely as the mixture makes it; the three add up to 1.
struct ShotShares {
  double solid = 0.0;
  double poor = 0.0;
  double stray = 0.0;  // neither
};

// The probability density of a shot as strikes are played, by carry and, where it is known, by direction, in yards and
// radians.
double shot_density(const StruckShot& shot, const Mixture& mixture);
ShotShares shares_of(const StruckShot& shot, const Mixture& mixture);
double log_likelihood(const std::vector<StruckShot>& shots, const Mixture& mixture);

struct MixtureFit {
  Mixture mixture;                 // the most likely one, spreads as the likelihood has them
  std::vector<ShotShares> shares;  // of each shot, by densities whose tails are not cut
  double log_likelihood = 0.0;
  // Sums of the shares, and of those of shots with a direction.
  double solid = 0.0, poor = 0.0, solid_directions = 0.0, poor_directions = 0.0;
  // Shots that stand behind each number beside the measured ones: of the prior and of the penalty.
  double prior_shots = 0.0;
  // Variances by the information in the shots, less what is lost since nobody knows which strike was poor.
  double carry_variance = 0.0, log_carry_sd_variance = 0.0, poor_strike_variance = 0.0;
};

// At least one shot.
MixtureFit fit_mixture(const std::vector<StruckShot>& shots, const MixturePrior& prior = {});

// The middle of the values, and the median of how far they lie from it, as an estimate of the standard deviation of
// normal values (times 1.4826); both move little by a few that are far off. Not empty.
double median(std::vector<double> values);
double median_deviation(const std::vector<double>& values);

}  // namespace yardworth
