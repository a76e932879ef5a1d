#pragma once

#include <string>
#include <vector>

#include "validate/tell.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// What the clubs of a player have to be beside each other, for readers and validate() alike.

struct NamedClub {
  std::string name;
  ClubKind kind = ClubKind::other;
};

// One club of a name, one driver, no putter.
void check_club_names(const std::vector<NamedClub>& clubs, const TellOf& tell_of);

// Tells of the shorter one.
bool check_longer_before_shorter(double longer_yd, double shorter_yd, Units units, const Tell& tell);

void check_carry_sd(double carry_sd_yd, double carry_yd, Units units, const Tell& tell);

}  // namespace yardworth
