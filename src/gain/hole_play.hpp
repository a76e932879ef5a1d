#pragma once

#include <vector>

#include "gain/approaches.hpp"
#include "gain/green_in_regulation.hpp"
#include "gain/strike_outcomes.hpp"
#include "yardworth/gain.hpp"

namespace yardworth {

// What descriptions of one hole, one after the other, may share: memory, and what is known of shots near the green.
struct PlayWorkspace {
  std::vector<StrikeOutcome> outcomes;
  std::vector<GreenChance> green_chances;
};

// How a hole is played. Par 3 to 6; the hazards are those seen from the tee (hazards_from).
HolePlay describe_play(const PlayedHole& played, int par, const std::vector<HazardView>& hazards,
                       PlayWorkspace& workspace);

}  // namespace yardworth
