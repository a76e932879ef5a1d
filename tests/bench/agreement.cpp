// Whether what the habit is worth, before and after a change, is what comes out when it is played with every shot
// decided where the ball lies: golfers and courses that are hard on states, rings and lattices. docs/performance.md
// keeps the table.
//
// yardworth_agreement [plays of each hole] [part of the names of courses and golfers that are wanted]

#include <cstdio>
#include <cstdlib>
#include <string>

#include "support/agreement_cases.hpp"
#include "support/played_habit.hpp"

namespace yardworth::test {
namespace {

void tell(const OnCourse& on, const OfGolfer& of, int plays) {
  const RoundPlayed round = play_round(on, of, plays);
  std::printf("%-9s  %-14s  %+7.4f  %+7.4f  %+7.4f  %6.4f  %+7.4f on %d\n", on.name.c_str(), of.name.c_str(),
              round.off_before, round.off_after, round.off_saved(), round.standard_error, round.worst_off,
              round.worst_hole);
  std::fflush(stdout);
}

}  // namespace
}  // namespace yardworth::test

int main(int argc, char** argv) {
  using namespace yardworth::test;
  const int plays = argc > 1 ? std::atoi(argv[1]) : 500'000;
  const std::string wanted = argc > 2 ? argv[2] : "";
  std::printf("evaluated less played, strokes a round; %d plays of each hole\n", plays);
  std::printf("course     golfer           before    after    saved  std err  worst hole\n");
  for (const OnCourse& on : courses_to_agree_on()) {
    for (const OfGolfer& of : golfers_to_agree_on()) {
      if ((on.name + " " + of.name).find(wanted) != std::string::npos) tell(on, of, plays);
    }
  }
}
