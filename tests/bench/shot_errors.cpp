// Where what the habit is worth before a change errs: at every place that balls come to, what is read off between the
// states less what one more shot from that very place comes to, by the same values. Summed over the places of a play
// this is what is evaluated less what is played (docs/performance.md, "Against plays at the very place"), at a
// hundredth of the plays.
//
// yardworth_shot_errors course golfer [plays of each hole] [strikes from each place]

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

#include "core/parallel.hpp"
#include "strategy/simulate.hpp"
#include "strategy/state_values.hpp"
#include "support/agreement_cases.hpp"
#include "support/played_habit.hpp"

namespace yardworth::test {
namespace {

constexpr std::array<const char*, all_lies.size()> names = {"tee", "fairway", "rough", "bunker", "trees", "green"};

struct ByLie {
  std::array<double, all_lies.size()> visits{}, off{};
  double variance = 0.0;  // of the total, as if places had nothing to do with each other

  double total() const {
    double sum = 0.0;
    for (const double part : off) sum += part;
    return sum;
  }
};

// One more shot as the habit plays it, and then the values, over so many strikes drawn.
PlayedMean one_more_shot(const HoleModel& model, const std::vector<double>& value, Lie lie, Point from, int strikes,
                         RandomEngine& engine) {
  const Action action = habit_action(model, lie, from);
  double strokes = 0.0;
  double squares = 0.0;
  double away = 0.0;
  for (int strike = 0; strike < strikes; ++strike) {
    const Continuation next = model.continuation(draw_rest(model, lie, from, action, engine));
    const double here = 1.0 + next.worth(value);
    strokes += here;
    squares += here * here;
    if (next.kind != Continuation::Kind::replay) ++away;
  }
  const double mean = strokes / strikes;
  return {strokes / away, (squares / strikes - mean * mean) / strikes};
}

ByLie errors_of(const HoleModel& model, int plays, int strikes, std::uint64_t seed) {
  const PolicyEvaluation habit = evaluate_policy(model, habit_of(model));
  const std::vector<double> value = filled_values(model, habit.value);
  RandomEngine engine(seed);
  ByLie errors;
  const auto add = [&](Lie lie, double off, double share) {
    errors.visits[static_cast<std::size_t>(lie)] += share;
    errors.off[static_cast<std::size_t>(lie)] += off * share;
  };
  const PlayedMean on_tee = one_more_shot(model, value, Lie::tee, model.tee(), plays * strikes, engine);
  add(Lie::tee, habit.at_tee - on_tee.mean, 1.0);
  errors.variance = on_tee.variance;
  const auto seen = [&](Lie lie, Point at) {
    const double read_off = model.continuation({at, lie}).worth(value);
    const double off = read_off - one_more_shot(model, value, lie, at, strikes, engine).mean;
    add(lie, off, 1.0 / plays);
    errors.variance += off * off / plays / plays;
  };
  const ActionFrom play = [&](Lie lie, Point from) { return habit_action(model, lie, from); };
  // Chance of its own: no hole has the seeds of another.
  play_at_the_place(model, play, plays, seed + 1000, seen);
  return errors;
}

void tell(const OnCourse& on, const OfGolfer& of, int plays, int strikes) {
  std::vector<ByLie> holes(on.course.holes.size());
  const Baseline baseline = baseline_of(of.player);
  const Golfers golfers = golfers_of(of.player, baseline, {20.0, 6.0});
  work_in_parallel(0, holes.size(), [&](std::size_t i) {
    const Hole& hole = on.course.holes[i];
    const HoleMap map(hole, on.course.firmness);
    const HoleModels models(map, map.tee(hole.length_yd[on.tee]), golfers, baseline,
                            HoleModels::Grids::of(search_grid_for(hole)));
    holes[i] = errors_of(models.before, plays, strikes, 500 + i);
  });
  std::printf(
      "%s, %s: evaluated less one more shot from the very place, strokes\n\n| hole | off | standard error "
      "|\n|---|---|---|\n",
      on.name.c_str(), of.name.c_str());
  ByLie round;
  for (std::size_t i = 0; i < holes.size(); ++i) {
    std::printf("| %d | %+.4f | %.4f |\n", on.course.holes[i].number, holes[i].total(), std::sqrt(holes[i].variance));
    round.variance += holes[i].variance;
    for (std::size_t lie = 0; lie < names.size(); ++lie) {
      round.visits[lie] += holes[i].visits[lie];
      round.off[lie] += holes[i].off[lie];
    }
  }
  std::printf("\n| from | visits | off |\n|---|---|---|\n");
  for (std::size_t lie = 0; lie < names.size(); ++lie) {
    if (round.visits[lie] > 0.0) std::printf("| %s | %.2f | %+.4f |\n", names[lie], round.visits[lie], round.off[lie]);
  }
  std::printf("| round | | %+.4f (%.4f) |\n\n", round.total(), std::sqrt(round.variance));
}

}  // namespace
}  // namespace yardworth::test

int main(int argc, char** argv) {
  using namespace yardworth::test;
  const std::string course = argc > 1 ? argv[1] : "built-in";
  const std::string golfer = argc > 2 ? argv[2] : "";
  const int plays = argc > 3 ? std::atoi(argv[3]) : 8000;
  const int strikes = argc > 4 ? std::atoi(argv[4]) : 200;
  for (const OnCourse& on : courses_to_agree_on()) {
    for (const OfGolfer& of : golfers_to_agree_on()) {
      if (on.name == course && of.name.find(golfer) != std::string::npos) tell(on, of, plays, strikes);
    }
  }
}
