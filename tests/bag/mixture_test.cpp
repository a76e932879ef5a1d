#include "bag/mixture.hpp"

#include <doctest/doctest.h>

#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <cmath>
#include <vector>

#include "support/drawn_log.hpp"
#include "yardworth/units.hpp"

namespace yardworth {
namespace {

const Mixture driver_truth{196.0, 17.0, radians(1.0), radians(6.1), 0.08};

std::vector<StruckShot> drawn_strikes(const Mixture& truth, int count, RandomEngine& engine) {
  std::vector<StruckShot> shots;
  const Swing swing = test::swing_of(truth);
  for (int i = 0; i < count; ++i) {
    const Strike strike = draw_strike(swing, engine);
    shots.push_back({strike.carry_yd, strike.direction_rad + truth.direction_mean_rad, true});
  }
  return shots;
}

}  // namespace

TEST_CASE("the density of shots adds up to 1 over all carries and directions") {
  using boost::math::quadrature::gauss_kronrod;
  const auto over_carries = [](double direction, double low, double high) {
    return gauss_kronrod<double, 61>::integrate(
        [&](double carry) {
          return shot_density({carry, direction, true}, driver_truth);
        },
        low, high, 8, 1e-10);
  };
  const auto over_directions = [&](double low, double high) {
    return gauss_kronrod<double, 61>::integrate(
        [&](double direction) {
          // Between the edges of poor and solid carries.
          double sum = 0.0;
          const double edges[] = {0.0, 58.8, 128.0, 176.4, 264.0, 420.0};
          for (int i = 0; i < 5; ++i) sum += over_carries(direction, edges[i], edges[i + 1]);
          return sum;
        },
        low, high, 6, 1e-9);
  };
  const double middle = driver_truth.direction_mean_rad;
  const double solid = 4.0 * direction_scale_per_sd * driver_truth.direction_sd_rad;
  const double poor = 3.0 * 1.75 * direction_scale_per_sd * driver_truth.direction_sd_rad;
  const double edges[] = {-pi / 2, middle - poor, middle - solid, middle, middle + solid, middle + poor, pi / 2};
  double sum = 0.0;
  for (int i = 0; i < 6; ++i) sum += over_directions(edges[i], edges[i + 1]);
  CHECK(sum == doctest::Approx(1.0).epsilon(1e-6));
}

TEST_CASE("median and median deviation") {
  // R: median(c(3, 1, 4, 1, 5)), mad(c(3, 1, 4, 1, 5)); median(1:4), mad(1:4).
  CHECK(median({3, 1, 4, 1, 5}) == 3.0);
  CHECK(median_deviation({3, 1, 4, 1, 5}) == doctest::Approx(2.9652));
  CHECK(median({1, 2, 3, 4}) == 2.5);
  CHECK(median_deviation({1, 2, 3, 4}) == doctest::Approx(1.4826));
  CHECK(median({7}) == 7.0);
}

TEST_CASE("a fit of very many strikes of the engine finds what they were drawn with") {
  RandomEngine engine(1);
  const MixtureFit fit = fit_mixture(drawn_strikes(driver_truth, 40000, engine));
  CHECK(fit.mixture.carry_yd == doctest::Approx(196.0).epsilon(0.002));
  CHECK(fit.mixture.carry_sd_yd == doctest::Approx(17.0).epsilon(0.02));
  CHECK(fit.mixture.direction_mean_rad == doctest::Approx(radians(1.0)).epsilon(0.1));
  CHECK(fit.mixture.direction_sd_rad == doctest::Approx(radians(6.1)).epsilon(0.02));
  CHECK(fit.mixture.poor_strike == doctest::Approx(0.08).epsilon(0.06));
}

// Bounds of poor carries that were taken to stand still made these 7, 5 and 7% too small.
TEST_CASE("numbers of a golfer of many poor strikes vary from log to log as much as a fit says") {
  RandomEngine engine(32);
  const Mixture truth{180.0, 22.0, radians(3.0), radians(8.0), 0.2};
  constexpr int logs = 1500;
  struct Sums {
    double value = 0.0, square = 0.0, variance = 0.0;

    void add(double of, double told) {
      value += of / logs;
      square += of * of / logs;
      variance += told / logs;
    }
    // Of the standard deviations.
    double told_over_seen() const { return std::sqrt(variance / (square - value * value)); }
  };
  Sums carry, log_sd, poor;
  for (int i = 0; i < logs; ++i) {
    const MixtureFit fit = fit_mixture(drawn_strikes(truth, 300, engine));
    carry.add(fit.mixture.carry_yd, fit.carry_variance);
    log_sd.add(std::log(fit.mixture.carry_sd_yd), fit.log_carry_sd_variance);
    poor.add(fit.mixture.poor_strike, fit.poor_strike_variance);
  }
  // By chance a standard deviation of 1,500 moves by 1.8% of itself; information of 300 shots is not that of very many.
  CHECK(std::abs(carry.told_over_seen() - 1.0) < 0.05);
  CHECK(std::abs(log_sd.told_over_seen() - 1.0) < 0.05);
  CHECK(std::abs(poor.told_over_seen() - 1.0) < 0.05);
}

// The likelihood written down once more, with tails that are not cut and the bounds of poor carries held.
TEST_CASE("a fit is where the likelihood that it climbs is largest") {
  RandomEngine engine(2);
  const auto shots = drawn_strikes(driver_truth, 300, engine);
  const Mixture fitted = fit_mixture(shots).mixture;
  const auto likelihood = [&](const Mixture& m) {
    const boost::math::students_t student(5.0);
    double sum = 0.0;
    for (const StruckShot& shot : shots) {
      const boost::math::normal carry(m.carry_yd, m.carry_sd_yd);
      const double scale = direction_scale_per_sd * std::sqrt(0.6) * m.direction_sd_rad;
      const double off = (shot.direction_rad - m.direction_mean_rad) / scale;
      const double share = shot.carry_yd / fitted.carry_yd;
      const double poor = share >= 0.3 && share <= 0.9 ? 1.0 / (0.6 * fitted.carry_yd) : 0.0;
      sum += std::log(0.999 * (1.0 - m.poor_strike) * pdf(carry, shot.carry_yd) * pdf(student, off) / scale +
                      0.999 * m.poor_strike * poor * pdf(student, off / 1.75) / (1.75 * scale) + 0.001 / 420.0 / pi);
    }
    return sum;
  };
  const double best = likelihood(fitted);
  for (double Mixture::*number : {&Mixture::carry_yd, &Mixture::carry_sd_yd, &Mixture::direction_mean_rad,
                                  &Mixture::direction_sd_rad, &Mixture::poor_strike}) {
    for (const double factor : {0.99, 1.01}) {
      Mixture moved = fitted;
      moved.*number *= factor;
      // The penalty, of two shots in three hundred, moves the spreads by less than this is worth.
      CHECK(likelihood(moved) < best + 1e-3);
    }
  }
}

TEST_CASE("what a shot is, is told by likelihood, and far off shots move nothing") {
  RandomEngine engine(3);
  auto shots = drawn_strikes({150.0, 8.0, 0.0, radians(4.0), 0.05}, 60, engine);
  const Mixture before = fit_mixture(shots).mixture;
  shots.push_back({400.0, 0.0, true});
  const MixtureFit fit = fit_mixture(shots);
  CHECK(fit.shares.back().stray > 0.99);
  CHECK(fit.mixture.carry_yd == doctest::Approx(before.carry_yd).epsilon(1e-3));
  CHECK(fit.mixture.carry_sd_yd == doctest::Approx(before.carry_sd_yd).epsilon(0.02));
  for (const ShotShares& shares : fit.shares) {
    CHECK(shares.solid + shares.poor + shares.stray == doctest::Approx(1.0));
  }
}

TEST_CASE("a spread does not close in on shots that are alike") {
  const std::vector<double> carries = {150.0, 150.1, 140.0, 135.0, 145.0, 158.0, 152.0};
  std::vector<StruckShot> shots;
  for (const double carry : carries) shots.push_back({carry, 0.0, false});
  CHECK(fit_mixture(shots).mixture.carry_sd_yd > 3.0);
}

}  // namespace yardworth
