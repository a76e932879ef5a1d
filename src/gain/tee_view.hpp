#pragma once

#include <vector>

#include "course/hole_map.hpp"
#include "shot/swing.hpp"
#include "strategy/hole_model.hpp"
#include "yardworth/tee_view.hpp"

namespace yardworth {

// The hazards that are not wholly behind the tee, in the order in which the ball meets them.
std::vector<HazardView> hazards_from(const HoleMap& map, Point tee);

// The area of a hazard that hazards_from told.
const Polygon& area_of(const HoleMap& map, const HazardView& hazard);

Aim aim_of(const HoleMap& map, Point tee, const Swing& swing, double heading_rad);
// Of a shot that would finish there on fairway; distances along are from the tee.
Aim aim_on_hole(const HoleMap& map, Point tee, LinePlace from_tee);
Aim aim_at_green(LinePlace from_tee);

}  // namespace yardworth
