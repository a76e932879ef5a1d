#pragma once

#include <fmt/format.h>

#include <string>
#include <vector>

#include "report/text.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/gain.hpp"

namespace yardworth::report {

// What CSV of several commands writes alike.

using Cells = std::vector<std::string>;

// As many digits as it takes to read the same number back.
inline std::string number(double value) { return fmt::format("{}", value); }

// One line for one row, whatever a name holds: control characters are shown, not written.
inline std::string text(const std::string& words) { return csv_text(escape_control(words)); }

inline Cells join(Cells first, const Cells& second) {
  first.insert(first.end(), second.begin(), second.end());
  return first;
}

inline Cells strokes_headings() {
  return {"strokes_before", "strokes_after", "strokes_saved", "from_tee", "from_irons", "from_replanning"};
}

inline Cells strokes_cells(const FourValues& values) {
  return {number(values.before),     number(values.replanned),    number(values.strokes_saved()),
          number(values.from_tee()), number(values.from_irons()), number(values.from_replanning())};
}

}  // namespace yardworth::report
