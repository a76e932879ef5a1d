#pragma once

#include <string>

#include "report/text.hpp"
#include "yardworth/report.hpp"

namespace yardworth::report {

// A section with the strokes saved on each hole as bars, the second half of a round beside the first where there is
// room.
std::string holes_bars_section(const PolicyGain& gain, const Page& page, BarCharacters characters, bool coloured);

}  // namespace yardworth::report
