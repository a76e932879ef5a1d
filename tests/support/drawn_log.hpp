#pragma once

#include <cmath>
#include <string>
#include <vector>

#include "bag/mixture.hpp"
#include "shot/sample.hpp"
#include "shot/strike.hpp"
#include "yardworth/shot_log.hpp"

namespace yardworth::test {

// Shots as the engine itself draws them.

inline Swing swing_of(const Mixture& truth) {
  Swing swing;
  swing.carry_yd = truth.carry_yd;
  swing.carry_sd_share = truth.carry_sd_yd / truth.carry_yd;
  swing.direction_scale_rad = direction_scale_per_sd * truth.direction_sd_rad;
  swing.poor_strike = truth.poor_strike;
  return swing;
}

inline void add_drawn_shots(ShotLog& log, const std::string& club, const Mixture& truth, int count,
                            RandomEngine& engine) {
  log.clubs.push_back(club);
  if (log.sessions.empty()) log.sessions.emplace_back();
  const Swing swing = swing_of(truth);
  for (int i = 0; i < count; ++i) {
    const Strike strike = draw_strike(swing, engine);
    Shot shot;
    shot.line = static_cast<int>(log.shots.size()) + 2;
    shot.club = log.clubs.size() - 1;
    shot.carry_yd = strike.carry_yd;
    shot.offline_yd = strike.carry_yd * std::sin(strike.direction_rad + truth.direction_mean_rad);
    log.shots.push_back(shot);
  }
}

}  // namespace yardworth::test
