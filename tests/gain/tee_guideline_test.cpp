#include "gain/tee_guideline.hpp"

#include <doctest/doctest.h>

#include <array>

namespace yardworth {

TEST_CASE("recommended lengths are those of the published guideline") {
  // USGA / PGA of America tee guideline, recommended 18-hole length by driver distance, as quoted.
  struct Length {
    double driver, low, high;
  };
  for (const Length& row : {Length{275.0, 6700.0, 6900.0}, Length{250.0, 6200.0, 6400.0}, Length{225.0, 5800.0, 6000.0},
                            Length{200.0, 5200.0, 5400.0}, Length{175.0, 4400.0, 4600.0}, Length{150.0, 3500.0, 3700.0},
                            Length{125.0, 2800.0, 3000.0}, Length{100.0, 2100.0, 2300.0}}) {
    CAPTURE(row.driver);
    const RecommendedLength length = recommended_length(row.driver, 18);
    CHECK(length.low_yd == doctest::Approx(row.low));
    CHECK(length.high_yd == doctest::Approx(row.high));
    CHECK_FALSE(length.beyond_table);
  }
}

TEST_CASE("between the rows straight, beyond them the last, for 9 holes half") {
  CHECK(recommended_length(212.5, 18).low_yd == doctest::Approx(5500.0));
  CHECK(recommended_length(212.5, 18).high_yd == doctest::Approx(5700.0));
  CHECK(recommended_length(212.5, 9).low_yd == doctest::Approx(2750.0));
  CHECK(recommended_length(320.0, 18).high_yd == doctest::Approx(6900.0));
  CHECK(recommended_length(320.0, 18).beyond_table);
  CHECK(recommended_length(80.0, 18).low_yd == doctest::Approx(2100.0));
  CHECK(recommended_length(80.0, 18).beyond_table);
}

TEST_CASE("the tee that suits is inside the recommendation, or the least outside") {
  const RecommendedLength recommended{5200.0, 5400.0, false};
  CHECK(tee_by_length(recommended, {6400.0, 5900.0, 5210.0}) == 2);
  CHECK(tee_by_length(recommended, {6400.0, 5900.0, 5000.0}) == 2);
  CHECK(tee_by_length(recommended, {6400.0, 5500.0, 5000.0}) == 1);
  // Both inside: the one nearer to the middle; both alike: the first.
  CHECK(tee_by_length(recommended, {5390.0, 5310.0}) == 1);
  CHECK(tee_by_length(recommended, {5350.0, 5250.0}) == 0);
}

}  // namespace yardworth
