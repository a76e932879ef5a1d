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

// The headings as rows above the cells, those with fewer lines moved down.
std::vector<std::vector<std::string>> heading_rows(const Table& table) {
  std::vector<std::vector<std::string>> columns;
  std::size_t height = 0;
  for (const TableColumn& column : table.columns) {
    columns.push_back(lines_of(column.heading));
    height = std::max(height, columns.back().size());
  }
  std::vector<std::vector<std::string>> rows(height, std::vector<std::string>(columns.size()));
  for (std::size_t i = 0; i < columns.size(); ++i) {
    const std::size_t above = height - columns[i].size();
    for (std::size_t line = 0; line < columns[i].size(); ++line) rows[above + line][i] = columns[i][line];
  }
  return rows;
}

std::vector<std::size_t> column_widths(const std::vector<std::vector<std::string>>& rows, std::size_t columns) {
  std::vector<std::size_t> widths(columns, 0);
  for (const auto& row : rows) {
    for (std::size_t i = 0; i < row.size(); ++i) widths[i] = std::max(widths[i], display_width(row[i]));
  }
  return widths;
}

}  // namespace

std::string fixed(double value, int decimals) {
  std::string text = fmt::format("{:.{}f}", value, decimals);
  const bool negative_zero = text.front() == '-' && text.find_first_not_of("-0.") == std::string::npos;
  return negative_zero ? text.substr(1) : text;
}

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

std::string format_table(const Table& table, std::size_t columns) {
  const std::size_t count = table.columns.size();
  auto rows = table.rows;
  for (auto& row : rows) {
    row.resize(row.empty() ? 0 : count);
    for (std::size_t i = 0; i < row.size(); ++i) row[i] = shorten(row[i], table.columns[i].widest);
  }
  const auto headings = heading_rows(table);
  rows.insert(rows.begin(), headings.begin(), headings.end());

  const auto widths = column_widths(rows, count);
  std::size_t total = 2 * (count - std::min<std::size_t>(count, 1));
  for (const std::size_t width : widths) total += width;
  const std::size_t gap = total <= columns ? 2 : 1;

  std::string text;
  for (const auto& row : rows) {
    std::string line;
    for (std::size_t i = 0; i < count; ++i) {
      if (i > 0) line += std::string(gap, ' ');
      line += row.empty() ? std::string(widths[i], '-') : padded(row[i], widths[i], table.columns[i].align);
    }
    text += without_trailing_spaces(line) + '\n';
  }
  return text;
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
