#pragma once

#include <cstddef>
#include <string>

#include "yardworth/report.hpp"

namespace yardworth::report {

// Bars of a text: from a line that stands for 0 to the right for more, and to the left, of another character, for less.

struct BarScale {
  double of_cell = 0.0;  // what one column of a bar stands for, on both sides of the line; 0: there is nothing to show
  std::size_t behind = 0;  // columns left of the line
  std::size_t ahead = 0;   // columns right of it
};

// For numbers from low to high in so many columns (3 at least), the line among them.
BarScale bar_scale(double low, double high, std::size_t columns);

// The bar with the line, padded on the left, not on the right. What is not 0 shows, however little it is. coloured: for
// a terminal that wants it; nothing is told by it.
std::string bar(double number, const BarScale& scale, BarCharacters characters, bool coloured);

}  // namespace yardworth::report
