#pragma once

#include "report/picture/charts.hpp"
#include "yardworth/report.hpp"

namespace yardworth::report {

// The charts of bands, one by one, below whatever a picture or a page says above them.

// What the change of distance saves the golfers of a gender, tee by tee.
void add_saved_by_band(Sheet& sheet, const BandsResult& result, Gender gender);
// What a hazard that was moved or added, one of changed_hazards, costs them.
void add_changed_hazard(Sheet& sheet, const BandsResult& result, std::size_t which, Gender gender);

}  // namespace yardworth::report
