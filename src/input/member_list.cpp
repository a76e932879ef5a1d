#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <map>
#include <utility>

#include "core/message_text.hpp"
#include "core/spelling.hpp"
#include "input/table_lines.hpp"
#include "validate/tell.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/read.hpp"
#include "yardworth/units.hpp"

namespace yardworth {
namespace input {
namespace {

constexpr std::size_t most_list_findings = 200;

enum class MemberColumn { other, label, index, gender, carry_yd, carry_m };

struct MemberColumnName {
  std::string_view name;
  MemberColumn column = MemberColumn::other;
};

// What players' files call the index is understood too.
constexpr std::array<MemberColumnName, 6> column_names = {{{"label", MemberColumn::label},
                                                           {"index", MemberColumn::index},
                                                           {"handicap_index", MemberColumn::index},
                                                           {"gender", MemberColumn::gender},
                                                           {"driver_carry_yd", MemberColumn::carry_yd},
                                                           {"driver_carry_m", MemberColumn::carry_m}}};

constexpr std::size_t column_kinds = 6;
using Columns = std::array<int, column_kinds>;  // where a row has something, from 1; 0: it has nothing

bool is_carry(MemberColumn column) { return column == MemberColumn::carry_yd || column == MemberColumn::carry_m; }

// The word of a gender as lists have it.
std::optional<Gender> gender_of_word(const std::string& word) {
  const std::string small = small_letters(word);
  const auto among = [&](std::initializer_list<const char*> words) {
    return std::any_of(words.begin(), words.end(), [&](const char* known) { return small == known; });
  };
  if (among({"men", "man", "m", "male"})) return Gender::men;
  if (among({"women", "woman", "w", "f", "female"})) return Gender::women;
  return std::nullopt;
}

class MemberReader {
 public:
  MemberReader(std::string_view text, std::string file) : lines_(text), text_(text), file_(std::move(file)) {}

  Reading<std::vector<Member>> read();

 private:
  void tell(Severity severity, int column, std::string_view path, std::string found, std::string expected);
  void fault(int column, std::string_view path, std::string found, std::string expected);

  MemberColumn column_of(const Cell& cell, const std::string& name);
  void read_header();
  void check_wanting();
  void check_cells();
  std::optional<double> number_in(const Cell& cell, std::string_view path, const Limits& limits);
  void read_index(const Cell& cell, Member& member);
  void read_gender(const Cell& cell, Member& member);
  void read_carry(const Cell& cell, MemberColumn column, Member& member);
  void read_cells(Member& member, Columns& seen);
  void check_label(const std::string& label, int column);
  void advise_on_carry(const Member& member, int column);
  void read_row();
  void tell_untold();

  TableLines lines_;
  std::string_view text_;
  std::string file_;
  std::vector<Cell> cells_;
  std::vector<MemberColumn> columns_;
  Units units_ = Units::yards;           // of the column of carries
  std::map<std::string, int> first_of_;  // the line of each label
  std::vector<Member> members_;
  std::vector<Diagnostic> findings_;
  std::size_t untold_ = 0;
  bool fault_ = false;
};

void MemberReader::tell(Severity severity, int column, std::string_view path, std::string found, std::string expected) {
  const bool is_fault = severity == Severity::fault;
  fault_ = fault_ || is_fault;
  // Advice must not push the faults out of sight.
  if (findings_.size() >= (is_fault ? most_list_findings : most_list_findings / 2)) {
    ++untold_;
    return;
  }
  findings_.push_back(
      {severity, file_, lines_.line(), column, std::string(path), std::move(found), std::move(expected)});
}

void MemberReader::fault(int column, std::string_view path, std::string found, std::string expected) {
  tell(Severity::fault, column, path, std::move(found), std::move(expected));
}

MemberColumn MemberReader::column_of(const Cell& cell, const std::string& name) {
  std::vector<std::string> words;
  for (const MemberColumnName& known : column_names) {
    if (known.name == name) return known.column;
    words.emplace_back(known.name);
  }
  const bool without_unit = name.find("carry") != std::string::npos || name == "driver";
  std::string expected = without_unit ? "driver_carry_yd or driver_carry_m: the unit stands in the heading"
                                      : nearest_word(name, words).value_or("nothing of it");
  tell(Severity::advice, cell.column, "", fmt::format("the column {}, which is not read", quoted(cell.text)),
       std::move(expected));
  return MemberColumn::other;
}

void MemberReader::check_wanting() {
  const auto has = [&](MemberColumn column) {
    return std::find(columns_.begin(), columns_.end(), column) != columns_.end();
  };
  if (cells_.size() == 1 && cells_.front().text.find('\t') != std::string::npos) {
    fault(1, "", "tabs between the columns", "commas or semicolons");
    return;
  }
  if (!has(MemberColumn::label)) fault(1, "label", "no such column", "a column label: what the member is called");
  if (!has(MemberColumn::index)) fault(1, "index", "no such column", "a column index: the Handicap Index");
  if (!has(MemberColumn::gender)) fault(1, "gender", "no such column", "a column gender: men or women");
}

void MemberReader::read_header() {
  for (const Cell& cell : cells_) {
    const std::string name = heading_name(cell.text);
    const MemberColumn column = name.empty() ? MemberColumn::other : column_of(cell, name);
    const bool again = std::any_of(columns_.begin(), columns_.end(), [&](MemberColumn before) {
      return before != MemberColumn::other && (before == column || (is_carry(before) && is_carry(column)));
    });
    if (again) fault(cell.column, name, "a second column for it", "one of them");
    if (is_carry(column)) units_ = column == MemberColumn::carry_m ? Units::metres : Units::yards;
    columns_.push_back(column);
  }
  check_wanting();
}

// Rows may end early, and be followed by empty cells.
void MemberReader::check_cells() {
  for (const Cell& cell : cells_) {
    if (!cell.closed) {
      fault(cell.column, "", "a quotation mark that is not closed on its line", "the same mark at the end of the text");
    }
  }
  if (cells_.size() <= columns_.size()) return;
  fault(cells_[columns_.size()].column, "", fmt::format("{} cells", cells_.size()),
        fmt::format("at most {}, as in the header; {}", columns_.size(),
                    lines_.separator() == ',' ? "decimal commas need semicolons between the cells"
                                              : "a cell with a semicolon in quotation marks"));
}

std::optional<double> MemberReader::number_in(const Cell& cell, std::string_view path, const Limits& limits) {
  const auto [number, with_point] = number_of_cell(cell, lines_.separator());
  if (number.fault == NumberFault::none && number.value >= limits.low && number.value <= limits.high) {
    return number.value;
  }
  fault(cell.column, path, quoted(cell.text),
        with_point ? fmt::format("{}, with a point in the place of the comma", *with_point)
                   : "a number " + bounds(limits));
  return std::nullopt;
}

// Golfers write a plus handicap with a plus sign, a number means the opposite by it: ask rather than guess.
void MemberReader::read_index(const Cell& cell, Member& member) {
  const auto index = number_in(cell, "index", limits::handicap_index);
  if (!index) return;
  member.handicap_index = *index;
  if (*index == 0.0 || cell.text.front() != '+') return;
  const std::string figure = shortened(cell.text.substr(1));
  fault(cell.column, "index", shortened(cell.text),
        fmt::format("-{} for a plus handicap, {} for any other", figure, figure));
}

void MemberReader::read_gender(const Cell& cell, Member& member) {
  const auto gender = gender_of_word(cell.text);
  if (gender) {
    member.gender = *gender;
  } else {
    fault(cell.column, "gender", quoted(cell.text), "men or women");
  }
}

void MemberReader::read_carry(const Cell& cell, MemberColumn column, Member& member) {
  const Limits limits = in_units(limits::member_driver_carry, units_);
  const auto carry = number_in(cell, column == MemberColumn::carry_m ? "driver_carry_m" : "driver_carry_yd", limits);
  if (carry) member.driver_carry_yd = to_yards(*carry, units_);
}

void MemberReader::check_label(const std::string& label, int column) {
  if (label.size() > limits::longest_text) {
    return fault(column, "label", fmt::format("{} bytes", label.size()),
                 fmt::format("at most {} bytes", limits::longest_text));
  }
  const auto [first, is_new] = first_of_.emplace(label, lines_.line());
  if (!is_new) {
    fault(column, "label", quoted(label), fmt::format("another label than that of line {}", first->second));
  }
}

// A slip of the pen, or metres that are called yards, rather than such a golfer.
void MemberReader::advise_on_carry(const Member& member, int column) {
  if (!member.driver_carry_yd) return;
  const double typical_yd = skill_of(member.handicap_index, member.gender).driver_carry_yd;
  const double share = *member.driver_carry_yd / typical_yd;
  if (share >= limits::carry_of_typical.low && share <= limits::carry_of_typical.high) return;
  tell(Severity::advice, column, units_ == Units::yards ? "driver_carry_yd" : "driver_carry_m",
       fmt::format("a driver that carries {}", spoken(*member.driver_carry_yd, units_)),
       fmt::format("about the {} of such golfers, or a reason", spoken(typical_yd, units_)));
}

void MemberReader::read_cells(Member& member, Columns& seen) {
  for (std::size_t i = 0; i < std::min(cells_.size(), columns_.size()); ++i) {
    const Cell& cell = cells_[i];
    if (cell.text.empty() || columns_[i] == MemberColumn::other) continue;
    seen[static_cast<std::size_t>(columns_[i])] = cell.column;
    if (columns_[i] == MemberColumn::label) member.label = cell.text;
    if (columns_[i] == MemberColumn::index) read_index(cell, member);
    if (columns_[i] == MemberColumn::gender) read_gender(cell, member);
    if (is_carry(columns_[i])) read_carry(cell, columns_[i], member);
  }
}

void MemberReader::read_row() {
  const bool had_fault = std::exchange(fault_, false);
  check_cells();
  Member member;
  Columns seen{};
  read_cells(member, seen);
  const auto at = [&](MemberColumn column) { return seen[static_cast<std::size_t>(column)]; };
  // A cell that is not closed may have swallowed the others.
  const bool torn = std::any_of(cells_.begin(), cells_.end(), [](const Cell& cell) { return !cell.closed; });
  if (!torn && at(MemberColumn::label) == 0) fault(1, "label", "nothing", "what the member is called");
  if (!torn && at(MemberColumn::index) == 0) fault(1, "index", "nothing", "the Handicap Index");
  if (!torn && at(MemberColumn::gender) == 0) fault(1, "gender", "nothing", "men or women");
  if (at(MemberColumn::label) > 0) check_label(member.label, at(MemberColumn::label));
  if (!fault_) advise_on_carry(member, std::max({1, at(MemberColumn::carry_yd), at(MemberColumn::carry_m)}));
  fault_ = fault_ || had_fault;
  members_.push_back(std::move(member));
}

// What was left out for its number, in one line at the end.
void MemberReader::tell_untold() {
  if (untold_ == 0) return;
  Diagnostic rest = findings_.back();
  rest.path.clear();
  rest.found = fmt::format("{} more of the kind", untold_);
  rest.expected = "the first ones to be put right";
  findings_.push_back(std::move(rest));
}

Reading<std::vector<Member>> MemberReader::read() {
  const auto refused = [&](std::string found, std::string expected) -> Reading<std::vector<Member>> {
    return {std::nullopt, {{Severity::fault, file_, 1, 1, "", std::move(found), std::move(expected)}}};
  };
  if (text_.starts_with("\xFF\xFE") || text_.starts_with("\xFE\xFF")) {
    return refused("text in UTF-16", "text in UTF-8");
  }
  if (!lines_.next(cells_)) return refused("an empty file", "a header and a row for each member");
  read_header();
  const bool readable = !fault_;
  while (readable && members_.size() <= limits::most_members && lines_.next(cells_)) read_row();
  if (members_.size() > limits::most_members) {
    fault(1, "", fmt::format("more than {} members", limits::most_members), "as many at most");
  }
  if (readable && members_.empty()) fault(1, "", "a header alone", "a row for each member");
  tell_untold();
  if (fault_) return {std::nullopt, std::move(findings_)};
  return {std::move(members_), std::move(findings_)};
}

}  // namespace
}  // namespace input

Reading<std::vector<Member>> read_members(std::string_view text, const std::string& file) {
  return input::MemberReader(text, file).read();
}

}  // namespace yardworth
