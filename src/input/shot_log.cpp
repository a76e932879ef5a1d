#include "yardworth/shot_log.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <set>
#include <unordered_map>
#include <utility>

#include "core/message_text.hpp"
#include "core/number_text.hpp"
#include "core/spelling.hpp"
#include "input/log_columns.hpp"
#include "input/table_lines.hpp"
#include "validate/tell.hpp"

namespace yardworth {
namespace input {
namespace {

constexpr std::size_t most_told = 200;    // findings
constexpr std::size_t most_advice = 100;  // of them, so that advice cannot push the faults out of sight

// What a column of the log is, by its place.
struct Column {
  enum class Kind { other, club, session, number } kind = Kind::other;
  const LogColumn* number = nullptr;
};

// A name to its index, as names are told apart.
struct NameIndex {
  std::unordered_map<std::string, std::size_t> seen;
  std::string last;  // logs have many shots of a club in a row
  std::size_t last_index = 0;

  std::size_t of(const std::string& name, std::vector<std::string>& names) {
    if (!names.empty() && name == last) return last_index;
    const auto [found, is_new] = seen.emplace(plain_name(name), names.size());
    if (is_new) names.push_back(name);
    last = name;
    return last_index = found->second;
  }
};

class LogReader {
 public:
  LogReader(std::string_view text, std::string file, BadRows bad_rows)
      : lines_(text), text_(text), file_(std::move(file)), bad_rows_(bad_rows) {}

  Reading<ShotLog> read();

 private:
  void tell(Severity severity, int column, std::string_view path, std::string found, std::string expected);
  void row_fault(int column, std::string_view path, std::string found, std::string expected);
  void header_fault(int column, std::string_view path, std::string found, std::string expected);

  void read_header();
  Column column_of(const Cell& cell, const std::string& name);
  void check_wanting(const std::vector<std::string>& names);
  void read_row();
  std::optional<double> number_in(const Cell& cell, const LogColumn& column);
  void read_number(const Cell& cell, const LogColumn& column, Shot& shot, bool& has_carry);
  void read_name(const Cell& cell, std::string_view what, std::string& name);
  void check_row(const Shot& shot, bool has_club, bool has_carry);

  TableLines lines_;
  std::string_view text_;
  std::string file_;
  BadRows bad_rows_;
  std::vector<Cell> cells_;
  std::vector<Column> columns_;
  NameIndex clubs_, sessions_;
  ShotLog log_;
  std::vector<Diagnostic> findings_;
  std::size_t untold_ = 0;
  std::string others_;  // headings that mean nothing here
  int first_other_ = 0;
  std::size_t read_columns_ = 0;  // the first ones, up to the last that is read
  Diagnostic first_short_;        // of the rows with fewer cells
  std::size_t short_rows_ = 0;
  bool fault_ = false;
  bool row_is_bad_ = false;
};

void LogReader::tell(Severity severity, int column, std::string_view path, std::string found, std::string expected) {
  fault_ = fault_ || severity == Severity::fault;
  if (findings_.size() >= (fault_ ? most_told : most_advice)) {
    ++untold_;
    return;
  }
  findings_.push_back(
      {severity, file_, lines_.line(), column, std::string(path), std::move(found), std::move(expected)});
}

void LogReader::row_fault(int column, std::string_view path, std::string found, std::string expected) {
  row_is_bad_ = true;
  tell(bad_rows_ == BadRows::skipped ? Severity::advice : Severity::fault, column, path, std::move(found),
       std::move(expected));
}

void LogReader::header_fault(int column, std::string_view path, std::string found, std::string expected) {
  tell(Severity::fault, column, path, std::move(found), std::move(expected));
}

std::vector<std::string> known_columns() {
  std::vector<std::string> names = {"club", "session"};
  for (const LogColumn& column : log_columns) names.emplace_back(column.name);
  return names;
}

// The quantity of a column without its unit: "carry" of carry_m. In a log it may stand once.
std::string_view quantity(std::string_view name) { return name.substr(0, name.rfind('_')); }

// Whether a heading says a quantity, but no unit that is read: "carry", "carry_ft", "carry_(yds)".
bool without_unit_of(std::string_view column, const std::string& name) {
  static const std::set<std::string> units = {"",      "yd",     "yds",  "yard",   "yards",   "m",   "metre", "metres",
                                              "meter", "meters", "ft",   "feet",   "mph",     "mps", "ms",    "kmh",
                                              "kph",   "deg",    "degs", "degree", "degrees", "rpm"};
  if (!name.starts_with(quantity(column))) return false;
  std::string rest = name.substr(quantity(column).size());
  std::erase_if(rest, [](char c) { return c < 'a' || c > 'z'; });
  return units.contains(rest);
}

Column LogReader::column_of(const Cell& cell, const std::string& name) {
  if (name == "club") return {Column::Kind::club};
  if (name == "session") return {Column::Kind::session};
  for (const LogColumn& column : log_columns) {
    if (column.name == name) return {Column::Kind::number, &column};
  }
  std::vector<std::string> words = known_columns();
  const bool without_unit = std::any_of(log_columns.begin(), log_columns.end(),
                                        [&](const LogColumn& column) { return without_unit_of(column.name, name); });
  std::string expected;
  if (without_unit) {
    expected = "the unit in the heading: ";
    for (const LogColumn& column : log_columns) {
      if (without_unit_of(column.name, name))
        expected += fmt::format("{}{}", expected.back() == ' ' ? "" : " or ", column.name);
    }
  } else if (const auto meant = nearest_word(name, words)) {
    expected = *meant;
  } else {
    if (others_.empty()) first_other_ = cell.column;
    others_ += (others_.empty() ? "" : ", ") + cell.text;
    return {};
  }
  tell(Severity::advice, cell.column, "", fmt::format("the column {}, which is not read", quoted(cell.text)), expected);
  return {};
}

void LogReader::check_wanting(const std::vector<std::string>& names) {
  const auto has = [&](std::string_view name) { return std::find(names.begin(), names.end(), name) != names.end(); };
  const bool tabs = cells_.size() == 1 && cells_.front().text.find('\t') != std::string::npos;
  if (tabs) {
    header_fault(1, "", "tabs between the columns", "commas or semicolons");
    return;
  }
  if (!has("club")) header_fault(1, "club", "no such column", "a column club: the name of the club");
  if (!has("carry_yd") && !has("carry_m")) {
    header_fault(1, "carry_yd", "no such column", "a column carry_yd, or carry_m for metres");
  }
}

void LogReader::read_header() {
  std::vector<std::string> names;
  for (const Cell& cell : cells_) {
    std::string name = heading_name(cell.text);
    const Column column = name.empty() ? Column{} : column_of(cell, name);
    if (column.kind != Column::Kind::other) {
      const auto same = std::find_if(names.begin(), names.end(), [&](const std::string& before) {
        return before == name || (column.number != nullptr && quantity(before) == quantity(name));
      });
      if (same != names.end()) {
        header_fault(cell.column, name, fmt::format("a second column for it, beside {}", *same), "one of them");
      }
      if (column.number != nullptr && column.number->member == nullptr) {
        log_.units = name == "carry_m" ? Units::metres : Units::yards;
      }
      names.push_back(std::move(name));
    }
    columns_.push_back(column);
    if (column.kind != Column::Kind::other) read_columns_ = columns_.size();
  }
  if (!others_.empty()) {
    tell(Severity::advice, first_other_, "", fmt::format("columns that are not read: {}", shortened(others_)),
         "nothing of them");
  }
  const bool metric = std::any_of(names.begin(), names.end(), [](const std::string& name) {
    return name.ends_with("_mps") || name.ends_with("_m");
  });
  if (metric && std::find(names.begin(), names.end(), "carry_yd") != names.end()) {
    tell(Severity::advice, 1, "carry_yd", "yards beside metric columns", "carry_m, if the carries are metres");
  }
  check_wanting(names);
}

std::optional<double> LogReader::number_in(const Cell& cell, const LogColumn& column) {
  const Limits shown{column.shown * column.limits.low, column.shown * column.limits.high, column.unit};
  const auto [number, with_point] = number_of_cell(cell, lines_.separator());
  if (number.fault == NumberFault::none && number.value >= shown.low && number.value <= shown.high) {
    return column.inside * number.value;
  }
  row_fault(cell.column, column.name, quoted(cell.text),
            with_point ? fmt::format("{}, with a point in the place of the comma", *with_point)
                       : "a number " + bounds(shown));
  return std::nullopt;
}

void LogReader::read_number(const Cell& cell, const LogColumn& column, Shot& shot, bool& has_carry) {
  const bool is_carry = column.member == nullptr;
  if (cell.text.empty()) return;
  has_carry = has_carry || is_carry;
  const auto number = number_in(cell, column);
  if (!number) return;
  if (is_carry) {
    shot.carry_yd = *number;
  } else {
    shot.*column.member = number;
  }
}

void LogReader::read_name(const Cell& cell, std::string_view what, std::string& name) {
  if (cell.text.size() > limits::longest_text) {
    row_fault(cell.column, what, fmt::format("{} bytes", cell.text.size()),
              fmt::format("at most {} bytes", limits::longest_text));
    return;
  }
  name = cell.text;
}

void LogReader::check_row(const Shot& shot, bool has_club, bool has_carry) {
  if (!has_club) row_fault(1, "club", "nothing", "the name of the club");
  if (!has_carry) row_fault(1, "carry_yd", "nothing", "a carry");
  if (row_is_bad_ || !shot.offline_yd) return;
  if (std::abs(*shot.offline_yd) > shot.carry_yd) {
    row_fault(1, "offline_yd", spoken(std::abs(*shot.offline_yd), log_.units) + " to the side",
              fmt::format("at most the carry, {}", spoken(shot.carry_yd, log_.units)));
  }
}

void LogReader::read_row() {
  row_is_bad_ = false;
  if (cells_.size() > columns_.size()) {
    row_fault(cells_[columns_.size()].column, "", fmt::format("{} cells", cells_.size()),
              fmt::format("at most {}, as in the header; {}", columns_.size(),
                          lines_.separator() == ',' ? "decimal commas need semicolons between the cells"
                                                    : "a cell with a semicolon in quotation marks"));
  }
  // A cell that is not closed may have swallowed the others.
  const bool torn = std::any_of(cells_.begin(), cells_.end(), [](const Cell& cell) { return !cell.closed; });
  if (cells_.size() < read_columns_ && !torn && short_rows_++ == 0) {
    first_short_ = {Severity::advice,
                    file_,
                    lines_.line(),
                    1,
                    "",
                    cells_.size() == 1 ? "1 cell" : fmt::format("{} cells", cells_.size()),
                    fmt::format("{}, as in the header", columns_.size())};
  }
  Shot shot;
  shot.line = lines_.line();
  std::string club, session;
  bool has_carry = false;
  for (std::size_t i = 0; i < std::min(cells_.size(), columns_.size()); ++i) {
    const Cell& cell = cells_[i];
    const Column& column = columns_[i];
    if (!cell.closed) {
      row_fault(cell.column, "", "a quotation mark that is not closed on its line",
                "the same mark at the end of the text");
    }
    if (column.kind == Column::Kind::club) read_name(cell, "club", club);
    if (column.kind == Column::Kind::session) read_name(cell, "session", session);
    if (column.kind == Column::Kind::number) read_number(cell, *column.number, shot, has_carry);
  }
  if (plain_name(club) == "putter") row_fault(1, "club", "a putter", "clubs with a carry");
  check_row(shot, !club.empty() || torn, has_carry || torn);
  if (row_is_bad_) {
    ++log_.skipped_rows;
    return;
  }
  shot.club = clubs_.of(club, log_.clubs);
  shot.session = sessions_.of(session, log_.sessions);
  log_.shots.push_back(shot);
  if (log_.clubs.size() > limits::most_log_clubs || log_.sessions.size() > limits::most_log_sessions) {
    header_fault(1, "",
                 fmt::format("more than {} clubs or {} sessions", limits::most_log_clubs, limits::most_log_sessions),
                 "clubs and sessions by their names");
  }
}

Reading<ShotLog> LogReader::read() {
  const bool two_bytes = text_.starts_with("\xFF\xFE") || text_.starts_with("\xFE\xFF");
  const auto refused = [&](std::string found, std::string expected) -> Reading<ShotLog> {
    return {std::nullopt, {{Severity::fault, file_, 1, 1, "", std::move(found), std::move(expected)}}};
  };
  if (two_bytes) return refused("text in UTF-16", "text in UTF-8");
  if (!lines_.next(cells_)) return refused("an empty file", "a header and a row for each shot");
  read_header();
  const bool readable = !fault_;
  const auto too_many = [&] {
    return log_.clubs.size() > limits::most_log_clubs || log_.sessions.size() > limits::most_log_sessions;
  };
  while (readable && !too_many() && lines_.next(cells_)) read_row();
  if (readable && log_.shots.empty() && !fault_) {
    header_fault(1, "", log_.skipped_rows > 0 ? "no row that can be read" : "a header alone", "a row for each shot");
  }
  if (untold_ > 0) {
    Diagnostic rest = findings_.back();
    rest.path.clear();
    rest.found = fmt::format("{} more of the kind", untold_);
    rest.expected = "the first ones to be put right";
    findings_.push_back(std::move(rest));
  }
  if (short_rows_ > 0) {
    first_short_.expected += short_rows_ == 1
                                 ? "; the last ones are taken to be empty"
                                 : fmt::format("; the last ones are taken to be empty, in {} rows in all", short_rows_);
    findings_.push_back(first_short_);
  }
  if (fault_) return {std::nullopt, std::move(findings_)};
  log_.file = file_;
  return {std::move(log_), std::move(findings_)};
}

}  // namespace
}  // namespace input

std::string plain_name(std::string_view name) {
  std::string plain = small_letters(std::string(name));
  std::erase_if(plain, [](char c) { return c == ' ' || c == '-' || c == '_'; });
  return plain;
}

namespace {

// The log with some of its shots.
template <class Keep>
ShotLog shots_that(const ShotLog& log, const Keep& keep) {
  ShotLog kept{log.file, log.units, log.clubs, log.sessions, {}, log.skipped_rows};
  std::copy_if(log.shots.begin(), log.shots.end(), std::back_inserter(kept.shots), keep);
  return kept;
}

std::optional<std::size_t> place_of(std::string_view name, const std::vector<std::string>& names) {
  const auto same = std::find_if(names.begin(), names.end(),
                                 [&](const std::string& known) { return plain_name(known) == plain_name(name); });
  return same == names.end() ? std::nullopt : std::optional(static_cast<std::size_t>(same - names.begin()));
}

}  // namespace

std::optional<ShotLog> shots_of_session(const ShotLog& log, std::string_view session) {
  const auto place = place_of(session, log.sessions);
  if (!place) return std::nullopt;
  ShotLog kept = shots_that(log, [&](const Shot& shot) { return shot.session == *place; });
  for (Shot& shot : kept.shots) shot.session = 0;
  kept.sessions = {log.sessions[*place]};
  return kept;
}

std::optional<ShotLog> shots_of_club(const ShotLog& log, std::string_view club) {
  const auto place = place_of(club, log.clubs);
  if (!place) return std::nullopt;
  return shots_that(log, [&](const Shot& shot) { return shot.club == *place; });
}

Reading<ShotLog> read_shot_log(std::string_view text, const std::string& file, BadRows bad_rows) {
  return input::LogReader(text, file, bad_rows).read();
}

}  // namespace yardworth
