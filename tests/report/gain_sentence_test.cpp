#include <doctest/doctest.h>

#include "report/sample_gain.hpp"

using namespace yardworth;
using test::sample_gain;
using test::sample_with_saved;

namespace {

GainResult habit_only(double driver_yd, double irons_yd, double saved) {
  GainResult result = sample_with_saved(saved);
  result.habit = result.best;
  result.best.reset();
  result.policy = PolicyChoice::habit;
  result.replanning_computed = false;
  result.change = {driver_yd, irons_yd};
  return result;
}

}  // namespace

TEST_CASE("the answer in one sentence") {
  CHECK(gain_sentence(sample_gain().result) ==
        "20 more yards of driver carry, with 6 more in the irons, save weekend 16 about 1.8 strokes a round on Heron "
        "Ferry Municipal from the middle tees: 1.2 from the longer tee shot, 0.3 from the longer irons, 0.2 from "
        "playing the course differently (each rounded).");
}

TEST_CASE("parts that add up as written are not excused") {
  GainResult result = sample_gain().result;
  result.best->round = test::of_carries(92.5, 91.3, 91.0, 90.8);
  CHECK(gain_sentence(result) ==
        "20 more yards of driver carry, with 6 more in the irons, save weekend 16 about 1.7 strokes a round on Heron "
        "Ferry Municipal from the middle tees: 1.2 from the longer tee shot, 0.3 from the longer irons, 0.2 from "
        "playing the course differently.");
}

TEST_CASE("one part is not broken down, and one yard is singular") {
  CHECK(gain_sentence(habit_only(1.0, 0.0, 0.06)) ==
        "1 more yard of driver carry saves weekend 16 about 0.06 strokes a round on Heron Ferry Municipal from the "
        "middle tees.");
  CHECK(gain_sentence(habit_only(20.0, 0.0, 1.0)) ==
        "20 more yards of driver carry save weekend 16 about 1 stroke a round on Heron Ferry Municipal from the "
        "middle tees.");
  CHECK(gain_sentence(habit_only(0.0, 6.0, 0.25)) ==
        "6 more yards in the irons save weekend 16 about 0.2 strokes a round on Heron Ferry Municipal from the middle "
        "tees.");
}

TEST_CASE("a loss costs strokes, and its parts are costs") {
  CHECK(gain_sentence(habit_only(-20.0, -6.0, -1.5)) ==
        "20 fewer yards of driver carry, with 6 fewer in the irons, cost weekend 16 about 1.5 strokes a round on Heron "
        "Ferry Municipal from the middle tees: 1.5 from the shorter tee shot, 0.0 from the shorter irons.");
  CHECK(gain_sentence(habit_only(-1.0, 0.0, -0.5)) ==
        "1 fewer yard of driver carry costs weekend 16 about 0.5 strokes a round on Heron Ferry Municipal from the "
        "middle tees.");
}

TEST_CASE("more carry that loses strokes says so") {
  GainResult result = habit_only(20.0, 6.0, 0.0);
  result.habit->round = test::of_carries(92.0, 92.75, 92.5, 92.5);
  CHECK(gain_sentence(result) ==
        "20 more yards of driver carry, with 6 more in the irons, cost weekend 16 about 0.5 strokes a round on Heron "
        "Ferry Municipal from the middle tees: 0.8 from the longer tee shot, -0.2 from the longer irons (each "
        "rounded).");
}

TEST_CASE("nothing changes where nothing is changed or gained") {
  CHECK(gain_sentence(habit_only(0.0, 0.0, 0.0)) ==
        "With no carry gained or lost nothing changes for weekend 16 on Heron Ferry Municipal from the middle tees.");
  CHECK(gain_sentence(habit_only(20.0, 0.0, 0.0)) ==
        "20 more yards of driver carry change nothing for weekend 16 on Heron Ferry Municipal from the middle tees.");
  CHECK(gain_sentence(habit_only(1.0, 0.0, 0.001)) ==
        "1 more yard of driver carry saves weekend 16 less than 0.01 strokes a round on Heron Ferry Municipal from the "
        "middle tees.");
}

TEST_CASE("a course in metres is spoken of in metres") {
  CHECK(gain_sentence([] {
          GainResult result = habit_only(20.0 / metres_per_yard, 1.0 / metres_per_yard, 1.5);
          result.units = Units::metres;
          result.method = Method::table;
          return result;
        }()) ==
        "20 more metres of driver carry, with 1 more in the irons, save weekend 16 about 1.5 strokes a round on Heron "
        "Ferry Municipal from the middle tees; the table method does not count the irons.");
}

TEST_CASE("nine holes are no full round") {
  GainResult result = habit_only(20.0, 0.0, 0.75);
  result.habit->holes.resize(9);
  CHECK(gain_sentence(result).find("strokes a round of 9 holes on") != std::string::npos);
}

TEST_CASE("names in the sentence are shortened and shown, not obeyed") {
  GainResult result = habit_only(20.0, 0.0, 1.5);
  result.player = "a\x1b[2Jb";
  result.course = std::string(200, 'x');
  const std::string sentence = gain_sentence(result);
  CHECK(sentence.find("a\\x1B[2Jb") != std::string::npos);
  CHECK(sentence.find('\x1b') == std::string::npos);
  CHECK(sentence.find(std::string(37, 'x') + "... from") != std::string::npos);
}
