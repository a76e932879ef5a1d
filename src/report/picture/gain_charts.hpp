#pragma once

#include "report/picture/charts.hpp"
#include "yardworth/report.hpp"

namespace yardworth::report {

// The charts of a gain, one by one, below whatever a picture or a page says above them.

// Where the strokes come from: each part begins where the one before ends.
void add_parts_chart(Sheet& sheet, const GainResult& result);
void add_holes_chart(Sheet& sheet, const GainResult& result);
// There is a curve.
void add_curve_chart(Sheet& sheet, const GainReport& report);
// There are holes longer than a par 3.
void add_second_shots_chart(Sheet& sheet, const GainResult& result);
// There are scores.
void add_scores_chart(Sheet& sheet, const GainResult& result);

}  // namespace yardworth::report
