#pragma once

#include <fmt/format.h>

#include <optional>
#include <string>
#include <vector>

#include "report/gain_parts.hpp"
#include "report/text.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/gain.hpp"
#include "yardworth/units.hpp"

namespace yardworth::report {

// What CSV of several commands writes alike. Lengths are in the course's units, which the heading names; what was not
// computed is an empty cell; a probability's heading ends in _probability, a share's in _share.

using Cells = std::vector<std::string>;

// As many digits as it takes to read the same number back.
inline std::string number(double value) { return fmt::format("{}", value); }
inline std::string number(const std::optional<double>& value) { return value ? number(*value) : ""; }
inline std::string number_if(bool computed, double value) { return computed ? number(value) : ""; }

// "length_yd" or "length_m", and the cell below it.
inline std::string length_heading(const std::string& what, Units units) {
  return what + (units == Units::yards ? "_yd" : "_m");
}
inline std::string length(double yards, Units units) { return number(from_yards(yards, units)); }

// One line for one row, whatever a name holds: control characters are shown, not written.
inline std::string text(const std::string& words) { return csv_text(escape_control(words)); }

inline Cells join(Cells first, const Cells& second) {
  first.insert(first.end(), second.begin(), second.end());
  return first;
}

inline Cells strokes_headings() {
  return {"strokes_before", "strokes_after", "strokes_saved", "from_tee", "from_irons", "from_replanning"};
}

inline Cells strokes_cells(const StepValues& values, ComputedParts computed) {
  return {number(values.before),
          number(values.replanned),
          number(values.strokes_saved()),
          number(values.from_tee()),
          number_if(computed.irons, values.from_irons()),
          number_if(computed.replanning, values.from_replanning())};
}

}  // namespace yardworth::report
