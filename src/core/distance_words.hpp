#pragma once

#include <string>
#include <string_view>

#include "yardworth/units.hpp"

namespace yardworth {

// The unit behind a number that is already written: "yard" behind "1", else "yards".
std::string unit_after(std::string_view number, Units units);

// To the whole unit: "12 yards", "1 metre".
std::string distance_words(double yards, Units units);

}  // namespace yardworth
