#pragma once

#include <functional>
#include <vector>

namespace yardworth {

// Residuals of a guess; always as many.
using Residuals = std::function<std::vector<double>(const std::vector<double>& parameters)>;

struct LeastSquares {
  std::vector<double> parameters;
  double sum_of_squares = 0.0;
  int evaluations = 0;
};

// Levenberg and Marquardt's method (Eigen's, after MINPACK) with forward differences of step_share of each parameter.
// There are at least as many residuals as parameters.
LeastSquares least_squares(const Residuals& residuals, std::vector<double> start, double step_share,
                           int most_evaluations);

}  // namespace yardworth
