#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/number_text.hpp"

namespace yardworth::input {

// A table of text (CSV), line by line. Cells are divided by commas or semicolons and may stand in quotation marks,
// which end on their line and are written twice within (RFC 4180 but for line ends in quotation marks). Blanks around a
// cell do not count.

struct Cell {
  std::string text;
  int column = 0;      // from 1, in characters: where the cell begins
  bool closed = true;  // whether a quotation mark that opens it is closed on its line
};

// A heading as columns are named: "Club Speed mph" as club_speed_mph.
std::string heading_name(const std::string& heading);

// The number that a cell says. A decimal comma is as good as a point where cells are divided by semicolons; where it is
// not, with_point has the number as it should be written.
struct CellNumber {
  ParsedNumber parsed;
  std::optional<std::string> with_point;
};
CellNumber number_of_cell(const Cell& cell, char separator);

class TableLines {
 public:
  // text must outlive it. A byte order mark is passed over.
  explicit TableLines(std::string_view text);

  // The cells of the next line that is not blank; false at the end. The cells are filled anew, and their number is
  // returned by them.
  bool next(std::vector<Cell>& cells);
  // Of the line that was given last.
  int line() const { return line_; }
  // What cells are divided by: a semicolon where the first line has more of them than commas.
  char separator() const { return separator_; }

 private:
  std::string_view take_line();

  std::string_view rest_;
  int line_ = 0;
  char separator_ = ',';
};

}  // namespace yardworth::input
