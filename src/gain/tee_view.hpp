#pragma once

#include <string>
#include <vector>

#include "course/hole_map.hpp"
#include "shot/swing.hpp"
#include "strategy/hole_model.hpp"
#include "yardworth/strategy.hpp"

namespace yardworth {

// A hole as a golfer sees and tells it from the tee in use. Distances inside are yards from that tee; words speak in
// the units they are given.

// The hazards that are not wholly behind the tee, in the order in which the ball meets them.
std::vector<HazardView> hazards_from(const HoleMap& map, Point tee);
// "bunker right at 226-244", "out of bounds left, all along".
std::string hazard_words(const HazardView& hazard, Units units);
// "12 yards", "1 metre".
std::string distance_words(double yards, Units units);

AimPlace aim_place(const HoleMap& map, Point tee, const Swing& swing, double heading_rad);
// "down the middle", "at the left edge of the fairway", "at the right-hand bunker", "12 yards left of the middle",
// or "of the line of play" where that is not the middle of the fairway.
std::string aim_words(const HoleMap& map, Point tee, const AimPlace& aim, Units units);

// The probability that the tee shot finds each area, by index into HoleMap::areas().
std::vector<double> area_chances(const HoleModel& model, const Action& tee_shot);

}  // namespace yardworth
