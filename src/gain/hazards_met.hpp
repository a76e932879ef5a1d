#pragma once

#include <vector>

#include "gain/tee_shot.hpp"
#include "strategy/hole_model.hpp"
#include "yardworth/gain.hpp"

namespace yardworth {

// How a tee shot meets hazards as the tee sees them (hazards_from), in their order: how often it finds, reaches and
// clears each. Whoever tells of a hazard asks here.
std::vector<HazardMet> hazards_met(const HoleModel& model, const std::vector<HazardView>& hazards,
                                   const std::vector<TeeShotNode>& tee_shot);

}  // namespace yardworth
