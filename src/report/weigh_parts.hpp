#pragma once

#include <string>
#include <vector>

#include "yardworth/weigh.hpp"

namespace yardworth::report {

// What a unit of a step is: "1 yard of driver carry", "1% less spread of direction".
std::string unit_words(ChangeStep step, Units units);
// Its worth in strokes, of a unit in the course's units.
double per_unit(ChangeStep step, double strokes, Units units);

// What the numbers rest on, and what is to be borne in mind, each a sentence.
std::vector<std::string> weigh_basis(const WeighResult& result);
std::vector<std::string> weigh_cautions(const WeighResult& result);

}  // namespace yardworth::report
