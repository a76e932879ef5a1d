#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "yardworth/player/golfer.hpp"

namespace yardworth {

namespace {

// What is written down of one golfer; docs/model.md gives each number's source.
struct SkillRow {
  double handicap_index;
  double driver_total_yd;
  double driver_roll_yd;
  double driver_carry_sd_share, wedge_carry_sd_share;
  double driver_direction_sd_deg, wedge_direction_sd_deg;
  double driver_poor_strike, wedge_poor_strike;
  LieEffect rough, bunker, recovery;
};

constexpr std::array<SkillRow, 6> men = {{
    {-6.0,
     280.0,
     20.0,
     0.045,
     0.045,
     3.4,
     2.3,
     0.015,
     0.005,
     {0.95, 1.35, 1.20, 0.01},
     {0.92, 1.50, 1.20, 0.03},
     {0.50, 1.80, 1.10, 0.05}},
    {0.0,
     250.0,
     25.0,
     0.050,
     0.055,
     4.2,
     2.9,
     0.025,
     0.015,
     {0.94, 1.35, 1.20, 0.02},
     {0.90, 1.50, 1.20, 0.05},
     {0.50, 1.80, 1.10, 0.07}},
    {3.0,
     245.0,
     24.0,
     0.055,
     0.060,
     4.7,
     3.2,
     0.035,
     0.025,
     {0.93, 1.35, 1.20, 0.02},
     {0.89, 1.50, 1.20, 0.06},
     {0.50, 1.80, 1.10, 0.08}},
    {9.0,
     225.0,
     22.0,
     0.065,
     0.072,
     5.6,
     4.0,
     0.055,
     0.045,
     {0.92, 1.35, 1.20, 0.03},
     {0.87, 1.50, 1.20, 0.09},
     {0.50, 1.80, 1.10, 0.10}},
    {16.5,
     199.0,
     20.0,
     0.075,
     0.090,
     6.6,
     4.9,
     0.085,
     0.080,
     {0.90, 1.35, 1.20, 0.04},
     {0.84, 1.50, 1.20, 0.13},
     {0.50, 1.80, 1.10, 0.13}},
    {26.0,
     182.0,
     19.0,
     0.085,
     0.105,
     7.8,
     5.8,
     0.120,
     0.120,
     {0.88, 1.35, 1.20, 0.06},
     {0.80, 1.50, 1.20, 0.18},
     {0.50, 1.80, 1.10, 0.16}},
}};

constexpr std::array<SkillRow, 6> women = {{
    {-6.0,
     250.0,
     20.0,
     0.045,
     0.045,
     3.2,
     2.3,
     0.015,
     0.005,
     {0.94, 1.35, 1.20, 0.01},
     {0.90, 1.50, 1.20, 0.03},
     {0.50, 1.80, 1.10, 0.05}},
    {0.0,
     210.0,
     21.0,
     0.050,
     0.055,
     4.0,
     2.9,
     0.025,
     0.015,
     {0.92, 1.35, 1.20, 0.02},
     {0.88, 1.50, 1.20, 0.06},
     {0.50, 1.80, 1.10, 0.07}},
    {3.0,
     202.0,
     20.0,
     0.055,
     0.060,
     4.4,
     3.2,
     0.035,
     0.025,
     {0.91, 1.35, 1.20, 0.03},
     {0.87, 1.50, 1.20, 0.07},
     {0.50, 1.80, 1.10, 0.08}},
    {9.0,
     184.0,
     18.0,
     0.065,
     0.072,
     5.2,
     4.0,
     0.055,
     0.045,
     {0.90, 1.35, 1.20, 0.04},
     {0.85, 1.50, 1.20, 0.10},
     {0.50, 1.80, 1.10, 0.10}},
    {16.5,
     164.0,
     16.0,
     0.075,
     0.090,
     6.0,
     4.9,
     0.085,
     0.080,
     {0.88, 1.35, 1.20, 0.05},
     {0.82, 1.50, 1.20, 0.14},
     {0.50, 1.80, 1.10, 0.13}},
    {26.0,
     148.0,
     15.0,
     0.085,
     0.105,
     7.0,
     5.8,
     0.120,
     0.120,
     {0.86, 1.35, 1.20, 0.07},
     {0.78, 1.50, 1.20, 0.19},
     {0.50, 1.80, 1.10, 0.16}},
}};

const std::array<SkillRow, 6>& rows_of(Gender gender) { return gender == Gender::men ? men : women; }

LieEffect mix(const LieEffect& a, const LieEffect& b, double share) {
  return {std::lerp(a.carry_factor, b.carry_factor, share), std::lerp(a.carry_sd_factor, b.carry_sd_factor, share),
          std::lerp(a.direction_sd_factor, b.direction_sd_factor, share),
          std::lerp(a.poor_strike_added, b.poor_strike_added, share)};
}

Skill mix(const SkillRow& a, const SkillRow& b, double share) {
  const auto between = [share](double from, double to) { return std::lerp(from, to, share); };
  Skill skill;
  skill.driver_roll_yd = between(a.driver_roll_yd, b.driver_roll_yd);
  skill.driver_carry_yd = between(a.driver_total_yd, b.driver_total_yd) - skill.driver_roll_yd;
  skill.driver_carry_sd_share = between(a.driver_carry_sd_share, b.driver_carry_sd_share);
  skill.wedge_carry_sd_share = between(a.wedge_carry_sd_share, b.wedge_carry_sd_share);
  skill.driver_direction_sd_rad = radians(between(a.driver_direction_sd_deg, b.driver_direction_sd_deg));
  skill.wedge_direction_sd_rad = radians(between(a.wedge_direction_sd_deg, b.wedge_direction_sd_deg));
  skill.driver_poor_strike = between(a.driver_poor_strike, b.driver_poor_strike);
  skill.wedge_poor_strike = between(a.wedge_poor_strike, b.wedge_poor_strike);
  skill.rough = mix(a.rough, b.rough, share);
  skill.bunker = mix(a.bunker, b.bunker, share);
  skill.recovery = mix(a.recovery, b.recovery, share);
  return skill;
}

// Where a club stands in the bag: 1 for the longest, 0 for a wedge that carries 45% of it.
double place_in_bag(double carry_yd, double longest_carry_yd) {
  constexpr double wedge_share = 0.45;
  return std::clamp((carry_yd / longest_carry_yd - wedge_share) / (1.0 - wedge_share), 0.0, 1.0);
}

constexpr double wedge_roll_share = 0.015;

struct BagShare {
  const char* name;
  double carry_share;
};

// Carry as a share of the driver's. Common practice, no source.
constexpr std::array<BagShare, 13> standard_bag = {{
    {"driver", 1.0},
    {"3-wood", 0.905},
    {"5-wood", 0.855},
    {"4-hybrid", 0.805},
    {"5-iron", 0.755},
    {"6-iron", 0.71},
    {"7-iron", 0.665},
    {"8-iron", 0.62},
    {"9-iron", 0.57},
    {"pitching wedge", 0.52},
    {"gap wedge", 0.46},
    {"sand wedge", 0.40},
    {"lob wedge", 0.33},
}};

constexpr double seven_iron_share = 0.665;

}  // namespace

Skill skill_of(double handicap_index, Gender gender) {
  const auto& rows = rows_of(gender);
  const double index = std::clamp(handicap_index, rows.front().handicap_index, 54.0);
  std::size_t upper = 1;
  while (upper + 1 < rows.size() && index > rows[upper].handicap_index) ++upper;
  const SkillRow& a = rows[upper - 1];
  const SkillRow& b = rows[upper];
  // Above the last row its skills are kept: nothing measured says how they go on.
  const double share = std::min(1.0, (index - a.handicap_index) / (b.handicap_index - a.handicap_index));
  return mix(a, b, share);
}

Skill skill_of(Band band, Gender gender) {
  Skill skill = skill_of(typical_handicap_index(band, gender), gender);
  if (band == Band::bogey) {
    // The bogey golfer of course rating: 180 + 20 yards, women 150 in all.
    skill.driver_roll_yd = gender == Gender::men ? 20.0 : 15.0;
    skill.driver_carry_yd = gender == Gender::men ? 180.0 : 135.0;
  }
  return skill;
}

Club complete_club(const ClubEntry& entry, double longest_carry_yd, const Skill& skill) {
  const double place = place_in_bag(entry.carry_yd, longest_carry_yd);
  const ClubName parsed = parse_club_name(entry.name);
  const double driver_roll_share = skill.driver_roll_yd / skill.driver_carry_yd;
  Club club;
  club.name = entry.name;
  club.kind = parsed.kind;
  club.number = parsed.number;
  club.carry_yd = entry.carry_yd;
  club.roll_yd = entry.roll_yd.value_or(entry.carry_yd * std::lerp(wedge_roll_share, driver_roll_share, place));
  club.carry_sd_yd = entry.carry_sd_yd.value_or(
      entry.carry_yd * std::lerp(skill.wedge_carry_sd_share, skill.driver_carry_sd_share, place));
  club.direction_sd_rad =
      entry.direction_sd_rad.value_or(std::lerp(skill.wedge_direction_sd_rad, skill.driver_direction_sd_rad, place));
  club.poor_strike = entry.poor_strike.value_or(std::lerp(skill.wedge_poor_strike, skill.driver_poor_strike, place));
  return club;
}

Player standard_player(Band band, Gender gender) {
  Player player;
  player.label = std::string(name(band)) + " " + std::string(name(gender));
  player.handicap_index = typical_handicap_index(band, gender);
  player.band = band;
  player.gender = gender;
  player.skill = skill_of(band, gender);
  for (const BagShare& share : standard_bag) {
    ClubEntry entry;
    entry.name = share.name;
    entry.carry_yd = share.carry_share * player.skill.driver_carry_yd;
    player.clubs.push_back(complete_club(entry, player.skill.driver_carry_yd, player.skill));
  }
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

Player lengthen(const Player& player, double driver_yd, double irons_yd) {
  const std::optional<std::size_t> reference = reference_iron(player);
  const double irons_factor = reference ? 1.0 + irons_yd / player.clubs[*reference].carry_yd : 1.0;
  Player longer = player;
  for (Club& club : longer.clubs) {
    const double factor = club.kind == ClubKind::driver ? (club.carry_yd + driver_yd) / club.carry_yd : irons_factor;
    club.carry_yd *= factor;
    club.carry_sd_yd *= factor;
  }
  return longer;
}

}  // namespace yardworth
