#include "shot/strike.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <cmath>
#include <functional>

#include "shot/cut_student.hpp"
#include "shot/rest.hpp"
#include "shot/sample.hpp"
#include "shot/samples.hpp"
#include "strategy/strikes.hpp"

namespace yardworth {
namespace {

using boost::math::quadrature::gauss_kronrod;
using test::CutStudent;
using test::lattice_of;

double weighted(const StrikeLattice& lattice, const std::function<double(int)>& of_step) {
  double sum = 0.0;
  for (int j = -lattice.half_width(); j <= lattice.half_width(); ++j) {
    sum += lattice.weights()[static_cast<std::size_t>(lattice.half_width() + j)] * of_step(j);
  }
  return sum;
}

TEST_CASE("lattice weights: sum 1, mean 0, the spread of the cut t") {
  const StrikeLattices lattices{DiscretisationOptions{}};
  for (int which = 0; which < 4; ++which) {
    CAPTURE(which);
    const StrikeLattice& lattice = lattice_of(lattices, which);
    const double steps = lattice.steps_per_sd();
    const CutStudent cut(lattice.half_width() / steps);
    CHECK(weighted(lattice, [](int) { return 1.0; }) == doctest::Approx(1.0).epsilon(1e-12));
    CHECK(std::abs(weighted(lattice, [&](int j) { return j / steps; })) < 1e-12);
    const double variance = cut.expectation([](double z) { return z * z; });
    // The trapezoid rule is as good as its step squared times what the density does at the cut.
    CHECK(weighted(lattice, [&](int j) { return j * j / steps / steps; }) == doctest::Approx(variance).epsilon(0.002));
    CHECK(variance < 1.0);
    const double fourth = cut.expectation([](double z) { return z * z * z * z; });
    CHECK(weighted(lattice, [&](int j) { return std::pow(j / steps, 4.0); }) == doctest::Approx(fourth).epsilon(0.005));
    // Fat tails: more than a normal of the same spread has beyond twice that spread, in spite of the cut.
    const double beyond = 1.0 - cut.cdf(2.5 * std::sqrt(variance)) + cut.cdf(-2.5 * std::sqrt(variance));
    if (which % 2 == 0) CHECK(beyond > 2.0 * boost::math::cdf(boost::math::normal_distribution<double>(), -2.5));
  }
}

// Against Boost.Math's integration of the same density.
TEST_CASE(
    "equal weights: each stands for an equal share of the cut t, whatever the shift, and all shifts for all of it") {
  for (const int cut_sd : {poor_direction_cut_sd, direction_cut_sd}) {
    const EqualWeightLattice even(60, cut_sd);
    const CutStudent cut(cut_sd);
    for (const int n : {10, 20, 30, 60}) {
      double sum = 0.0;
      double squares = 0.0;
      for (int shift = 0; shift < EqualWeightLattice::shifts; ++shift) {
        for (int i = 0; i < n; ++i) {
          CAPTURE(n);
          CAPTURE(i);
          CAPTURE(shift);
          const double z = even.direction_deviates(n, shift)[i];
          CHECK(cut.cdf(z) > static_cast<double>(i) / n);
          CHECK(cut.cdf(z) < static_cast<double>(i + 1) / n);
          sum += z;
          squares += z * z;
        }
      }
      const double all = n * EqualWeightLattice::shifts;
      CHECK(std::abs(sum / all) < 1e-12);
      CHECK(squares / all == doctest::Approx(cut.expectation([](double z) { return z * z; })).epsilon(0.01));
    }
  }
}

TEST_CASE("every second, third or sixth node has the weights of the same cut t") {
  const StrikeLattices lattices{DiscretisationOptions{}};
  for (int which = 0; which < 4; ++which) {
    const StrikeLattice& lattice = lattice_of(lattices, which);
    const double steps = lattice.steps_per_sd();
    const double variance = CutStudent(lattice.half_width() / steps).expectation([](double z) { return z * z; });
    for (const int stride : {2, 3, 6}) {
      CAPTURE(which);
      CAPTURE(stride);
      const std::vector<double>& weights = lattice.weights(stride);
      REQUIRE(weights.size() == static_cast<std::size_t>(2 * lattice.half_width() / stride + 1));
      double sum = 0.0;
      double squares = 0.0;
      for (std::size_t i = 0; i < weights.size(); ++i) {
        const double z = (static_cast<int>(i) * stride - lattice.half_width()) / steps;
        sum += weights[i];
        squares += weights[i] * z * z;
      }
      CHECK(sum == doctest::Approx(1.0).epsilon(1e-12));
      CHECK(squares == doctest::Approx(variance).epsilon(0.05));
    }
  }
}

// A stride longer than the step between aims strikes nodes beyond those of the last aim.
TEST_CASE("lattices reach as far as any aim, offset and stride ask") {
  DiscretisationOptions fine;
  fine.steps_per_sd *= 4;
  for (const DiscretisationOptions& options : {DiscretisationOptions{}, fine}) {
    const StrikeLattices lattices{options};
    for (int which = 0; which < 4; ++which) {
      CAPTURE(which);
      const StrikeLattice& lattice = lattice_of(lattices, which);
      const int steps_per_aim = which % 2 == 0 ? solid_steps_per_aim(lattice) : poor_steps_per_aim(lattice);
      const int beyond = std::max(0, largest_lattice_stride - steps_per_aim);
      CHECK(lattice.reach() >= largest_aim * steps_per_aim + beyond + lattice.half_width() + lattice_offsets - 1);
    }
  }
}

TEST_CASE("the cut normal: quantile against the integral of its density") {
  const boost::math::normal_distribution<double> normal;
  const double inside = 1.0 - 2.0 * boost::math::cdf(normal, -4.0);
  CHECK(std::abs(cut_normal_quantile(0.5)) < 1e-12);
  for (const double u : {1e-6, 0.01, 0.2, 0.5, 0.77, 0.99, 1.0 - 1e-6}) {
    const double z = cut_normal_quantile(u);
    CHECK(std::abs(z) <= 4.0);
    const double below = gauss_kronrod<double, 31>::integrate(
        [&](double x) { return boost::math::pdf(normal, x) / inside; }, -4.0, z, 12, 1e-12);
    CHECK(below == doctest::Approx(u).epsilon(1e-9));
  }
}

TEST_CASE("carry moments of the lattice") {
  const StrikeLattices lattices{DiscretisationOptions{}};
  const boost::math::normal_distribution<double> normal;
  // Variance of a standard normal cut at +-4.
  const double cut_variance = 1.0 - 8.0 * boost::math::pdf(normal, 4.0) / (1.0 - 2.0 * boost::math::cdf(normal, -4.0));
  for (const StrikeLattice* lattice : {&lattices.solid, &lattices.tee_solid}) {
    CAPTURE(lattice->steps_per_sd());
    CHECK(std::abs(weighted(*lattice, [&](int k) { return lattice->solid_deviate(k); })) < 0.01);
    const double variance = weighted(*lattice, [&](int k) { return std::pow(lattice->solid_deviate(k), 2.0); });
    CHECK(variance == doctest::Approx(cut_variance).epsilon(0.02));
  }
  for (const StrikeLattice* lattice : {&lattices.poor, &lattices.tee_poor}) {
    CAPTURE(lattice->steps_per_sd());
    // Uniform on [0.3, 0.9]: mean 0.6, variance 0.36 / 12.
    CHECK(weighted(*lattice, [&](int k) { return lattice->poor_carry_share(k); }) ==
          doctest::Approx(0.6).epsilon(0.01));
    const double variance =
        weighted(*lattice, [&](int k) { return std::pow(lattice->poor_carry_share(k) - 0.6, 2.0); });
    CHECK(variance == doctest::Approx(0.03).epsilon(0.05));
  }
}

TEST_CASE("carry and direction do not hang together, and every aim sees the same carries spread") {
  const StrikeLattices lattices{DiscretisationOptions{}};
  const StrikeLattice& solid = lattices.solid;
  const double steps = solid.steps_per_sd();
  // In spreads. What a few hundred nodes leave over: less than a yard of carry for any club.
  constexpr double left_over = 0.08;
  CHECK(std::abs(weighted(solid, [&](int k) { return k / steps * solid.solid_deviate(k); })) < left_over);
  for (int aim = -largest_aim; aim <= largest_aim; aim += 3) {
    const int centre = aim * solid.steps_per_sd() / aims_per_sd;
    REQUIRE(std::abs(centre) + solid.half_width() <= solid.reach());
    CAPTURE(aim);
    CHECK(std::abs(weighted(solid, [&](int k) { return solid.solid_deviate(centre + k); })) < left_over);
    CHECK(weighted(solid, [&](int k) { return std::pow(solid.solid_deviate(centre + k), 2.0); }) ==
          doctest::Approx(1.0).epsilon(0.05));
  }
}

Swing sample_swing() {
  Swing swing;
  swing.carry_yd = 200.0;
  swing.carry_sd_share = 0.07;
  swing.direction_scale_rad = radians(6.0);
  swing.roll_share = 0.1;
  swing.poor_strike = 0.12;
  return swing;
}

// Expectation of f(carry, direction) by the tee's lattice, built from the definition and not by for_each_strike.
double by_lattice(const StrikeLattices& lattices, const Swing& swing, const std::function<double(Strike)>& f) {
  const StrikeLattice& solid = lattices.tee_solid;
  const StrikeLattice& poor = lattices.tee_poor;
  const double solid_mean = weighted(solid, [&](int k) {
    return f({swing.carry_yd * (1.0 + swing.carry_sd_share * solid.solid_deviate(k)),
              swing.direction_scale_rad * k / solid.steps_per_sd()});
  });
  const double poor_mean = weighted(poor, [&](int k) {
    return f({swing.carry_yd * poor.poor_carry_share(k),
              swing.direction_scale_rad * poor_direction_factor * k / poor.steps_per_sd()});
  });
  return (1.0 - swing.poor_strike) * solid_mean + swing.poor_strike * poor_mean;
}

// The same by two nested integrals over the densities: the third road.
double by_integral(const Swing& swing, const std::function<double(Strike)>& f) {
  const CutStudent solid(4.0);
  const CutStudent poor(3.0);
  const boost::math::normal_distribution<double> normal;
  const double inside = 1.0 - 2.0 * boost::math::cdf(normal, -4.0);
  const double solid_mean = solid.expectation([&](double z) {
    return gauss_kronrod<double, 31>::integrate(
        [&](double d) {
          return boost::math::pdf(normal, d) / inside *
                 f({swing.carry_yd * (1.0 + swing.carry_sd_share * d), swing.direction_scale_rad * z});
        },
        -4.0, 4.0, 6, 1e-9);
  });
  const double poor_mean = poor.expectation([&](double z) {
    return gauss_kronrod<double, 31>::integrate(
        [&](double u) {
          return f({swing.carry_yd * u, swing.direction_scale_rad * 1.75 * z}) / 0.6;
        },
        0.3, 0.9, 6, 1e-9);
  });
  return (1.0 - swing.poor_strike) * solid_mean + swing.poor_strike * poor_mean;
}

struct Sampled {
  double mean;
  double standard_error;
};

Sampled by_sampling(const Swing& swing, const std::function<double(Strike)>& f) {
  constexpr int draws = 200000;
  RandomEngine engine(71);
  double sum = 0.0;
  double squares = 0.0;
  for (int i = 0; i < draws; ++i) {
    const double value = f(draw_strike(swing, engine));
    sum += value;
    squares += value * value;
  }
  const double mean = sum / draws;
  return {mean, std::sqrt((squares / draws - mean * mean) / draws)};
}

TEST_CASE("lattice, sampling and integration agree on smooth functions of a strike") {
  const StrikeLattices lattices{DiscretisationOptions{}};
  const Swing swing = sample_swing();
  const std::function<double(Strike)> functions[] = {
      [](Strike s) { return s.carry_yd; }, [](Strike s) { return s.carry_yd * std::sin(s.direction_rad); },
      [](Strike s) { return std::hypot(s.carry_yd * std::sin(s.direction_rad), 360.0 - s.carry_yd); },
      [](Strike s) { return std::exp(-std::pow(s.carry_yd * std::sin(s.direction_rad) / 30.0, 2.0)); }};
  int which = 0;
  for (const auto& f : functions) {
    CAPTURE(which++);
    const double lattice = by_lattice(lattices, swing, f);
    const Sampled sampled = by_sampling(swing, f);
    const double exact = by_integral(swing, f);
    CHECK(std::abs(sampled.mean - exact) < 3.0 * sampled.standard_error);
    CHECK(std::abs(lattice - sampled.mean) < 3.0 * sampled.standard_error);
    CHECK(std::abs(lattice - exact) < sampled.standard_error);
  }
}

TEST_CASE("lattice and sampling agree on steps, as edges of lies are") {
  const StrikeLattices lattices{DiscretisationOptions{}};
  const Swing swing = sample_swing();
  const std::function<double(Strike)> functions[] = {
      [](Strike s) { return s.carry_yd > 190.0 ? 1.0 : 0.0; },
      [](Strike s) { return std::abs(s.carry_yd * std::sin(s.direction_rad)) < 16.0 ? 1.0 : 0.0; },
      [](Strike s) { return s.carry_yd > 205.0 && s.direction_rad > 0.03 ? 1.0 : 0.0; },
      [](Strike s) { return s.carry_yd * std::sin(s.direction_rad) < -38.0 ? 1.0 : 0.0; }};
  const double heaviest = lattices.tee_solid.weights()[static_cast<std::size_t>(lattices.tee_solid.half_width())];
  CHECK(heaviest < 0.006);
  int which = 0;
  for (const auto& f : functions) {
    CAPTURE(which++);
    const Sampled sampled = by_sampling(swing, f);
    // A rule of nodes cannot tell where between two of them an edge lies: its heaviest node is allowed for.
    CHECK(std::abs(by_lattice(lattices, swing, f) - sampled.mean) < 3.0 * sampled.standard_error + heaviest);
  }
  // Closed form of the first: no poor strike goes further than 180, so it is a normal's share above -10 / 14.
  const boost::math::normal_distribution<double> normal;
  const double low = boost::math::cdf(normal, -4.0);
  const double closed = 0.88 * (1.0 - (boost::math::cdf(normal, -10.0 / 14.0) - low) / (1.0 - 2.0 * low));
  const Sampled sampled = by_sampling(swing, functions[0]);
  CHECK(std::abs(sampled.mean - closed) < 3.0 * sampled.standard_error);
  CHECK(std::abs(by_lattice(lattices, swing, functions[0]) - closed) < heaviest);
}

// Closed form: a ball of constant carry c stays within w of the middle when its direction is under asin(w / c).
TEST_CASE("the share of balls on a straight fairway is that of the cut t") {
  const HoleMap map(sample_hole(400.0, 16.0), Firmness::normal);
  const StrikeLattices lattices{DiscretisationOptions{}};
  Swing swing = sample_swing();
  swing.carry_sd_share = 1e-9;
  swing.roll_share = 0.0;
  swing.poor_strike = 0.0;
  const StrikeLattice& lattice = lattices.tee_solid;
  const CutStudent cut(4.0);
  for (const double spread_deg : {2.0, 3.7, 6.0, 9.0}) {
    CAPTURE(spread_deg);
    swing.direction_scale_rad = radians(spread_deg);
    const double z = std::asin(16.0 / swing.carry_yd) / swing.direction_scale_rad;
    const double closed = cut.cdf(z) - cut.cdf(-z);
    const auto on_fairway = [&](Strike s) {
      const Rest rest = come_to_rest(map, {0.0, 0.0}, along_heading(s.direction_rad), s.carry_yd, 0.0);
      return rest.lie == Lie::fairway ? 1.0 : 0.0;
    };
    // A rule of nodes is blind to where between two nodes an edge lies: one node's weight at each edge.
    const double node = cut.density(z) / lattice.steps_per_sd();
    CHECK(std::abs(by_lattice(lattices, swing, on_fairway) - closed) <= node + 1e-4);
    const Sampled sampled = by_sampling(swing, on_fairway);
    CHECK(std::abs(sampled.mean - closed) < 3.0 * sampled.standard_error);
  }
  // With the edge half-way between two nodes nothing is lost.
  const double z = 80.5 / lattice.steps_per_sd();
  swing.direction_scale_rad = std::asin(16.0 / swing.carry_yd) / z;
  const double share = by_lattice(lattices, swing, [&](Strike s) {
    return come_to_rest(map, {0.0, 0.0}, along_heading(s.direction_rad), s.carry_yd, 0.0).lie == Lie::fairway ? 1.0
                                                                                                              : 0.0;
  });
  CHECK(share == doctest::Approx(cut.cdf(z) - cut.cdf(-z)).epsilon(1e-4));
}

// A measured spread is the standard deviation of what was measured: what a club states has to come out again.
TEST_CASE("the spread of solid strikes is the one that the club states") {
  const CutStudent cut(4.0);
  const double variance = cut.expectation([](double z) { return z * z; });
  CHECK(direction_scale_per_sd * std::sqrt(variance) == doctest::Approx(1.0).epsilon(1e-8));
}

TEST_CASE("drawn strikes stay within the cuts") {
  Swing swing = sample_swing();
  RandomEngine engine(72);
  double sum = 0.0;
  constexpr int draws = 100000;
  for (int i = 0; i < draws; ++i) {
    const Strike strike = draw_strike(swing, engine);
    REQUIRE(strike.carry_yd >= 0.3 * swing.carry_yd);
    REQUIRE(strike.carry_yd <= swing.carry_yd * (1.0 + 4.0 * swing.carry_sd_share));
    REQUIRE(std::abs(strike.direction_rad) <= 1.75 * 3.0 * swing.direction_scale_rad);
    sum += strike.carry_yd;
  }
  // Mean by hand: 0.88 * 200 + 0.12 * 0.6 * 200 = 190.4.
  CHECK(sum / draws == doctest::Approx(190.4).epsilon(0.002));
  RandomEngine again(72);
  RandomEngine twin(72);
  CHECK(draw_strike(swing, again).carry_yd == draw_strike(swing, twin).carry_yd);
}

TEST_CASE("whole strokes with the mean that was asked for") {
  RandomEngine engine(73);
  for (const double expected : {1.0, 1.04, 2.37, 3.0, 4.999}) {
    CAPTURE(expected);
    constexpr int draws = 200000;
    double sum = 0.0;
    for (int i = 0; i < draws; ++i) {
      const int strokes = draw_strokes(expected, engine);
      REQUIRE(strokes >= static_cast<int>(std::floor(expected)));
      REQUIRE(strokes <= static_cast<int>(std::ceil(expected)));
      sum += strokes;
    }
    const double part = expected - std::floor(expected);
    CHECK(std::abs(sum / draws - expected) <= 3.0 * std::sqrt(part * (1.0 - part) / draws));
  }
}

}  // namespace
}  // namespace yardworth
