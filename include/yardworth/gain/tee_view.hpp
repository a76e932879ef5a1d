#pragma once

#include <string>
#include <vector>

#include "yardworth/course/hole_map.hpp"
#include "yardworth/shot/swing.hpp"
#include "yardworth/strategy/hole_model.hpp"

namespace yardworth {

// A hole as a golfer sees and tells it from the tee in use. Distances inside are yards from that tee; words speak in
// the units they are given.

struct HazardView {
  std::size_t area = 0;  // index into HoleMap::areas()
  Ground ground = Ground::bunker;
  std::string side;      // "left", "right", "across", "in the middle" or "behind the green"
  double from_yd = 0.0;  // along the line of play; of what lies across it, where the line crosses it
  double to_yd = 0.0;
  bool all_along = false;  // beside the whole hole
};

// The hazards that are not wholly behind the tee, in the order in which the ball meets them.
std::vector<HazardView> hazards_from(const HoleMap& map, Point tee);
// "bunker right at 226-244", "out of bounds left, all along".
std::string hazard_words(const HazardView& hazard, Units units);
// "12 yards", "1 metre".
std::string distance_words(double yards, Units units);

// Where a straight, solid shot would finish on fairway, told from the line of play there; or, when it comes close to
// the hole or beyond, how far beside the middle of the green it is aimed.
struct AimPlace {
  double right_yd = 0.0;
  double along_yd = 0.0;
  bool at_green = false;
};
AimPlace aim_place(const HoleMap& map, Point tee, const Swing& swing, double heading_rad);
// "down the middle", "at the left edge of the fairway", "at the right-hand bunker", "12 yards left of the middle",
// or "of the line of play" where that is not the middle of the fairway.
std::string aim_words(const HoleMap& map, Point tee, const AimPlace& aim, Units units);

// The probability that the tee shot finds each area, by index into HoleMap::areas().
std::vector<double> area_chances(const HoleModel& model, const Action& tee_shot);

}  // namespace yardworth
