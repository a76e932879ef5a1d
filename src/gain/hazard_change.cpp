#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "core/message_text.hpp"
#include "course/set_up.hpp"
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

Hazard changed_hazard(const HazardChange& change, const Hazard* was, const HoleLine& line, const Tell& tell) {
  StripEntry entry = entry_of(change, was);
  check_complete(entry, line.units, tell);
  check_limits(entry, line.units, tell);
  const Hazard hazard = strip_of(entry, line, tell);
  check_not_in_mitre(hazard, line, tell);
  return hazard;
}

bool moves_whole(const HazardChange& change) { return change.along_yd || change.right_yd; }

// Whether nothing stands beside a move as a whole that would say the place in another way.
bool only_moves(const HazardChange& change, const Hazard* was, const Tell& tell) {
  const char* moved = change.along_yd ? "along" : "right";
  if (was == nullptr) tell(moved, fmt::format("{} of a hazard that is added", moved), "a hazard that is there");
  const std::pair<const char*, bool> others[] = {{"side", change.side.has_value()},
                                                 {"from", change.from_yd.has_value()},
                                                 {"to", change.to_yd.has_value()},
                                                 {"near", change.near_yd.has_value()},
                                                 {"far", change.far_yd.has_value()}};
  bool alone = was != nullptr;
  for (const auto& [key, said] : others) {
    if (!said) continue;
    tell(key, fmt::format("{} beside {}", key, moved), "either how far it moves or where it lies");
    alone = false;
  }
  if (was != nullptr && was->side == Side::across && change.right_yd.value_or(0.0) != 0.0) {
    tell("right", "right of a hazard across the hole", "along alone");
    alone = false;
  }
  return alone;
}

// A strip on one side of the line, or a polygon over it.
Hazard shifted_strip(const Hazard& was, double along_yd, double right_yd) {
  const double from = was.from_yd + along_yd;
  const double to = was.to_yd + along_yd;
  const double left = right_yd + (was.side == Side::left ? -was.far_yd : was.near_yd);
  const double right = right_yd + (was.side == Side::left ? -was.near_yd : was.far_yd);
  if (left >= 0.0) return hazard_beside(was.kind, Side::right, from, to, left, right);
  if (right <= 0.0) return hazard_beside(was.kind, Side::left, from, to, -right, -left);
  Hazard over;
  over.kind = was.kind;
  over.corners = {{left, from}, {left, to}, {right, to}, {right, from}};
  return over;
}

// In its shape elsewhere.
Hazard shifted(const Hazard& was, double along_yd, double right_yd) {
  if (was.side && was.side != Side::across) return shifted_strip(was, along_yd, right_yd);
  Hazard hazard = was;
  hazard.from_yd += along_yd;
  hazard.to_yd += along_yd;
  for (LinePlace& corner : hazard.corners) corner = {corner.right_yd + right_yd, corner.along_yd + along_yd};
  return hazard;
}

// Tells what a file with the hazard in it would be told.
void check_place(const Hazard& hazard, const HoleLine& line, const Tell& tell) {
  if (hazard.side) {
    StripEntry entry{hazard.kind, hazard.side, hazard.from_yd, hazard.to_yd, {}, {}};
    if (hazard.side != Side::across) {
      entry.near_yd = hazard.near_yd;
      entry.far_yd = hazard.far_yd;
    }
    check_limits(entry, line.units, tell);
    strip_of(entry, line, tell);
  } else {
    // One corner that is too far says it for all.
    const bool within = std::all_of(hazard.corners.begin(), hazard.corners.end(), [&](const LinePlace& corner) {
      return check_length(corner.along_yd, limits::along_hole, line.units, "along", tell) &&
             check_length(corner.right_yd, limits::beside_line, line.units, "right", tell);
    });
    if (within) check_polygon(hazard.corners, line, tell);
  }
  check_not_in_mitre(hazard, line, tell);
}

Hazard moved_hazard(const HazardChange& change, const Hazard* was, const HoleLine& line, const Tell& tell) {
  if (!only_moves(change, was, tell)) return {};
  const double along = change.along_yd.value_or(0.0);
  const double right = change.right_yd.value_or(0.0);
  const bool within = check_length(along, limits::moved, line.units, "along", tell) &&
                      check_length(right, limits::moved, line.units, "right", tell);
  if (!within) return {};
  Hazard hazard = shifted(*was, along, right);
  if (change.kind) hazard.kind = *change.kind;
  check_place(hazard, line, tell);
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
  const HoleLine line{changed.course.units, hole->length_yd.front(), hole->doglegs};
  const Hazard hazard =
      moves_whole(change) ? moved_hazard(change, was, line, tell) : changed_hazard(change, was, line, tell);
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
