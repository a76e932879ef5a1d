#pragma once

#include "gain/hole_models.hpp"
#include "yardworth/change.hpp"

namespace yardworth {

// Method table: the habit's tee shot before a change and as it is followed after it, and the baseline from where it
// finishes. The table knows nothing of the player's irons, short game and putting.
struct TableAnswer {
  Action tee_shot_before, tee_shot_after;
  StepValues strokes;
};

TableAnswer answer_by_table(const HoleModels& models, const Baseline& baseline);

}  // namespace yardworth
