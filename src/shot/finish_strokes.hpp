#pragma once

#include <vector>

#include "shot/finish_places.hpp"
#include "shot/stroke_counts.hpp"
#include "yardworth/baseline.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// How often how many strokes a golfer takes from each finish place: those of the golfer's own short game and putting,
// with the baseline's mean. docs/model.md, "The whole distribution of the score".
class FinishStrokes {
 public:
  FinishStrokes(const Skill& skill, const Baseline& baseline);

  const StrokeCounts& at(int finish_place) const { return counts_[static_cast<std::size_t>(finish_place)]; }

 private:
  std::vector<StrokeCounts> counts_;
};

}  // namespace yardworth
