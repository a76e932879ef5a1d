// How often the 90% intervals of `bag` hold the truth, over simulated logs: yardworth_bag_coverage [LOGS], 2,000 unless
// said. Strikes are drawn by the engine; the speeds that some logs have are normal, and the carry follows them.

#include <boost/random/normal_distribution.hpp>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

#include "support/drawn_log.hpp"
#include "yardworth/bag.hpp"

namespace yardworth {
namespace {

struct Case {
  const char* words;
  Mixture before, after;
  int shots_before = 0, shots_after = 0;
  double faster_mph = 0.0;  // after
  bool with_speed = false;
};

constexpr double yards_per_mph = 2.5;

// Each shot hit at a speed of its own, which its carry follows.
void give_speeds(ShotLog& log, double mean_mph, double faster_mph, RandomEngine& engine) {
  boost::random::normal_distribution<double> normal;
  for (Shot& shot : log.shots) {
    const double off_mph = faster_mph + 2.0 * normal(engine);
    shot.club_speed_mps = from_mph(mean_mph + off_mph);
    shot.carry_yd = std::max(0.0, shot.carry_yd + yards_per_mph * off_mph);
    shot.offline_yd.reset();
  }
}

ShotLog drawn_log(const Mixture& truth, int shots, RandomEngine& engine) {
  ShotLog log;
  test::add_drawn_shots(log, "driver", truth, shots, engine);
  return log;
}

bool within(const Estimate& estimate, double truth) { return estimate.low <= truth && truth <= estimate.high; }

struct Counts {
  int gain = 0, equal_speed = 0, carry = 0, carry_sd = 0, poor = 0, direction_sd = 0, direction_mean = 0, real = 0;
};

Counts count(const Case& one, int logs, RandomEngine& engine) {
  Counts counts;
  const double gain = one.after.carry_yd - one.before.carry_yd;
  for (int i = 0; i < logs; ++i) {
    ShotLog before = drawn_log(one.before, one.shots_before, engine);
    ShotLog after = drawn_log(one.after, one.shots_after, engine);
    if (one.with_speed) {
      give_speeds(before, 94.0, 0.0, engine);
      give_speeds(after, 94.0, one.faster_mph, engine);
    }
    const BagComparison comparison = compare_bags(before, after);
    const ClubChange& change = comparison.changes.front();
    counts.gain += within(change.carry_yd, gain + yards_per_mph * one.faster_mph) ? 1 : 0;
    if (change.at_equal_club_speed_yd) counts.equal_speed += within(*change.at_equal_club_speed_yd, gain) ? 1 : 0;
    counts.real += change.verdict == ClubChange::Verdict::real ? 1 : 0;
    counts.carry += within(change.before.carry_yd, one.before.carry_yd) ? 1 : 0;
    counts.carry_sd += within(*change.before.carry_sd_yd, one.before.carry_sd_yd) ? 1 : 0;
    counts.poor += within(*change.before.poor_strike, one.before.poor_strike) ? 1 : 0;
    if (!change.before.direction_sd_rad) continue;
    counts.direction_sd += within(*change.before.direction_sd_rad, one.before.direction_sd_rad) ? 1 : 0;
    counts.direction_mean += within(*change.before.direction_mean_rad, one.before.direction_mean_rad) ? 1 : 0;
  }
  return counts;
}

int run(int logs) {
  const Mixture drive{196.0, 17.0, 0.0, radians(6.1), 0.08};
  const Mixture longer{210.0, 14.0, 0.0, radians(5.5), 0.05};
  const Mixture wild{180.0, 22.0, radians(3.0), radians(8.0), 0.20};
  const Mixture sure{270.0, 11.0, 0.0, radians(3.4), 0.02};
  const Mixture iron{131.0, 10.0, 0.0, radians(4.4), 0.06};
  const std::vector<Case> cases = {{"driver, 10 and 10 shots", drive, longer, 10, 10},
                                   {"driver, 20 and 20 shots", drive, longer, 20, 20},
                                   {"driver, 40 and 15 shots", drive, longer, 40, 15},
                                   {"driver, 100 and 100 shots", drive, longer, 100, 100},
                                   {"no change, 20 and 20 shots", drive, drive, 20, 20},
                                   {"wild driver, 20 and 20 shots", wild, drive, 20, 20},
                                   {"tour driver, 20 and 20 shots", sure, sure, 20, 20},
                                   {"7-iron, 12 and 12 shots", iron, iron, 12, 12},
                                   {"driver 3 mph faster, 20 and 20 shots", drive, longer, 20, 20, 3.0, true},
                                   {"driver 3 mph faster, 40 and 40 shots", drive, drive, 40, 40, 3.0, true}};
  std::printf(
      "| %d logs | gain | at equal speed | carry | spread | poor strikes | spread of direction | mean direction | "
      "called real |\n|---|---|---|---|---|---|---|---|---|\n",
      logs);
  RandomEngine engine(1);
  for (const Case& one : cases) {
    const Counts counts = count(one, logs, engine);
    const auto share = [&](int number) { return 100.0 * number / logs; };
    const auto cell = [&](bool there, int number) {
      char text[16] = "";
      if (there) std::snprintf(text, sizeof text, "%.1f%%", share(number));
      return std::string(text);
    };
    std::printf("| %s | %.1f%% | %s | %s | %s | %s | %s | %s | %.1f%% |\n", one.words, share(counts.gain),
                cell(one.with_speed, counts.equal_speed).c_str(), cell(!one.with_speed, counts.carry).c_str(),
                cell(!one.with_speed, counts.carry_sd).c_str(), cell(!one.with_speed, counts.poor).c_str(),
                cell(!one.with_speed, counts.direction_sd).c_str(),
                cell(!one.with_speed, counts.direction_mean).c_str(), share(counts.real));
    std::fflush(stdout);
  }
  return 0;
}

}  // namespace
}  // namespace yardworth

int main(int count, char** arguments) { return yardworth::run(count > 1 ? std::atoi(arguments[1]) : 2000); }
