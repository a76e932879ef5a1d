#include "derive/root.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace yardworth {
namespace {

// Hardly rising, then steep: what poor strikes do to a score, made worse.
double bent(double x) { return x < 0.5 ? 0.1 * (x - 0.5) - 4.0 : 40.0 * (x - 0.6); }

}  // namespace

TEST_CASE("a root is found behind a bend that sends a straight line astray") {
  // Elementary: the steep part is 0 at 0.6.
  CHECK(root_of(bent, 0.0, 1.0) == doctest::Approx(0.6).epsilon(0.005));
  // The line through two guesses on the flat part leaves the interval.
  const double low = 0.10;
  const double high = 0.115;
  CHECK(high - bent(high) * (high - low) / (bent(high) - bent(low)) > 1.0);
}

TEST_CASE("a function that is 0 somewhere is solved there, and one without a root at the end nearer to it") {
  const auto near_enough = [](double x) { return std::abs(x - 0.3) < 0.05 ? 0.0 : x - 0.3; };
  CHECK(near_enough(root_of(near_enough, 0.0, 1.0)) == 0.0);
  CHECK(root_of([](double x) { return x + 1.0; }, 0.0, 1.0) == 0.0);
  CHECK(root_of([](double x) { return x - 2.0; }, 0.0, 1.0) == 1.0);
}

}  // namespace yardworth
