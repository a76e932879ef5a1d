#include "player/skill.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "yardworth/player.hpp"

namespace yardworth {

namespace {

constexpr SkillRow men[] = {
#include "player/skill_rows_men.inc"
};
constexpr SkillRow women[] = {
#include "player/skill_rows_women.inc"
};

LieEffect mix(const LieEffect& a, const LieEffect& b, double share) {
  return {std::lerp(a.carry_factor, b.carry_factor, share), std::lerp(a.carry_sd_factor, b.carry_sd_factor, share),
          std::lerp(a.direction_sd_factor, b.direction_sd_factor, share),
          std::lerp(a.poor_strike_added, b.poor_strike_added, share)};
}

Touch mix(const Touch& a, const Touch& b, double share) {
  return {std::lerp(a.spread_floor_yd, b.spread_floor_yd, share), std::lerp(a.spread_share, b.spread_share, share),
          std::lerp(a.poor_strike, b.poor_strike, share)};
}

Skill mix(const Skill& a, const Skill& b, double share) {
  Skill skill;
  for (double Skill::*number :
       {&Skill::driver_carry_yd, &Skill::driver_roll_yd, &Skill::carry_sd_floor_yd, &Skill::carry_sd_share,
        &Skill::driver_direction_sd_rad, &Skill::hybrid_direction_sd_rad, &Skill::wedge_direction_sd_rad,
        &Skill::driver_poor_strike, &Skill::wedge_poor_strike, &Skill::direction_mean_rad}) {
    skill.*number = std::lerp(a.*number, b.*number, share);
  }
  for (LieEffect Skill::*lie : {&Skill::fairway, &Skill::rough, &Skill::bunker, &Skill::recovery}) {
    skill.*lie = mix(a.*lie, b.*lie, share);
  }
  for (Touch ShortGameSkill::*lie :
       {&ShortGameSkill::fairway, &ShortGameSkill::rough, &ShortGameSkill::bunker, &ShortGameSkill::recovery}) {
    skill.short_game.*lie = mix(a.short_game.*lie, b.short_game.*lie, share);
  }
  skill.putting.direction_sd_rad = std::lerp(a.putting.direction_sd_rad, b.putting.direction_sd_rad, share);
  skill.putting.distance_sd_share = std::lerp(a.putting.distance_sd_share, b.putting.distance_sd_share, share);
  return skill;
}

constexpr double wedge_roll_share = 0.015;

constexpr double hybrid_share = 0.805;
constexpr double seven_iron_share = 0.665;

struct BagShare {
  const char* name;
  double carry_share;
};

// Carry as a share of the driver's. Common practice, no source.
constexpr std::array<BagShare, 13> standard_bag = {{
    {"driver", 1.0},
    {"3-wood", 0.905},
    {"5-wood", 0.855},
    {"4-hybrid", hybrid_share},
    {"5-iron", 0.755},
    {"6-iron", 0.71},
    {"7-iron", seven_iron_share},
    {"8-iron", 0.62},
    {"9-iron", 0.57},
    {"pitching wedge", 0.52},
    {"gap wedge", 0.46},
    {"sand wedge", 0.40},
    {"lob wedge", 0.33},
}};

}  // namespace

std::vector<SkillRow> skill_rows(Gender gender) {
  return gender == Gender::men ? std::vector<SkillRow>(std::begin(men), std::end(men))
                               : std::vector<SkillRow>(std::begin(women), std::end(women));
}

Skill skill_between(const std::vector<SkillRow>& rows, double handicap_index) {
  std::size_t upper = 1;
  while (upper + 1 < rows.size() && handicap_index > rows[upper].handicap_index) ++upper;
  const SkillRow& a = rows[upper - 1];
  const SkillRow& b = rows[upper];
  const double share = (handicap_index - a.handicap_index) / (b.handicap_index - a.handicap_index);
  return mix(a.skill, b.skill, std::clamp(share, 0.0, 1.0));
}

Skill skill_of(double handicap_index, Gender gender) { return skill_between(skill_rows(gender), handicap_index); }

Drive bogey_drive(Gender gender) { return gender == Gender::men ? Drive{180.0, 20.0} : Drive{135.0, 15.0}; }

Skill skill_of(Band band, Gender gender) {
  Skill skill = skill_of(typical_handicap_index(band, gender), gender);
  if (band == Band::bogey) {
    const Drive drive = bogey_drive(gender);
    skill.driver_carry_yd = drive.carry_yd;
    skill.driver_roll_yd = drive.roll_yd;
  }
  return skill;
}

double place_in_bag(double carry_yd, double longest_carry_yd) {
  constexpr double wedge_share = 0.45;
  return std::clamp((carry_yd / longest_carry_yd - wedge_share) / (1.0 - wedge_share), 0.0, 1.0);
}

double hybrid_place() { return place_in_bag(hybrid_share, 1.0); }

double direction_sd_rad(const Skill& skill, double place) {
  const double bend = hybrid_place();
  return place < bend
             ? std::lerp(skill.wedge_direction_sd_rad, skill.hybrid_direction_sd_rad, place / bend)
             : std::lerp(skill.hybrid_direction_sd_rad, skill.driver_direction_sd_rad, (place - bend) / (1.0 - bend));
}

Club complete_club(const ClubEntry& entry, double longest_carry_yd, const Skill& skill) {
  const double place = place_in_bag(entry.carry_yd, longest_carry_yd);
  const ClubName parsed = parse_club_name(entry.name);
  const double driver_roll_share = skill.driver_roll_yd / skill.driver_carry_yd;
  Club club;
  club.name = entry.name;
  club.kind = parsed.kind;
  club.number = parsed.number;
  club.place = place;
  club.carry_yd = entry.carry_yd;
  club.roll_yd = entry.roll_yd.value_or(entry.carry_yd * std::lerp(wedge_roll_share, driver_roll_share, place));
  club.carry_sd_yd = entry.carry_sd_yd.value_or(skill.carry_sd_floor_yd + skill.carry_sd_share * entry.carry_yd);
  club.carry_sd_floor_yd = std::min(skill.carry_sd_floor_yd, club.carry_sd_yd);
  club.half_swing_yd = half_swing * entry.carry_yd;
  club.direction_sd_rad = entry.direction_sd_rad.value_or(direction_sd_rad(skill, place));
  club.direction_mean_rad = entry.direction_mean_rad.value_or(skill.direction_mean_rad);
  club.poor_strike = entry.poor_strike.value_or(std::lerp(skill.wedge_poor_strike, skill.driver_poor_strike, place));
  return club;
}

Player standard_player(const Skill& skill, Gender gender) {
  return standard_player(skill, gender, skill.driver_carry_yd);
}

Player standard_player(const Skill& skill, Gender gender, double driver_carry_yd) {
  Player player;
  player.gender = gender;
  player.skill = skill;
  for (const BagShare& share : standard_bag) {
    ClubEntry entry;
    entry.name = share.name;
    entry.carry_yd = share.carry_share * driver_carry_yd;
    player.clubs.push_back(complete_club(entry, driver_carry_yd, skill));
  }
  return player;
}

Player standard_player(Band band, Gender gender) {
  Player player = standard_player(skill_of(band, gender), gender);
  player.label = std::string(name(band)) + " " + std::string(name(gender));
  player.handicap_index = typical_handicap_index(band, gender);
  player.band = band;
  return player;
}

std::optional<std::size_t> reference_iron(const Player& player) {
  std::optional<std::size_t> best;
  double best_distance = std::numeric_limits<double>::infinity();
  const bool irons = std::any_of(player.clubs.begin(), player.clubs.end(),
                                 [](const Club& club) { return club.kind == ClubKind::iron; });
  for (std::size_t i = 0; i < player.clubs.size(); ++i) {
    const Club& club = player.clubs[i];
    if (club.kind == ClubKind::driver || (irons && club.kind != ClubKind::iron)) continue;
    const double distance = irons ? std::abs(club.number - 7.0)
                                  : std::abs(club.carry_yd - seven_iron_share * player.clubs.front().carry_yd);
    if (distance < best_distance) {
      best_distance = distance;
      best = i;
    }
  }
  return best;
}

namespace {

void stretch(Club& club, double factor) {
  club.carry_yd *= factor;
  club.carry_sd_yd = std::lerp(club.carry_sd_floor_yd, club.carry_sd_yd, factor);
  club.half_swing_yd = std::min(club.half_swing_yd, club.carry_yd);
}

}  // namespace

Club lengthen(const Club& club, double carry_yd) {
  Club longer = club;
  stretch(longer, (club.carry_yd + carry_yd) / club.carry_yd);
  return longer;
}

Player lengthen(const Player& player, double driver_yd, double irons_yd) {
  const std::optional<std::size_t> reference = reference_iron(player);
  const double irons_factor = reference ? 1.0 + irons_yd / player.clubs[*reference].carry_yd : 1.0;
  Player longer = player;
  for (Club& club : longer.clubs) {
    stretch(club, club.kind == ClubKind::driver ? (club.carry_yd + driver_yd) / club.carry_yd : irons_factor);
  }
  return longer;
}

std::vector<SideMiss> side_misses(const Player& player) {
  std::vector<SideMiss> misses;
  bool alike = true;
  for (const Club& club : player.clubs) {
    alike = alike && club.direction_mean_rad == player.clubs.front().direction_mean_rad;
    if (club.direction_mean_rad != 0.0) misses.push_back({club.name, club.direction_mean_rad});
  }
  if (alike && misses.size() > 1) return {{"", misses.front().direction_mean_rad}};
  return misses;
}

}  // namespace yardworth
