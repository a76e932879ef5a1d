// What the resolution costs in accuracy: strokes of the scenario's holes at coarser and finer states and shots, the
// habit policy and the best policy, and how far each lies from the finest. docs/performance.md is filled from this.

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstring>
#include <vector>

#include "core/parallel.hpp"
#include "gain/better_policy.hpp"
#include "support/prepared_hole.hpp"
#include "support/scenario.hpp"

namespace yardworth::test {
namespace {

enum class Played { habit, best };

struct Level {
  const char* name;
  DiscretisationOptions discretisation;
};

// Rings, arcs and shots this many times finer than the program searches at, and no coarser anywhere; held_out_options()
// has the grid that goes with it.
DiscretisationOptions finer(double states, int shots) {
  DiscretisationOptions discretisation = search_options();
  discretisation.ring_yd /= states;
  discretisation.arc_yd /= states;
  discretisation.steps_per_sd *= shots;
  discretisation.sampling_density *= states * states * shots;
  return discretisation;
}

DiscretisationOptions coarser() {
  DiscretisationOptions discretisation = finer(0.5, 1);
  discretisation.steps_per_sd /= 2;
  return discretisation;
}

struct RoundAt {
  std::vector<double> strokes;  // by hole
  double total = 0.0;
  double seconds = 0.0;
};

// As `gain` does it: looked for on one grid, evaluated on another.
double held_out_best(const PreparedHole& search, const PreparedHole& held_out) {
  const PolicyStart habit = {habit_of(search.model), habit_of(held_out.model), habit_value(held_out.model)};
  return better_policy(search.model, held_out.model, habit).held_out.at_tee;
}

// A discretisation to search on with the held-out one that goes with it.
struct Meshes {
  explicit Meshes(const DiscretisationOptions& searched) : search(searched), held_out(held_out_options(searched)) {}

  Mesh search, held_out;
};

double play_hole(const Course& course, std::size_t i, const Player& player, const Baseline& baseline,
                 const Meshes& meshes, Played played) {
  const PreparedHole hole(course.holes[i], course.firmness, middle_tee, player, baseline, meshes.search);
  const PreparedHole held_out(course.holes[i], course.firmness, middle_tee, player, baseline, meshes.held_out);
  return played == Played::habit ? habit_value(held_out.model).at_tee : held_out_best(hole, held_out);
}

RoundAt play_round(const Player& player, const DiscretisationOptions& discretisation, Played played) {
  const Course course = scenario_course();
  const Baseline baseline = baseline_of(player);
  const Meshes meshes(discretisation);
  RoundAt round;
  round.strokes.resize(course.holes.size());
  const auto warm_start = std::chrono::steady_clock::now();
  work_in_parallel(0, course.holes.size(), [&](std::size_t i) {
    try {
      round.strokes[i] = play_hole(course, i, player, baseline, meshes, played);
    } catch (const CannotFinish&) {
      // As gain does it (finish_holes).
      DiscretisationOptions more_strikes = discretisation;
      more_strikes.equal_weight_rows = false;
      round.strokes[i] = play_hole(course, i, player, baseline, Meshes(more_strikes), played);
    }
  });
  round.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - warm_start).count();
  for (const double strokes : round.strokes) round.total += strokes;
  return round;
}

void print_table(const char* member, Played played, const std::vector<Level>& levels) {
  const Player player = scenario_member(member);
  std::vector<RoundAt> rounds;
  for (const Level& level : levels) rounds.push_back(play_round(player, level.discretisation, played));
  const RoundAt& finest = rounds.back();
  std::printf("\n%s, %s plan: strokes, and differences to the finest\n", member,
              played == Played::habit ? "habit" : "best");
  std::printf("%-26s %9s %11s %13s %15s %9s\n", "resolution", "round", "difference", "largest hole", "mean of holes",
              "seconds");
  for (std::size_t i = 0; i < levels.size(); ++i) {
    double largest = 0.0;
    double sum = 0.0;
    for (std::size_t hole = 0; hole < finest.strokes.size(); ++hole) {
      const double off = std::abs(rounds[i].strokes[hole] - finest.strokes[hole]);
      largest = std::max(largest, off);
      sum += off;
    }
    std::printf("%-26s %9.4f %+11.4f %13.4f %15.4f %9.2f\n", levels[i].name, rounds[i].total,
                rounds[i].total - finest.total, largest, sum / static_cast<double>(finest.strokes.size()),
                rounds[i].seconds);
  }
  std::printf("%-6s", "hole");
  for (const Level& level : levels) std::printf(" %26s", level.name);
  std::printf("\n");
  for (std::size_t hole = 0; hole < finest.strokes.size(); ++hole) {
    std::printf("%-6d", static_cast<int>(hole) + 1);
    for (const RoundAt& round : rounds) {
      std::printf("         %8.4f %+8.4f", round.strokes[hole], round.strokes[hole] - finest.strokes[hole]);
    }
    std::printf("\n");
  }
}

}  // namespace
}  // namespace yardworth::test

// yardworth_accuracy [habit|best] [MEMBER]
int main(int count, char** arguments) {
  using namespace yardworth::test;
  const char* member = count > 2 ? arguments[2] : "weekend-16-man";
  const std::vector<Level> levels = {{"states x 1/2, shots x 1/2", coarser()},
                                     {"default", finer(1.0, 1)},
                                     {"shots x 4", finer(1.0, 4)},
                                     {"states x 2, shots x 2", finer(2.0, 2)},
                                     {"states x 4, shots x 4", finer(4.0, 4)}};
  const bool habit_only = count > 1 && std::strcmp(arguments[1], "habit") == 0;
  const bool best_only = count > 1 && std::strcmp(arguments[1], "best") == 0;
  if (!best_only) print_table(member, Played::habit, levels);
  if (!habit_only) print_table(member, Played::best, levels);
  return 0;
}
