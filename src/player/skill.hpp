#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "yardworth/player.hpp"

namespace yardworth {

// What stands behind a player: the skill of every Handicap Index, and how it fills what a file leaves out of a club.

// The kind and number that a club's name tells ("driver", "3-wood", "4-hybrid", "7-iron", "pitching wedge",
// "52-degree wedge"); other, 0 when it tells none.
struct ClubName {
  ClubKind kind = ClubKind::other;
  int number = 0;
};
ClubName parse_club_name(std::string_view text);

// The skill of one Handicap Index. The rows compiled in, lowest index first, are written by the fit (docs/bands.md).
struct SkillRow {
  double handicap_index = 0.0;
  Skill skill;
};
std::vector<SkillRow> skill_rows(Gender gender);
// Between the rows around an index (at least two rows, rising), each number along a straight line; the last row is kept
// beyond it, the first before it.
Skill skill_between(const std::vector<SkillRow>& rows, double handicap_index);

// The parts of a club that the file gave; nothing where it was silent.
struct ClubEntry {
  std::string name;
  double carry_yd = 0.0;
  std::optional<double> roll_yd;
  std::optional<double> carry_sd_yd;
  std::optional<double> direction_sd_rad;
  std::optional<double> poor_strike;
  std::optional<double> direction_mean_rad = std::nullopt;
};

// Where a club stands in the bag: 1 for the longest, 0 for a wedge that carries 45% of it or less.
double place_in_bag(double carry_yd, double longest_carry_yd);

// The place of the standard bag's hybrid, its longest club that is no full wood, where the spread of direction bends;
// and the spread of direction that a skill has at a place. docs/model.md, "Skills".
double hybrid_place();
double direction_sd_rad(const Skill& skill, double place);

// The bogey golfer's drive of course rating: 180 + 20 yards, women 150 in all (USGA Course Rating System manual).
struct Drive {
  double carry_yd = 0.0;
  double roll_yd = 0.0;
};
Drive bogey_drive(Gender gender);

// Fills what the entry leaves out. driver_carry_yd is that of the player's own longest club, so that the place of a
// club in the bag, not its length alone, sets its spreads.
Club complete_club(const ClubEntry& entry, double longest_carry_yd, const Skill& skill);

}  // namespace yardworth
