// How often the 90% intervals of the strokes saved hold the truth, over simulated logs: yardworth_saved_coverage [LOGS]
// [DRAWS], 400 and 100 unless said. Strikes before and after are drawn by the engine; the truth is the gain of the
// change that they were drawn with, on three holes of the scenario.

#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

#include "gain/golfers.hpp"
#include "gain/measured_change.hpp"
#include "gain/saved_draws.hpp"
#include "support/drawn_log.hpp"
#include "support/scenario.hpp"
#include "yardworth/bag.hpp"
#include "yardworth/gain.hpp"

namespace yardworth {
namespace {

struct Case {
  const char* words;
  Change change;  // of all clubs, so that those that are not measured follow those that are
  int shots = 0;
  Method method = Method::table;
};

ShotLog log_of(const Player& golfer, int shots, RandomEngine& engine) {
  ShotLog log;
  for (const Club& club : golfer.clubs) {
    const Mixture truth{club.carry_yd, club.carry_sd_yd, 0.0, club.direction_sd_rad, club.poor_strike};
    test::add_drawn_shots(log, club.name, truth, shots, engine);
  }
  return log;
}

struct Counts {
  int held = 0, below = 0, above = 0;
  double width = 0.0;
};

Counts count(const Case& one, int logs, int draws) {
  const Course course = test::scenario_course();
  const Player player = test::scenario_member("weekend-16-man");
  const Baseline baseline = test::baseline_of(player);
  GainRequest request;
  request.holes = {2, 5, 9};
  request.method = one.method;
  request.policy = PolicyChoice::habit;
  request.spread_of_score = false;
  request.change = one.change;
  const double truth = compute_saved_draws(course, player, baseline, request, {one.change}).front();
  const Player after = golfer_after(player, one.change);
  RandomEngine engine(3);
  // All draws of all logs at once: the golfer before is solved once.
  std::vector<Change> all;
  for (int i = 0; i < logs; ++i) {
    const ShotLog before_log = log_of(player, one.shots, engine);
    const ShotLog after_log = log_of(after, one.shots, engine);
    const MeasuredChange measured = measured_change(compare_bags(before_log, after_log, {player, true}), player);
    for (const Change& change : drawn_changes(measured, player, draws, static_cast<std::uint64_t>(i) + 1)) {
      all.push_back(change);
    }
  }
  const std::vector<double> saved = compute_saved_draws(course, player, baseline, request, all);
  Counts counts;
  for (int i = 0; i < logs; ++i) {
    const auto first = saved.begin() + static_cast<std::ptrdiff_t>(i) * draws;
    const SavedInterval interval = interval_of({first, first + draws}, bag_level, PolicyChoice::habit);
    counts.below += truth < interval.low ? 1 : 0;
    counts.above += truth > interval.high ? 1 : 0;
    counts.width += (interval.high - interval.low) / logs;
  }
  counts.held = logs - counts.below - counts.above;
  std::printf("| %s | %d | %.3f | %.3f | %.1f%% | %.1f%% | %.1f%% |\n", one.words, one.shots, truth, counts.width,
              100.0 * counts.held / logs, 100.0 * counts.below / logs, 100.0 * counts.above / logs);
  std::fflush(stdout);
  return counts;
}

int run(int logs, int draws) {
  std::printf(
      "| %d logs, %d draws each | shots | strokes | width | held | too high | too low |\n"
      "|---|---|---|---|---|---|---|\n",
      logs, draws);
  Change surer{12.0, 4.0};
  surer.direction_sd_share = -0.1;
  surer.carry_sd_share = -0.1;
  for (const Method method : {Method::table, Method::play}) {
    const bool table = method == Method::table;
    count({table ? "table: 20 yards" : "play: 20 yards", {20.0, 6.0}, 20, method}, logs, draws);
    count({table ? "table: no change" : "play: no change", {}, 20, method}, logs, draws);
    count({table ? "table: longer and straighter" : "play: longer and straighter", surer, 12, method}, logs, draws);
    count({table ? "table: longer and straighter" : "play: longer and straighter", surer, 40, method}, logs, draws);
  }
  return 0;
}

}  // namespace
}  // namespace yardworth

int main(int count, char** arguments) {
  return yardworth::run(count > 1 ? std::atoi(arguments[1]) : 400, count > 2 ? std::atoi(arguments[2]) : 100);
}
