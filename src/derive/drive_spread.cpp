#include "derive/drive_spread.hpp"

#include <boost/math/distributions/students_t.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <cmath>

#include "shot/strike.hpp"

namespace yardworth {

namespace {

// Of Student's t scaled to unit variance, cut at +-cut.
double variance_of_cut_t(double cut) {
  const boost::math::students_t_distribution<double> student(direction_freedom);
  const double unit = std::sqrt(direction_freedom / (direction_freedom - 2.0));
  using Rule = boost::math::quadrature::gauss_kronrod<double, 31>;
  const auto density = [&](double z) { return boost::math::pdf(student, z * unit); };
  const double squares = Rule::integrate([&](double z) { return z * z * density(z); }, 0.0, cut);
  return squares / Rule::integrate(density, 0.0, cut);
}

double variance_ratio(double poor_strike) { return 1.0 + poor_strike * (poor_direction_variance_ratio() - 1.0); }

}  // namespace

double poor_direction_variance_ratio() {
  const double scale = poor_direction_factor * direction_scale_per_sd;
  return scale * scale * variance_of_cut_t(poor_direction_cut_sd);
}

double all_drives_sd_rad(double solid_sd_rad, double poor_strike) {
  return solid_sd_rad * std::sqrt(variance_ratio(poor_strike));
}

double solid_drives_sd_rad(double all_sd_rad, double poor_strike) {
  return all_sd_rad / std::sqrt(variance_ratio(poor_strike));
}

}  // namespace yardworth
