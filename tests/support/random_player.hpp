#pragma once

#include <algorithm>
#include <boost/random/uniform_real_distribution.hpp>
#include <cmath>
#include <string>
#include <vector>

#include "yardworth/player/golfer.hpp"
#include "yardworth/shot/sample.hpp"

namespace yardworth::test {

inline double uniform(RandomEngine& engine, double low, double high) {
  return boost::random::uniform_real_distribution<double>(low, high)(engine);
}

// How the spreads, poor strikes and rolls of a random club table go with the length of its clubs.
enum class Spreads {
  any,   // not at all
  fall,  // no club spreads more, for its length, than a longer one, as is true of clubs as they are made and hit
};

// So many random numbers between low and high; where they fall, none larger than the one before.
inline std::vector<double> random_numbers(RandomEngine& engine, std::size_t count, double low, double high,
                                          Spreads spreads) {
  std::vector<double> numbers;
  for (std::size_t i = 0; i < count; ++i) numbers.push_back(uniform(engine, low, high));
  if (spreads == Spreads::fall) std::sort(numbers.rbegin(), numbers.rend());
  return numbers;
}

// A golfer with a random club table: 3 to 13 clubs, random carries, gaps and spreads.
inline Player random_player(RandomEngine& engine, Spreads spreads) {
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
  const std::size_t count = player.clubs.size();
  const auto carry_sd_share = random_numbers(engine, count, 0.03, 0.13, spreads);
  const auto direction_sd = random_numbers(engine, count, radians(2.0), radians(9.0), spreads);
  const auto poor_strike = random_numbers(engine, count, 0.0, 0.2, spreads);
  const auto roll_share = random_numbers(engine, count, 0.0, 0.12, spreads);
  const double floor_yd = uniform(engine, 0.0, 6.0);
  double carry = uniform(engine, 130.0, 270.0);
  for (std::size_t i = 0; i < count; ++i) {
    Club& club = player.clubs[i];
    club.carry_yd = carry;
    club.half_swing_yd = half_swing * carry;
    club.carry_sd_yd = carry_sd_share[i] * carry;
    club.carry_sd_floor_yd = std::min(floor_yd, club.carry_sd_yd);
    club.direction_sd_rad = direction_sd[i];
    club.poor_strike = poor_strike[i];
    club.roll_yd = roll_share[i] * carry;
    carry *= uniform(engine, 0.78, 0.98);
  }
  return player;
}

}  // namespace yardworth::test
