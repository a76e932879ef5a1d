#include "shot/strike.hpp"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>

namespace yardworth {

double cut_normal_quantile(double u) {
  const boost::math::normal_distribution<double> normal;
  const double outside = boost::math::cdf(normal, -carry_cut_sd);
  return boost::math::quantile(normal, outside + u * (1.0 - 2.0 * outside));
}

namespace {

// The ends of a trapezoid rule count half.
std::vector<double> trapezoid_weights(int steps_per_sd, int half_width, int stride) {
  const boost::math::students_t_distribution<double> student(direction_freedom);
  const double unit = std::sqrt(direction_freedom / (direction_freedom - 2.0));
  std::vector<double> weights;
  double sum = 0.0;
  for (int j = -half_width; j <= half_width; j += stride) {
    const double z = static_cast<double>(j) / steps_per_sd;
    const double end = j == -half_width || j == half_width ? 0.5 : 1.0;
    weights.push_back(end * boost::math::pdf(student, z * unit));
    sum += weights.back();
  }
  for (double& weight : weights) weight /= sum;
  return weights;
}

}  // namespace

StrikeLattice::StrikeLattice(int steps_per_sd, int cut_sd, int reach)
    : steps_per_sd_(steps_per_sd), half_width_(cut_sd * steps_per_sd), reach_(reach) {
  for (int stride = 1; stride <= largest_lattice_stride; ++stride) {
    const bool fits = 2 * half_width_ % stride == 0;
    weights_.push_back(fits ? trapezoid_weights(steps_per_sd_, half_width_, stride) : std::vector<double>{});
  }
  const double golden = (std::sqrt(5.0) - 1.0) / 2.0;
  for (int k = -reach_; k <= reach_; ++k) {
    const double turns = 0.5 + k * golden;
    const double u = turns - std::floor(turns);
    // 1 + k * golden is never whole for k != 0, and k = 0 gives one half: u lies inside (0, 1).
    solid_deviates_.push_back(cut_normal_quantile(u));
    poor_shares_.push_back(poor_carry_low + u * (poor_carry_high - poor_carry_low));
  }
}

EqualWeightLattice::EqualWeightLattice(int most, int cut_sd) : most_(most) {
  const boost::math::students_t_distribution<double> student(direction_freedom);
  const double unit = std::sqrt(direction_freedom / (direction_freedom - 2.0));
  const double outside = boost::math::cdf(student, -cut_sd * unit);
  const int last = 2 * most * shifts;
  deviates_.assign(static_cast<std::size_t>(last + 1), 0.0);
  // No node lies at the cuts themselves.
  for (int i = 1; 2 * i < last; ++i) {
    const double left = outside + (1.0 - 2.0 * outside) * i / last;
    const double deviate = boost::math::quantile(student, left) / unit;
    deviates_[static_cast<std::size_t>(i)] = deviate;
    deviates_[static_cast<std::size_t>(last - i)] = -deviate;
  }
}

}  // namespace yardworth
