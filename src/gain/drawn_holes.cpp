#include "gain/drawn_holes.hpp"

namespace yardworth {

StrategyResult compute_drawn_holes(const Course& course, const Player& player, const Baseline& baseline,
                                   const GainRequest& gain) {
  StrategyRequest request;
  request.tee = gain.tee;
  request.change = gain.change;
  request.threads = gain.threads;
  request.drawing = true;
  request.alternatives = false;
  return compute_strategy(course, player, baseline, request);
}

}  // namespace yardworth
