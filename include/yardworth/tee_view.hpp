#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "yardworth/course.hpp"

namespace yardworth {

// A hole as a golfer on the tee in use tells it. Distances are yards from that tee.

// Where a hazard lies, looked at along the line of play. In the middle: across the line, and so narrow that it can be
// passed on either side.
enum class HazardSide { left, right, across, in_the_middle, behind_the_green };
std::string_view name(HazardSide side);

struct HazardView {
  int hazard = 0;  // index into Hole::hazards
  Ground ground = Ground::bunker;
  HazardSide side = HazardSide::left;
  double from_yd = 0.0;  // along the line of play; of what lies across it, where the line crosses it
  double to_yd = 0.0;
  bool all_along = false;  // beside the whole hole

  bool operator==(const HazardView&) const = default;
};

// What an aim is told by. The middle is that of the fairway, or of a hole that has none there; where the line of play
// does not run in the middle, the line is the mark.
enum class AimMark { middle_of_green, middle, line_of_play, fairway_edge, bunker };
enum class AimSide { straight, left, right };

// Where a straight, solid shot would finish on fairway, told from the line of play there; or, when it comes close to
// the hole or beyond, how far beside the middle of the green it is aimed.
struct Aim {
  double right_yd = 0.0;
  double along_yd = 0.0;
  AimMark mark = AimMark::middle;
  AimSide side = AimSide::straight;  // of the line of play or of the middle of the green
  double beside_yd = 0.0;            // how far beside the mark; of an edge, outside it. 0: at the mark

  bool at_green() const { return mark == AimMark::middle_of_green; }
};

// A hazard that can now be carried, and could not before the change.
struct CarryNowOn {
  HazardView hazard;
  double far_side_yd = 0.0;  // along the flight

  bool operator==(const CarryNowOn&) const = default;
};

// Why the tee shot of the best policy is another one after a change of the clubs. `kept`: the tee shot of the policy
// before, followed with the clubs after. A shot at the hole that only needs less club is no change.
struct PolicyChange {
  enum class Kind { none, other_aim, other_club };

  Kind kind = Kind::none;
  std::string club_kept;
  std::string club;           // after the change
  bool shorter = false;       // than the club kept, in carry
  double aim_moves_yd = 0.0;  // where the shot finishes, to the right; left negative. With other_aim
  double left_yd = 0.0;       // expected distance to the hole after the shot
  bool at_green = false;      // the shot is played at the green
  double on_green = 0.0;      // probability that it finishes there
  std::optional<CarryNowOn> carry_now_on;
  std::optional<HazardView> avoided;  // the hazard that the new shot finds less often than the one kept, most of all
  bool comes_into_reach = false;      // the one avoided: the shot kept finds it more often than the one before

  bool operator==(const PolicyChange&) const = default;
};

}  // namespace yardworth
