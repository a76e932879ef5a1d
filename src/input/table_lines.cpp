#include "input/table_lines.hpp"

#include <algorithm>

#include "core/spelling.hpp"

namespace yardworth::input {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

bool is_blank(char c) { return c == ' ' || c == '\t'; }

bool begins_character(char byte) { return (static_cast<unsigned char>(byte) & 0xC0) != 0x80; }

int characters(std::string_view text) {
  return static_cast<int>(std::count_if(text.begin(), text.end(), begins_character));
}

// Takes cells from a line, from the left.
class CellReader {
 public:
  CellReader(std::string_view line, char separator) : line_(line), separator_(separator) {}

  // Reads a cell; false where it was the line's last.
  bool read(Cell& cell) {
    while (at_ < line_.size() && is_blank(line_[at_]) && line_[at_] != separator_) ++at_;
    column_ += characters(line_.substr(counted_, at_ - counted_));
    counted_ = at_;
    cell.column = column_ + 1;
    cell.closed = true;
    cell.text.clear();
    if (at_ < line_.size() && line_[at_] == '"') read_quoted(cell);
    const std::size_t end = std::min(line_.find(separator_, at_), line_.size());
    cell.text += line_.substr(at_, end - at_);
    while (!cell.text.empty() && is_blank(cell.text.back())) cell.text.pop_back();
    at_ = end + 1;
    return end < line_.size();
  }

 private:
  // Up to the mark that closes it.
  void read_quoted(Cell& cell) {
    for (++at_; at_ < line_.size(); ++at_) {
      if (line_[at_] == '"') {
        if (at_ + 1 >= line_.size() || line_[at_ + 1] != '"') break;
        ++at_;
      }
      cell.text += line_[at_];
    }
    cell.closed = at_ < line_.size();
    at_ = std::min(at_ + 1, line_.size());
  }

  std::string_view line_;
  char separator_;
  std::size_t at_ = 0;
  std::size_t counted_ = 0;  // bytes whose characters are in column_
  int column_ = 0;
};

}  // namespace

std::string heading_name(const std::string& heading) {
  std::string name = small_letters(heading);
  std::replace_if(
      name.begin(), name.end(), [](char c) { return c == ' ' || c == '-'; }, '_');
  return name;
}

CellNumber number_of_cell(const Cell& cell, char separator) {
  CellNumber number{parse_number(cell.text), std::nullopt};
  if (number.parsed.fault != NumberFault::not_a_number) return number;
  number.with_point = with_decimal_point(cell.text);
  if (number.with_point && separator == ';') number = {parse_number(*number.with_point), std::nullopt};
  return number;
}

TableLines::TableLines(std::string_view text) : rest_(text) {
  if (rest_.starts_with(byte_order_mark)) rest_.remove_prefix(byte_order_mark.size());
  const std::size_t first = std::min(rest_.find_first_not_of(" \t\r\n"), rest_.size());
  const std::string_view from_first = rest_.substr(first);
  const std::string_view header = from_first.substr(0, from_first.find_first_of("\r\n"));
  const auto semicolons = std::count(header.begin(), header.end(), ';');
  if (semicolons > std::count(header.begin(), header.end(), ',')) separator_ = ';';
}

std::string_view TableLines::take_line() {
  const std::size_t end = std::min(rest_.find_first_of("\r\n"), rest_.size());
  const std::string_view line = rest_.substr(0, end);
  const bool two_bytes = rest_.substr(end).starts_with("\r\n");
  rest_.remove_prefix(std::min(end + (two_bytes ? 2 : 1), rest_.size()));
  ++line_;
  return line;
}

bool TableLines::next(std::vector<Cell>& cells) {
  while (!rest_.empty()) {
    const std::string_view line = take_line();
    if (std::all_of(line.begin(), line.end(), is_blank)) continue;
    CellReader reader(line, separator_);
    std::size_t count = 0;
    for (bool more = true; more; ++count) {
      if (count == cells.size()) cells.emplace_back();
      more = reader.read(cells[count]);
    }
    cells.resize(count);
    return true;
  }
  return false;
}

}  // namespace yardworth::input
