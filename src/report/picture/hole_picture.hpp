#pragma once

#include "report/picture/svg.hpp"
#include "yardworth/strategy.hpp"

namespace yardworth::report {

// How a hole is best played, drawn: where the tee shots finish before and after, the aims, what is left, the hazards
// that matter. The hole needs its drawing.
Panel hole_panel(const StrategyResult& result, const HoleStrategy& hole);

// The same for a page that says in words what the picture is about: labels and signs alone.
Panel labelled_hole_panel(const StrategyResult& result, const HoleStrategy& hole);
// To be shown at a third of the size: the hole and its tee shots, its number above and a few words below.
Panel small_hole_panel(const HoleStrategy& hole, const std::string& below);
// That as a picture, with the strokes of the hole below.
std::string small_hole_svg(const StrategyResult& result, const HoleStrategy& hole);
// How lines and labels are read.
std::string hole_picture_key(Units units);

// What was understood of a hole of a file, drawn.
Panel understood_panel(const Course& course, const Hole& hole);

}  // namespace yardworth::report
