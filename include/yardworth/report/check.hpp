#pragma once

#include <string>

#include "yardworth/input/read.hpp"

namespace yardworth {

// One line, in the file's own units and safe for a terminal, of what was understood. A course: holes, par, length from
// each tee, hazards by kind, doglegs. A player: label, index, band, clubs, longest and shortest carry, widest gap. A
// baseline: band and the distances of each column.
std::string summarise(const AnyFile& file);

}  // namespace yardworth
