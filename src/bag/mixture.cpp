#include "bag/mixture.hpp"

#include <Eigen/Dense>
#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>

#include "core/numerics.hpp"
#include "shot/strike.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/units.hpp"

namespace yardworth {
namespace {

// The densities of strikes with their tails cut off, as they are played; or with all of them, as they are fitted, so
// that no shot pulls at a spread by the cut that it lies beside.
enum class Tails { cut, whole };

// The tops of standard densities, with tails whole, and what part of each is inside the cuts.
struct Constants {
  double normal = 0.0, student = 0.0;
  double normal_inside = 0.0, solid_inside = 0.0, poor_inside = 0.0;
  double student_per_sd = 0.0;  // the scale of the t for a direction spread of 1
};

Constants find_constants() {
  const boost::math::normal_distribution<double> normal;
  const boost::math::students_t_distribution<double> student(direction_freedom);
  const double per_sd = std::sqrt((direction_freedom - 2.0) / direction_freedom);
  const auto inside = [&](int cut_sd) { return 1.0 - 2.0 * boost::math::cdf(student, -cut_sd / per_sd); };
  return {boost::math::pdf(normal, 0.0),
          boost::math::pdf(student, 0.0),
          1.0 - 2.0 * boost::math::cdf(normal, -carry_cut_sd),
          inside(direction_cut_sd),
          inside(poor_direction_cut_sd),
          direction_scale_per_sd * per_sd};
}

const Constants& constants() {
  static const Constants found = find_constants();
  return found;
}

constexpr double stray_carry_density = 1.0 / (limits::shot_carry.high - limits::shot_carry.low);
constexpr double stray_direction_density = 1.0 / pi;  // ahead

double solid_carry_density(double carry_yd, const Mixture& mixture, Tails tails) {
  const double z = (carry_yd - mixture.carry_yd) / mixture.carry_sd_yd;
  const double whole = constants().normal * std::exp(-0.5 * z * z) / mixture.carry_sd_yd;
  if (tails == Tails::whole) return whole;
  return std::abs(z) > carry_cut_sd ? 0.0 : whole / constants().normal_inside;
}

double poor_carry_density(double carry_yd, const Mixture& mixture) {
  const double share = carry_yd / mixture.carry_yd;
  if (share < poor_carry_low || share > poor_carry_high) return 0.0;
  return 1.0 / ((poor_carry_high - poor_carry_low) * mixture.carry_yd);
}

// The t density with 5 degrees of freedom.
double student_density(double off_rad, double scale_rad) {
  static_assert(direction_freedom == 5.0, "the power below is (freedom + 1) / 2");
  const double x = off_rad / scale_rad;
  const double base = 1.0 + x * x / direction_freedom;
  return constants().student / (scale_rad * base * base * base);
}

struct Densities {
  double solid = 0.0, poor = 0.0, stray = 0.0;

  double sum() const { return solid + poor + stray; }
};

Densities densities_of(const StruckShot& shot, const Mixture& mixture, Tails tails) {
  const double known = 1.0 - numerics::stray_share;
  Densities densities{known * (1.0 - mixture.poor_strike) * solid_carry_density(shot.carry_yd, mixture, tails),
                      known * mixture.poor_strike * poor_carry_density(shot.carry_yd, mixture),
                      numerics::stray_share * stray_carry_density};
  if (!shot.has_direction) return densities;
  const double off = shot.direction_rad - mixture.direction_mean_rad;
  const double scale = constants().student_per_sd * mixture.direction_sd_rad;
  densities.solid *= student_density(off, scale);
  densities.poor *= student_density(off, poor_direction_factor * scale);
  densities.stray *= stray_direction_density;
  if (tails == Tails::whole) return densities;
  const double sds = std::abs(off) / (direction_scale_per_sd * mixture.direction_sd_rad);
  densities.solid *= sds > direction_cut_sd ? 0.0 : 1.0 / constants().solid_inside;
  densities.poor *= sds > poor_direction_cut_sd * poor_direction_factor ? 0.0 : 1.0 / constants().poor_inside;
  return densities;
}

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
  void tell_variances(MixtureFit& fit) const;

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
  const double scale = constants().student_per_sd * mixture.direction_sd_rad;
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
  const double per_sd = constants().student_per_sd;
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

// The complete data's information on carry, log spread and poor strikes, less what is missing: by how much the score of
// a shot varies with what it may have been (Louis 1982).
void MixtureFitter::tell_variances(MixtureFit& fit) const {
  const Mixture& m = fit.mixture;
  const double sd = m.carry_sd_yd;
  const double q = std::clamp(m.poor_strike, 1e-9, 1.0 - 1e-9);
  const double known = prior_.carry_spread_yd > 0.0 ? 1.0 / (prior_.carry_spread_yd * prior_.carry_spread_yd) : 0.0;
  const double behind = prior_.shots;
  Eigen::Matrix3d information = Eigen::Matrix3d::Zero();
  information(0, 0) = fit.solid / (sd * sd) + known;
  information(1, 1) = 2.0 * (fit.solid + behind);
  information(2, 2) = (fit.solid + fit.poor + behind) / (q * (1.0 - q));
  fit.carry_variance = 1.0 / information(0, 0);
  fit.log_carry_sd_variance = 1.0 / information(1, 1);
  fit.poor_strike_variance = 1.0 / information(2, 2);
  for (std::size_t i = 0; i < shots_.size(); ++i) {
    const double both = fit.shares[i].solid * fit.shares[i].poor;
    if (both <= 0.0) continue;
    const double z = (shots_[i].carry_yd - m.carry_yd) / sd;
    const Eigen::Vector3d score(z / sd, z * z - 1.0, -1.0 / (q * (1.0 - q)));
    information -= both * score * score.transpose();
  }
  const Eigen::LLT<Eigen::Matrix3d> factor(information);
  if (factor.info() != Eigen::Success) return;
  const Eigen::Matrix3d variance = factor.solve(Eigen::Matrix3d::Identity());
  fit.carry_variance = std::max(variance(0, 0), fit.carry_variance);
  fit.log_carry_sd_variance = std::max(variance(1, 1), fit.log_carry_sd_variance);
  fit.poor_strike_variance = std::max(variance(2, 2), fit.poor_strike_variance);
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
  tell_variances(fit);
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
