#pragma once

#include <algorithm>
#include <boost/math/distributions/students_t.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <cmath>
#include <functional>

#include "strategy/discretisation.hpp"

namespace yardworth::test {

// S. Ko, PhD thesis, Columbia University, 2012: t distributions and mixtures fit measured shots. Our cut t, written
// down a second time with Boost.Math: Student t with 5 degrees of freedom, scaled to unit variance, nothing beyond
// +-limit.
struct CutStudent {
  explicit CutStudent(double limit_sd) : limit(limit_sd), inside(1.0 - 2.0 * above(limit_sd)) {}

  // Goes on beyond the limits, so that its slope there can be told.
  double density(double z) const { return unit * boost::math::pdf(student, z * unit) / inside; }
  // Of all directions, those right of z.
  double share_above(double z) const { return (above(std::clamp(z, -limit, limit)) - above(limit)) / inside; }
  double cdf(double z) const { return share_above(-z); }
  double expectation(const std::function<double(double)>& f) const {
    return boost::math::quadrature::gauss_kronrod<double, 31>::integrate([&](double z) { return f(z) * density(z); },
                                                                         -limit, limit, 12, 1e-12);
  }

  // Of the t that is not cut.
  double above(double z) const { return boost::math::cdf(boost::math::complement(student, z * unit)); }

  boost::math::students_t_distribution<double> student{5.0};
  double unit = std::sqrt(5.0 / 3.0);
  double limit;
  double inside;
};

inline const StrikeLattice& lattice_of(const StrikeLattices& lattices, int which) {
  const StrikeLattice* all[] = {&lattices.solid, &lattices.poor, &lattices.tee_solid, &lattices.tee_poor};
  return *all[which];
}

}  // namespace yardworth::test
