#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "strategy/outcome_samples.hpp"
#include "strategy/strikes.hpp"
#include "support/prepared_hole.hpp"
#include "support/sanitized.hpp"
#include "support/scenario.hpp"

namespace yardworth {
namespace {

struct Round {
  explicit Round(const char* member, const DiscretisationOptions& discretisation = {})
      : player(test::scenario_member(member)), baseline(test::baseline_of(player)), mesh(discretisation) {}

  // The holes to look at: all, or, where everything is slow, a few of different kinds.
  std::vector<Hole> holes() const {
    if (!test::sanitized) return course.holes;
    return {course.holes[0], course.holes[5], course.holes[13]};
  }
  test::PreparedHole prepare(const Hole& hole) const {
    return {hole, course.firmness, test::middle_tee, player, baseline, mesh};
  }

  Course course = test::scenario_course();
  Player player;
  Baseline baseline;
  test::Mesh mesh;
};

// Values where the policy has none (NaN): the baseline, and what the policy's own states of the hole are on average
// above it.
std::vector<double> filled(const HoleModel& model, std::vector<double> value) {
  const auto baseline_at = [&](StateId state) {
    return model.short_game().strokes(model.lie_of(state), distance_yd(model.place_of(state), model.pin()));
  };
  double extra = 0.0;
  int count = 0;
  for (StateId state = 0; state < model.state_count(); ++state) {
    const double known = value[static_cast<std::size_t>(state)];
    if (std::isnan(known)) continue;
    extra += known - baseline_at(state);
    ++count;
  }
  for (StateId state = 0; state < model.state_count(); ++state) {
    double& known = value[static_cast<std::size_t>(state)];
    if (std::isnan(known)) known = baseline_at(state) + extra / count;
  }
  return value;
}

// The least strokes from a state over all candidates, each at aims `finer` times as close together and as far round as
// the lattice reaches.
double least_strokes(const HoleModel& model, StateId state, const std::vector<double>& value, int finer, int reach_sd) {
  double least = 1e9;
  const Lie lie = model.lie_of(state);
  for (const Candidate& candidate : candidates_at(model, lie, model.place_of(state), reach_sd)) {
    const double step = model.swing_of(lie, candidate.action).direction_scale_rad / aims_per_sd;
    for (int part = 0; part < finer; ++part) {
      Candidate shifted = candidate;
      shifted.action.reference_heading_rad += step * part / finer;
      for (const double strokes : aim_values(model, state, shifted, value)) least = std::min(least, strokes);
    }
  }
  return least;
}

}  // namespace

TEST_CASE("no action at any state beats the best plan: the largest Bellman residual") {
  const Round round("weekend-16-man");
  for (const int number : {2, 6, 14}) {
    const test::PreparedHole here = round.prepare(round.course.holes[static_cast<std::size_t>(number - 1)]);
    const BestPolicy best = test::best_policy(here.model, test::complete_search());
    const double residual = largest_bellman_residual(here.model, best, test::complete_search());
    std::printf("hole %d: %d states considered, largest Bellman residual %.1e\n", number, best.considered, residual);
    CHECK(residual < 1e-6);
    if (test::sanitized) break;
  }
}

// Otherwise the nodes of one aim would not be those of the next moved by an aim.
TEST_CASE("every stride fits the steps between aims, at any resolution") {
  for (const int finer : {1, 2, 4}) {
    DiscretisationOptions discretisation;
    discretisation.steps_per_sd *= finer;
    const Round round("weekend-16-man", discretisation);
    const test::PreparedHole here = round.prepare(round.course.holes.front());
    for (const StateId state : {StateId{0}, here.model.tee_state()}) {
      for (int wanted = 1; wanted <= largest_lattice_stride; ++wanted) {
        const int stride = here.model.fitting_stride(state, wanted);
        CAPTURE(finer);
        CAPTURE(stride);
        CHECK(stride >= 1);
        CHECK(stride <= wanted);
        const auto [solid, poor] = strata_of(here.model, state, here.model.swings(Lie::tee).front(), stride);
        CHECK(solid.steps_per_aim % stride == 0);
        CHECK((poor.steps_per_aim % stride == 0 || stride % poor.steps_per_aim == 0));
        CHECK_FALSE(solid.weights().empty());
        CHECK_FALSE(poor.weights().empty());
      }
    }
  }
}

// The bound of docs/performance.md, which is our own: a hundredth of a stroke is what reports show. A thousandth would
// be better still; how many holes come within it is told.
TEST_CASE("the quick search loses less than 0.01 strokes on any hole to one that tries everything") {
  constexpr double bound = 0.01;
  constexpr double goal = 0.001;
  // Both policies are evaluated on every strike of a set that neither search has seen.
  DiscretisationOptions every_strike;
  every_strike.sampling_density = every_node;
  const Round round("weekend-16-man");
  const Round closely("weekend-16-man", every_strike);
  DiscretisationOptions other_strikes = every_strike;
  other_strikes.lattice_offset = lattice_offsets / 2;
  const Round unseen("weekend-16-man", other_strikes);
  std::printf("hole     quick  complete  difference\n");
  int holes = 0;
  int within_goal = 0;
  for (const Hole& hole : round.holes()) {
    const test::PreparedHole here = round.prepare(hole);
    const test::PreparedHole held_out = unseen.prepare(hole);
    const test::PreparedHole searched = closely.prepare(hole);
    const auto worth = [&](const Policy& policy) {
      return evaluate_policy(held_out.model, test::policy_or_habit(held_out.model, policy)).at_tee;
    };
    const double quick = worth(test::best_policy(here.model).exact.policy);
    const double complete = worth(test::best_policy(searched.model, test::complete_search()).exact.policy);
    std::printf("%4d  %8.5f  %8.5f  %10.6f\n", hole.number, quick, complete, quick - complete);
    CHECK_MESSAGE(quick - complete < bound, hole.number);
    CHECK_MESSAGE(quick - complete > -bound, hole.number);
    if (std::abs(quick - complete) < goal) ++within_goal;
    ++holes;
  }
  MESSAGE(within_goal << " of " << holes << " holes come within the goal of " << goal << " strokes");
}

// Equal weights, a coarse grid and few strikes where visits are few, against the lattice, a grid three times as fine
// and every node: the two rules share neither nodes nor weights.
TEST_CASE("a hole comes to the same on the held-out grid as on a fine one struck at every node" *
          doctest::skip(test::sanitized)) {
  DiscretisationOptions fine;
  fine.ring_yd /= 3.1;
  fine.arc_yd /= 3.1;
  fine.steps_per_sd *= 3;
  fine.tee_refinement *= 2;
  fine.sampling_density = every_node;
  double in_all = 0.0;
  double largest = 0.0;
  const Round unseen("weekend-16-man", held_out_options(search_options()));
  const Round closely("weekend-16-man", fine);
  for (const Hole& hole : unseen.holes()) {
    const double held_out = test::habit_value(unseen.prepare(hole).model).at_tee;
    const double exact = test::habit_value(closely.prepare(hole).model).at_tee;
    CAPTURE(hole.number);
    CHECK(std::abs(held_out - exact) < 0.01);
    in_all += held_out - exact;
    largest = std::max(largest, std::abs(held_out - exact));
  }
  std::printf("judged against every node of a fine grid: %+.4f a round, largest hole %.4f\n", in_all, largest);
  CHECK(std::abs(in_all) < 0.05);
}

// With sixteen times as many shots from the tee as by default: otherwise the least of so many values would be the least
// error of their sums, and not the best aim. On the 12th 0.0059 strokes with four times as many are 0.0013 with sixteen
// and 0.0016 with thirty-two.
TEST_CASE("aims a quarter of a spread apart miss nothing: an exhaustive search over aims eight times finer") {
  DiscretisationOptions discretisation;
  discretisation.tee_refinement *= 16;
  const Round round("weekend-16-man", discretisation);
  double largest = 0.0;
  std::printf("tee shot of hole   lattice  exhaustive  difference\n");
  for (const Hole& hole : round.holes()) {
    const test::PreparedHole here = round.prepare(hole);
    const BestPolicy best = test::best_policy(here.model);
    const std::vector<double> value = filled(here.model, best.exact.value);
    const StateId tee = here.model.tee_state();
    const double found = best.exact.at_tee;
    const double exhaustive = least_strokes(here.model, tee, value, 8, 4);
    std::printf("%16d  %8.5f  %10.5f  %10.6f\n", hole.number, found, exhaustive, found - exhaustive);
    CHECK_MESSAGE(found - exhaustive < 0.005, hole.number);
    largest = std::max(largest, found - exhaustive);
  }
  std::printf("largest difference %.6f strokes\n", largest);
}

TEST_CASE("a search that is ended early gives a plan with its own value, no worse than the start") {
  const Round round("weekend-16-man");
  const Hole& hole = round.course.holes[5];
  const test::PreparedHole prepared = round.prepare(hole);
  const PolicyEvaluation habit = test::habit_value(prepared.model);
  PolicyIterationOptions options;
  options.most_evaluations = 1;
  const BestPolicy early = find_best_policy(prepared.model, habit_of(prepared.model), habit, options);
  const BestPolicy whole = find_best_policy(prepared.model, habit_of(prepared.model), habit);
  CHECK(early.exact.at_tee <= habit.at_tee);
  CHECK(whole.exact.at_tee <= early.exact.at_tee + 1e-9);
  // The rows of the search are struck as its states deserve, those of an evaluation likewise, by the balls it sends.
  const PolicyEvaluation again =
      evaluate_policy(prepared.model, test::policy_or_habit(prepared.model, early.exact.policy));
  CHECK(again.at_tee == doctest::Approx(early.exact.at_tee).epsilon(0.002));
}

TEST_CASE("the best plan is never worse than the habit") {
  DiscretisationOptions every_strike;
  every_strike.sampling_density = every_node;
  for (const char* member : {"scratch-man", "weekend-16-man", "28-woman"}) {
    const Round round(member);
    const Round closely(member, every_strike);
    for (const Hole& hole : round.holes()) {
      const test::PreparedHole here = round.prepare(hole);
      const PolicyEvaluation habit = test::habit_value(here.model);
      CAPTURE(member);
      CAPTURE(hole.number);
      // A quick search strikes its policy more closely than the habit was struck; gain, which judges both alike, keeps
      // the better.
      const PolicyIterationOptions options;
      CHECK(find_best_policy(here.model, habit_of(here.model), habit, options).exact.at_tee <=
            habit.at_tee + options.tolerance);
      if (test::sanitized || hole.number % 3 != 0) continue;
      // Where both are struck alike, at every node and from the rarest place, nothing is lost.
      const test::PreparedHole all = closely.prepare(hole);
      const Policy silent(static_cast<std::size_t>(all.model.state_count()));
      const PolicyEvaluation struck = evaluate_from(all.model, {all.model.tee_state()}, silent);
      CHECK(find_best_policy(all.model, habit_of(all.model), struck).exact.at_tee <= struck.at_tee + 1e-12);
    }
    if (test::sanitized) break;
  }
}

}  // namespace yardworth
