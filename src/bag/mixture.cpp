#include "bag/mixture.hpp"

#include <algorithm>
#include <cmath>

#include "bag/fit_variances.hpp"
#include "bag/shot_densities.hpp"
#include "core/numerics.hpp"
#include "shot/strike.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/units.hpp"

namespace yardworth {
namespace {

ShotShares shares_within(const Densities& densities) {
  const double sum = densities.sum();
  return {densities.solid / sum, densities.poor / sum, densities.stray / sum};
}

double log_likelihood_of(const std::vector<StruckShot>& shots, const Mixture& mixture, Tails tails) {
  double sum = 0.0;
  for (const StruckShot& shot : shots) sum += std::log(densities_of(shot, mixture, tails).sum());
  return sum;
}

double quantile(std::vector<double> values, double share) {
  const auto at = static_cast<std::size_t>(share * static_cast<double>(values.size() - 1));
  std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(at), values.end());
  return values[at];
}

// Sums over the shots, weighted by what each of them is likely to be.
struct Sums {
  double solid = 0.0, poor = 0.0;
  double carry = 0.0, carry_square = 0.0;                                                    // from the carry before
  double direction_weight = 0.0, direction = 0.0, direction_square = 0.0, directions = 0.0;  // from the mean before
};

class MixtureFitter {
 public:
  MixtureFitter(const std::vector<StruckShot>& shots, const MixturePrior& prior);

  MixtureFit fit() const;

 private:
  Mixture start_at(double carry_yd) const;
  Mixture climb(Mixture mixture) const;
  Mixture step(const Mixture& mixture) const;
  Sums sums_of(const Mixture& mixture) const;
  double penalised(const Mixture& mixture) const;

  const std::vector<StruckShot>& shots_;
  const MixturePrior& prior_;
  std::vector<double> carries_;
  Mixture first_;               // from the middle of the shots
  Mixture typical_;             // that the spread is drawn to
  double behind_spread_ = 0.0;  // as so many shots
};

MixtureFitter::MixtureFitter(const std::vector<StruckShot>& shots, const MixturePrior& prior)
    : shots_(shots), prior_(prior) {
  std::vector<double> directions;
  for (const StruckShot& shot : shots) {
    carries_.push_back(shot.carry_yd);
    if (shot.has_direction) directions.push_back(shot.direction_rad);
  }
  first_.carry_yd = std::max(median(carries_), limits::carry.low);
  first_.carry_sd_yd =
      std::max({median_deviation(carries_), numerics::first_carry_sd_share * first_.carry_yd, limits::carry_sd.low});
  first_.direction_sd_rad = numerics::first_direction_sd_rad;
  if (!directions.empty()) {
    first_.direction_mean_rad = median(directions);
    first_.direction_sd_rad = std::max(median_deviation(directions), numerics::first_direction_sd_rad);
  }
  first_.poor_strike = numerics::first_poor_strike;
  typical_ = prior.shots > 0.0 ? prior.typical : first_;
  behind_spread_ = prior.shots > 0.0 ? prior.shots : numerics::spread_penalty_shots / static_cast<double>(shots.size());
}

Mixture MixtureFitter::start_at(double carry_yd) const {
  Mixture start = first_;
  start.carry_yd = std::max(carry_yd, limits::carry.low);
  if (prior_.shots > 0.0) {
    start.carry_sd_yd = typical_.carry_sd_yd;
    start.direction_sd_rad = typical_.direction_sd_rad;
    start.poor_strike = typical_.poor_strike;
  }
  return start;
}

Sums MixtureFitter::sums_of(const Mixture& mixture) const {
  Sums sums;
  const double scale = t_scale_per_sd() * mixture.direction_sd_rad;
  for (const StruckShot& shot : shots_) {
    const Densities densities = densities_of(shot, mixture, Tails::whole);
    const double sum = densities.sum();
    const double solid = densities.solid / sum;
    const double poor = densities.poor / sum;
    sums.solid += solid;
    sums.poor += poor;
    const double over = shot.carry_yd - mixture.carry_yd;
    sums.carry += solid * over;
    sums.carry_square += solid * over * over;
    if (!shot.has_direction) continue;
    // A t is a normal of unknown spread: what is far off counts for less.
    const double off = shot.direction_rad - mixture.direction_mean_rad;
    const auto weight = [&](double own_scale) {
      const double x = off / own_scale;
      return (direction_freedom + 1.0) / (direction_freedom + x * x);
    };
    const double all = solid * weight(scale) +
                       poor * weight(poor_direction_factor * scale) / (poor_direction_factor * poor_direction_factor);
    sums.direction_weight += all;
    sums.direction += all * off;
    sums.direction_square += all * off * off;
    sums.directions += solid + poor;
  }
  return sums;
}

Mixture MixtureFitter::step(const Mixture& mixture) const {
  const Sums sums = sums_of(mixture);
  Mixture next = mixture;
  const double carry_information = sums.solid / (mixture.carry_sd_yd * mixture.carry_sd_yd);
  const double known_information =
      prior_.carry_spread_yd > 0.0 ? 1.0 / (prior_.carry_spread_yd * prior_.carry_spread_yd) : 0.0;
  double moved = 0.0;
  if (carry_information + known_information > 0.0) {
    moved = (sums.carry / (mixture.carry_sd_yd * mixture.carry_sd_yd) +
             known_information * (typical_.carry_yd - mixture.carry_yd)) /
            (carry_information + known_information);
  }
  next.carry_yd = std::clamp(mixture.carry_yd + moved, limits::carry.low, limits::carry.high);
  moved = next.carry_yd - mixture.carry_yd;
  const double square = sums.carry_square - 2.0 * moved * sums.carry + moved * moved * sums.solid;
  const auto spread = [&](double squares, double count, double typical) {
    return std::sqrt((std::max(squares, 0.0) + behind_spread_ * typical * typical) / (count + behind_spread_));
  };
  next.carry_sd_yd =
      std::clamp(spread(square, sums.solid, typical_.carry_sd_yd), limits::carry_sd.low, limits::carry_sd.high);
  const double strikes = sums.solid + sums.poor + prior_.shots;
  if (strikes > 0.0) {
    next.poor_strike =
        std::min((sums.poor + prior_.shots * typical_.poor_strike) / strikes, numerics::most_poor_strike);
  }
  if (sums.directions <= 0.0) return next;
  const double turned = sums.direction / sums.direction_weight;
  next.direction_mean_rad += turned;
  const double turned_square =
      std::max(sums.direction_square - 2.0 * turned * sums.direction + turned * turned * sums.direction_weight, 0.0);
  // The sum of squares is that of the t's scale.
  const double per_sd = t_scale_per_sd();
  next.direction_sd_rad =
      std::clamp(spread(turned_square / (per_sd * per_sd), sums.directions, typical_.direction_sd_rad),
                 radians(limits::direction_sd.low), radians(limits::direction_sd.high));
  return next;
}

Mixture MixtureFitter::climb(Mixture mixture) const {
  for (int i = 0; i < numerics::most_mixture_steps; ++i) {
    const Mixture next = step(mixture);
    const double moved =
        std::max({std::abs(next.carry_yd - mixture.carry_yd) / next.carry_sd_yd,
                  std::abs(next.carry_sd_yd / mixture.carry_sd_yd - 1.0),
                  std::abs(next.direction_mean_rad - mixture.direction_mean_rad) / next.direction_sd_rad,
                  std::abs(next.direction_sd_rad / mixture.direction_sd_rad - 1.0),
                  std::abs(next.poor_strike - mixture.poor_strike)});
    mixture = next;
    if (moved < numerics::mixture_accuracy) break;
  }
  return mixture;
}

double MixtureFitter::penalised(const Mixture& mixture) const {
  const auto penalty = [&](double sd, double typical) {
    const double ratio = typical / sd;
    return 0.5 * behind_spread_ * (ratio * ratio - 2.0 * std::log(ratio));
  };
  return log_likelihood_of(shots_, mixture, Tails::whole) - penalty(mixture.carry_sd_yd, typical_.carry_sd_yd) -
         penalty(mixture.direction_sd_rad, typical_.direction_sd_rad);
}

MixtureFit MixtureFitter::fit() const {
  const Mixture middle = climb(start_at(first_.carry_yd));
  const Mixture upper = climb(start_at(quantile(carries_, numerics::upper_start_quantile)));
  MixtureFit fit;
  fit.mixture = penalised(upper) > penalised(middle) ? upper : middle;
  fit.prior_shots = behind_spread_;
  fit.log_likelihood = yardworth::log_likelihood(shots_, fit.mixture);
  fit.shares.reserve(shots_.size());
  for (const StruckShot& shot : shots_) {
    const ShotShares shares = shares_within(densities_of(shot, fit.mixture, Tails::whole));
    fit.shares.push_back(shares);
    fit.solid += shares.solid;
    fit.poor += shares.poor;
    if (!shot.has_direction) continue;
    fit.solid_directions += shares.solid;
    fit.poor_directions += shares.poor;
  }
  tell_variances(shots_, prior_, fit);
  return fit;
}

}  // namespace

double shot_density(const StruckShot& shot, const Mixture& mixture) {
  return densities_of(shot, mixture, Tails::cut).sum();
}

ShotShares shares_of(const StruckShot& shot, const Mixture& mixture) {
  return shares_within(densities_of(shot, mixture, Tails::cut));
}

double log_likelihood(const std::vector<StruckShot>& shots, const Mixture& mixture) {
  return log_likelihood_of(shots, mixture, Tails::cut);
}

MixtureFit fit_mixture(const std::vector<StruckShot>& shots, const MixturePrior& prior) {
  return MixtureFitter(shots, prior).fit();
}

double median(std::vector<double> values) {
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  if (values.size() % 2 == 1) return *middle;
  return 0.5 * (*middle + *std::max_element(values.begin(), middle));
}

double median_deviation(const std::vector<double>& values) {
  constexpr double of_normal = 1.4826;
  const double center = median(values);
  std::vector<double> off;
  off.reserve(values.size());
  for (const double value : values) off.push_back(std::abs(value - center));
  return of_normal * median(std::move(off));
}

}  // namespace yardworth
