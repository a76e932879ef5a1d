#include "shot/finish_strokes.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <numeric>
#include <vector>

#include "input/derived_table.hpp"
#include "player/skill.hpp"
#include "shot/putting.hpp"
#include "shot/short_game.hpp"
#include "support/sanitized.hpp"

namespace yardworth {
namespace {

double total(const StrokeCounts& counts) { return std::accumulate(counts.begin(), counts.end(), 0.0); }

StrokeCounts drawn_counts(const ShortGame& short_game, Lie lie, double yards, int draws, RandomEngine& engine) {
  StrokeCounts drawn(numerics::most_short_strokes + numerics::most_putts + 1, 0.0);
  for (int i = 0; i < draws; ++i) {
    drawn[static_cast<std::size_t>(short_game.draw_strokes(lie, yards, engine))] += 1.0 / draws;
  }
  return drawn;
}

}  // namespace

// The second road: every putt and every stroke drawn (Putting::draw_putts, ShortGame::draw_strokes). The tables are
// sums over fixed nodes and straight lines between places, which is where the 0.004 comes from.
TEST_CASE("strokes near the hole are taken as often as they are drawn") {
  RandomEngine engine(21);
  const int draws = test::repeats(20000);
  for (const double index : {-6.0, 3.0, 16.5, 36.0}) {
    const Skill skill = skill_of(index, Gender::men);
    const Putting putting(skill.putting);
    const ShortGame short_game(skill.short_game, putting);
    const std::vector<StrokeCounts> putts = putting.counts();
    const auto compare = [&](const StrokeCounts& exact, Lie lie, double yards) {
      CHECK(total(exact) == doctest::Approx(1.0).epsilon(1e-12));
      const StrokeCounts drawn = drawn_counts(short_game, lie, yards, draws, engine);
      for (std::size_t strokes = 0; strokes < exact.size(); ++strokes) {
        CAPTURE(index);
        CAPTURE(name(lie));
        CAPTURE(yards);
        CAPTURE(strokes);
        const double error = std::sqrt(std::max(exact[strokes], 1.0 / draws) / draws);
        CHECK(std::abs(drawn[strokes] - exact[strokes]) < 4.0 * error + 0.004);
      }
    };
    for (const std::size_t place : {std::size_t{5}, std::size_t{16}, std::size_t{30}}) {
      const double feet = putting.distances_ft()[place];
      CHECK(mean_of(putts[place]) == doctest::Approx(putting.putts(feet)).epsilon(1e-8));
      compare(putts[place], Lie::green, feet / feet_per_yard);
    }
    for (const Lie lie : lies_in_play) {
      for (const int yards : {8, 20, 45}) {
        CHECK(mean_of(short_game.counts(lie, yards)) == doctest::Approx(short_game.strokes(lie, yards)).epsilon(1e-7));
        compare(short_game.counts(lie, yards), lie, yards);
      }
    }
  }
}

TEST_CASE("a finish has the mean of the baseline, its own or another golfer's") {
  for (const double index : {-6.0, 16.0, 40.0}) {
    const Baseline baseline(derived_table(index, Gender::women));
    for (const double whose : {index, 0.0, 36.0}) {
      const FinishStrokes finish(skill_of(whose, Gender::women), baseline);
      for (int place = 0; place < finish_places; ++place) {
        const auto [lie, distance] = place_of_finish(place);
        CAPTURE(place);
        const double mean = lie == Lie::green ? baseline.putts(distance) : baseline.strokes(lie, distance);
        CHECK(mean_of(finish.at(place)) == doctest::Approx(mean).epsilon(1e-12));
        CHECK(total(finish.at(place)) == doctest::Approx(1.0).epsilon(1e-12));
        for (const double share : finish.at(place)) CHECK(share >= 0.0);
      }
    }
  }
}

TEST_CASE("a ball counts at the finish places on either side of it") {
  const auto distance_of = [](Lie lie, double yards) {
    const FinishPlace place = finish_place(lie, yards);
    const PlaceOfFinish below = place_of_finish(place.lower);
    const PlaceOfFinish above = place_of_finish(place.lower + 1);
    CHECK(below.lie == lie);
    CHECK(above.lie == lie);
    return std::lerp(below.distance, above.distance, place.share);
  };
  for (double yards = 0.0; yards <= 50.0; yards += 0.37) {
    for (const Lie lie : lies_in_play) CHECK(distance_of(lie, yards) == doctest::Approx(yards));
    CHECK(distance_of(Lie::green, yards) == doctest::Approx(3.0 * yards));
  }
  CHECK(distance_of(Lie::rough, 50.0) == 50.0);
  CHECK(distance_of(Lie::green, 70.0) == 150.0);
}

// Worked by hand.
TEST_CASE("counts are moved to another mean, a stroke for a share of them") {
  const StrokeCounts counts = {0.0, 0.0, 0.5, 0.25, 0.25};
  CHECK(mean_of(counts) == 2.75);
  CHECK(variance_of(counts) == 0.6875);
  const StrokeCounts more = with_mean(counts, 3.25);
  CHECK(more == StrokeCounts{0.0, 0.0, 0.25, 0.375, 0.25, 0.125});
  const StrokeCounts fewer = with_mean(counts, 2.5);
  CHECK(fewer == StrokeCounts{0.0, 0.0, 0.625, 0.25, 0.125});
  CHECK(mean_of(with_mean(counts, 6.0)) == doctest::Approx(6.0).epsilon(1e-14));
  CHECK(mean_of(with_mean(counts, 2.1)) == doctest::Approx(2.1).epsilon(1e-14));
  CHECK(with_mean(counts, 1.0)[2] == doctest::Approx(1.0));  // there is nothing below the least
}

}  // namespace yardworth
