#pragma once

#include <string_view>

#include "yardworth/baseline.hpp"

namespace yardworth {

// The baselines compiled in, derived from each band's own shots (docs/bands.md): the files under src/baseline/derived,
// written by `yardworth_rebuild --baselines`.

// The text of the file of a band.
std::string_view derived_table_yaml(Band band, Gender gender);
// The same, read.
BaselineTable derived_table(Band band, Gender gender);
// For any Handicap Index: each number on a straight line between the bands around it; beyond the typical index of 21
// and over on the same line up to 36, beyond that and below tour the last.
BaselineTable derived_table(double handicap_index, Gender gender);

}  // namespace yardworth
