#pragma once

#include <string>
#include <vector>

#include "yardworth/report.hpp"

namespace yardworth::report {

// What a lesson sheet says beyond what other reports say.

// The holes of the answer where most is gained, at most three, the most first; where the round loses strokes, those
// where most is lost. Holes that go the other way are not among them.
std::vector<const HoleGain*> telling_holes(const PolicyGain& answer);
// "The three holes where most is gained".
std::string telling_holes_heading(const PolicyGain& answer);

// What the tee shot leaves, and what is played from there: "The tee shot leaves 132 yards instead of 150; then
// typically 9-iron instead of 7-iron."
std::string leaves_sentence(const HoleStrategy& hole, Units units);

// "saves 0.12", "costs 0.03", "as before".
std::string saved_on_hole(const HoleGain& hole);

}  // namespace yardworth::report
