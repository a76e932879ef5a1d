#include "bag/fit_variances.hpp"

#include <Eigen/Dense>
#include <algorithm>
#include <boost/math/quadrature/gauss.hpp>
#include <cmath>

#include "bag/shot_densities.hpp"
#include "shot/strike.hpp"

namespace yardworth {
namespace {

// Of carry, the logarithm of its spread, poor strikes, mean direction and the logarithm of the spread of direction, in
// this order.
using Numbers = Eigen::Matrix<double, 5, 1>;
using Information = Eigen::Matrix<double, 5, 5>;

// How the logarithm of a shot's density moves with each number, as a solid strike and as a poor one.
struct Scores {
  Numbers solid = Numbers::Zero(), poor = Numbers::Zero();
};

// A fit may find no poor strike at all.
double poor_strike_of(const Mixture& mixture) { return std::clamp(mixture.poor_strike, 1e-9, 1.0 - 1e-9); }

void add_direction(double off_rad, double scale_rad, Numbers& score) {
  const double x = off_rad / scale_rad;
  const double weight = (direction_freedom + 1.0) / (direction_freedom + x * x);
  score(3) = weight * x / scale_rad;
  score(4) = weight * x * x - 1.0;
}

Scores scores_of(const StruckShot& shot, const Mixture& mixture) {
  const double q = poor_strike_of(mixture);
  const double z = (shot.carry_yd - mixture.carry_yd) / mixture.carry_sd_yd;
  Scores scores;
  scores.solid << z / mixture.carry_sd_yd, z * z - 1.0, -1.0 / (1.0 - q), 0.0, 0.0;
  scores.poor(2) = 1.0 / q;
  if (!shot.has_direction) return scores;
  const double off = shot.direction_rad - mixture.direction_mean_rad;
  const double scale = t_scale_per_sd() * mixture.direction_sd_rad;
  add_direction(off, scale, scores.solid);
  add_direction(off, poor_direction_factor * scale, scores.poor);
  return scores;
}

// Of shots of which one knew what they were.
Numbers complete_information(const MixturePrior& prior, const MixtureFit& fit) {
  const Mixture& m = fit.mixture;
  const double q = poor_strike_of(m);
  const double known = prior.carry_spread_yd > 0.0 ? 1.0 / (prior.carry_spread_yd * prior.carry_spread_yd) : 0.0;
  Numbers information = Numbers::Ones();
  information(0) = fit.solid / (m.carry_sd_yd * m.carry_sd_yd) + known;
  information(1) = 2.0 * (fit.solid + prior.shots);
  information(2) = (fit.solid + fit.poor + prior.shots) / (q * (1.0 - q));
  const double strikes = fit.solid_directions + fit.poor_directions;
  if (strikes <= 0.0) return information;
  const double scale = t_scale_per_sd() * m.direction_sd_rad;
  const double weight = fit.solid_directions + fit.poor_directions / (poor_direction_factor * poor_direction_factor);
  information(3) = (direction_freedom + 1.0) / (direction_freedom + 3.0) * weight / (scale * scale);
  information(4) = 2.0 * direction_freedom / (direction_freedom + 3.0) * (strikes + prior.shots);
  return information;
}

// What a shot adds to the equations of the fit just within a bound of poor carries more than just outside it, times how
// dense such shots are.
Numbers across_bound(const StruckShot& at, const Mixture& mixture) {
  const Densities within = densities_of(at, mixture, Tails::whole);
  Densities outside = within;
  outside.poor = 0.0;
  const Scores scores = scores_of(at, mixture);
  const Numbers more = (within.solid * scores.solid + within.poor * scores.poor) / within.sum() -
                       outside.solid * scores.solid / outside.sum();
  return 0.5 * (within.sum() + outside.sum()) * more;
}

// The same of shots in every direction. Left and right are alike, but for the mean direction, whose sum is nothing.
Numbers across_bound_all_around(double carry_yd, const Mixture& mixture) {
  using Rule = boost::math::quadrature::gauss<double, 30>;
  const double scale = t_scale_per_sd() * mixture.direction_sd_rad;
  Numbers sum = Numbers::Zero();
  const auto add = [&](double node, double weight) {
    // From the middle to as far as one likes, as from 0 to 1.
    const double u = 0.5 * (1.0 + node);
    const double off = scale * u / (1.0 - u);
    sum += weight * scale / ((1.0 - u) * (1.0 - u)) *
           across_bound({carry_yd, mixture.direction_mean_rad + off, true}, mixture);
  };
  for (std::size_t i = 0; i < Rule::abscissa().size(); ++i) {
    add(Rule::abscissa()[i], Rule::weights()[i]);
    add(-Rule::abscissa()[i], Rule::weights()[i]);
  }
  sum(3) = 0.0;
  return sum;
}

// By how much the equations of the fit move with each yard by which the bounds of poor carries do.
Numbers moved_by_bounds(const std::vector<StruckShot>& shots, const MixtureFit& fit) {
  const Mixture& m = fit.mixture;
  Numbers moved = Numbers::Zero();
  double with_direction = 0.0;
  for (std::size_t i = 0; i < shots.size(); ++i) {
    with_direction += shots[i].has_direction ? 1.0 : 0.0;
    const double both = fit.shares[i].solid * fit.shares[i].poor;
    if (both <= 0.0) continue;
    // Poor carries are spread over more yards.
    const Scores scores = scores_of(shots[i], m);
    moved += both / m.carry_yd * (scores.solid - scores.poor);
  }
  const double without = static_cast<double>(shots.size()) - with_direction;
  // The lower bound leaves shots out where the upper one takes them in. Just within, by rounding.
  const auto add_bound = [&](double share, double just_within) {
    const double carry_yd = just_within * std::abs(share) * m.carry_yd;
    if (with_direction > 0.0) moved += share * with_direction * across_bound_all_around(carry_yd, m);
    if (without > 0.0) moved += share * without * across_bound({carry_yd, 0.0, false}, m);
  };
  add_bound(-poor_carry_low, 1.0 + 1e-9);
  add_bound(poor_carry_high, 1.0 - 1e-9);
  return moved;
}

}  // namespace

void tell_variances(const std::vector<StruckShot>& shots, const MixturePrior& prior, MixtureFit& fit) {
  const Numbers complete = complete_information(prior, fit);
  fit.carry_variance = 1.0 / complete(0);
  fit.log_carry_sd_variance = 1.0 / complete(1);
  fit.poor_strike_variance = 1.0 / complete(2);
  // What is missing: by how much the score of a shot varies with what it may have been (Louis 1982).
  Information information = complete.asDiagonal();
  for (std::size_t i = 0; i < shots.size(); ++i) {
    const double both = fit.shares[i].solid * fit.shares[i].poor;
    if (both <= 0.0) continue;
    const Scores scores = scores_of(shots[i], fit.mixture);
    const Numbers score = scores.solid - scores.poor;
    information -= both * score * score.transpose();
  }
  const Eigen::LLT<Information> factor(information);
  if (factor.info() != Eigen::Success) return;
  Information variance = factor.solve(Information::Identity());
  // A carry that is too long by a yard moves the bounds, and these move every number.
  const Numbers pulled = factor.solve(moved_by_bounds(shots, fit));
  if (pulled(0) < 1.0) {
    Information moves = Information::Identity();
    moves.col(0) += pulled / (1.0 - pulled(0));
    variance = (moves * variance * moves.transpose()).eval();
  }
  fit.carry_variance = std::max(variance(0, 0), fit.carry_variance);
  fit.log_carry_sd_variance = std::max(variance(1, 1), fit.log_carry_sd_variance);
  fit.poor_strike_variance = std::max(variance(2, 2), fit.poor_strike_variance);
}

}  // namespace yardworth
