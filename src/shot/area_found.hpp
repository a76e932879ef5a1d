#pragma once

#include "shot/rest.hpp"

namespace yardworth {

// The area of map.areas() that a ball ends in which landed there and came to rest so, -1 in the rough; direction and
// roll as of come_to_rest. A ball that is penalised counts for the area that cost the penalty, not for the place it is
// played from next.
int area_found(const HoleMap& map, Point landing, Point direction, double roll_yd, const Rest& rest);

}  // namespace yardworth
