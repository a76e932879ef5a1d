#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "core/message_text.hpp"
#include "validate/hole_rules.hpp"
#include "yardworth/change.hpp"

namespace yardworth {
namespace {

Hole* hole_of(const HazardChange& change, Course& course, const Tell& tell) {
  for (Hole& hole : course.holes) {
    if (hole.number == change.hole) return &hole;
  }
  tell("hole", fmt::format("\"{}\"", change.hole),
       fmt::format("a hole of {}, 1 to {}", shortened(course.name), course.holes.size()));
  return nullptr;
}

Hazard* hazard_of(int number, Hole& hole, const Tell& tell) {
  const int most = static_cast<int>(hole.hazards.size());
  if (number >= 1 && number <= most) return &hole.hazards[static_cast<std::size_t>(number - 1)];
  const std::string expected =
      most == 0 ? fmt::format("a hazard of hole {}, which has none", hole.number)
                : fmt::format("a hazard of hole {}, 1 to {} in the order of the file", hole.number, most);
  tell("number", fmt::format("\"{}\"", number), expected);
  return nullptr;
}

// What the change says, and, where a hazard is moved, what stays of it.
StripEntry entry_of(const HazardChange& change, const Hazard* was) {
  StripEntry entry{change.kind, change.side, change.from_yd, change.to_yd, change.near_yd, change.far_yd};
  if (was == nullptr) return entry;
  if (!entry.kind) entry.kind = was->kind;
  if (!was->side) return entry;
  if (!entry.side) entry.side = was->side;
  if (!entry.from_yd) entry.from_yd = was->from_yd;
  if (!entry.to_yd) entry.to_yd = was->to_yd;
  const bool width_stays = was->side != Side::across && entry.side != Side::across;
  if (!width_stays) return entry;
  if (!entry.near_yd) entry.near_yd = was->near_yd;
  if (!entry.far_yd) entry.far_yd = was->far_yd;
  return entry;
}

// Drops what is not within its limits.
void check_limits(StripEntry& entry, Units units, const Tell& tell) {
  const auto check = [&](std::optional<double>& yards, const Limits& limits_yd, const char* key) {
    if (yards && !check_length(*yards, limits_yd, units, key, tell)) yards.reset();
  };
  check(entry.from_yd, limits::along_hole, "from");
  check(entry.to_yd, limits::along_hole, "to");
  check(entry.near_yd, limits::from_line, "near");
  check(entry.far_yd, limits::from_line, "far");
}

void check_complete(const StripEntry& entry, Units units, const Tell& tell) {
  const std::string length = fmt::format("a number of {}", name(units));
  if (!entry.kind) tell("kind", missing_key, "one of bunker, penalty_area, out_of_bounds, trees");
  if (!entry.side) tell("side", missing_key, "one of left, right, across");
  if (!entry.from_yd) tell("from", missing_key, length);
  if (!entry.to_yd) tell("to", missing_key, length);
}

Hazard changed_hazard(const HazardChange& change, const Hazard* was, const Hole& hole, Units units, const Tell& tell) {
  const HoleLine line{units, hole.length_yd.front(), hole.doglegs};
  StripEntry entry = entry_of(change, was);
  check_complete(entry, units, tell);
  check_limits(entry, units, tell);
  const Hazard hazard = strip_of(entry, line, tell);
  check_not_in_mitre(hazard, line, tell);
  return hazard;
}

void remember(ChangedCourse& changed, const ChangedHazard& hazard) {
  const auto same = [&](const ChangedHazard& other) {
    return other.hole == hazard.hole && other.hazard == hazard.hazard;
  };
  if (std::none_of(changed.hazards.begin(), changed.hazards.end(), same)) changed.hazards.push_back(hazard);
}

void apply(const HazardChange& change, ChangedCourse& changed, std::vector<Diagnostic>& findings) {
  const std::size_t told_before = findings.size();
  const Tell tell =
      tell_into(findings, change.name.empty() ? fmt::format("change of hole {}", change.hole) : change.name);
  Hole* hole = hole_of(change, changed.course, tell);
  if (hole == nullptr) return;
  Hazard* was = change.hazard ? hazard_of(*change.hazard, *hole, tell) : nullptr;
  if (change.hazard && was == nullptr) return;
  const Hazard hazard = changed_hazard(change, was, *hole, changed.course.units, tell);
  if (findings.size() > told_before) return;
  const bool added = was == nullptr;
  const std::size_t index = added ? hole->hazards.size() : static_cast<std::size_t>(*change.hazard - 1);
  if (added) {
    hole->hazards.push_back(hazard);
  } else {
    *was = hazard;
  }
  remember(changed, {hole->number, index, added});
}

}  // namespace

Reading<ChangedCourse> change_hazards(const Course& course, const std::vector<HazardChange>& changes) {
  Reading<ChangedCourse> reading;
  ChangedCourse changed{course, {}};
  for (const HazardChange& change : changes) apply(change, changed, reading.findings);
  if (!has_fault(reading.findings)) reading.value = std::move(changed);
  return reading;
}

}  // namespace yardworth
