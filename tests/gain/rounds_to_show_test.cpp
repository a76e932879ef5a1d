#include "gain/rounds_to_show.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "report/sample_gain.hpp"

namespace yardworth {

TEST_CASE("rounds per side, worked by hand") {
  // Standard normal quantiles, as every textbook tables them: z_0.975 = 1.9600, z_0.8 = 0.8416. A spread of 3 strokes
  // and a difference of 1.5: n = 2 (1.9600 + 0.8416)^2 x 9 / 2.25 = 2 x 7.8490 x 4 = 62.79.
  CHECK(*rounds_per_side(1.5, 3.0) == doctest::Approx(62.79).epsilon(0.0002));
  // Montgomery's formula for two means (Design and Analysis of Experiments, from memory) at equal spreads: a difference
  // of one spread takes 16 of each, the rule of thumb of the trade.
  CHECK(std::ceil(*rounds_per_side(1.0, 1.0)) == 16.0);
}

TEST_CASE("rounds per side: limits and directions") {
  CHECK_FALSE(rounds_per_side(0.0, 3.0).has_value());
  CHECK(*rounds_per_side(1.0, 0.0) == 1.0);
  CHECK(*rounds_per_side(100.0, 1.0) == 1.0);
  CHECK(*rounds_per_side(-1.5, 3.0) == *rounds_per_side(1.5, 3.0));
  double last = 0.0;
  for (const double difference : {4.0, 2.0, 1.0, 0.5, 0.01}) {
    const double rounds = *rounds_per_side(difference, 3.0);
    CHECK(rounds > last);
    CHECK(*rounds_per_side(difference, 4.0) > rounds);
    last = rounds;
  }
}

TEST_CASE("holes vary independently: variances add, and what tee shots leave is averaged over the longer holes") {
  GainResult result = test::sample_gain().result;
  result.best->holes[0].strokes_variance = 1.75;
  result.best->holes[1].strokes_variance = 0.5;
  result.best->holes[0].before.left_sd_yd = 24.0;
  const RoundsToShow show = *rounds_to_show(result);
  CHECK(show.score_sd == 1.5);
  CHECK(*show.rounds_for_scores == *rounds_per_side(1.75, 1.5));
  // The second hole is a par 3 and does not count.
  CHECK(show.holes == 1);
  CHECK(show.left_sd_yd == 24.0);
  CHECK(show.left_change_yd == -19.0);
  CHECK(*show.rounds_for_left == *rounds_per_side(19.0, 24.0));

  result.method = Method::table;
  CHECK_FALSE(rounds_to_show(result).has_value());
}

}  // namespace yardworth
