#include "shot/short_game.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "support/sanitized.hpp"

namespace yardworth {
namespace {

constexpr PuttingSkill putts = {0.025, 0.09};
constexpr ShortGameSkill touches = {{1.1, 0.08, 0.03}, {1.9, 0.12, 0.05}, {0.8, 0.17, 0.08}, {2.8, 0.18, 0.16}};

TEST_CASE("a perfect touch leaves no putt: two strokes from everywhere") {
  const Putting putting({1e-5, 1e-5});
  const ShortGameSkill perfect = {{1e-4, 0.0, 0.0}, {1e-4, 0.0, 0.0}, {1e-4, 0.0, 0.0}, {1e-4, 0.0, 0.0}};
  const ShortGame short_game(perfect, putting);
  for (const Lie lie : {Lie::fairway, Lie::rough, Lie::bunker, Lie::recovery}) {
    CHECK(short_game.strokes(lie, 30.0) == doctest::Approx(2.0).epsilon(1e-3));
  }
}

TEST_CASE("further, looser and from a worse lie take more strokes") {
  const Putting putting(putts);
  const ShortGame short_game(touches, putting);
  ShortGameSkill loose = touches;
  for (Touch* touch : {&loose.fairway, &loose.rough, &loose.bunker, &loose.recovery}) touch->spread_share *= 1.5;
  const ShortGame looser(loose, putting);
  for (double yards = 3.0; yards < 60.0; yards += 1.0) {
    CAPTURE(yards);
    for (const Lie lie : {Lie::fairway, Lie::rough, Lie::bunker, Lie::recovery}) {
      CHECK(short_game.strokes(lie, yards + 1.0) >= short_game.strokes(lie, yards) - 1e-9);
      CHECK(looser.strokes(lie, yards) > short_game.strokes(lie, yards));
    }
    CHECK(short_game.strokes(Lie::rough, yards) > short_game.strokes(Lie::fairway, yards));
    CHECK(short_game.strokes(Lie::recovery, yards) > short_game.strokes(Lie::rough, yards));
  }
}

// The second road: every stroke drawn.
TEST_CASE("drawn strokes have the mean that the recursion gives") {
  const Putting putting(putts);
  const ShortGame short_game(touches, putting);
  RandomEngine engine(12);
  const int draws = test::repeats(40000);
  for (const Lie lie : {Lie::fairway, Lie::rough, Lie::bunker}) {
    for (const double yards : {8.0, 25.0, 45.0}) {
      CAPTURE(name(lie));
      CAPTURE(yards);
      double sum = 0.0;
      double squares = 0.0;
      for (int i = 0; i < draws; ++i) {
        const int strokes = short_game.draw_strokes(lie, yards, engine);
        sum += strokes;
        squares += strokes * strokes;
      }
      const double mean = sum / draws;
      const double error = std::sqrt((squares / draws - mean * mean) / draws);
      // The nodes are the middles of equal shares of a normal, whose tails they cut: right to about 0.01.
      CHECK(std::abs(mean - short_game.strokes(lie, yards)) < 3.0 * error + 0.012);
    }
  }
}

}  // namespace
}  // namespace yardworth
