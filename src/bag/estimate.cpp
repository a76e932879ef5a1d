#include "bag/estimate.hpp"

#include <algorithm>
#include <boost/math/distributions/beta.hpp>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <limits>

namespace yardworth {
namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();
constexpr double tail = 0.5 * (1.0 - bag_level);
// Less than a twentieth of a degree of freedom gives intervals wider than any number of golf.
constexpr double least_freedom = 0.05;

double t_quantile(double freedom) {
  const boost::math::students_t_distribution<double> student(freedom);
  return boost::math::quantile(boost::math::complement(student, tail));
}

}  // namespace

Estimate normal_estimate(double value, double variance, double freedom) {
  if (freedom < least_freedom) return {value, -infinity, infinity, infinity, 0.0};
  const double error = std::sqrt(variance);
  const double half = error > 0.0 ? t_quantile(freedom) * error : 0.0;
  return {value, value - half, value + half, error, freedom};
}

Estimate spread_estimate(double sd, double freedom) {
  if (freedom < least_freedom) return {sd, 0.0, infinity, infinity, 0.0};
  const boost::math::chi_squared_distribution<double> squares(freedom);
  const double most = boost::math::quantile(boost::math::complement(squares, tail));
  const double least = boost::math::quantile(squares, tail);
  return {sd, sd * std::sqrt(freedom / most), least > 0.0 ? sd * std::sqrt(freedom / least) : infinity,
          std::sqrt(0.5 / freedom), freedom};
}

Estimate log_estimate(double value, double log_variance, double freedom) {
  if (freedom < least_freedom) return {value, 0.0, infinity, infinity, 0.0};
  const double error = std::sqrt(log_variance);
  const double factor = std::exp(t_quantile(freedom) * error);
  return {value, value / factor, value * factor, error, freedom};
}

Estimate share_estimate(double seen, double of) {
  if (of <= 0.0) return {0.0, 0.0, 1.0, infinity, 0.0};
  const double share = std::clamp(seen / of, 0.0, 1.0);
  const boost::math::beta_distribution<double> belief(seen + 0.5, std::max(of - seen, 0.0) + 0.5);
  // None seen, or nothing else: one end is where it cannot be passed.
  const double low = boost::math::quantile(belief, tail);
  const double high = boost::math::quantile(boost::math::complement(belief, tail));
  return {share, std::min(low, share), std::max(high, share), std::sqrt(share * (1.0 - share) / of), of};
}

std::optional<Estimate> mean_estimate(const std::vector<double>& values, const std::vector<double>& weights) {
  double weight = 0.0, sum = 0.0;
  for (std::size_t i = 0; i < values.size(); ++i) {
    weight += weights[i];
    sum += weights[i] * values[i];
  }
  if (weight <= least_freedom) return std::nullopt;
  const double mean = sum / weight;
  if (weight - 1.0 < least_freedom) return normal_estimate(mean, 0.0, 0.0);
  double squares = 0.0;
  for (std::size_t i = 0; i < values.size(); ++i) squares += weights[i] * (values[i] - mean) * (values[i] - mean);
  return normal_estimate(mean, squares / (weight - 1.0) / weight, weight - 1.0);
}

Estimate difference(const Estimate& first, const Estimate& second) {
  const double value = first.value - second.value;
  if (first.freedom <= 0.0 || second.freedom <= 0.0) return normal_estimate(value, 0.0, 0.0);
  const double a = first.standard_error * first.standard_error;
  const double b = second.standard_error * second.standard_error;
  if (a + b <= 0.0) return {value, value, value, 0.0, first.freedom + second.freedom};
  // Welch and Satterthwaite, by shares: errors may be as good as nothing, and their squares nothing.
  const double share = a / (a + b);
  const double freedom = 1.0 / (share * share / first.freedom + (1.0 - share) * (1.0 - share) / second.freedom);
  return normal_estimate(value, a + b, freedom);
}

}  // namespace yardworth
