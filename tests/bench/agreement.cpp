// Whether what a policy is worth, before and after a change, is what comes out when it is played with every shot
// decided where the ball lies: golfers and courses that are hard on states, rings and lattices. docs/validation.md
// keeps the tables, of rows as they are printed.
//
// yardworth_agreement [habit or best] [plays of each hole] [part of the names of courses and golfers that are wanted]

#include <cstdio>
#include <cstdlib>
#include <string>

#include "support/agreement_cases.hpp"
#include "support/played_best.hpp"
#include "support/played_habit.hpp"

namespace yardworth::test {
namespace {

void tell(const OnCourse& on, const OfGolfer& of, int plays, PlayHole play_hole) {
  RoundPlayed round;
  try {
    round = play_round(on, of, plays, play_hole);
  } catch (const CannotFinish& error) {
    // No row of a golfer who cannot finish a hole; the others are wanted.
    std::printf("| %s | %s | %s |\n", on.name.c_str(), of.name.c_str(), error.what());
    return;
  }
  std::printf("| %s | %s | %+.4f | %+.4f | %+.4f | %.4f | %+.4f on %d (%.4f) |\n", on.name.c_str(), of.name.c_str(),
              round.off_before, round.off_after, round.off_saved(), round.standard_error, round.worst.off,
              round.worst.number, round.worst.standard_error);
  std::fflush(stdout);
}

}  // namespace
}  // namespace yardworth::test

int main(int argc, char** argv) {
  using namespace yardworth::test;
  const std::string policy = argc > 1 ? argv[1] : "habit";
  const int plays = argc > 2 ? std::atoi(argv[2]) : 1'000'000;
  const std::string wanted = argc > 3 ? argv[3] : "";
  const PlayHole play_hole = policy == "best" ? play_best : play_habit;
  std::printf("%s, evaluated less played, strokes a round; %d plays of each hole\n\n", policy.c_str(), plays);
  std::printf(
      "| course | golfer | before | after | saved | standard error | worst hole (its own) "
      "|\n|---|---|---|---|---|---|---|\n");
  for (const OnCourse& on : courses_to_agree_on()) {
    for (const OfGolfer& of : golfers_to_agree_on()) {
      if ((on.name + " " + of.name).find(wanted) != std::string::npos) tell(on, of, plays, play_hole);
    }
  }
}
