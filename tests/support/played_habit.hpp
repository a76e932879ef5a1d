#pragma once

#include <cmath>
#include <cstdint>
#include <functional>
#include <vector>

#include "core/numerics.hpp"
#include "core/parallel.hpp"
#include "gain/followed_policy.hpp"
#include "gain/solve_hole.hpp"
#include "strategy/habit.hpp"
#include "strategy/simulate.hpp"
#include "support/agreement_cases.hpp"
#include "support/prepared_hole.hpp"

namespace yardworth::test {

struct PlayedMean {
  double mean = 0.0;
  double variance = 0.0;  // of the mean
};

// The mean strokes of a hole whose every shot is decided where the ball lies and struck at random: no states, rings or
// lattices. The short game is not drawn but counts what it is expected to take, since it is not what is asked about.
// seen: is told where every shot after the tee shot is played from.
inline PlayedMean play_at_the_place(const HoleModel& model, const ActionFrom& action_from, int plays,
                                    std::uint64_t seed, const std::function<void(Lie, Point)>& seen = nullptr) {
  RandomEngine engine(seed);
  double sum = 0.0;
  double squares = 0.0;
  for (int play = 0; play < plays; ++play) {
    Lie lie = Lie::tee;
    Point at = model.tee();
    double strokes = 0.0;
    bool short_game = false;
    while (!short_game && strokes < numerics::most_strokes_simulated) {
      const Rest rest = draw_rest(model, lie, at, action_from(lie, at), engine);
      strokes += 1 + rest.penalty_strokes;
      if (rest.replay) continue;
      at = rest.at;
      lie = rest.lie;
      const double left = distance_yd(at, model.pin());
      short_game = lie == Lie::green || left <= short_game_radius_yd;
      if (short_game) strokes += model.short_game().strokes(lie, left);
      if (!short_game && seen) seen(lie, at);
    }
    sum += strokes;
    squares += strokes * strokes;
  }
  const double mean = sum / plays;
  return {mean, (squares / plays - mean * mean) / plays};
}

// What a policy is worth on a hole before and after a change: evaluated as gain does, and played.
struct HolePlayed {
  double evaluated_before = 0.0, evaluated_after = 0.0;
  PlayedMean before, after;
};

inline HolePlayed play_habit(const Course& course, const Hole& hole, std::size_t tee, const Golfers& golfers,
                             const Baseline& baseline, int plays, std::uint64_t seed) {
  const HoleMap map(hole, course.firmness);
  const HoleModels models(map, map.tee(hole.length_yd[tee]), golfers, baseline,
                          HoleModels::Grids::of(search_grid_for(hole)));
  SolveOptions wanted;
  wanted.habit = true;
  const SolvedHabit solved = *solve_hole(models, wanted).habit;
  const ActionFrom before = [&](Lie lie, Point from) { return habit_action(models.before, lie, from); };
  return {solved.before.at_tee, solved.after.at_tee, play_at_the_place(models.before, before, plays, seed),
          play_at_the_place(models.after(), habit_as_followed(models, solved.after.policy), plays, seed)};
}

// A hole of that before or after the change: evaluated less played.
struct HoleOff {
  int number = 0;
  double off = 0.0;
  double standard_error = 0.0;

  // What chance does not explain.
  double beyond() const { return std::abs(off) - 3.0 * standard_error; }
};

// A round of that: evaluated less played.
struct RoundPlayed {
  double off_before = 0.0, off_after = 0.0;
  double standard_error = 0.0;  // of the less sure of the two
  HoleOff worst;                // the hole that is furthest off beyond chance

  double off_saved() const { return off_before - off_after; }
};

using PlayHole = HolePlayed (*)(const Course& course, const Hole& hole, std::size_t tee, const Golfers& golfers,
                                const Baseline& baseline, int plays, std::uint64_t seed);

inline RoundPlayed play_round(const OnCourse& on, const OfGolfer& of, int plays, PlayHole play_hole = play_habit) {
  std::vector<HolePlayed> holes(on.course.holes.size());
  const Baseline baseline = baseline_of(of.player);
  const Golfers golfers = golfers_of(of.player, baseline, {20.0, 6.0});
  work_in_parallel(0, holes.size(), [&](std::size_t i) {
    holes[i] = play_hole(on.course, on.course.holes[i], on.tee, golfers, baseline, plays, 500 + i);
  });
  RoundPlayed round;
  double variance_before = 0.0;
  double variance_after = 0.0;
  for (std::size_t i = 0; i < holes.size(); ++i) {
    const double before = holes[i].evaluated_before - holes[i].before.mean;
    const double after = holes[i].evaluated_after - holes[i].after.mean;
    round.off_before += before;
    round.off_after += after;
    variance_before += holes[i].before.variance;
    variance_after += holes[i].after.variance;
    const int number = on.course.holes[i].number;
    for (const HoleOff& hole : {HoleOff{number, before, std::sqrt(holes[i].before.variance)},
                                HoleOff{number, after, std::sqrt(holes[i].after.variance)}}) {
      if (round.worst.number == 0 || hole.beyond() > round.worst.beyond()) round.worst = hole;
    }
  }
  round.standard_error = std::sqrt(std::max(variance_before, variance_after));
  return round;
}

}  // namespace yardworth::test
