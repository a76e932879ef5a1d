#pragma once

#include "report/picture/svg.hpp"
#include "yardworth/strategy.hpp"

namespace yardworth::report {

// How a hole is best played, drawn: where the tee shots finish before and after, the aims, what is left, the hazards
// that matter. The hole needs its drawing.
Panel hole_panel(const StrategyResult& result, const HoleStrategy& hole);

// What was understood of a hole of a file, drawn.
Panel understood_panel(const Course& course, const Hole& hole);

}  // namespace yardworth::report
