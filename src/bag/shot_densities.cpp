#include "bag/shot_densities.hpp"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>

#include "core/numerics.hpp"
#include "shot/strike.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/units.hpp"

namespace yardworth {
namespace {

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

}  // namespace

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

double t_scale_per_sd() { return constants().student_per_sd; }

}  // namespace yardworth
