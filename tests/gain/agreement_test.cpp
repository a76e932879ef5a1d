#include <doctest/doctest.h>

#include <cmath>
#include <cstdio>

#include "support/played_habit.hpp"
#include "support/sanitized.hpp"

// What the habit is worth against plays of it in which every shot is decided where the ball lies and struck at random:
// neither states nor rings nor lattices. Holes that are alike, and clubs as far apart as rings, are the hardest on
// them. yardworth_agreement has all courses and golfers; docs/performance.md keeps its table.

namespace yardworth::test {

TEST_CASE("a round of like holes is worth what it comes to when it is played, before and after, by the habit") {
  constexpr double of_round = 0.02;
  const int plays = sanitized ? 1000 : 60'000;
  const OnCourse plain = courses_to_agree_on().front();
  for (const OfGolfer& golfer : golfers_to_agree_on()) {
    if (golfer.name != "28-woman" && golfer.name != "even 20") continue;
    const RoundPlayed round = play_round(plain, golfer, plays);
    std::printf("%s: evaluated less played %+.4f before, %+.4f after, standard error %.4f\n", golfer.name.c_str(),
                round.off_before, round.off_after, round.standard_error);
    CAPTURE(golfer.name);
    CHECK(std::abs(round.off_before) < of_round + 3.0 * round.standard_error);
    CHECK(std::abs(round.off_after) < of_round + 3.0 * round.standard_error);
    CHECK(std::abs(round.off_saved()) < of_round + 3.0 * round.standard_error);
  }
}

}  // namespace yardworth::test
