#pragma once

#include <algorithm>
#include <boost/random/uniform_real_distribution.hpp>
#include <cmath>
#include <string>

#include "shot/sample.hpp"
#include "yardworth/player.hpp"

namespace yardworth::test {

inline double uniform(RandomEngine& engine, double low, double high) {
  return boost::random::uniform_real_distribution<double>(low, high)(engine);
}

// A golfer with a random club table: 3 to 13 clubs, random carries and gaps, and spreads, poor strikes and rolls that
// have nothing to do with how far a club goes.
inline Player random_player(RandomEngine& engine) {
  Player player = standard_player(Band::from_13_to_20, Gender::men);
  player.handicap_index = std::round(uniform(engine, 0.0, 30.0) * 10.0) / 10.0;
  player.band = band_of(*player.handicap_index);
  player.skill = skill_of(*player.handicap_index, Gender::men);
  player.label = "random";
  while (player.clubs.size() > 3 && uniform(engine, 0.0, 1.0) < 0.85) {
    const auto out =
        1 + static_cast<std::size_t>(uniform(engine, 0.0, 1.0) * static_cast<double>(player.clubs.size() - 1));
    player.clubs.erase(player.clubs.begin() + static_cast<std::ptrdiff_t>(std::min(out, player.clubs.size() - 1)));
  }
  const double floor_yd = uniform(engine, 0.0, 6.0);
  double carry = uniform(engine, 130.0, 270.0);
  for (Club& club : player.clubs) {
    club.carry_yd = carry;
    club.half_swing_yd = half_swing * carry;
    club.carry_sd_yd = uniform(engine, 0.03, 0.13) * carry;
    club.carry_sd_floor_yd = std::min(floor_yd, club.carry_sd_yd);
    club.direction_sd_rad = radians(uniform(engine, 2.0, 9.0));
    club.poor_strike = uniform(engine, 0.0, 0.2);
    club.roll_yd = uniform(engine, 0.0, 0.12) * carry;
    carry *= uniform(engine, 0.78, 0.98);
  }
  return player;
}

}  // namespace yardworth::test
