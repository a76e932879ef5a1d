#pragma once

#include <cstdint>

#include "core/numerics.hpp"
#include "gain/finish_holes.hpp"
#include "gain/played_from.hpp"
#include "gain/solve_hole.hpp"
#include "strategy/state_values.hpp"
#include "support/close_look_ahead.hpp"
#include "support/played_habit.hpp"

namespace yardworth::test {

// Every shot after the tee shot decided by one step of look-ahead, tabulated on places four times as close, along and
// across, as the states that policies are looked for at. The values that it looks ahead with are the held-out ones.
inline PlayedMean play_by_close_look_ahead(const HoleModel& model, const PolicyEvaluation& evaluated,
                                           const ActionFrom& shown, int plays, std::uint64_t seed) {
  constexpr double closer = 4.0;
  constexpr int scouts = 4;  // of so many plays one only finds out where balls come to
  DiscretisationOptions vertices = model.discretisation().options();
  vertices.ring_yd = numerics::search_ring_yd / closer;
  vertices.arc_yd = numerics::search_arc_yd / closer;
  BallsAround balls(model, vertices);
  play_at_the_place(model, shown, plays / scouts, seed + 1, [&](Lie lie, Point at) { balls.add(lie, at, 1.0); });
  const CloseLookAhead close(model, evaluated.policy, filled_values(model, evaluated.value), std::move(balls));
  const ActionFrom decided = [&](Lie lie, Point from) {
    const auto looked_at = lie == Lie::tee ? std::nullopt : close.action(lie, from);
    return looked_at ? *looked_at : shown(lie, from);
  };
  return play_at_the_place(model, decided, plays, seed);
}

// On the grid that gain takes: where the search comes to no end on one, the next.
inline HolePlayed play_best(const Course& course, const Hole& hole, std::size_t tee, const Golfers& golfers,
                            const Baseline& baseline, int plays, std::uint64_t seed) {
  const HoleMap map(hole, course.firmness);
  HolePlayed played;
  const HoleAsked asked{hole, map, tee, golfers, baseline, search_grid()};
  const auto unfinished = finish_hole(asked, [&](const HoleModels& models) {
    SolveOptions wanted;
    wanted.best = true;
    const SolvedBest solved = *solve_hole(models, wanted).best;
    const PolicyEvaluation& before = solved.before.held_out;
    const PolicyEvaluation& after = solved.planned_after().held_out;
    played = {before.at_tee, after.at_tee,
              play_by_close_look_ahead(models.before, before, best_before_from(models, solved), plays, seed),
              play_by_close_look_ahead(models.after(), after, best_after_from(models, solved), plays, seed)};
  });
  if (unfinished) throw CannotFinish({*unfinished}, course.units);
  return played;
}

}  // namespace yardworth::test
