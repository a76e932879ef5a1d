#include "cli/hazard_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <utility>

#include "core/message_text.hpp"
#include "core/number_text.hpp"
#include "core/spelling.hpp"
#include "course/hazard_kind.hpp"
#include "validate/tell.hpp"

namespace yardworth::cli {
namespace {

constexpr const char* move_form = "HOLE:NUMBER:key=value,..., such as 4:2:from=230,to=245";
constexpr const char* addition_form =
    "HOLE:key=value,..., such as 4:kind=bunker,side=left,from=230,to=245,near=12,far=24";

const std::vector<std::string> hazard_keys = {"kind", "side", "from", "to", "near", "far", "along", "right"};

struct LengthKey {
  const char* key;
  std::optional<double> HazardChange::*length;
  const Limits& limits_yd;
};
constexpr LengthKey length_keys[] = {
    {"from", &HazardChange::from_yd, limits::along_hole}, {"to", &HazardChange::to_yd, limits::along_hole},
    {"near", &HazardChange::near_yd, limits::from_line},  {"far", &HazardChange::far_yd, limits::from_line},
    {"along", &HazardChange::along_yd, limits::moved},    {"right", &HazardChange::right_yd, limits::moved},
};

// Blanks around a word mean nothing.
std::string trimmed(const std::string& text) {
  const std::size_t first = text.find_first_not_of(' ');
  return first == std::string::npos ? "" : text.substr(first, text.find_last_not_of(' ') - first + 1);
}

// Takes what stands before the first colon off the front; nothing where there is none.
std::optional<std::string> take_part(std::string& text) {
  const std::size_t colon = text.find(':');
  if (colon == std::string::npos) return std::nullopt;
  std::string part = trimmed(text.substr(0, colon));
  text.erase(0, colon + 1);
  return part;
}

// "from=230,to=245" key by key; nothing, and a fault, where it is no such list.
using KeyValue = std::pair<std::string, std::string>;
std::optional<std::vector<KeyValue>> key_values(const std::string& text, const char* form, const Tell& tell) {
  std::vector<KeyValue> all;
  for (std::size_t begin = 0; begin <= text.size();) {
    const std::size_t end = std::min(text.find(',', begin), text.size());
    const std::string part = text.substr(begin, end - begin);
    const std::size_t equals = std::min(part.find('='), part.size());
    const std::string key = trimmed(part.substr(0, equals));
    const std::string value = trimmed(part.substr(std::min(equals + 1, part.size())));
    if (key.empty() || value.empty()) {
      tell("", quoted(part), form);
      return std::nullopt;
    }
    all.emplace_back(key, value);
    begin = end + 1;
  }
  return all;
}

std::optional<double> length_of(const std::string& text, const LengthKey& key, Units units, const Tell& tell) {
  const ParsedNumber number = parse_number(text);
  if (number.fault == NumberFault::none) return to_yards(number.value, units);
  const bool not_finite = number.fault == NumberFault::not_finite;
  tell(key.key, not_finite ? shortened(text) + ", which is not a finite number" : quoted(text),
       "a number " + bounds(in_units(key.limits_yd, units)));
  return std::nullopt;
}

template <class T>
std::optional<T> choice_of(const std::string& text, const char* key, const std::vector<std::string>& words,
                           std::optional<T> (*named)(std::string_view), const Tell& tell) {
  const auto choice = named(text);
  if (!choice) tell(key, quoted(text), one_of(text, words));
  return choice;
}

void read_value(const KeyValue& said, Units units, HazardChange& change, const Tell& tell) {
  const auto& [key, text] = said;
  if (key == "kind") {
    change.kind = choice_of<HazardKind>(text, "kind", hazard_kind_names(), hazard_kind_named, tell);
  } else if (key == "side") {
    change.side = choice_of<Side>(text, "side", {"left", "right", "across"}, side_named, tell);
  }
  for (const LengthKey& known : length_keys) {
    if (key == known.key) change.*known.length = length_of(text, known, units, tell);
  }
}

void read_values(const std::vector<KeyValue>& all, Units units, HazardChange& change, const Tell& tell) {
  std::set<std::string> seen;
  for (const KeyValue& said : all) {
    const std::string& key = said.first;
    if (std::find(hazard_keys.begin(), hazard_keys.end(), key) == hazard_keys.end()) {
      const auto meant = nearest_word(key, hazard_keys);
      tell(shortened(key), "unknown key " + quoted(key),
           meant ? fmt::format("\"{}\", the nearest known key", *meant) : one_of(key, hazard_keys));
    } else if (!seen.insert(key).second) {
      tell(key, fmt::format("the key {} again", quoted(key)), "each key once");
    } else {
      read_value(said, units, change, tell);
    }
  }
}

// One option while it is read.
struct Option {
  const char* name;
  const char* form;
  bool moves;  // otherwise it adds
};
constexpr Option move_option{"--move-hazard", move_form, true};
constexpr Option addition_option{"--add-hazard", addition_form, false};

// The change that the text says; nothing, and what is wrong with the text, where it says none.
std::optional<HazardChange> read_change(const Option& option, std::string text, Units units,
                                        std::vector<Diagnostic>& findings) {
  HazardChange change;
  change.name = fmt::format("{} {}", option.name, shortened(text));
  const std::size_t told_before = findings.size();
  const Tell tell = tell_into(findings, change.name);
  const std::string whole = text;
  const auto hole = take_part(text);
  const auto hazard = option.moves ? take_part(text) : std::nullopt;
  if (!hole || (option.moves && !hazard)) {
    tell("", quoted(whole), option.form);
    return std::nullopt;
  }
  const auto number = parse_whole_number(*hole);
  if (!number) tell("hole", quoted(*hole), "the number of a hole");
  change.hole = number.value_or(0);
  if (hazard) {
    change.hazard = parse_whole_number(*hazard);
    if (!change.hazard) tell("number", quoted(*hazard), "the number of a hazard, from 1 in the order of the file");
  }
  if (const auto said = key_values(text, option.form, tell)) read_values(*said, units, change, tell);
  return findings.size() == told_before ? std::optional(change) : std::nullopt;
}

// Where there is nothing to move the command can still add.
void point_to_adding(Diagnostic& finding) {
  const bool none_there = finding.path == "number" && finding.expected.find("which has none") != std::string::npos;
  if (none_there) finding.expected += fmt::format("; {} adds one", addition_option.name);
}

}  // namespace

Reading<ChangedCourse> change_hazards(const Course& course, const HazardTexts& texts) {
  std::vector<Diagnostic> findings;
  std::vector<HazardChange> changes;
  const auto read = [&](const Option& option, const std::vector<std::string>& all) {
    for (const std::string& text : all) {
      if (auto change = read_change(option, text, course.units, findings)) changes.push_back(std::move(*change));
    }
  };
  read(move_option, texts.moves);
  read(addition_option, texts.additions);
  Reading<ChangedCourse> reading = yardworth::change_hazards(course, changes);
  for (Diagnostic& finding : reading.findings) point_to_adding(finding);
  reading.findings.insert(reading.findings.begin(), findings.begin(), findings.end());
  if (has_fault(reading.findings)) reading.value.reset();
  return reading;
}

}  // namespace yardworth::cli
