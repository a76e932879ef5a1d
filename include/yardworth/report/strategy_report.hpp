#pragma once

#include <string>
#include <vector>

#include "yardworth/gain/hole_strategy.hpp"

namespace yardworth {

// What a report of how to play holes is made of. Whatever text it holds may come from files and is made safe for each
// format.
struct StrategyReport {
  StrategyResult result;
  std::vector<std::string> opening;  // said before all else: what the command assumed where it was not told
};

// The advice for one hole in one sentence, ready for a terminal.
std::string strategy_sentence(const HoleStrategy& hole);

// For a terminal: the round, then hole by hole the advice, the tee shots, what follows them, the hazards. Distances in
// the course's units; emphasis makes the advice bold.
std::string strategy_text(const StrategyReport& report, bool emphasis = false);

// The formats for programs: all distances in yards, nothing rounded.

// "yardworth/strategy/1", in printable ASCII only; bytes that are not UTF-8 become U+FFFD.
std::string strategy_json(const StrategyReport& report);
// One row for each tee shot of each hole: the plan's own (option 0), then the alternatives.
std::string strategy_csv(const StrategyReport& report);

}  // namespace yardworth
