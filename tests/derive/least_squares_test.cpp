#include "derive/least_squares.hpp"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <utility>

namespace yardworth {
namespace {

// NIST, Statistical Reference Datasets, nonlinear regression: Misra1a (D. Misra, Dental Research Monomolecular
// Adsorption Study, 1978), lower level of difficulty, y = b1 (1 - exp(-b2 x)). From memory; that data, certified
// parameters and certified sum of squares belong together is checked first.
constexpr std::array<std::pair<double, double>, 14> misra1a = {{{77.6, 10.07},
                                                                {114.9, 14.73},
                                                                {141.1, 17.94},
                                                                {190.8, 23.93},
                                                                {239.9, 29.61},
                                                                {289.0, 35.18},
                                                                {332.8, 40.02},
                                                                {378.4, 44.82},
                                                                {434.8, 50.76},
                                                                {477.3, 55.05},
                                                                {536.8, 61.01},
                                                                {593.1, 66.40},
                                                                {689.1, 75.47},
                                                                {760.0, 81.78}}};
const std::vector<double> certified = {2.3894212918e+02, 5.5015643181e-04};
constexpr double certified_squares = 1.2455138894e-01;

std::vector<double> residuals_of(const std::vector<double>& b) {
  std::vector<double> residuals;
  for (const auto& [x, y] : misra1a) residuals.push_back(b[0] * (1.0 - std::exp(-b[1] * x)) - y);
  return residuals;
}

double squares_of(const std::vector<double>& b) {
  double sum = 0.0;
  for (const double residual : residuals_of(b)) sum += residual * residual;
  return sum;
}

}  // namespace

TEST_CASE("least squares of a reference problem, from both of its starts") {
  REQUIRE(squares_of(certified) == doctest::Approx(certified_squares).epsilon(1e-9));
  for (const std::vector<double>& start : {std::vector<double>{500.0, 1e-4}, std::vector<double>{250.0, 5e-4}}) {
    const LeastSquares found = least_squares(residuals_of, start, 1e-5, 300);
    CAPTURE(start[0]);
    // The method stops where a step no longer takes a thousandth off: what a fit to measurements asks.
    CHECK(found.sum_of_squares == doctest::Approx(squares_of(found.parameters)).epsilon(1e-12));
    CHECK(found.sum_of_squares >= certified_squares * (1.0 - 1e-9));
    CHECK(found.sum_of_squares <= certified_squares * 1.002);
    CHECK(found.parameters[0] == doctest::Approx(certified[0]).epsilon(2e-3));
    CHECK(found.parameters[1] == doctest::Approx(certified[1]).epsilon(2e-3));
    CHECK(found.evaluations < 100);
  }
}

TEST_CASE("least squares ends when it has evaluated as often as it may") {
  const LeastSquares found = least_squares(residuals_of, {500.0, 1e-4}, 1e-5, 4);
  CHECK(found.evaluations <= 12);
  CHECK(found.sum_of_squares > certified_squares);
}

}  // namespace yardworth
