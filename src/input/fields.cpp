#include "input/fields.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <tuple>
#include <utility>

#include "core/message_text.hpp"
#include "core/number_text.hpp"
#include "core/spelling.hpp"

namespace yardworth::input {
namespace {

constexpr std::size_t most_findings = 200;

// What is quoted is text.
ParsedNumber number_of(const Node& node) {
  if (node.kind != Node::Kind::scalar || node.quoted) return {0.0, NumberFault::not_a_number};
  return parse_number(node.text);
}

// The number, when it is one and within its limits; otherwise a fault that expects `kind` within the limits.
std::optional<double> number_within(const Value& value, const Limits& limits, std::string_view kind,
                                    Findings& findings) {
  const Node& node = *value.node;
  if (node.kind == Node::Kind::refused) return std::nullopt;
  const ParsedNumber parsed = number_of(node);
  const std::string expected = fmt::format("{} {}", kind, bounds(limits));
  if (parsed.fault == NumberFault::not_a_number) {
    const auto point = node.kind == Node::Kind::scalar ? with_decimal_point(node.text) : std::nullopt;
    findings.fault(value, described(node),
                   point ? fmt::format("{}, with a point in the place of the comma", *point) : expected);
  } else if (parsed.fault == NumberFault::not_finite) {
    findings.fault(value, shortened(node.text) + ", which is not a finite number", expected);
  } else if (parsed.value < limits.low || parsed.value > limits.high) {
    findings.fault(value, shortened(node.text), expected);
  } else {
    return parsed.value;
  }
  return std::nullopt;
}

// Whether a key without a value is what stands behind the comma of the number before it.
bool splits_number(const Entry& number, const Entry& decimals) {
  return number_of(number.value).fault == NumberFault::none && decimals.value.kind == Node::Kind::nothing &&
         !decimals.key.empty() && decimals.key.find_first_not_of("0123456789") == std::string::npos;
}

std::string child_path(const std::string& path, const std::string& key) {
  return path.empty() ? shortened(key) : path + "." + shortened(key);
}

}  // namespace

void Findings::fault(const Value& at, std::string found, std::string expected) {
  fault(at.node->place, at.path, std::move(found), std::move(expected));
}

void Findings::advice(const Value& at, std::string found, std::string expected) {
  all_.push_back({Severity::advice, file_, at.node->place.line, at.node->place.column, at.path, std::move(found),
                  std::move(expected)});
}

void Findings::fault(Place place, std::string path, std::string found, std::string expected) {
  all_.push_back(
      {Severity::fault, file_, place.line, place.column, std::move(path), std::move(found), std::move(expected)});
}

Diagnostic Findings::about(const Value& at) const {
  return {Severity::fault, file_, at.node->place.line, at.node->place.column, at.path, "", ""};
}

std::vector<Diagnostic> Findings::in_order() const {
  // Of pointers: a file at fault everywhere has very many findings.
  std::vector<const Diagnostic*> ordered;
  ordered.reserve(all_.size());
  for (const Diagnostic& finding : all_) ordered.push_back(&finding);
  std::stable_sort(ordered.begin(), ordered.end(), [](const Diagnostic* a, const Diagnostic* b) {
    return std::tie(a->line, a->column) < std::tie(b->line, b->column);
  });
  // Advice must not push the faults out of sight.
  if (ordered.size() > most_findings) {
    std::stable_partition(ordered.begin(), ordered.end(),
                          [](const Diagnostic* finding) { return finding->severity == Severity::fault; });
  }
  std::vector<Diagnostic> told;
  for (std::size_t i = 0; i < std::min(ordered.size(), most_findings); ++i) told.push_back(*ordered[i]);
  if (ordered.size() <= most_findings) return told;
  // They stand where the first of them is.
  Diagnostic rest = *ordered[most_findings];
  rest.path.clear();
  rest.found = fmt::format("{} more of the kind", ordered.size() - most_findings);
  rest.expected = "the first ones to be put right";
  told.push_back(std::move(rest));
  return told;
}

std::string described(const Node& node) {
  switch (node.kind) {
    case Node::Kind::scalar:
      return node.quoted || number_of(node).fault != NumberFault::none ? quoted(node.text) : shortened(node.text);
    case Node::Kind::list:
      return "a list";
    case Node::Kind::map:
      return "a map";
    case Node::Kind::nothing:
    case Node::Kind::refused:
      break;
  }
  return "nothing";
}

std::optional<double> read_number(const Value& value, const Limits& limits, Findings& findings) {
  return number_within(value, limits, "a number", findings);
}

std::optional<int> read_whole(const Value& value, int low, int high, Findings& findings) {
  const Limits limits{static_cast<double>(low), static_cast<double>(high)};
  const auto number = number_within(value, limits, "a whole number", findings);
  if (!number) return std::nullopt;
  if (std::trunc(*number) != *number) {
    findings.fault(value, described(*value.node), "a whole number " + bounds(limits));
    return std::nullopt;
  }
  return static_cast<int>(*number);
}

std::optional<double> read_length(const Value& value, const Limits& limits, Units units, Findings& findings) {
  const auto number = number_within(value, in_units(limits, units), "a number", findings);
  return number ? std::optional<double>(to_yards(*number, units)) : std::nullopt;
}

std::optional<std::string> read_words(const Value& value, Findings& findings) {
  const Node& node = *value.node;
  if (node.kind == Node::Kind::refused) return std::nullopt;
  const bool blank = node.text.find_first_not_of(" \t\n") == std::string::npos;
  if (node.kind != Node::Kind::scalar || blank) {
    findings.fault(value, described(node), "text");
    return std::nullopt;
  }
  if (node.text.size() > limits::longest_text) {
    findings.fault(value, described(node), fmt::format("text of at most {} bytes", limits::longest_text));
    return std::nullopt;
  }
  return node.text;
}

std::vector<Value> read_list(const Value& value, std::size_t least, std::size_t most, std::string_view of_what,
                             Findings& findings) {
  const Node& node = *value.node;
  if (node.kind == Node::Kind::refused) return {};
  if (node.kind != Node::Kind::list) {
    findings.fault(value, described(node), fmt::format("a list of {}", of_what));
    return {};
  }
  const std::size_t count = node.items.size();
  if (count < least || count > most) {
    const std::string wanted = least == most ? fmt::format("{}", least) : fmt::format("from {} to {}", least, most);
    findings.fault(value, fmt::format("a list of {}", count), fmt::format("{} {}", wanted, of_what));
  }
  std::vector<Value> items;
  for (std::size_t i = 0; i < std::min(count, most); ++i) {
    items.push_back({&node.items[i], fmt::format("{}[{}]", value.path, i)});
  }
  return items;
}

void report_not_one_of(const Value& value, const std::vector<std::string>& words, Findings& findings) {
  const Node& node = *value.node;
  if (node.kind == Node::Kind::refused) return;
  const bool scalar = node.kind == Node::Kind::scalar;
  findings.fault(value, scalar ? quoted(node.text) : described(node), one_of(scalar ? node.text : "", words));
}

Fields::Fields(const Value& value, std::vector<std::string> known, Findings& findings)
    : value_(value), known_(std::move(known)), findings_(findings) {
  const Node& node = *value_.node;
  if (node.kind == Node::Kind::refused) return;
  if (!is_map()) {
    findings_.fault(value_, described(node), fmt::format("a map with keys among {}", fmt::join(known_, ", ")));
    return;
  }
  std::set<std::string> seen;
  const Entry* before = nullptr;
  for (const Entry& item : node.entries) {
    const bool is_known = std::find(known_.begin(), known_.end(), item.key) != known_.end();
    const Entry* number = std::exchange(before, &item);
    if (!is_known && number != nullptr && splits_number(*number, item)) {
      report_decimal_comma(*number, item);
    } else if (!is_known) {
      report_unknown(item);
    } else if (!seen.insert(item.key).second) {
      findings_.fault(item.place, path_of(item.key), fmt::format("the key {} again", quoted(item.key)),
                      "each key once");
    }
  }
}

// In {carry: 21,4} the comma begins a key "4" without a value.
void Fields::report_decimal_comma(const Entry& number, const Entry& decimals) {
  findings_.fault(number.value.place, path_of(number.key),
                  quoted(fmt::format("{},{}", number.value.text, decimals.key)),
                  fmt::format("{}.{}, with a point in the place of the comma", number.value.text, decimals.key));
}

std::string Fields::path_of(const std::string& key) const { return child_path(value_.path, key); }

void Fields::report_unknown(const Entry& item) {
  std::string expected = fmt::format("one of {}", fmt::join(known_, ", "));
  if (const auto meant = nearest_word(item.key, known_)) {
    meant_.insert(*meant);
    expected = fmt::format("\"{}\", the nearest known key", *meant);
  }
  findings_.fault(item.place, path_of(item.key), fmt::format("unknown key {}", quoted(item.key)), expected);
}

const Entry* Fields::entry(const std::string& key) const {
  const auto& entries = value_.node->entries;
  const auto found = std::find_if(entries.begin(), entries.end(), [&](const Entry& item) { return item.key == key; });
  return found == entries.end() ? nullptr : &*found;
}

std::optional<Value> Fields::get(const std::string& key, Need need, std::string_view expected) {
  if (!is_map()) return std::nullopt;
  if (const Entry* found = entry(key)) return Value{&found->value, path_of(key)};
  const bool missing = need == Need::required && meant_.count(key) == 0;
  if (missing) {
    findings_.fault(value_.node->place, path_of(key), missing_key, std::string(expected));
  }
  return std::nullopt;
}

std::optional<double> Fields::number(const std::string& key, const Limits& limits, Need need) {
  const auto value = get(key, need, fmt::format("a number {}", bounds(limits)));
  return value ? read_number(*value, limits, findings_) : std::nullopt;
}

std::optional<int> Fields::whole(const std::string& key, int low, int high, Need need) {
  const auto value = get(key, need, fmt::format("a whole number from {} to {}", low, high));
  return value ? read_whole(*value, low, high, findings_) : std::nullopt;
}

std::optional<double> Fields::length(const std::string& key, const Limits& limits, Units units, Need need) {
  const auto value = get(key, need, fmt::format("a number of {}", name(units)));
  return value ? read_length(*value, limits, units, findings_) : std::nullopt;
}

std::optional<std::string> Fields::words(const std::string& key, Need need) {
  const auto value = get(key, need, "text");
  return value ? read_words(*value, findings_) : std::nullopt;
}

std::vector<Value> Fields::list(const std::string& key, std::size_t least, std::size_t most, std::string_view of_what,
                                Need need) {
  const auto value = get(key, need, fmt::format("a list of {}", of_what));
  return value ? read_list(*value, least, most, of_what, findings_) : std::vector<Value>{};
}

std::string Fields::one_of(const std::vector<std::string>& words) {
  return fmt::format("one of {}", fmt::join(words, ", "));
}

Tell at_value(const Value& value, Findings& findings) {
  return [&](std::string_view, std::string found, std::string expected) {
    findings.fault(value, std::move(found), std::move(expected));
  };
}

Tell at_keys(Fields& fields, const Value& map, Findings& findings) {
  return [&](std::string_view key, std::string found, std::string expected) {
    const auto value = key.empty() ? std::nullopt : fields.get(std::string(key), Need::optional);
    findings.fault(value.value_or(map), std::move(found), std::move(expected));
  };
}

TellOf at_values(const std::vector<Value>& values, Findings& findings) {
  return [&](std::size_t i) { return at_value(values[i], findings); };
}

std::optional<Units> units_named(std::string_view text) {
  if (text == name(Units::yards)) return Units::yards;
  if (text == name(Units::metres)) return Units::metres;
  return std::nullopt;
}

Units read_units(Fields& fields) {
  return fields.choice<Units>("units", {"yards", "metres"}, units_named).value_or(Units::yards);
}

}  // namespace yardworth::input
