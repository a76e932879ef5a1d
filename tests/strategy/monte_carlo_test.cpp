#include <doctest/doctest.h>

#include <cmath>
#include <cstdio>
#include <vector>

#include "core/parallel.hpp"
#include "gain/played_from.hpp"
#include "gain/solve_hole.hpp"
#include "strategy/simulate.hpp"
#include "support/prepared_hole.hpp"
#include "support/sanitized.hpp"
#include "support/scenario.hpp"

namespace yardworth {
namespace {

struct Compared {
  int hole = 0;
  double held_out = 0.0;  // as gain has it
  double exact = 0.0;     // on the fine grid
  SampledMean sampled;

  double in_standard_errors() const { return (sampled.mean - exact) / sampled.standard_error; }
};

enum class Which { habit, best };

// Under the sanitizers so few that the coarse grid's own error, 0.01 strokes, is lost in their standard error.
constexpr int plays_of(int in_full) { return test::sanitized ? 1500 : in_full; }

// Less than half of the spacing of the grids that gain uses, every node struck and the lattice of all aims in place of
// equal weights, so that what is compared is the two roads and not the spacing of one of them. Under the sanitizers,
// which look for other faults, this would take too long.
DiscretisationOptions fine_discretisation() {
  DiscretisationOptions discretisation;
  if (!test::sanitized) {
    // Not by a whole number: states would lie exactly half way between those whose action they play.
    discretisation.ring_yd /= 4.3;
    discretisation.arc_yd /= 4.3;
    discretisation.tee_refinement *= 2;
    discretisation.sampling_density = every_node;
  }
  return discretisation;
}

// One golfer on one hole, on the grids that gain makes for a change that changes nothing: the search grid and the
// held-out grid, with rings where the habit changes abruptly.
struct Played {
  Played(const Hole& hole, const Course& course, const Golfers& golfers, const Baseline& baseline)
      : map(hole, course.firmness),
        tee(map.tee(hole.length_yd[test::middle_tee])),
        models(map, tee, golfers, baseline, HoleModels::Grids::of(test::search_grid_for(hole))),
        fine(map, tee, golfers.before, baseline, fine_grid(models.grids.search)) {}

  HoleMap map;
  Point tee;
  HoleModels models;
  HoleModel fine;

 private:
  static Discretisation fine_grid(const Discretisation& searched) {
    DiscretisationOptions options = fine_discretisation();
    options.edges_yd = searched.options().edges_yd;
    return Discretisation(options);
  }
};

// A policy of the held-out grid, as it is played from any place: evaluated there, on the fine grid, and sampled.
Compared compare(const Played& played, Which which, int plays, std::uint64_t seed) {
  Compared compared;
  const HoleModel& model = played.models.before;
  SolveOptions wanted;
  (which == Which::habit ? wanted.habit : wanted.best) = true;
  const SolvedHole solved = solve_hole(played.models, wanted);
  if (which == Which::habit) {
    compared.held_out = solved.habit->before.at_tee;
    compared.exact = evaluate_policy(played.fine, habit_of(played.fine)).at_tee;
    compared.sampled = sample_hole(model, habit_at(model), plays, seed);
    return compared;
  }
  const PolicyEvaluation& best = solved.best->before.held_out;
  // What is shown to be played, from the very place.
  const ActionFrom shown = best_before_from(played.models, *solved.best);
  const ActionOf on_fine = [&](StateId state) { return shown(played.fine.lie_of(state), played.fine.place_of(state)); };
  const ActionAt at_place = [&](Lie lie, Point from, RandomEngine&) { return shown(lie, from); };
  compared.held_out = best.at_tee;
  compared.exact = evaluate_policy(played.fine, on_fine).at_tee;
  compared.sampled = sample_hole(model, at_place, plays, seed);
  return compared;
}

// Every hole of the scenario, each with a seed of its own, so that the order of the work does not matter. On the fine
// grid there is chance and, for golfers who are wild off the tee, a little of what its own spacing costs. On the
// held-out grid its spacing costs a hundredth of a stroke a hole and a twentieth a round, the limits of
// docs/performance.md.
void check_round(const char* member, Which which, int plays) {
  constexpr double of_fine = 0.002;
  constexpr double of_hole = 0.01;
  constexpr double of_round = 0.05;
  const Course course = test::scenario_course();
  const Player player = test::scenario_member(member);
  const Baseline baseline = test::baseline_of(player);
  const Golfers golfers = golfers_of(player, baseline, {});
  std::vector<Compared> holes(course.holes.size());
  work_in_parallel(0, holes.size(), [&](std::size_t i) {
    holes[i] = compare({course.holes[i], course, golfers, baseline}, which, plays, 1000 + i);
    holes[i].hole = course.holes[i].number;
  });
  double off = 0.0;
  double variance = 0.0;
  std::printf("%s, %s plan, %d plays of each hole\n", member, which == Which::habit ? "habit" : "best", plays);
  std::printf("hole  held out      fine   sampled  std error  in std errors\n");
  for (const Compared& hole : holes) {
    std::printf("%4d  %8.5f  %8.5f  %8.5f  %9.5f  %+13.2f\n", hole.hole, hole.held_out, hole.exact, hole.sampled.mean,
                hole.sampled.standard_error, hole.in_standard_errors());
    CHECK_MESSAGE(std::abs(hole.sampled.mean - hole.exact) < of_fine + 3.0 * hole.sampled.standard_error, hole.hole);
    CHECK_MESSAGE(std::abs(hole.sampled.mean - hole.held_out) < of_hole + 3.0 * hole.sampled.standard_error, hole.hole);
    off += hole.held_out - hole.sampled.mean;
    variance += hole.sampled.standard_error * hole.sampled.standard_error;
  }
  std::printf("the round on the held-out grid less the sampled one: %+.4f, standard error %.4f\n", off,
              std::sqrt(variance));
  CHECK(std::abs(off) < of_round + 3.0 * std::sqrt(variance));
}

}  // namespace

TEST_CASE("200,000 plays of each hole agree with the quadrature within 0.002 strokes and three standard errors") {
  check_round("weekend-16-man", Which::habit, plays_of(200000));
}

TEST_CASE("so do plays by another golfer") { check_round("12-woman", Which::habit, plays_of(50000)); }

TEST_CASE("playing the best plan gives what it is worth within three standard errors") {
  check_round("weekend-16-man", Which::best, plays_of(100000));
}

TEST_CASE("the same seed gives the same plays") {
  const Course course = test::scenario_course();
  const Player player = test::scenario_member("weekend-16-man");
  const Baseline baseline = test::baseline_of(player);
  const test::Mesh mesh;
  const test::PreparedHole here(course.holes[0], course.firmness, test::middle_tee, player, baseline, mesh);
  const auto mean = [&](std::uint64_t seed) { return sample_hole(here.model, habit_at(here.model), 500, seed).mean; };
  CHECK(mean(7) == mean(7));
  CHECK(mean(7) != mean(8));
}

}  // namespace yardworth
