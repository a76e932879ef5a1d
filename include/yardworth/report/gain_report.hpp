#pragma once

#include <string>
#include <vector>

#include "yardworth/gain/gain.hpp"

namespace yardworth {

// What a report of a gain is made of. Whatever text it holds may come from files and is made safe for each format.
struct GainReport {
  GainResult result;
  std::vector<CurvePoint> curve;     // empty: was not asked for
  std::vector<std::string> opening;  // said before all else: what the command assumed where it was not told
};

// The answer in one sentence, in the course's units and in strokes to the tenth (small ones to the hundredth).
std::string gain_sentence(const GainResult& result);

// For a terminal: the answer, the round, the holes, the second shots, the curve, what it rests on, the cautions.
// Distances in the course's units; emphasis makes the answer bold.
std::string gain_text(const GainReport& report, bool emphasis = false);

// The formats for programs: all distances in yards, nothing rounded.

// "yardworth/gain/1". Every character beyond ASCII is written as an escape, so that it is safe to print; bytes that
// are not UTF-8 become U+FFFD.
std::string gain_json(const GainReport& report);
// One row for each hole and a last one for the round.
std::string gain_csv(const GainReport& report);
// One row for each point of the curve.
std::string gain_curve_csv(const GainReport& report);

}  // namespace yardworth
