#pragma once

#include <limits>
#include <string>
#include <string_view>
#include <vector>

namespace yardworth {

// What every report needs to write text: numbers, tables, paragraphs, and text of files made safe for each format.

inline constexpr std::size_t report_width = 100;  // columns of a terminal

// With so many decimals; never "-0.0".
std::string fixed(double value, int decimals);
// At most one decimal, and none where it is a zero: 20, 7.5.
std::string plain_number(double value);
// A probability as "41%"; "<1%" and ">99%" where rounding would claim never or always.
std::string percent(double probability);

// Columns that UTF-8 text takes on a terminal: combining marks take none, wide characters two.
std::size_t display_width(std::string_view text);
// The text, or as much of its beginning as fits in so many columns (> 3) with "..." behind it.
std::string shorten(const std::string& text, std::size_t columns);
// Words of a text broken into lines of at most so many columns; the lines after the first begin with indent spaces.
// A word longer than a line has a line of its own. Ends with a newline.
std::string wrap(const std::string& text, std::size_t columns, std::size_t indent = 0);

enum class Align { left, right };

struct TableColumn {
  std::string heading;  // lines divided by '\n'
  Align align = Align::right;
  std::size_t widest = std::numeric_limits<std::size_t>::max();  // longer cells are shortened
};

// An empty row is a rule. Rows shorter than the columns leave the last ones empty.
struct Table {
  std::vector<TableColumn> columns;
  std::vector<std::vector<std::string>> rows;
};

// Lines with aligned columns, two spaces between them, or one where two would pass so many columns.
std::string format_table(const Table& table, std::size_t columns = report_width);

// Text that is safe between tags and inside quoted attributes of HTML and XML: & < > " ' become entities, control
// characters and what is not UTF-8 are shown as \xNN.
std::string escape_html(const std::string& text);

// A cell of text for CSV (RFC 4180): quoted where it has to be, and an apostrophe put before text that a spreadsheet
// would take for a formula (beginning with = + - @, tab or CR) or for a date or a time (6-12, 1/2, 3 May). Not for
// numbers.
std::string csv_text(const std::string& text);
// A row with its line end; the cells are ready.
std::string csv_row(const std::vector<std::string>& cells);

}  // namespace yardworth
