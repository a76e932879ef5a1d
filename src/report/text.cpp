#include "report/text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <boost/locale/utf.hpp>
#include <cctype>
#include <cmath>
#include <sstream>

#include "yardworth/diagnostics.hpp"

namespace yardworth {
namespace {

using boost::locale::utf::code_point;

struct CodeRange {
  code_point first;
  code_point last;
};

// Common practice, no source: the marks and scripts that names are likely to hold, not all of Unicode's tables.
constexpr std::array<CodeRange, 6> no_width = {
    {{0x0300, 0x036f}, {0x1ab0, 0x1aff}, {0x200b, 0x200f}, {0x20d0, 0x20ff}, {0xfe00, 0xfe0f}, {0xfe20, 0xfe2f}}};
constexpr std::array<CodeRange, 10> double_width = {{{0x1100, 0x115f},
                                                     {0x2e80, 0x303e},
                                                     {0x3041, 0x9fff},
                                                     {0xa000, 0xa4cf},
                                                     {0xac00, 0xd7a3},
                                                     {0xf900, 0xfaff},
                                                     {0xff00, 0xff60},
                                                     {0xffe0, 0xffe6},
                                                     {0x1f300, 0x1faff},
                                                     {0x20000, 0x3fffd}}};

template <std::size_t N>
bool is_in(const std::array<CodeRange, N>& ranges, code_point point) {
  return std::any_of(ranges.begin(), ranges.end(),
                     [&](CodeRange range) { return point >= range.first && point <= range.last; });
}

std::size_t width_of(code_point point) {
  if (is_in(no_width, point)) return 0;
  return is_in(double_width, point) ? 2 : 1;
}

// Takes one character off the front of text and gives its width. A byte that begins no character takes one column.
std::size_t take_character(std::string_view& text) {
  auto next = text.begin();
  const code_point point = boost::locale::utf::utf_traits<char>::decode(next, text.end());
  const bool valid = boost::locale::utf::is_valid_codepoint(point);
  text.remove_prefix(valid ? static_cast<std::size_t>(next - text.begin()) : 1);
  return valid ? width_of(point) : 1;
}

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream stream(text);
  for (std::string line; std::getline(stream, line);) lines.push_back(line);
  return lines;
}

std::string padded(const std::string& text, std::size_t width, Align align) {
  const std::size_t own = display_width(text);
  const std::string space(width > own ? width - own : 0, ' ');
  return align == Align::left ? text + space : space + text;
}

std::string without_trailing_spaces(std::string line) {
  line.erase(line.find_last_not_of(' ') + 1);
  return line;
}

// ---- Tables

// A column laid out: lines of the heading, and of every cell.
struct LaidOut {
  const TableColumn* column = nullptr;
  std::vector<std::string> heading;
  std::vector<std::vector<std::string>> cells;  // by row; an empty list in the row of a rule
};

std::size_t widest_of(const std::vector<std::string>& lines) {
  std::size_t widest = 0;
  for (const std::string& line : lines) widest = std::max(widest, display_width(line));
  return widest;
}

std::size_t cells_width(const LaidOut& column) {
  std::size_t width = 0;
  for (const auto& cell : column.cells) width = std::max(width, widest_of(cell));
  return width;
}

std::size_t width_of(const LaidOut& column) { return std::max(widest_of(column.heading), cells_width(column)); }

std::size_t width_of(const std::vector<LaidOut>& columns, std::size_t gap) {
  std::size_t width = columns.empty() ? 0 : gap * (columns.size() - 1);
  for (const LaidOut& column : columns) width += width_of(column);
  return width;
}

std::vector<LaidOut> lay_out(const Table& table) {
  std::vector<LaidOut> columns;
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    LaidOut column{&table.columns[i], lines_of(table.columns[i].heading), {}};
    for (const auto& row : table.rows) {
      const std::string cell = i < row.size() ? shorten(row[i], table.columns[i].widest) : "";
      column.cells.push_back(row.empty() ? std::vector<std::string>{} : std::vector<std::string>{cell});
    }
    columns.push_back(std::move(column));
  }
  return columns;
}

// Where a text may be broken: between words, or behind commas and arrows alone.
std::vector<std::string> pieces_of(const std::string& text, GivesWay how) {
  std::vector<std::string> pieces;
  std::istringstream stream(text);
  bool ended = true;
  for (std::string word; stream >> word;) {
    if (ended) {
      pieces.push_back(word);
    } else {
      pieces.back() += " " + word;
    }
    ended = how == GivesWay::broken_between_words || word.back() == ',' || word == "->";
  }
  return pieces;
}

// Lines of at most so many columns, all with the indent of the text.
std::vector<std::string> broken(const std::string& text, std::size_t columns, GivesWay how) {
  const std::string indent(std::min(text.find_first_not_of(' '), text.size()), ' ');
  std::vector<std::string> lines;
  for (const std::string& piece : pieces_of(text, how)) {
    const bool fits = !lines.empty() && display_width(lines.back()) + 1 + display_width(piece) <= columns;
    if (fits) {
      lines.back() += " " + piece;
    } else {
      lines.push_back(shorten(indent + piece, columns));
    }
  }
  if (lines.empty()) lines.emplace_back();
  return lines;
}

// A heading of one line that is wider than its cells, as two lines that are as even as can be.
void break_heading(LaidOut& column) {
  if (column.heading.size() != 1 || display_width(column.heading.front()) <= cells_width(column)) return;
  const std::string heading = column.heading.front();
  for (std::size_t blank = heading.find(' '); blank != std::string::npos; blank = heading.find(' ', blank + 1)) {
    const std::vector<std::string> two = {heading.substr(0, blank), heading.substr(blank + 1)};
    if (widest_of(two) < widest_of(column.heading)) column.heading = two;
  }
}

// As narrow as it takes to spare so many columns, but no cell narrower than its longest piece, unless that is very
// long.
void break_cells(LaidOut& column, std::size_t to_spare) {
  constexpr std::size_t longest_piece = 24;
  const GivesWay how = column.column->gives_way;
  std::size_t longest = 0;
  for (const auto& cell : column.cells) {
    for (const std::string& line : cell) {
      const std::size_t indent = std::min(line.find_first_not_of(' '), line.size());
      for (const std::string& piece : pieces_of(line, how)) longest = std::max(longest, indent + display_width(piece));
    }
  }
  const std::size_t own = width_of(column);
  const std::size_t target = std::max(std::min(longest, longest_piece), own > to_spare ? own - to_spare : 0);
  for (auto& cell : column.cells) {
    if (!cell.empty()) cell = broken(cell.front(), target, how);
  }
  break_heading(column);
}

std::string title_of(const TableColumn& column) {
  std::string title = column.heading;
  std::replace(title.begin(), title.end(), '\n', ' ');
  return title;
}

// Makes room until the table has so many columns or nothing is left to give way; the names of what is left out.
std::vector<std::string> make_room(std::vector<LaidOut>& columns, std::size_t room) {
  std::vector<std::string> left_out;
  for (LaidOut& column : columns) break_heading(column);
  std::vector<const TableColumn*> in_turn;
  for (const LaidOut& column : columns) {
    if (column.column->gives_way != GivesWay::never) in_turn.push_back(column.column);
  }
  std::stable_sort(in_turn.begin(), in_turn.end(),
                   [](const TableColumn* a, const TableColumn* b) { return a->turn < b->turn; });
  for (const TableColumn* next : in_turn) {
    const std::size_t width = width_of(columns, 1);
    if (width <= room) break;
    const auto at =
        std::find_if(columns.begin(), columns.end(), [&](const LaidOut& column) { return column.column == next; });
    if (next->gives_way == GivesWay::left_out) {
      left_out.push_back(title_of(*next));
      columns.erase(at);
    } else {
      break_cells(*at, width - room);
    }
  }
  return left_out;
}

// One line of all columns; line is which of the lines of their cells.
std::string line_of(const std::vector<LaidOut>& columns, const std::vector<std::string>& cells, std::size_t gap) {
  std::string line;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    if (i > 0) line += std::string(gap, ' ');
    line += padded(cells[i], width_of(columns[i]), columns[i].column->align);
  }
  return without_trailing_spaces(line) + '\n';
}

std::string heading_lines(const std::vector<LaidOut>& columns, std::size_t gap) {
  std::size_t height = 0;
  for (const LaidOut& column : columns) height = std::max(height, column.heading.size());
  std::string text;
  for (std::size_t line = 0; line < height; ++line) {
    std::vector<std::string> cells;
    for (const LaidOut& column : columns) {
      const std::size_t above = height - column.heading.size();
      cells.push_back(line < above ? "" : column.heading[line - above]);
    }
    text += line_of(columns, cells, gap);
  }
  return text;
}

std::string row_lines(const std::vector<LaidOut>& columns, std::size_t row, std::size_t gap) {
  std::size_t height = 0;
  for (const LaidOut& column : columns) height = std::max(height, column.cells[row].size());
  std::string text;
  for (std::size_t line = 0; line < std::max<std::size_t>(height, 1); ++line) {
    std::vector<std::string> cells;
    for (const LaidOut& column : columns) {
      const auto& lines = column.cells[row];
      cells.push_back(height == 0 ? std::string(width_of(column), '-') : line < lines.size() ? lines[line] : "");
    }
    text += line_of(columns, cells, gap);
  }
  return text;
}

std::string written(const std::vector<LaidOut>& columns, std::size_t rows, std::size_t room) {
  const std::size_t gap = width_of(columns, 2) <= room ? 2 : 1;
  std::string text = heading_lines(columns, gap);
  for (std::size_t row = 0; row < rows; ++row) text += row_lines(columns, row, gap);
  return text;
}

std::string left_out_words(const std::vector<std::string>& left_out, std::size_t columns) {
  std::string names;
  for (const std::string& name : left_out) names += (names.empty() ? "" : ", ") + name;
  return names.empty() ? "" : wrap("Left out for want of room: " + names + ".", columns);
}

}  // namespace

std::string fixed(double value, int decimals) {
  std::string text = fmt::format("{:.{}f}", value, decimals);
  const bool negative_zero = text.front() == '-' && text.find_first_not_of("-0.") == std::string::npos;
  return negative_zero ? text.substr(1) : text;
}

std::string signed_tenths(double value) {
  const std::string number = fixed(value, 1);
  return value > 0.0 && number != "0.0" ? "+" + number : number;
}

std::string before_after(const std::string& before, const std::string& after) {
  return before == after ? before : before + " -> " + after;
}

std::string strokes_text(double value) { return fixed(value, 2); }

std::string length_text(double yards, Units units) { return fixed(from_yards(yards, units), 0); }

std::string plain_number(double value) {
  std::string text = fixed(value, 1);
  if (text.size() > 2 && text.compare(text.size() - 2, 2, ".0") == 0) text.resize(text.size() - 2);
  return text;
}

std::string percent(double probability) {
  if (probability > 0.0 && probability < 0.005) return "<1%";
  if (probability < 1.0 && probability >= 0.995) return ">99%";
  return fixed(100.0 * probability, 0) + "%";
}

std::string in_100(double probability) {
  std::string words = percent(probability);
  words.pop_back();
  return words;
}

std::size_t display_width(std::string_view text) {
  std::size_t width = 0;
  while (!text.empty()) width += take_character(text);
  return width;
}

std::string shorten(const std::string& text, std::size_t columns) {
  constexpr std::string_view dots = "...";
  if (display_width(text) <= columns) return text;
  const std::size_t room = columns > dots.size() ? columns - dots.size() : 0;
  std::string_view rest = text;
  std::size_t kept = 0;
  for (std::size_t width = 0; !rest.empty();) {
    width += take_character(rest);
    if (width > room) break;
    kept = text.size() - rest.size();
  }
  return text.substr(0, kept) + std::string(dots);
}

std::string wrap(const std::string& text, std::size_t columns, std::size_t indent) {
  std::string wrapped;
  std::size_t width = 0;
  std::istringstream stream(text);
  for (std::string word; stream >> word;) {
    const std::size_t own = display_width(word);
    if (wrapped.empty()) {
      width = own;
    } else if (width + 1 + own <= columns) {
      wrapped += ' ';
      width += 1 + own;
    } else {
      wrapped += '\n' + std::string(indent, ' ');
      width = indent + own;
    }
    wrapped += word;
  }
  return wrapped + '\n';
}

std::string break_long_words(const std::string& text, std::size_t columns) {
  std::string broken;
  std::size_t width = 0;  // of the word so far
  for (std::string_view rest = text; !rest.empty();) {
    const std::string_view from_here = rest;
    const std::size_t own = take_character(rest);
    const std::string_view character = from_here.substr(0, from_here.size() - rest.size());
    const bool between_words = character == " " || character == "\n";
    if (!between_words && width + own > columns) {
      broken += ' ';
      width = 0;
    }
    broken += character;
    width = between_words ? 0 : width + own;
  }
  return broken;
}

TableColumn give_way(TableColumn column, int turn, GivesWay how) {
  column.turn = turn;
  column.gives_way = how;
  return column;
}

std::string format_table(const Table& table, std::size_t columns) {
  std::vector<LaidOut> laid_out = lay_out(table);
  std::vector<std::string> left_out;
  if (width_of(laid_out, 1) > columns) left_out = make_room(laid_out, columns);
  return written(laid_out, table.rows.size(), columns) + left_out_words(left_out, columns);
}

std::string format_table_in_parts(const Table& table, std::size_t first, std::size_t columns) {
  std::vector<LaidOut> all = lay_out(table);
  if (width_of(all, 1) <= columns) return written(all, table.rows.size(), columns);
  for (LaidOut& column : all) break_heading(column);
  const auto end_of_first = all.begin() + static_cast<std::ptrdiff_t>(std::min(first, all.size()));
  const std::vector<LaidOut> repeated(all.begin(), end_of_first);
  std::string text;
  for (auto next = end_of_first; next != all.end();) {
    std::vector<LaidOut> part = repeated;
    do {
      part.push_back(*next++);
      if (next == all.end()) break;
    } while (width_of(part, 1) + 1 + width_of(*next) <= columns);
    text += (text.empty() ? "" : "\n") + written(part, table.rows.size(), columns);
  }
  return text;
}

Page::Page(std::size_t columns) : columns_(std::max(columns, narrowest_page)) {}

std::string Page::section(const std::string& title) const {
  return '\n' + wrap(break_long_words(title, columns_), columns_);
}

std::string Page::paragraph(const std::string& words) const {
  return wrap(break_long_words(words, columns_), columns_);
}

std::string Page::bullet(const std::string& words) const {
  constexpr std::size_t indent = 2;
  return wrap("- " + break_long_words(escape_control(words), columns_ - indent), columns_, indent);
}

std::string Page::table(const Table& table) const { return format_table(table, columns_); }

std::string Page::table_in_parts(const Table& table, std::size_t first) const {
  return format_table_in_parts(table, first, columns_);
}

bool Page::shows(const Table& table, const std::string& heading) const {
  std::vector<LaidOut> laid_out = lay_out(table);
  if (width_of(laid_out, 1) > columns_) make_room(laid_out, columns_);
  return std::any_of(laid_out.begin(), laid_out.end(),
                     [&](const LaidOut& column) { return column.column->heading == heading; });
}

std::string escape_html(const std::string& text) {
  std::string safe;
  for (const char c : escape_control(text)) {
    switch (c) {
      case '&':
        safe += "&amp;";
        break;
      case '<':
        safe += "&lt;";
        break;
      case '>':
        safe += "&gt;";
        break;
      case '"':
        safe += "&quot;";
        break;
      case '\'':
        safe += "&#39;";
        break;
      default:
        safe += c;
    }
  }
  return safe;
}

namespace {

// A number of at most four digits, or the English name of a month, whole or its first three letters.
bool is_part_of_date(const std::string& word) {
  constexpr std::array<std::string_view, 12> months = {"january",   "february", "march",    "april",
                                                       "may",       "june",     "july",     "august",
                                                       "september", "october",  "november", "december"};
  const auto is_digit = [](unsigned char c) { return std::isdigit(c) != 0; };
  if (std::all_of(word.begin(), word.end(), is_digit)) return word.size() <= 4;
  std::string small;
  for (const char c : word) small += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return std::any_of(months.begin(), months.end(),
                     [&](std::string_view month) { return small == month || small == month.substr(0, 3); });
}

// Two or three such parts, as in 6-12, 1/2, 3 May: what a spreadsheet makes a date or a time of.
bool is_like_date(std::string text) {
  std::replace_if(
      text.begin(), text.end(), [](char c) { return std::string_view("-/.:,").find(c) != std::string_view::npos; },
      ' ');
  std::istringstream stream(text);
  std::size_t parts = 0;
  for (std::string word; stream >> word; ++parts) {
    if (!is_part_of_date(word)) return false;
  }
  return parts == 2 || parts == 3;
}

}  // namespace

std::string csv_text(const std::string& text) {
  constexpr std::string_view formula_starts = "=+-@\t\r";
  const bool formula = !text.empty() && formula_starts.find(text.front()) != std::string_view::npos;
  std::string guarded = formula || is_like_date(text) ? "'" + text : text;
  if (guarded.find_first_of(",\"\r\n") == std::string::npos) return guarded;
  std::string quoted = "\"";
  for (const char c : guarded) {
    if (c == '"') quoted += '"';
    quoted += c;
  }
  return quoted + '"';
}

std::string csv_row(const std::vector<std::string>& cells) { return fmt::format("{}\r\n", fmt::join(cells, ",")); }

}  // namespace yardworth
