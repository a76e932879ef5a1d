#pragma once

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "input/document.hpp"
#include "validate/tell.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/units.hpp"

namespace yardworth::input {

// A value of the file and the keys that lead to it.
struct Value {
  const Node* node = nullptr;
  std::string path;
};

// Collects what is to be said about one file.
class Findings {
 public:
  Findings(std::string file, std::vector<Diagnostic> first) : file_(std::move(file)), all_(std::move(first)) {}

  void fault(const Value& at, std::string found, std::string expected);
  void advice(const Value& at, std::string found, std::string expected);
  void fault(Place place, std::string path, std::string found, std::string expected);
  // A fault of the value whose words are still to be said.
  Diagnostic about(const Value& at) const;

  bool has_fault() const { return yardworth::has_fault(all_); }
  // In the order of the file; of very many only the first, and a last one that says how many more there are.
  std::vector<Diagnostic> in_order() const;

 private:
  std::string file_;
  std::vector<Diagnostic> all_;
};

// What the value is, for a message: its text, or "a list" or "a map".
std::string described(const Node& node);

// Each of these gives nothing, and reports a fault, when the value is not of that kind or not in range.
std::optional<double> read_number(const Value& value, const Limits& limits, Findings& findings);
std::optional<int> read_whole(const Value& value, int low, int high, Findings& findings);
// limits in yards; the value and the message in units; the result in yards.
std::optional<double> read_length(const Value& value, const Limits& limits, Units units, Findings& findings);
std::optional<std::string> read_words(const Value& value, Findings& findings);
std::vector<Value> read_list(const Value& value, std::size_t least, std::size_t most, std::string_view of_what,
                             Findings& findings);

// One of a few words, each of which `named` turns into a T.
template <class T>
std::optional<T> read_choice(const Value& value, const std::vector<std::string>& words,
                             std::optional<T> (*named)(std::string_view), Findings& findings);

enum class Need { optional, required };

// The keys of one map. Making it reports what is no map, unknown keys and repeated ones; asking it for a required key
// reports that it is missing, unless a misspelt one has been found that was most likely meant for it.
class Fields {
 public:
  Fields(const Value& value, std::vector<std::string> known, Findings& findings);

  bool is_map() const { return value_.node->kind == Node::Kind::map; }
  bool has(const std::string& key) const { return entry(key) != nullptr; }
  // Whether the key is there, or a misspelt one that stands for it.
  bool is_meant(const std::string& key) const { return has(key) || meant_.count(key) == 1; }
  std::string path_of(const std::string& key) const;
  std::optional<Value> get(const std::string& key, Need need, std::string_view expected = "a value");

  std::optional<double> number(const std::string& key, const Limits& limits, Need need = Need::optional);
  std::optional<int> whole(const std::string& key, int low, int high, Need need = Need::optional);
  std::optional<double> length(const std::string& key, const Limits& limits, Units units, Need need = Need::optional);
  std::optional<std::string> words(const std::string& key, Need need = Need::optional);
  // Nothing where the key is missing or its value is no list.
  std::vector<Value> list(const std::string& key, std::size_t least, std::size_t most, std::string_view of_what,
                          Need need = Need::optional);
  template <class T>
  std::optional<T> choice(const std::string& key, const std::vector<std::string>& words,
                          std::optional<T> (*named)(std::string_view), Need need = Need::optional) {
    const auto value = get(key, need, one_of(words));
    return value ? read_choice(*value, words, named, findings_) : std::nullopt;
  }

 private:
  static std::string one_of(const std::vector<std::string>& words);
  const Entry* entry(const std::string& key) const;
  void report_unknown(const Entry& entry);
  void report_decimal_comma(const Entry& number, const Entry& decimals);

  Value value_;
  std::vector<std::string> known_;
  std::set<std::string> meant_;  // known keys that misspelt ones stand for
  Findings& findings_;
};

void report_not_one_of(const Value& value, const std::vector<std::string>& words, Findings& findings);

template <class T>
std::optional<T> read_choice(const Value& value, const std::vector<std::string>& words,
                             std::optional<T> (*named)(std::string_view), Findings& findings) {
  const Node& node = *value.node;
  std::optional<T> choice;
  if (node.kind == Node::Kind::scalar) choice = named(node.text);
  if (!choice) report_not_one_of(value, words, findings);
  return choice;
}

// How rules tell of what was read: of a value as a whole, whatever the key; of the keys of a map, which stands for
// itself where it has no such key; of each value of a list as a whole. What is given must outlive them.
Tell at_value(const Value& value, Findings& findings);
Tell at_keys(Fields& fields, const Value& map, Findings& findings);
TellOf at_values(const std::vector<Value>& values, Findings& findings);

std::optional<Units> units_named(std::string_view text);
// The `units:` of a file; yards where it is silent.
Units read_units(Fields& fields);

}  // namespace yardworth::input
