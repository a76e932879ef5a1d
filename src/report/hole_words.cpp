#include "report/hole_words.hpp"

#include <fmt/format.h>

#include <cmath>

#include "core/distance_words.hpp"
#include "core/telling.hpp"
#include "course/ground.hpp"

namespace yardworth::report {
namespace {

std::string_view side_words(AimSide side) { return side == AimSide::left ? "left" : "right"; }

std::string beside(const Aim& aim, Units units, std::string_view what) {
  return fmt::format("{} {} of {}", distance_words(aim.beside_yd, units), side_words(aim.side), what);
}

std::string edge_words(const Aim& aim, Units units) {
  const std::string edge = fmt::format("the {} edge of the fairway", side_words(aim.side));
  return aim.beside_yd > 0.0 ? fmt::format("{} outside {}", distance_words(aim.beside_yd, units), edge) : "at " + edge;
}

std::string carry_words(const PolicyChange& change, Units units) {
  const CarryNowOn& carry = *change.carry_now_on;
  if (is_playable(carry.hazard.ground)) {
    return fmt::format("{} now carries the {}", change.club, hazard_words(carry.hazard, units));
  }
  return fmt::format("the carry over the {} at {:.0f} is now on with {}", name(carry.hazard.ground),
                     from_yards(carry.far_side_yd, units), change.club);
}

std::string other_aim_words(const PolicyChange& change, Units units) {
  std::string words = fmt::format("aim moves {} {}", distance_words(std::abs(change.aim_moves_yd), units),
                                  change.aim_moves_yd < 0.0 ? "left" : "right");
  if (change.avoided) words += fmt::format(", away from the {}", hazard_words(*change.avoided, units));
  return words;
}

// A mean of what a shot at the green leaves would be of putts and of misses together, which nobody has.
std::string outcome_words(const PolicyChange& change, Units units) {
  if (!change.at_green) return "leaves about " + distance_words(change.left_yd, units);
  return fmt::format("finishes on the green {:.0f} times in 100", 100.0 * change.on_green);
}

std::string other_club_words(const PolicyChange& change, Units units) {
  if (change.shorter && change.avoided) {
    return fmt::format("{} would {} the {}, so {}", change.club_kept, change.comes_into_reach ? "now reach" : "find",
                       hazard_words(*change.avoided, units), change.club);
  }
  std::string words =
      fmt::format("{} instead of {}, which {}", change.club, change.club_kept, outcome_words(change, units));
  if (change.avoided) words += fmt::format(" and keeps away from the {}", hazard_words(*change.avoided, units));
  return words;
}

}  // namespace

std::string hazard_without_distance(const HazardView& hazard) {
  return fmt::format("{} {}", name(hazard.ground), name(hazard.side));
}

std::string hazard_words(const HazardView& hazard, Units units) {
  const std::string what = hazard_without_distance(hazard);
  if (hazard.all_along) return what + ", all along";
  const double to = from_yards(hazard.to_yd, units);
  if (hazard.from_yd <= 0.0) return fmt::format("{} up to {:.0f}", what, to);
  return fmt::format("{} at {:.0f}-{:.0f}", what, from_yards(hazard.from_yd, units), to);
}

std::string aim_words(const Aim& aim, Units units) {
  const bool straight = aim.side == AimSide::straight;
  switch (aim.mark) {
    case AimMark::middle_of_green:
      return straight ? "at the middle of the green" : beside(aim, units, "the middle of the green");
    case AimMark::bunker:
      return straight ? "at the bunker in the middle" : fmt::format("at the {}-hand bunker", side_words(aim.side));
    case AimMark::middle:
      return straight ? "down the middle" : beside(aim, units, "the middle");
    case AimMark::line_of_play:
      return straight ? "down the line of play" : beside(aim, units, "the line of play");
    case AimMark::fairway_edge:
      break;
  }
  return edge_words(aim, units);
}

std::string aim_from_line_words(const Aim& aim, Units units) {
  if (aim.mark == AimMark::middle_of_green || aim.mark == AimMark::bunker) return aim_words(aim, units);
  if (std::abs(aim.right_yd) < telling::aim_precision_yd) return "down the line of play";
  return fmt::format("{} {} of the line of play", distance_words(std::abs(aim.right_yd), units),
                     side_words(aim.right_yd < 0.0 ? AimSide::left : AimSide::right));
}

std::string policy_change_words(const PolicyChange& change, Units units) {
  const std::string carry = change.carry_now_on ? carry_words(change, units) : "";
  switch (change.kind) {
    case PolicyChange::Kind::none:
      break;
    case PolicyChange::Kind::other_aim: {
      const std::string aim = other_aim_words(change, units);
      return carry.empty() ? aim : carry + ": " + aim;
    }
    case PolicyChange::Kind::other_club:
      return carry.empty() ? other_club_words(change, units) : carry;
  }
  return "";
}

}  // namespace yardworth::report
