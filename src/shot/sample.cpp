#include "shot/sample.hpp"

#include <boost/random/normal_distribution.hpp>
#include <boost/random/student_t_distribution.hpp>
#include <boost/random/uniform_01.hpp>
#include <cmath>

#include "shot/strike.hpp"

namespace yardworth {

namespace {

template <class Distribution>
double draw_within(Distribution& distribution, double scale, double limit, RandomEngine& engine) {
  for (;;) {
    const double z = scale * distribution(engine);
    if (std::abs(z) <= limit) return z;
  }
}

}  // namespace

Strike draw_strike(const Swing& swing, RandomEngine& engine) {
  boost::random::uniform_01<double> uniform;
  boost::random::student_t_distribution<double> student(direction_freedom);
  boost::random::normal_distribution<double> normal;
  const bool poor = uniform(engine) < swing.poor_strike;
  const double unit = std::sqrt((direction_freedom - 2.0) / direction_freedom);
  const double z = draw_within(student, unit, poor ? poor_direction_cut_sd : direction_cut_sd, engine);
  if (poor) {
    const double share = poor_carry_low + (poor_carry_high - poor_carry_low) * uniform(engine);
    return {swing.carry_yd * share, swing.direction_scale_rad * poor_direction_factor * z};
  }
  const double deviate = draw_within(normal, 1.0, carry_cut_sd, engine);
  return {swing.solid_carry_yd(deviate), swing.direction_scale_rad * z};
}

int draw_strokes(double expected, RandomEngine& engine) {
  boost::random::uniform_01<double> uniform;
  const double whole = std::floor(expected);
  return static_cast<int>(whole) + (uniform(engine) < expected - whole ? 1 : 0);
}

}  // namespace yardworth
