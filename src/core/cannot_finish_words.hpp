#pragma once

#include <string>
#include <vector>

#include "yardworth/diagnostics.hpp"

namespace yardworth {

// "cannot be finished with these clubs in 30 strokes a hole: hole 7 needs a carry of 190 yards".
std::string cannot_finish_words(const std::vector<UnfinishedHole>& holes, Units units);

}  // namespace yardworth
