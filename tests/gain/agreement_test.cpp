#include <doctest/doctest.h>

#include <cmath>
#include <cstdio>

#include "gain/solve_hole.hpp"
#include "strategy/habit.hpp"
#include "support/played_habit.hpp"
#include "support/prepared_hole.hpp"
#include "support/sanitized.hpp"

// What the habit is worth against plays of it in which every shot is decided where the ball lies and struck at random:
// neither states nor rings nor lattices. Holes that are alike, and clubs as far apart as rings, are the hardest on
// them. yardworth_agreement has all courses and golfers; docs/validation.md keeps its tables.

namespace yardworth::test {

TEST_CASE("a round of like holes is worth what it comes to when it is played, before and after, by the habit") {
  constexpr double of_round = 0.02;
  constexpr double of_hole = 0.005;
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
    CAPTURE(round.worst.number);
    CHECK(round.worst.beyond() < of_hole);
  }
}

namespace {

// What an evaluated policy is worth less what the same policy is worth on other strikes.
double looks_of_its_strikes(const HoleModel& other, const PolicyEvaluation& evaluated) {
  const ActionOf habit = habit_of(other);
  const ActionOf same = [&](StateId state) {
    const Action& action = evaluated.policy[static_cast<std::size_t>(state)];
    return action.swing >= 0 ? action : habit(state);
  };
  return evaluated.at_tee - evaluate_policy(other, same).at_tee;
}

}  // namespace

// A golfer with longer clubs stays with a shot played before where that is the better one. Chosen on the strikes that
// it is then valued by, the better-looking one flattered a round by 0.02 strokes beside the round before.
TEST_CASE("what a followed policy is worth owes no more to its strikes than what was played before") {
  constexpr double of_round = 0.01;
  constexpr int other_offset = 31;
  const OnCourse plain = courses_to_agree_on().front();
  double before = 0.0;
  double after = 0.0;
  int rounds = 0;
  for (const OfGolfer& golfer : golfers_to_agree_on()) {
    if (golfer.name == "scratch-man" || golfer.name == "8-man") continue;
    const Baseline baseline = baseline_of(golfer.player);
    const Golfers golfers = golfers_of(golfer.player, baseline, {20.0, 6.0});
    for (const Hole& hole : plain.course.holes) {
      const HoleMap map(hole, plain.course.firmness);
      const Point tee = map.tee(hole.length_yd[plain.tee]);
      const HoleModels models(map, tee, golfers, baseline, HoleModels::Grids::of(search_grid_for(hole)));
      DiscretisationOptions options = models.grids.held_out.options();
      options.lattice_offset += other_offset;
      const HoleModel other(map, tee, golfers.before, baseline, models.grids.held_out.with(options));
      SolveOptions habit_alone;
      habit_alone.habit = true;
      habit_alone.best = false;
      const SolvedHabit habit = *solve_hole(models, habit_alone).habit;
      before += looks_of_its_strikes(other, habit.before);
      after += looks_of_its_strikes(other.for_player(golfers.after()), habit.after);
    }
    ++rounds;
    if (sanitized) return;
  }
  std::printf("%d rounds less the same on other strikes: %+.4f before, %+.4f after\n", rounds, before / rounds,
              after / rounds);
  CHECK((before - after) / rounds < of_round);
}

}  // namespace yardworth::test
