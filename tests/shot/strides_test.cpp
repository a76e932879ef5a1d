#include <doctest/doctest.h>

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <cmath>
#include <cstdio>
#include <functional>

#include "shot/cut_student.hpp"
#include "strategy/discretisation.hpp"

// Strike lattices struck at every stride-th node, against Boost.Math's distributions and its Gauss-Kronrod integration.

namespace yardworth {
namespace {

using boost::math::quadrature::gauss_kronrod;
using test::CutStudent;
using test::lattice_of;
using Function = std::function<double(double)>;

// What a trapezoid rule of this step makes of an integral: the integral and the first term of the Euler-Maclaurin
// formula (P. J. Davis and P. Rabinowitz, Methods of Numerical Integration, 2nd ed., 1984, section 2.9; from memory).
// For a smooth function nothing but terms of the fourth power of the step is left.
double trapezoid(const CutStudent& cut, double step, const Function& f) {
  const auto slope = [&](double z) {
    constexpr double h = 1e-4;
    const auto g = [&](double x) { return f(x) * cut.density(x); };
    return (g(z + h) - g(z - h)) / (2.0 * h);
  };
  return cut.expectation(f) + step * step / 12.0 * (slope(cut.limit) - slope(-cut.limit));
}

const Function smooth_functions[] = {
    [](double z) { return z; }, [](double z) { return z * z; }, [](double z) { return std::cos(z); },
    [](double z) { return std::exp(-z * z / 2.0); }, [](double z) { return 1.0 / (1.0 + std::exp(-z)); }};

}  // namespace

TEST_CASE("at every stride that fits the weights sum to 1, and smooth smooth_functions of the direction come out") {
  for (const int finer : {1, 2}) {
    DiscretisationOptions options;
    options.steps_per_sd *= finer;
    const StrikeLattices lattices(options);
    int fitting = 0;
    for (int which = 0; which < 4; ++which) {
      const StrikeLattice& lattice = lattice_of(lattices, which);
      const CutStudent cut(static_cast<double>(lattice.half_width()) / lattice.steps_per_sd());
      for (int stride = 1; stride <= numerics::largest_lattice_stride; ++stride) {
        CAPTURE(finer);
        CAPTURE(which);
        CAPTURE(stride);
        const std::vector<double>& weights = lattice.weights(stride);
        REQUIRE(weights.empty() == (2 * lattice.half_width() % stride != 0));
        if (weights.empty()) continue;
        ++fitting;
        REQUIRE(weights.size() == static_cast<std::size_t>(2 * lattice.half_width() / stride + 1));
        double sum = 0.0;
        for (const double weight : weights) sum += weight;
        CHECK(std::abs(sum - 1.0) < 1e-12);
        const double step = static_cast<double>(stride) / lattice.steps_per_sd();
        const double whole = trapezoid(cut, step, [](double) { return 1.0; });
        for (const Function& f : smooth_functions) {
          CAPTURE(&f - smooth_functions);
          double found = 0.0;
          for (std::size_t i = 0; i < weights.size(); ++i) {
            found += weights[i] * f(static_cast<double>(i) * step - cut.limit);
          }
          CHECK(std::abs(found - trapezoid(cut, step, f) / whole) < 1e-6 + 0.004 * std::pow(step, 4.0));
        }
      }
    }
    // 1, 2, 3 and 6 fit every lattice.
    CHECK(fitting >= 16);
  }
}

namespace {

// What a strike costs, in little: smooth in both coordinates, and a stroke more right of a slanting edge.
constexpr double edge_at = 0.6;
constexpr double edge_slant = 0.4;

double smooth_cost(double direction, double carry) {
  return 0.3 * std::exp(-0.5 * (carry - 0.3) * (carry - 0.3)) * std::cos(direction) + 0.05 * direction * carry;
}

double cost_of(double direction, double carry) {
  return smooth_cost(direction, carry) + (direction > edge_at + edge_slant * carry ? 1.0 : 0.0);
}

double expected_cost(const CutStudent& cut) {
  const boost::math::normal_distribution<double> normal;
  const double inside = 1.0 - 2.0 * boost::math::cdf(normal, -carry_cut_sd);
  const auto over_carries = [&](const Function& f) {
    return gauss_kronrod<double, 31>::integrate([&](double d) { return boost::math::pdf(normal, d) / inside * f(d); },
                                                -carry_cut_sd, carry_cut_sd, 8, 1e-10);
  };
  return over_carries([&](double carry) {
    return cut.expectation([&](double z) { return smooth_cost(z, carry); }) +
           cut.share_above(edge_at + edge_slant * carry);
  });
}

// Root of the mean squared error over all places of the lattice that a state may begin at.
double error_of(double exact, const std::function<double(int offset)>& sum) {
  double squares = 0.0;
  for (int offset = 0; offset < numerics::lattice_offsets; ++offset) {
    const double off = sum(offset) - exact;
    squares += off * off / numerics::lattice_offsets;
  }
  return std::sqrt(squares);
}

double sum_at_stride(const StrikeLattice& lattice, int stride, int offset) {
  const std::vector<double>& weights = lattice.weights(stride);
  double sum = 0.0;
  for (std::size_t i = 0; i < weights.size(); ++i) {
    const int k = static_cast<int>(i) * stride - lattice.half_width();
    sum += weights[i] *
           cost_of(static_cast<double>(k) / lattice.steps_per_sd(), lattice.solid_deviate(node_at_offset(k, offset)));
  }
  return sum;
}

double sum_of_equal_weights(const StrikeLattices& lattices, int stride, int offset) {
  const EqualWeightLattice& even = lattices.equal_weight_solid;
  const int nodes = even.most() / stride;
  const int shift = offset % EqualWeightLattice::shifts;
  double sum = 0.0;
  for (int i = 0; i < nodes; ++i) {
    const int node = node_at_offset(EqualWeightLattice::carry_node(i, nodes), offset);
    sum += cost_of(even.direction_deviates(nodes, shift)[i], lattices.solid.solid_deviate(node)) / nodes;
  }
  return sum;
}

}  // namespace

// What docs/model.md, "Fewer strikes where few balls come", rests on. It is so because costs have edges: of the smooth
// part alone the trapezoid rule errs three times less, and with every second node 2.3 times as much.
TEST_CASE("with every s-th node the error of a state grows less than s times; equal weights err no more with half") {
  const StrikeLattices lattices(DiscretisationOptions{});
  const double exact = expected_cost(CutStudent(direction_cut_sd));
  const auto at_stride = [&](int stride) {
    return error_of(exact, [&](int offset) { return sum_at_stride(lattices.solid, stride, offset); });
  };
  const double all = at_stride(1);
  std::printf("error of a state, every node: %.5f", all);
  CHECK(all < 0.015);
  for (const int stride : {2, 3, 6}) {
    CAPTURE(stride);
    const double coarse = at_stride(stride);
    const double equal = error_of(exact, [&](int offset) { return sum_of_equal_weights(lattices, stride, offset); });
    std::printf("; every %d: %.5f, equal weights %.5f", stride, coarse, equal);
    CHECK(coarse < stride * all);
    CHECK(equal < coarse);
  }
  const double equal = error_of(exact, [&](int offset) { return sum_of_equal_weights(lattices, 1, offset); });
  std::printf("; equal weights at stride 1 %.5f\n", equal);
  CHECK(2 * lattices.equal_weight_solid.most() < 2 * lattices.solid.half_width() + 1 + 20);
  CHECK(equal < 1.1 * all);
}

// By the symmetry of the normal distribution, and against Boost.Math's integration of the cut t. Of carries from node 0
// on, in place of as many on either side, the mean is 0.0065 spreads; of directions at the middle of their shares, in
// place of root mean squares, 17 nodes have 0.996 of the variance.
TEST_CASE("all places together strike neither long nor short, and as wide as the golfer, by however few strikes") {
  const StrikeLattices lattices(held_out_options(search_options()));
  const EqualWeightLattice& even = lattices.equal_weight_solid;
  const double variance = CutStudent(direction_cut_sd).expectation([](double z) { return z * z; });
  for (const int nodes : {17, 34, 102, 816}) {
    CAPTURE(nodes);
    double carry = 0.0;
    double squares = 0.0;
    for (int offset = 0; offset < numerics::lattice_offsets; ++offset) {
      for (int i = 0; i < nodes; ++i) {
        carry += lattices.solid.solid_deviate(node_at_offset(EqualWeightLattice::carry_node(i, nodes), offset));
      }
    }
    for (int shift = 0; shift < EqualWeightLattice::shifts; ++shift) {
      for (int i = 0; i < nodes; ++i) squares += std::pow(even.direction_deviates(nodes, shift)[i], 2.0);
    }
    CHECK(std::abs(carry / nodes / numerics::lattice_offsets) < 0.0005);
    CHECK(squares / nodes / EqualWeightLattice::shifts == doctest::Approx(variance).epsilon(0.0005));
  }
}

TEST_CASE("of six vertices in a row no two begin at nearly the same carry") {
  const StrikeLattices lattices(DiscretisationOptions{});
  const auto share_at = [&](int k) {
    return (lattices.solid.poor_carry_share(k) - poor_carry_low) / (poor_carry_high - poor_carry_low);
  };
  for (int apart = 1; apart < 6; ++apart) {
    const double share = share_at(apart * numerics::lattice_offset_step % numerics::lattice_offsets) - share_at(0);
    CHECK(std::abs(share - std::round(share)) > 1.0 / 30.0);
  }
}

}  // namespace yardworth
