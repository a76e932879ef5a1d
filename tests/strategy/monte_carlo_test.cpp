#include <doctest/doctest.h>
#include <tbb/parallel_for.h>

#include <cstdio>
#include <functional>

#include "support/prepared_hole.hpp"
#include "support/sanitized.hpp"
#include "support/scenario.hpp"
#include "yardworth/strategy/simulate.hpp"

namespace yardworth {
namespace {

struct Compared {
  int hole = 0;
  double exact = 0.0;
  SampledMean sampled;

  double in_standard_errors() const { return (sampled.mean - exact) / sampled.standard_error; }
};

enum class Played { habit, best };

Compared compare(const test::PreparedHole& here, Played played, int plays, std::uint64_t seed) {
  Compared compared;
  if (played == Played::habit) {
    compared.exact = test::habit_value(here.model).at_tee;
    compared.sampled = sample_hole(here.model, habit_at(here.model), plays, seed);
  } else {
    const BestPlan best = test::best_plan(here.model);
    compared.exact = best.exact.at_tee;
    compared.sampled = sample_hole(here.model, plan_at(here.model, best.exact.plan), plays, seed);
  }
  return compared;
}

// Every hole of the scenario, each with a seed of its own, so that the order of the work does not matter.
void check_round(const char* member, Played played, int plays) {
  const Course course = test::scenario_course();
  const Player player = test::scenario_member(member);
  const Baseline baseline = test::baseline_of(player);
  const test::Mesh mesh;
  std::vector<Compared> holes(course.holes.size());
  tbb::parallel_for(std::size_t{0}, holes.size(), [&](std::size_t i) {
    const test::PreparedHole here(course.holes[i], course.firmness, test::middle_tee, player, baseline, mesh);
    holes[i] = compare(here, played, plays, 1000 + i);
    holes[i].hole = course.holes[i].number;
  });
  std::printf("%s, %s plan, %d plays of each hole\n", member, played == Played::habit ? "habit" : "best", plays);
  std::printf("hole     exact   sampled  std error  in std errors\n");
  for (const Compared& hole : holes) {
    std::printf("%4d  %8.5f  %8.5f  %9.5f  %+13.2f\n", hole.hole, hole.exact, hole.sampled.mean,
                hole.sampled.standard_error, hole.in_standard_errors());
    CHECK_MESSAGE(std::abs(hole.in_standard_errors()) < 3.0, hole.hole);
  }
}

}  // namespace

TEST_CASE("200,000 plays of each hole agree with the quadrature within three standard errors") {
  check_round("weekend-16-man", Played::habit, test::repeats(200000));
}

TEST_CASE("so do plays by another golfer") { check_round("12-woman", Played::habit, test::repeats(50000)); }

TEST_CASE("playing the best plan gives what it promises within three standard errors") {
  check_round("weekend-16-man", Played::best, test::repeats(50000));
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
