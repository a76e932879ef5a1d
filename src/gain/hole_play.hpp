#pragma once

#include <vector>

#include "gain/approaches.hpp"
#include "gain/strike_outcomes.hpp"
#include "yardworth/gain.hpp"

namespace yardworth {

// Memory that descriptions one after the other may share.
struct PlayWorkspace {
  std::vector<StrikeOutcome> outcomes;
};

// How a hole is played. Par 3 to 6; the hazards are those seen from the tee (hazards_from).
HolePlay describe_play(const PlayedHole& played, int par, const std::vector<HazardView>& hazards,
                       PlayWorkspace& workspace);

}  // namespace yardworth
