#include "gain/option_odds.hpp"

#include <doctest/doctest.h>

#include <boost/math/distributions/normal.hpp>
#include <cmath>

#include "gain/option_doubt.hpp"

// What is straight in the luck of an option is normal, of which the textbook knows everything: its quantiles, and that
// the difference of two has the sum of their variances (any textbook of probability).

namespace yardworth {
namespace {

// 400 cases stand for a continuum: a quantile is as near as the next case, a probability nearer.
constexpr double of_quantile = 0.01;
constexpr double of_probability = 0.002;

Response line(double mean, double sd) {
  Response response{};
  for (std::size_t i = 0; i < odds_nodes.size(); ++i) response[i] = mean + sd * odds_nodes[i];
  return response;
}

double below(double deviations) { return boost::math::cdf(boost::math::normal_distribution<double>(), deviations); }

std::vector<double> probabilities(const std::vector<Response>& responses) {
  std::vector<std::vector<double>> cases;
  for (const Response& response : responses) cases.push_back(equally_likely(response));
  return best_probabilities(cases);
}

}  // namespace

TEST_CASE("an option that is straight in its luck has the quantiles of the normal distribution") {
  const std::vector<double> cases = equally_likely(line(1.2, 0.5));
  for (const double share : {0.05, 0.25, 0.5, 0.8, 0.95}) {
    const double exact = 1.2 + 0.5 * boost::math::quantile(boost::math::normal_distribution<double>(), share);
    CHECK(std::abs(yardworth::quantile(cases, share) - exact) < of_quantile);
  }
}

TEST_CASE("of two options the one is better as often as a normal difference is positive") {
  struct Case {
    double mean, sd, other_mean, other_sd;
  };
  for (const Case& of : {Case{1.0, 0.4, 0.7, 0.3}, Case{0.5, 0.1, 0.9, 0.6}, Case{0.3, 0.2, 0.3, 0.5}}) {
    const std::vector<double> best = probabilities({line(of.mean, of.sd), line(of.other_mean, of.other_sd)});
    const double exact = below((of.mean - of.other_mean) / std::hypot(of.sd, of.other_sd));
    CHECK(std::abs(best[0] - exact) < of_probability);
    CHECK(best[0] + best[1] == doctest::Approx(1.0).epsilon(1e-12));
  }
}

TEST_CASE("options that are alike are the best equally often, sure ones too") {
  for (const double sd : {0.3, 0.0}) {
    const std::vector<double> best = probabilities({line(0.8, sd), line(0.8, sd), line(0.8, sd)});
    for (const double probability : best) CHECK(probability == doctest::Approx(1.0 / 3.0).epsilon(1e-12));
  }
  const std::vector<double> sure = probabilities({line(0.8, 0.0), line(0.7, 0.0)});
  CHECK(sure[0] == 1.0);
  CHECK(sure[1] == 0.0);
}

// Worked by hand.
TEST_CASE("between the nodes are straight lines, and beyond them the last ones go on") {
  Response square{};
  for (std::size_t i = 0; i < odds_nodes.size(); ++i) square[i] = odds_nodes[i] * odds_nodes[i];
  CHECK(worth_at(square, 1.5) == doctest::Approx(2.5).epsilon(1e-12));
  CHECK(worth_at(square, -0.5) == doctest::Approx(0.5).epsilon(1e-12));
  CHECK(worth_at(square, 3.0) == doctest::Approx(7.0).epsilon(1e-12));
  CHECK(worth_at(square, -2.5) == doctest::Approx(5.5).epsilon(1e-12));
  CHECK(worth_at(square, 2.0) == 4.0);
}

TEST_CASE("a doubt is half the width of an interval of 9 cases in 10") {
  Change change;
  change.driver_carry_yd = 15.0;
  change.direction_sd_share = -0.5;
  change.clubs = {{"9-iron", 4.0}};
  // 1.645 is the 0.95 quantile of the normal distribution.
  const Change most = changed_by(change, 0.6, 1.6448536269514722);
  CHECK(most.driver_carry_yd == doctest::Approx(24.0).epsilon(1e-9));
  CHECK(most.direction_sd_share == doctest::Approx(-0.8).epsilon(1e-9));
  CHECK(most.clubs[0].carry_yd == doctest::Approx(6.4).epsilon(1e-9));
  CHECK(changed_by(change, 1.0, 2.0).direction_sd_share == -0.9);
  CHECK(changed_by(change, 0.6, 0.0).driver_carry_yd == 15.0);
}

}  // namespace yardworth
