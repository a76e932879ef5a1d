#pragma once

#include "yardworth/baseline.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// The baseline of a golfer whose short game or putting changes: as much more or less than before as the golfer's own
// short game and putting come to, with one skill and with the other. Beyond the short game the difference stays what it
// is at its edge. docs/model.md, "A change in steps".
Baseline changed_finish(const Baseline& baseline, const Skill& before, const Skill& after);

}  // namespace yardworth
