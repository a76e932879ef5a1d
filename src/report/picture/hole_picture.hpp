#pragma once

#include "report/picture/svg.hpp"
#include "yardworth/change.hpp"
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

// The same of a hole whose hazards are moved by hand, in the frame of the hole as it is. Every hazard has a shape with
// its number from 1 as data-hazard; the changed ones have a grip and data-held as well, and say in data-along and
// data-right, "x,y", how far in the picture a length of 1 in the course's units lies along the hole and to the right of
// it.
Panel hazards_panel(const Course& as_it_is, const ChangedCourse& changed, int number);
// That as a picture.
std::string hazards_svg(const Course& as_it_is, const ChangedCourse& changed, int number);

}  // namespace yardworth::report
