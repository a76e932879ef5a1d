#pragma once

#include "yardworth/gain.hpp"
#include "yardworth/strategy.hpp"

namespace yardworth {

// The holes of a gain with their drawings, from the same tees, before and after the same change. Throws like
// compute_strategy.
StrategyResult compute_drawn_holes(const Course& course, const Player& player, const Baseline& baseline,
                                   const GainRequest& gain);

}  // namespace yardworth
