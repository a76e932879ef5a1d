#pragma once

#include "shot/rest.hpp"

namespace yardworth {

// The area of map.areas() that a struck ball ends in, -1 in the rough; arguments as of come_to_rest. A ball that
// is penalised counts for the area that cost the penalty, not for the place it is played from next.
int area_found(const HoleMap& map, Point from, Point direction, double carry_yd, double roll_yd);

}  // namespace yardworth
