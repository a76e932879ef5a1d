#include "input/hazard_change.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <utility>

#include "core/message_text.hpp"
#include "core/number_text.hpp"
#include "input/formats.hpp"

namespace yardworth {
namespace input {
namespace {

constexpr const char* move_form = "HOLE:NUMBER:key=value,..., such as 4:2:from=230,to=245";
constexpr const char* addition_form =
    "HOLE:key=value,..., such as 4:kind=bunker,side=left,from=230,to=245,near=12,far=24";

// One option while it is read.
struct Asked {
  std::string option;
  std::string text;
  std::vector<Diagnostic>& findings;

  std::string named() const { return option + " " + shortened(text); }
  void fault(std::string path, std::string found, std::string expected) const {
    Diagnostic finding;
    finding.file = named();
    finding.path = std::move(path);
    finding.found = std::move(found);
    finding.expected = std::move(expected);
    findings.push_back(std::move(finding));
  }
};

// Takes what stands before the first colon off the front; nothing where there is none.
std::optional<std::string> take_part(std::string& text) {
  const std::size_t colon = text.find(':');
  if (colon == std::string::npos) return std::nullopt;
  std::string part = text.substr(0, colon);
  text.erase(0, colon + 1);
  return part;
}

Hole* hole_of(const Asked& asked, const std::string& text, Course& course) {
  const auto number = parse_whole_number(text);
  for (Hole& hole : course.holes) {
    if (number && hole.number == *number) return &hole;
  }
  asked.fault("hole", fmt::format("\"{}\"", shortened(text)),
              fmt::format("a hole of {}, 1 to {}", shortened(course.name), course.holes.size()));
  return nullptr;
}

Hazard* hazard_of(const Asked& asked, const std::string& text, Hole& hole) {
  const auto number = parse_whole_number(text);
  const int most = static_cast<int>(hole.hazards.size());
  if (number && *number >= 1 && *number <= most) return &hole.hazards[static_cast<std::size_t>(*number - 1)];
  const std::string expected =
      most == 0 ? fmt::format("a hazard of hole {}, which has none; --add-hazard adds one", hole.number)
                : fmt::format("a hazard of hole {}, 1 to {} in the order of the file", hole.number, most);
  asked.fault("number", fmt::format("\"{}\"", shortened(text)), expected);
  return nullptr;
}

Entry entry_of(const std::string& key, const std::string& text) {
  Entry entry;
  entry.key = key;
  entry.value.kind = Node::Kind::scalar;
  entry.value.text = text;
  return entry;
}

// "from=230,to=245" as the map that a file would have it in; nothing, with a fault, where it is no such list.
std::optional<Node> map_of(const Asked& asked, const std::string& text, const char* form) {
  Node map;
  map.kind = Node::Kind::map;
  for (std::size_t begin = 0; begin <= text.size();) {
    const std::size_t end = std::min(text.find(',', begin), text.size());
    const std::string part = text.substr(begin, end - begin);
    const std::size_t equals = part.find('=');
    if (equals == std::string::npos || equals == 0 || equals + 1 == part.size()) {
      asked.fault("", fmt::format("\"{}\"", shortened(part)), form);
      return std::nullopt;
    }
    map.entries.push_back(entry_of(part.substr(0, equals), part.substr(equals + 1)));
    begin = end + 1;
  }
  return map;
}

bool says(const Node& map, std::string_view key) {
  return std::any_of(map.entries.begin(), map.entries.end(), [&](const Entry& entry) { return entry.key == key; });
}

// What the move does not say is as it was.
void keep_the_rest(const Hazard& was, Units units, Node& map) {
  std::vector<std::pair<std::string, std::string>> rest = {{"kind", std::string(name(was.kind))}};
  const auto length = [units](double yards) { return fmt::format("{}", from_yards(yards, units)); };
  if (was.side) {
    rest.insert(rest.end(), {{"side", std::string(name(*was.side))}, {"from", length(was.from_yd)}});
    rest.emplace_back("to", length(was.to_yd));
    const bool other_kind_of_side =
        says(map, "side") && std::any_of(map.entries.begin(), map.entries.end(), [&](const Entry& entry) {
          return entry.key == "side" && (entry.value.text == name(Side::across)) != (*was.side == Side::across);
        });
    if (*was.side != Side::across && !other_kind_of_side) {
      rest.insert(rest.end(), {{"near", length(was.near_yd)}, {"far", length(was.far_yd)}});
    }
  }
  for (const auto& [key, text] : rest) {
    if (!says(map, key)) map.entries.push_back(entry_of(key, text));
  }
}

// The hazard as a file would be read that has it, with the same faults; nothing when there are any.
std::optional<Hazard> read_hazard(const Asked& asked, const Node& map, const Hole& hole, Units units) {
  Findings findings(asked.named(), {});
  const Hazard hazard = hazard_on_hole({&map, ""}, hole, units, findings);
  for (const Diagnostic& finding : findings.in_order()) asked.findings.push_back(finding);
  return findings.has_fault() ? std::nullopt : std::optional<Hazard>(hazard);
}

void remember(ChangedCourse& changed, const ChangedHazard& hazard) {
  const auto same = [&](const ChangedHazard& other) {
    return other.hole == hazard.hole && other.hazard == hazard.hazard;
  };
  if (std::none_of(changed.hazards.begin(), changed.hazards.end(), same)) changed.hazards.push_back(hazard);
}

void move_hazard(const Asked& asked, ChangedCourse& changed) {
  std::string text = asked.text;
  const auto hole_text = take_part(text);
  const auto hazard_text = take_part(text);
  if (!hole_text || !hazard_text) {
    asked.fault("", fmt::format("\"{}\"", shortened(asked.text)), move_form);
    return;
  }
  Hole* hole = hole_of(asked, *hole_text, changed.course);
  Hazard* hazard = hole != nullptr ? hazard_of(asked, *hazard_text, *hole) : nullptr;
  auto map = map_of(asked, text, move_form);
  if (hazard == nullptr || !map) return;
  keep_the_rest(*hazard, changed.course.units, *map);
  const auto moved = read_hazard(asked, *map, *hole, changed.course.units);
  if (!moved) return;
  *hazard = *moved;
  remember(changed, {hole->number, static_cast<std::size_t>(hazard - hole->hazards.data()), false});
}

void add_hazard(const Asked& asked, ChangedCourse& changed) {
  std::string text = asked.text;
  const auto hole_text = take_part(text);
  if (!hole_text) {
    asked.fault("", fmt::format("\"{}\"", shortened(asked.text)), addition_form);
    return;
  }
  Hole* hole = hole_of(asked, *hole_text, changed.course);
  const auto map = map_of(asked, text, addition_form);
  if (hole == nullptr || !map) return;
  const auto hazard = read_hazard(asked, *map, *hole, changed.course.units);
  if (!hazard) return;
  hole->hazards.push_back(*hazard);
  remember(changed, {hole->number, hole->hazards.size() - 1, true});
}

}  // namespace
}  // namespace input

Reading<ChangedCourse> change_hazards(const Course& course, const HazardChanges& changes) {
  Reading<ChangedCourse> reading;
  ChangedCourse changed{course, {}};
  for (const std::string& text : changes.moves) {
    input::move_hazard({"--move-hazard", text, reading.findings}, changed);
  }
  for (const std::string& text : changes.additions) {
    input::add_hazard({"--add-hazard", text, reading.findings}, changed);
  }
  if (!has_fault(reading.findings)) reading.value = std::move(changed);
  return reading;
}

}  // namespace yardworth
