#pragma once

#include <vector>

#include "strategy/hole_model.hpp"
#include "yardworth/strategy.hpp"

namespace yardworth {

// The regions that tee shots finish in, by the shares of them that they hold (0 to 1), in the order asked for.
// docs/model.md, "Where tee shots finish".
std::vector<FinishRegion> finish_regions(const HoleModel& model, const Action& tee_shot,
                                         const std::vector<double>& shares);

// Where a straight, solid ball of the tee shot finishes: on fairway, or as far out as the hole where it is played at
// the green.
Point aimed_at(const HoleModel& model, const Action& tee_shot);

}  // namespace yardworth
