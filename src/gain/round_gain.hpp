#pragma once

#include <optional>
#include <vector>

#include "gain/finish_holes.hpp"
#include "yardworth/gain.hpp"
#include "yardworth/strategy.hpp"

namespace yardworth {

// What a hole adds to a gain, under the policies asked for.
struct HoleGains {
  std::optional<HoleGain> habit;
  std::optional<HoleGain> best;
};

// The holes asked for, in the course's order. Throws like compute_gain.
std::vector<HoleGains> compute_hole_gains(const Course& course, const Player& player, const Baseline& baseline,
                                          const GainRequest& request);

// The same for one hole, which may be none to be finished (finish_hole). The request has to be valid.
std::optional<UnfinishedHole> compute_hole_gain(const HoleAsked& asked, const GainRequest& request, HoleGains& gains);

// The round that holes make, whether they were computed together or apart: sums in their order.
GainResult put_together(const Course& course, const Player& player, const Baseline& baseline,
                        const GainRequest& request, const std::vector<HoleGains>& holes);

// The same for the strategies of holes.
StrategyResult put_together(const Course& course, const Player& player, const Baseline& baseline,
                            const StrategyRequest& request, std::vector<HoleStrategy> holes);

}  // namespace yardworth
