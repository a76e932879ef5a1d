#pragma once

#include "course/hole_map.hpp"

namespace yardworth {

// The least carry, in yards, that some shot of the hole must have: the widest gap, over ground where no ball can be
// played from, on the easiest way from the tee to the green. 0 where a ball could be rolled all the way.
double needed_carry_yd(const HoleMap& map, Point tee);

}  // namespace yardworth
