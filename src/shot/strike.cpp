#include "shot/strike.hpp"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <numeric>

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

namespace {

// Quantiles of the direction at the middles of so many equal parts, an even number, cut at +-cut_sd.
std::vector<double> direction_quantiles(int parts, int cut_sd) {
  const boost::math::students_t_distribution<double> student(direction_freedom);
  const double unit = std::sqrt(direction_freedom / (direction_freedom - 2.0));
  const double outside = boost::math::cdf(student, -cut_sd * unit);
  std::vector<double> deviates(static_cast<std::size_t>(parts));
  for (std::size_t left = 0; 2 * left < deviates.size(); ++left) {
    const double share = outside + (1.0 - 2.0 * outside) * (static_cast<double>(left) + 0.5) / parts;
    deviates[left] = boost::math::quantile(student, share) / unit;
    deviates[deviates.size() - 1 - left] = -deviates[left];
  }
  return deviates;
}

// Of every so many in a row, all of one sign, the root of the mean of their squares.
std::vector<double> root_mean_squares(const std::vector<double>& deviates, std::size_t in_a_row) {
  std::vector<double> roots;
  for (auto first = deviates.begin(); first != deviates.end(); first += static_cast<std::ptrdiff_t>(in_a_row)) {
    const auto last = first + static_cast<std::ptrdiff_t>(in_a_row);
    const double squares = std::inner_product(first, last, first, 0.0);
    roots.push_back(std::copysign(std::sqrt(squares / static_cast<double>(in_a_row)), *first));
  }
  return roots;
}

}  // namespace

EqualWeightLattice::EqualWeightLattice(int most, int cut_sd)
    : most_(most), deviates_(static_cast<std::size_t>(most + 1)) {
  const std::vector<double> finest = direction_quantiles(most * shifts, cut_sd);
  for (int n = 1; n <= most; ++n) {
    if (most % n != 0) continue;
    const std::vector<double> by_node = root_mean_squares(finest, static_cast<std::size_t>(most / n));
    auto& by_shift = deviates_[static_cast<std::size_t>(n)];
    for (std::size_t shift = 0; shift < shifts; ++shift) {
      for (std::size_t at = shift; at < by_node.size(); at += shifts) by_shift.push_back(by_node[at]);
    }
  }
}

}  // namespace yardworth
