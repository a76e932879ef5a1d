#pragma once

#include <string>
#include <vector>

#include "yardworth/gain.hpp"

namespace yardworth::report {

// What the numbers of a gain rest on, a sentence or two each; safe for a terminal.
std::vector<std::string> gain_basis(const GainResult& result);

}  // namespace yardworth::report
