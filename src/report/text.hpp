#pragma once

#include <limits>
#include <string>
#include <string_view>
#include <vector>

#include "yardworth/units.hpp"

namespace yardworth {

// What every report needs to write text: numbers, tables, paragraphs, and text of files made safe for each format.

// With so many decimals; never "-0.0".
std::string fixed(double value, int decimals);
// "+0.1"; what rounds to nothing has no sign.
std::string signed_tenths(double value);
// "88 -> 90", or "88" where both are.
std::string before_after(const std::string& before, const std::string& after);
// Strokes as tables tell them: exact to more than two decimals, but a golfer reads no further.
std::string strokes_text(double value);
// A length to the nearest yard or metre.
std::string length_text(double yards, Units units);
// At most one decimal, and none where it is a zero: 20, 7.5.
std::string plain_number(double value);
// A probability as "41%"; "<1%" and ">99%" where rounding would claim never or always.
std::string percent(double probability);
// The same without the sign: how many of 100.
std::string in_100(double probability);

// Columns that UTF-8 text takes on a terminal: combining marks take none, wide characters two.
std::size_t display_width(std::string_view text);
// The text, or as much of its beginning as fits in so many columns (> 3) with "..." behind it.
std::string shorten(const std::string& text, std::size_t columns);
// Words of a text broken into lines of at most so many columns; the lines after the first begin with indent spaces.
// A word longer than a line has a line of its own. Ends with a newline.
std::string wrap(const std::string& text, std::size_t columns, std::size_t indent = 0);
// The text with a space wherever a word passes so many columns (> 1), so that no line of it has to.
std::string break_long_words(const std::string& text, std::size_t columns);

enum class Align { left, right };

// How a column gives way where a table is too wide: it is left out, or its cells are broken into lines, between words
// or between parts alone (behind a comma or an arrow).
enum class GivesWay { never, left_out, broken_between_words, broken_between_parts };

struct TableColumn {
  std::string heading;  // lines divided by '\n'
  Align align = Align::right;
  std::size_t widest = std::numeric_limits<std::size_t>::max();  // longer cells are shortened
  GivesWay gives_way = GivesWay::never;
  int turn = 0;  // the lowest gives way first
};

// The column, ready to give way in its turn.
TableColumn give_way(TableColumn column, int turn, GivesWay how);

// An empty row is a rule. Rows shorter than the columns leave the last ones empty.
struct Table {
  std::vector<TableColumn> columns;
  std::vector<std::vector<std::string>> rows;
};

// Lines with aligned columns, two spaces between them. What would pass so many columns has one space between them; if
// that is not enough, headings are broken, and then columns give way in their turn. What is left out is named below.
std::string format_table(const Table& table, std::size_t columns);
// Columns that are alike, behind the first few: those that have no room side by side stand in further tables below,
// each with the first few again.
std::string format_table_in_parts(const Table& table, std::size_t first, std::size_t columns);

// Text for so many columns, of which there are at least narrowest_page.
inline constexpr std::size_t narrowest_page = 40;
class Page {
 public:
  explicit Page(std::size_t columns);

  std::string section(const std::string& title) const;    // a blank line and the title
  std::string paragraph(const std::string& words) const;  // safe for a terminal already
  std::string bullet(const std::string& words) const;     // made safe
  std::string table(const Table& table) const;
  std::string table_in_parts(const Table& table, std::size_t first) const;
  // Whether that table has room for the column of that heading.
  bool shows(const Table& table, const std::string& heading) const;
  std::size_t columns() const { return columns_; }

 private:
  std::size_t columns_;
};

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
