#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "validate/player_rules.hpp"
#include "yardworth/read.hpp"

namespace yardworth {
namespace {

// What no file says: of a skill, and what is worked out of it for a club.
constexpr Limits share{0.0, 1.0};
constexpr Limits shortening{0.01, 1.0};
constexpr Limits widening{1.0, 10.0};
constexpr Limits skill_spread{0.0, 100.0};
constexpr Limits angle{0.0, 30.0, "degrees"};

// A spread that the file leaves out is that of the skill, however short the club.
void check_spread(const Club& club, const Player& player, const Tell& tell) {
  const Skill& skill = player.skill;
  const double of_skill_yd = skill.carry_sd_floor_yd + skill.carry_sd_share * club.carry_yd;
  if (club.carry_sd_yd > of_skill_yd) check_carry_sd(club.carry_sd_yd, club.carry_yd, player.units, tell);
  check_length(club.carry_sd_floor_yd, {0.0, club.carry_sd_yd}, player.units, "carry_sd_floor", tell);
  check_length(club.half_swing_yd, {0.0, club.carry_yd}, player.units, "half_swing", tell);
}

void check_club(const Club& club, const Player& player, const Tell& tell) {
  const Units units = player.units;
  check_text(club.name, "club", tell);
  const bool carry = check_length(club.carry_yd, limits::carry, units, "carry", tell);
  const bool spread = check_length(club.carry_sd_yd, limits::carry_sd, units, "carry_sd", tell);
  check_length(club.roll_yd, limits::roll, units, "roll", tell);
  check_number(degrees(club.direction_sd_rad), limits::direction_sd, "direction_sd", tell);
  check_number(degrees(club.direction_mean_rad), limits::direction_mean, "direction_mean", tell);
  check_number(club.poor_strike, limits::poor_strike, "poor_strike", tell);
  check_number(club.place, share, "place", tell);
  if (carry && spread) check_spread(club, player, tell);
}

void check_clubs(const Player& player, const Tell& tell) {
  check_count(player.clubs.size(), 1, limits::most_clubs, "clubs", "clubs", tell);
  const TellOf tell_of = [&](std::size_t i) { return below(tell, "clubs", i); };
  std::vector<NamedClub> names;
  for (std::size_t i = 0; i < player.clubs.size(); ++i) {
    const Club& club = player.clubs[i];
    check_club(club, player, tell_of(i));
    names.push_back({club.name, club.kind});
    if (i > 0) check_longer_before_shorter(player.clubs[i - 1].carry_yd, club.carry_yd, player.units, tell_of(i));
  }
  check_club_names(names, tell_of);
}

void check_lie(const LieEffect& lie, const Tell& tell) {
  check_number(lie.carry_factor, shortening, "carry_factor", tell);
  check_number(lie.carry_sd_factor, widening, "carry_sd_factor", tell);
  check_number(lie.direction_sd_factor, widening, "direction_sd_factor", tell);
  check_number(lie.poor_strike_added, share, "poor_strike_added", tell);
}

void check_touch(const Touch& touch, Units units, const Tell& tell) {
  check_length(touch.spread_floor_yd, skill_spread, units, "spread_floor", tell);
  check_number(touch.spread_share, share, "spread_share", tell);
  check_number(touch.poor_strike, share, "poor_strike", tell);
}

void check_skill(const Skill& skill, Units units, const Tell& tell) {
  check_length(skill.driver_carry_yd, limits::carry, units, "driver_carry", tell);
  check_length(skill.driver_roll_yd, limits::roll, units, "driver_roll", tell);
  check_length(skill.carry_sd_floor_yd, skill_spread, units, "carry_sd_floor", tell);
  check_number(skill.carry_sd_share, share, "carry_sd_share", tell);
  check_number(degrees(skill.driver_direction_sd_rad), limits::direction_sd, "driver_direction_sd", tell);
  check_number(degrees(skill.hybrid_direction_sd_rad), limits::direction_sd, "hybrid_direction_sd", tell);
  check_number(degrees(skill.wedge_direction_sd_rad), limits::direction_sd, "wedge_direction_sd", tell);
  check_number(degrees(skill.direction_mean_rad), limits::direction_mean, "direction_mean", tell);
  check_number(skill.driver_poor_strike, limits::poor_strike, "driver_poor_strike", tell);
  check_number(skill.wedge_poor_strike, limits::poor_strike, "wedge_poor_strike", tell);
  check_lie(skill.fairway, below(tell, "fairway"));
  check_lie(skill.rough, below(tell, "rough"));
  check_lie(skill.bunker, below(tell, "bunker"));
  check_lie(skill.recovery, below(tell, "recovery"));
  const Tell near_green = below(tell, "short_game");
  check_touch(skill.short_game.fairway, units, below(near_green, "fairway"));
  check_touch(skill.short_game.rough, units, below(near_green, "rough"));
  check_touch(skill.short_game.bunker, units, below(near_green, "bunker"));
  check_touch(skill.short_game.recovery, units, below(near_green, "recovery"));
  check_number(degrees(skill.putting.direction_sd_rad), angle, "direction_sd", below(tell, "putting"));
  check_number(skill.putting.distance_sd_share, share, "distance_sd_share", below(tell, "putting"));
}

}  // namespace

std::vector<Diagnostic> validate(const Player& player) {
  std::vector<Diagnostic> findings;
  const Tell tell = tell_into(findings, "player");
  check_text(player.label, "label", tell);
  if (player.handicap_index) check_number(*player.handicap_index, limits::handicap_index, "handicap_index", tell);
  check_skill(player.skill, player.units, below(tell, "skill"));
  check_clubs(player, tell);
  return findings;
}

}  // namespace yardworth
