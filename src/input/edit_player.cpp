#include "input/edit_player.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "core/number_text.hpp"
#include "input/document.hpp"

namespace yardworth::input {
namespace {

using Lines = std::vector<std::string>;

Lines lines_of_text(const std::string& text) {
  Lines lines;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    lines.push_back(text.substr(at, end - at));
    at = end + 1;
  }
  return lines;
}

// Where a column, in characters from 1, begins in the bytes of a line.
std::size_t byte_of(const std::string& line, int column) {
  std::size_t at = 0;
  for (int passed = 1; passed < column && at < line.size(); ++passed) {
    do {
      ++at;
    } while (at < line.size() && (static_cast<unsigned char>(line[at]) & 0xC0) == 0x80);
  }
  return at;
}

const Entry* entry_in(const Node& map, std::string_view key) {
  const auto found =
      std::find_if(map.entries.begin(), map.entries.end(), [&](const Entry& entry) { return entry.key == key; });
  return found == map.entries.end() ? nullptr : &*found;
}

// Without zeros at the end.
std::string number_text(double value, int decimals) {
  std::string text = fmt::format("{:.{}f}", value, decimals);
  if (text.find('.') == std::string::npos) return text;
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text;
}

std::vector<std::pair<std::string, std::string>> keys_of(const ClubNumbers& numbers) {
  std::vector<std::pair<std::string, std::string>> keys = {{"carry", number_text(numbers.carry, 1)}};
  const auto add = [&](const char* key, const std::optional<double>& value, int decimals) {
    if (value) keys.emplace_back(key, number_text(*value, decimals));
  };
  add("roll", numbers.roll, 1);
  add("carry_sd", numbers.carry_sd, 1);
  add("direction_sd", numbers.direction_sd, 2);
  add("direction_mean", numbers.direction_mean, 1);
  add("poor_strike", numbers.poor_strike, 3);
  return keys;
}

// A club's name as YAML takes it: in quotation marks where plain text could be read as anything else.
std::string name_text(const std::string& name) {
  const bool plain = !name.empty() && std::all_of(name.begin(), name.end(), [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == ' ' || c == '-';
  });
  const bool letter =
      std::any_of(name.begin(), name.end(), [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); });
  if (plain && letter && name.front() != '-' && name.front() != ' ' && name.back() != ' ') return name;
  std::string quoted = "\"";
  for (const char c : name) {
    if (c == '"' || c == '\\') quoted += '\\';
    quoted += static_cast<unsigned char>(c) < 0x20 ? ' ' : c;
  }
  return quoted + '"';
}

// A club of the file: its lines, with what stands above it as a comment, and its carry, by which clubs are in order.
struct ClubBlock {
  Lines lines;
  double carry = 0.0;
};

// Changes the numbers of a club in its lines, of which the first is the line `first` of the file.
void change_numbers(const Node& club, const ClubNumbers& numbers, int first, Lines& lines) {
  const Entry* carry = entry_in(club, "carry");
  const bool in_braces = lines[static_cast<std::size_t>(club.place.line - first)][byte_of(
                             lines[static_cast<std::size_t>(club.place.line - first)], club.place.column)] == '{';
  const auto line_of = [&](const Place& place) -> std::string& {
    return lines[static_cast<std::size_t>(place.line - first)];
  };
  // From the back, so that places before stay where they are; the carry takes what is new behind it.
  auto keys = keys_of(numbers);
  std::string added;
  std::vector<std::pair<Place, std::pair<std::size_t, std::string>>> changes;
  for (const auto& [key, value] : keys) {
    const Entry* entry = entry_in(club, key);
    if (entry != nullptr) {
      changes.push_back({entry->value.place, {entry->value.text.size(), value}});
    } else {
      const std::string indent(static_cast<std::size_t>(carry->place.column - 1), ' ');
      added += in_braces ? fmt::format(", {}: {}", key, value) : fmt::format("\n{}{}: {}", indent, key, value);
    }
  }
  std::sort(changes.begin(), changes.end(), [](const auto& a, const auto& b) {
    return std::pair(a.first.line, a.first.column) > std::pair(b.first.line, b.first.column);
  });
  for (const auto& [place, change] : changes) {
    std::string& line = line_of(place);
    const std::size_t at = byte_of(line, place.column);
    const bool is_carry = place.line == carry->value.place.line && place.column == carry->value.place.column;
    line.replace(at, change.first, change.second + (is_carry && in_braces ? added : ""));
  }
  if (!in_braces) line_of(carry->value.place) += added;
}

// The line on which what follows the clubs begins, from 1.
int end_of_clubs(const Node& root, const Entry& clubs, const Lines& lines) {
  int end = static_cast<int>(lines.size()) + 1;
  for (const Entry& entry : root.entries) {
    if (entry.place.line > clubs.place.line) end = std::min(end, entry.place.line);
  }
  return end;
}

bool is_comment(const std::string& line) {
  const std::size_t first = line.find_first_not_of(" \t\r");
  return first == std::string::npos || line[first] == '#';
}

// Whether each club begins on a line of its own below "clubs:".
bool line_by_line(const Entry& clubs) {
  int line = clubs.place.line;
  for (const Node& club : clubs.value.items) {
    if (club.place.line <= line) return false;
    line = club.place.line;
  }
  return true;
}

double carry_of(const Node& club) {
  const Entry* carry = entry_in(club, "carry");
  return carry == nullptr ? 0.0 : parse_number(carry->value.text).value;
}

// The blocks of the file's clubs, changed where there are new numbers, and those numbers taken out of `numbers`.
std::vector<ClubBlock> changed_blocks(const Entry& clubs, int end, const Lines& lines,
                                      std::vector<ClubNumbers>& numbers,
                                      bool (*same)(std::string_view, std::string_view)) {
  std::vector<ClubBlock> blocks;
  const std::vector<Node>& items = clubs.value.items;
  int from = clubs.place.line + 1;
  for (std::size_t i = 0; i < items.size(); ++i) {
    int to = i + 1 < items.size() ? items[i + 1].place.line : end;
    while (to > items[i].place.line + 1 && is_comment(lines[static_cast<std::size_t>(to) - 2])) --to;
    ClubBlock block{{lines.begin() + (from - 1), lines.begin() + (to - 1)}, carry_of(items[i])};
    const Entry* name = entry_in(items[i], "club");
    const auto found = std::find_if(numbers.begin(), numbers.end(), [&](const ClubNumbers& club) {
      return name != nullptr && same(club.club, name->value.text);
    });
    if (found != numbers.end()) {
      if (entry_in(items[i], "carry") != nullptr) {
        change_numbers(items[i], *found, from, block.lines);
      } else {
        // A club that the file gives by its strike.
        ClubNumbers named = *found;
        named.club = name->value.text;
        block.lines.resize(static_cast<std::size_t>(items[i].place.line - from));
        block.lines.push_back("  - " + club_line(named));
      }
      block.carry = found->carry;
      numbers.erase(found);
    }
    blocks.push_back(std::move(block));
    from = to;
  }
  return blocks;
}

}  // namespace

std::string club_line(const ClubNumbers& numbers) {
  std::string line = fmt::format("{{club: {}", name_text(numbers.club));
  for (const auto& [key, value] : keys_of(numbers)) line += fmt::format(", {}: {}", key, value);
  return line + "}";
}

std::string edit_player(const std::string& text, const std::vector<ClubNumbers>& clubs,
                        bool (*same)(std::string_view, std::string_view)) {
  const Document document = parse_document(text, "");
  const Lines lines = lines_of_text(text);
  const Entry* entry = document.root ? entry_in(*document.root, "clubs") : nullptr;
  if (entry == nullptr || entry->value.kind != Node::Kind::list || !line_by_line(*entry)) return "";
  int end = end_of_clubs(*document.root, *entry, lines);
  while (end > entry->value.items.back().place.line + 1 && is_comment(lines[static_cast<std::size_t>(end) - 2])) --end;
  std::vector<ClubNumbers> numbers = clubs;
  std::vector<ClubBlock> blocks = changed_blocks(*entry, end, lines, numbers, same);
  for (const ClubNumbers& club : numbers) blocks.push_back({{"  - " + club_line(club)}, club.carry});
  // A club that is given by its strike has no carry here: the order of the others holds it in its place.
  for (std::size_t i = 1; i < blocks.size(); ++i) {
    if (blocks[i].carry == 0.0) blocks[i].carry = blocks[i - 1].carry;
  }
  std::stable_sort(blocks.begin(), blocks.end(),
                   [](const ClubBlock& a, const ClubBlock& b) { return a.carry > b.carry; });
  std::string edited;
  const auto add = [&](const std::string& line) { edited += line + '\n'; };
  for (int i = 1; i <= entry->place.line; ++i) add(lines[static_cast<std::size_t>(i) - 1]);
  for (const ClubBlock& block : blocks) {
    for (const std::string& line : block.lines) add(line);
  }
  for (std::size_t i = static_cast<std::size_t>(end) - 1; i < lines.size(); ++i) add(lines[i]);
  return edited;
}

}  // namespace yardworth::input
