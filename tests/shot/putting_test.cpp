#include "shot/putting.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "support/sanitized.hpp"

namespace yardworth {
namespace {

PuttingSkill steady() { return {radians(1.4), 0.08}; }

// By hand: a ball on its last inch may pass anywhere over the hole; one that would roll 5.35^2 / (2 x 1.8) = 7.95 feet
// past is too fast even for its middle; at a quarter of that length it has half the speed, and sqrt(1/2) of the hole.
TEST_CASE("how much of the hole a putt can use") {
  CHECK(capture_half_width_ft(0.0) == doctest::Approx(2.125 / 12.0));
  CHECK(capture_half_width_ft(7.96) == 0.0);
  CHECK(capture_half_width_ft(5.35 * 5.35 / (2.0 * 1.8) / 4.0) == doctest::Approx(2.125 / 12.0 * std::sqrt(0.5)));
}

TEST_CASE("putts rise with the distance and with either error") {
  const Putting putting(steady());
  const Putting wide({radians(2.4), 0.08});
  const Putting uneven({radians(1.4), 0.16});
  double before = 1.0;
  for (double feet = 0.5; feet <= 120.0; feet += 0.5) {
    CAPTURE(feet);
    const double putts = putting.putts(feet);
    CHECK(putts >= before - 1e-9);
    CHECK(wide.putts(feet) >= putts - 1e-9);
    CHECK(uneven.putts(feet) >= putts - 1e-9);
    before = putts;
  }
  CHECK(putting.putts(0.0) == 1.0);
  CHECK(Putting({radians(0.01), 1e-4}).putts(30.0) == doctest::Approx(1.0).epsilon(1e-3));
}

// The second road: every stroke drawn.
TEST_CASE("drawn putts have the mean that the sum gives") {
  const Putting putting(steady());
  RandomEngine engine(11);
  const int draws = test::repeats(60000);
  for (const double feet : {3.0, 8.0, 20.0, 60.0}) {
    CAPTURE(feet);
    double sum = 0.0;
    double squares = 0.0;
    int holed = 0;
    for (int i = 0; i < draws; ++i) {
      const int putts = putting.draw_putts(feet, engine);
      sum += putts;
      squares += putts * putts;
      holed += putts == 1 ? 1 : 0;
    }
    const double mean = sum / draws;
    const double error = std::sqrt((squares / draws - mean * mean) / draws);
    // 41 x 24 nodes and straight lines between distances are right to about 0.005 putts.
    CHECK(std::abs(mean - putting.putts(feet)) < 3.0 * error + 0.006);
    CHECK(std::abs(static_cast<double>(holed) / draws - putting.one_putt(feet)) < 3.0 * 0.5 / std::sqrt(draws) + 0.005);
  }
}

}  // namespace
}  // namespace yardworth
