#include "report/bars.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace yardworth::report {
namespace {

// So many eighths of a cell, from its left edge. There are no such characters for the right edge: what is lost is drawn
// in whole cells.
constexpr std::array<const char*, 8> part_cells = {
    "", "\u258f", "\u258e", "\u258d", "\u258c", "\u258b", "\u258a", "\u2589",
};
constexpr const char* saved_cell = "\u2588";
constexpr const char* lost_cell = "\u2592";
constexpr const char* middle_line = "\u2502";

std::string repeated(const char* cell, std::size_t times) {
  std::string cells;
  for (std::size_t i = 0; i < times; ++i) cells += cell;
  return cells;
}

// How many parts of cells stand for the size of a number: one at least, and no more than there are.
std::size_t parts_of(double size, const BarScale& scale, std::size_t parts_of_cell, std::size_t cells) {
  const double parts = std::round(size / scale.of_cell * static_cast<double>(parts_of_cell));
  return static_cast<std::size_t>(std::clamp(parts, 1.0, static_cast<double>(cells * parts_of_cell)));
}

std::string in_colour(const std::string& cells, bool coloured) {
  return coloured ? "\x1b[36m" + cells + "\x1b[0m" : cells;
}

std::string to_the_right(double size, const BarScale& scale, BarCharacters characters) {
  if (characters == BarCharacters::ascii) return repeated("#", parts_of(size, scale, 1, scale.ahead));
  const std::size_t parts = parts_of(size, scale, part_cells.size(), scale.ahead);
  return repeated(saved_cell, parts / part_cells.size()) + part_cells[parts % part_cells.size()];
}

}  // namespace

BarScale bar_scale(double low, double high, std::size_t columns) {
  const double left = std::max(-low, 0.0);
  const double right = std::max(high, 0.0);
  BarScale scale;
  scale.ahead = std::max<std::size_t>(columns, 3) - 1;
  if (left > 0.0) {
    const double share = left / (left + right);
    const std::size_t most = right > 0.0 ? scale.ahead - 1 : scale.ahead;
    const auto cells = static_cast<std::size_t>(std::lround(share * static_cast<double>(scale.ahead)));
    scale.behind = std::clamp<std::size_t>(cells, 1, most);
    scale.ahead -= scale.behind;
    scale.of_cell = left / static_cast<double>(scale.behind);
  }
  if (right > 0.0) scale.of_cell = std::max(scale.of_cell, right / static_cast<double>(scale.ahead));
  return scale;
}

std::string bar(double number, const BarScale& scale, BarCharacters characters, bool coloured) {
  const bool ascii = characters == BarCharacters::ascii;
  const std::string line = ascii ? "|" : middle_line;
  const bool shows = scale.of_cell > 0.0;
  if (shows && number < 0.0 && scale.behind > 0) {
    const std::size_t cells = parts_of(-number, scale, 1, scale.behind);
    const std::string lost = repeated(ascii ? "-" : lost_cell, cells);
    return std::string(scale.behind - cells, ' ') + in_colour(lost, coloured) + line;
  }
  const bool saved = shows && number > 0.0 && scale.ahead > 0;
  return std::string(scale.behind, ' ') + line +
         (saved ? in_colour(to_the_right(number, scale, characters), coloured) : "");
}

}  // namespace yardworth::report
