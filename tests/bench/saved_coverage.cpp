// How often the 90% intervals of the strokes saved hold the truth, over simulated logs: yardworth_saved_coverage [LOGS]
// [DRAWS] [table|play] [CASE], 400, 100, both methods and all cases, from 1 on, unless said. Strikes before and after
// are drawn by the engine; the truth is the gain of the change that they were drawn with, on three holes of the
// scenario.

#include <boost/random/beta_distribution.hpp>
#include <boost/random/chi_squared_distribution.hpp>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <string>
#include <vector>

#include "bag/borrowed.hpp"
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
  // Whether spreads and poor strikes are what the player's file says, and change as `change` says; or are drawn, before
  // and after, about what the file says, as widely as the intervals take them to be.
  bool as_in_file = true;
};

ShotLog log_of(const Player& golfer, int shots, RandomEngine& engine) {
  ShotLog log;
  for (const Club& club : golfer.clubs) {
    const Mixture truth{club.carry_yd, club.carry_sd_yd, 0.0, club.direction_sd_rad, club.poor_strike};
    test::add_drawn_shots(log, club.name, truth, shots, engine);
  }
  return log;
}

// A golfer before and after, and the change that leads from the one of the file to as different a one.
struct Truth {
  Player before, after;
  Change change;
};

// A spread of which ten shots are known, over the one that they would tell.
double drawn_spread(RandomEngine& engine) {
  constexpr double shots = typical_counts_for_shots;
  return std::sqrt(shots / boost::random::chi_squared_distribution<double>(shots)(engine));
}

double drawn_poor_strike(double typical, RandomEngine& engine) {
  constexpr double shots = typical_counts_for_shots;
  return boost::random::beta_distribution<double>(shots * typical, shots * (1.0 - typical))(engine);
}

void redraw(Club& club, RandomEngine& engine) {
  club.carry_sd_yd *= drawn_spread(engine);
  club.direction_sd_rad *= drawn_spread(engine);
  club.poor_strike = drawn_poor_strike(club.poor_strike, engine);
}

Truth truth_of(const Player& player, const Case& one, RandomEngine& engine) {
  Truth truth{player, golfer_after(player, one.change), one.change};
  if (one.as_in_file) return truth;
  for (std::size_t i = 0; i < player.clubs.size(); ++i) {
    const Club longer = truth.after.clubs[i];
    Club& before = truth.before.clubs[i];
    Club& after = truth.after.clubs[i];
    redraw(before, engine);
    redraw(after, engine);
    OwnChange own;
    own.club = longer.name;
    own.carry_sd_share =
        after.carry_sd_yd / longer.carry_sd_yd * player.clubs[i].carry_sd_yd / before.carry_sd_yd - 1.0;
    own.direction_sd_share =
        after.direction_sd_rad / longer.direction_sd_rad * player.clubs[i].direction_sd_rad / before.direction_sd_rad -
        1.0;
    own.poor_strike = after.poor_strike - before.poor_strike;
    truth.change.clubs.push_back(own);
  }
  return truth;
}

struct Counts {
  int below = 0, above = 0;
  double width = 0.0, truth = 0.0;
};

// saved: by the truth of each log, and then by each of its draws.
Counts count_held(const std::vector<double>& saved, int logs, int draws) {
  Counts counts;
  for (int i = 0; i < logs; ++i) {
    const auto first = saved.begin() + static_cast<std::ptrdiff_t>(i) * (draws + 1);
    const double truth = *first;
    const SavedInterval interval = interval_of({first + 1, first + 1 + draws}, bag_level, PolicyChoice::habit);
    counts.below += truth < interval.low ? 1 : 0;
    counts.above += truth > interval.high ? 1 : 0;
    counts.width += (interval.high - interval.low) / logs;
    counts.truth += truth / logs;
  }
  return counts;
}

void count(const Case& one, int logs, int draws) {
  const Course course = test::scenario_course();
  const Player player = test::scenario_member("weekend-16-man");
  const Baseline baseline = test::baseline_of(player);
  GainRequest request;
  request.holes = {2, 5, 9};
  request.method = one.method;
  request.policy = PolicyChoice::habit;
  request.spread_of_score = false;
  request.change = one.change;
  RandomEngine engine(3);
  // All draws of all logs at once: the golfer before is solved once.
  std::vector<Change> all;
  for (int i = 0; i < logs; ++i) {
    const Truth truth = truth_of(player, one, engine);
    const ShotLog before_log = log_of(truth.before, one.shots, engine);
    const ShotLog after_log = log_of(truth.after, one.shots, engine);
    const MeasuredChange measured = measured_change(compare_bags(before_log, after_log, {player, true}), player);
    all.push_back(truth.change);
    for (const Change& change : drawn_changes(measured, player, draws, static_cast<std::uint64_t>(i) + 1)) {
      all.push_back(change);
    }
  }
  const Counts counts = count_held(compute_saved_draws(course, player, baseline, request, all), logs, draws);
  const char* const method = one.method == Method::table ? "table" : "play";
  std::printf("| %s: %s | %d | %.3f | %.3f | %.1f%% | %.1f%% | %.1f%% |\n", method, one.words, one.shots, counts.truth,
              counts.width, 100.0 * (logs - counts.below - counts.above) / logs, 100.0 * counts.below / logs,
              100.0 * counts.above / logs);
  std::fflush(stdout);
}

int run(int logs, int draws, const char* only, std::size_t only_case) {
  std::printf(
      "| %d logs, %d draws each | shots | strokes | width | held | too high | too low |\n"
      "|---|---|---|---|---|---|---|\n",
      logs, draws);
  Change surer{12.0, 4.0};
  surer.direction_sd_share = -0.1;
  surer.carry_sd_share = -0.1;
  for (const Method method : {Method::table, Method::play}) {
    if (std::strcmp(only, method == Method::table ? "play" : "table") == 0) continue;
    const std::vector<Case> cases = {{"20 yards", {20.0, 6.0}, 20, method},
                                     {"no change", {}, 20, method},
                                     {"longer and straighter", surer, 12, method},
                                     {"longer and straighter", surer, 40, method},
                                     {"20 yards, all else at random", {20.0, 6.0}, 20, method, false}};
    for (std::size_t i = 0; i < cases.size(); ++i) {
      if (only_case == 0 || only_case == i + 1) count(cases[i], logs, draws);
    }
  }
  return 0;
}

}  // namespace
}  // namespace yardworth

int main(int count, char** arguments) {
  return yardworth::run(count > 1 ? std::atoi(arguments[1]) : 400, count > 2 ? std::atoi(arguments[2]) : 100,
                        count > 3 ? arguments[3] : "both",
                        count > 4 ? static_cast<std::size_t>(std::atoi(arguments[4])) : 0);
}
