#pragma once

#include <string>
#include <vector>

#include "gain/measured_change.hpp"
#include "yardworth/gain.hpp"
#include "yardworth/units.hpp"

namespace yardworth::report {

// What a report says first of a change that files say.

// Of the golfer of a second player file.
std::string after_words(const std::string& label);

// Of measured shots: each club's change, what was not measured, and what becomes of that.
std::vector<std::string> measured_words(const MeasuredChange& measured, const Player& player, Units units);

// "1.1 strokes a round under the habit plan, 0.3 to 1.9 ..."; empty where nothing was drawn.
std::string interval_sentence(const GainResult& result);

}  // namespace yardworth::report
