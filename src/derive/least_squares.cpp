#include "derive/least_squares.hpp"

#include <unsupported/Eigen/NonLinearOptimization>

namespace yardworth {

namespace {

std::vector<double> to_vector(const Eigen::VectorXd& x) { return {x.data(), x.data() + x.size()}; }

// What Eigen's method asks for: the residuals and their derivatives.
struct Problem {
  const Residuals* residuals;
  double step_share;
  Eigen::Index rows;
  int* evaluations;

  Eigen::Index values() const { return rows; }
  int operator()(const Eigen::VectorXd& x, Eigen::VectorXd& y) const {
    ++*evaluations;
    const std::vector<double> all = (*residuals)(to_vector(x));
    y = Eigen::Map<const Eigen::VectorXd>(all.data(), static_cast<Eigen::Index>(all.size()));
    return 0;
  }
  int df(const Eigen::VectorXd& x, Eigen::MatrixXd& slopes) const {
    Eigen::VectorXd here(slopes.rows());
    (*this)(x, here);
    for (Eigen::Index i = 0; i < x.size(); ++i) {
      Eigen::VectorXd moved = x;
      moved[i] += step_share * x[i];
      Eigen::VectorXd there(slopes.rows());
      (*this)(moved, there);
      slopes.col(i) = (there - here) / (step_share * x[i]);
    }
    return 0;
  }
};

}  // namespace

LeastSquares least_squares(const Residuals& residuals, std::vector<double> start, double step_share,
                           int most_evaluations) {
  LeastSquares result;
  Eigen::VectorXd x = Eigen::Map<Eigen::VectorXd>(start.data(), static_cast<Eigen::Index>(start.size()));
  const auto rows = static_cast<Eigen::Index>(residuals(start).size());
  Problem problem{&residuals, step_share, rows, &result.evaluations};
  Eigen::LevenbergMarquardt<Problem> method(problem);
  method.parameters.ftol = 1e-3;
  method.parameters.xtol = 1e-3;
  method.parameters.factor = 1.0;
  if (method.minimizeInit(x) != Eigen::LevenbergMarquardtSpace::ImproperInputParameters) {
    while (result.evaluations < most_evaluations &&
           method.minimizeOneStep(x) == Eigen::LevenbergMarquardtSpace::Running) {
    }
  }
  result.parameters = to_vector(x);
  result.sum_of_squares = method.fvec.squaredNorm();
  return result;
}

}  // namespace yardworth
