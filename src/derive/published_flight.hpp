#pragma once

#include <vector>

#include "derive/published.hpp"

namespace yardworth {

// What was published of strikes and flights, beside what src/flight comes to.
std::vector<PublishedCheck> check_published_flight();

}  // namespace yardworth
