#pragma once

#include <vector>

#include "yardworth/shot_log.hpp"

namespace yardworth {

// The shots of each club of a log, by its index, in their order.
std::vector<std::vector<const Shot*>> shots_by_club(const ShotLog& log);

}  // namespace yardworth
