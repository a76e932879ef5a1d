#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

#include "core/full_round.hpp"
#include "core/number_text.hpp"
#include "course/hazard_kind.hpp"
#include "course/set_up.hpp"
#include "input/formats.hpp"
#include "input/units_doubt.hpp"
#include "validate/course_rules.hpp"
#include "validate/hole_rules.hpp"

namespace yardworth::input {
namespace {

// What every hole of the file is read against.
struct Setting {
  Units units = Units::yards;
  std::vector<std::string> tees;  // names; empty when they could not be read
  int numbers_to = limits::most_holes;
};

// A hole while it is read: the longest length is what places along the line are held against, once it is known.
struct HoleReading {
  Hole hole;
  std::optional<double> longest_yd;
  std::vector<std::optional<double>> length_yd;  // by tee
  std::optional<Value> number;
  std::optional<Value> stroke_index;

  HoleLine line(Units units) const { return {units, longest_yd, hole.doglegs}; }
};

Tee tee_from(const Value& value, std::size_t holes, Findings& findings) {
  Fields fields(value, {"name", "course_rating", "slope", "for"}, findings);
  Tee tee;
  tee.name = fields.words("name", Need::required).value_or("");
  tee.course_rating = fields.number("course_rating", rating_limits(holes));
  tee.slope = fields.number("slope", limits::slope);
  tee.rated_for = fields.choice<Gender>("for", {"men", "women"}, gender_named);
  return tee;
}

// Names of the tees when each could be read and differs; otherwise nothing, since nothing can be held against them.
std::vector<std::string> names_of(const std::vector<Tee>& tees) {
  std::vector<std::string> names;
  for (const Tee& tee : tees) {
    const bool usable = !tee.name.empty() && std::find(names.begin(), names.end(), tee.name) == names.end();
    if (!usable) return {};
    names.push_back(tee.name);
  }
  return names;
}

void read_lengths(const Value& value, const Setting& setting, HoleReading& reading, Findings& findings) {
  reading.length_yd.assign(setting.tees.size(), std::nullopt);
  if (setting.tees.empty()) return;
  Fields fields(value, setting.tees, findings);
  for (std::size_t tee = 0; tee < setting.tees.size(); ++tee) {
    reading.length_yd[tee] = fields.length(setting.tees[tee], limits::hole_length, setting.units, Need::required);
    reading.hole.length_yd.push_back(reading.length_yd[tee].value_or(0.0));
    const bool longer = tee > 0 && reading.longest_yd && reading.length_yd[tee].value_or(0.0) > *reading.longest_yd;
    if (tee == 0) reading.longest_yd = reading.length_yd[0];
    if (longer) {
      findings.advice(
          *fields.get(setting.tees[tee], Need::optional), spoken(*reading.length_yd[tee], setting.units),
          fmt::format("no more than the {} of the first tee, or a reason", spoken(*reading.longest_yd, setting.units)));
    }
  }
}

void read_doglegs(Fields& fields, const Setting& setting, HoleReading& reading, Findings& findings) {
  double last_yd = 0.0;
  for (const Value& value : fields.list("dogleg", 0, limits::most_parts, "doglegs")) {
    Fields keys(value, {"at", "turn"}, findings);
    const auto at = keys.length("at", limits::along_hole, setting.units, Need::required);
    const auto turn = keys.number("turn", limits::turn, Need::required);
    if (!at || !turn) continue;
    const Dogleg dogleg{*at, radians(*turn)};
    const bool fits = dogleg_fits(dogleg, last_yd, reading.line(setting.units), at_keys(keys, value, findings));
    if (fits) reading.hole.doglegs.push_back(dogleg);
    last_yd = std::max(last_yd, *at);
  }
}

// Nothing where the stretch has no extent.
std::optional<FairwayStretch> fairway_from(const Value& value, const Setting& setting, const HoleReading& reading,
                                           Findings& findings) {
  Fields fields(value, {"from", "to", "left", "right"}, findings);
  const Tell tell = at_keys(fields, value, findings);
  FairwayStretch stretch = default_fairway(4, 400.0).front();
  const auto from = fields.length("from", limits::along_hole, setting.units, Need::required);
  const auto to = fields.length("to", limits::along_hole, setting.units, Need::required);
  stretch.left_yd = fields.length("left", limits::half_width, setting.units).value_or(stretch.left_yd);
  stretch.right_yd = fields.length("right", limits::half_width, setting.units).value_or(stretch.right_yd);
  check_fairway_width(stretch, tell);
  if (!from || !to) return std::nullopt;
  stretch.from_yd = *from;
  stretch.to_yd = *to;
  return check_fairway_ends(stretch, reading.line(setting.units), tell) ? std::optional(stretch) : std::nullopt;
}

void read_fairway(Fields& fields, const Setting& setting, HoleReading& reading, Findings& findings) {
  if (!fields.has("fairway")) {
    reading.hole.fairway = default_fairway(reading.hole.par, reading.longest_yd.value_or(0.0));
    return;
  }
  double last_yd = limits::along_hole.low;
  for (const Value& value : fields.list("fairway", 0, limits::most_parts, "stretches of fairway")) {
    const auto stretch = fairway_from(value, setting, reading, findings);
    if (!stretch) continue;
    check_fairway_follows(*stretch, last_yd, setting.units, at_value(value, findings));
    last_yd = std::max(last_yd, stretch->to_yd);
    reading.hole.fairway.push_back(*stretch);
  }
}

GreenSize green_from(Fields& hole, const Setting& setting, Findings& findings) {
  GreenSize green = default_green();
  const auto value = hole.get("green", Need::optional);
  if (!value) return green;
  Fields fields(*value, {"depth", "width"}, findings);
  green.depth_yd = fields.length("depth", limits::green_extent, setting.units).value_or(green.depth_yd);
  green.width_yd = fields.length("width", limits::green_extent, setting.units).value_or(green.width_yd);
  return green;
}

std::vector<LinePlace> corners_from(const Value& polygon, const Setting& setting, Findings& findings) {
  std::vector<LinePlace> corners;
  for (const Value& value : read_list(polygon, limits::fewest_corners, limits::most_parts, "corners", findings)) {
    const auto pair = read_list(value, 2, 2, "numbers: right of the line, along it", findings);
    if (pair.size() != 2) continue;
    const auto right = read_length(pair[0], limits::beside_line, setting.units, findings);
    const auto along = read_length(pair[1], limits::along_hole, setting.units, findings);
    if (right && along) corners.push_back({*right, *along});
  }
  return corners;
}

Hazard polygon_from(Fields& fields, const Setting& setting, const HoleReading& reading, Findings& findings) {
  for (const char* key : {"side", "from", "to", "near", "far"}) {
    const auto other = fields.get(key, Need::optional);
    if (other)
      findings.fault(*other, fmt::format("{} beside polygon", key), "either a polygon or a place along the line");
  }
  const Value value = *fields.get("polygon", Need::required);
  Hazard hazard;
  std::vector<LinePlace>& corners = hazard.corners;
  corners = corners_from(value, setting, findings);
  const bool complete = value.node->kind == Node::Kind::list && corners.size() == value.node->items.size();
  // A last corner that repeats the first, as some programs write it, says nothing new.
  const bool closed = corners.size() > limits::fewest_corners && corners.front().right_yd == corners.back().right_yd &&
                      corners.front().along_yd == corners.back().along_yd;
  if (closed) corners.pop_back();
  if (complete && corners.size() >= limits::fewest_corners) {
    check_polygon(corners, reading.line(setting.units), at_value(value, findings));
  }
  return hazard;
}

Hazard strip_from(Fields& fields, const Value& value, HazardKind kind, const Setting& setting,
                  const HoleReading& reading, Findings& findings) {
  StripEntry entry;
  entry.kind = kind;
  entry.side = fields.choice<Side>("side", {"left", "right", "across"}, side_named, Need::required);
  entry.from_yd = fields.length("from", limits::along_hole, setting.units, Need::required);
  entry.to_yd = fields.length("to", limits::along_hole, setting.units, Need::required);
  entry.near_yd = fields.length("near", limits::from_line, setting.units);
  entry.far_yd = fields.length("far", limits::from_line, setting.units);
  return strip_of(entry, reading.line(setting.units), at_keys(fields, value, findings));
}

Hazard hazard_from(const Value& value, const Setting& setting, const HoleReading& reading, Findings& findings) {
  Fields fields(value, {"kind", "side", "from", "to", "near", "far", "polygon"}, findings);
  const HazardKind kind = fields.choice<HazardKind>("kind", hazard_kind_names(), hazard_kind_named, Need::required)
                              .value_or(HazardKind::bunker);
  Hazard hazard = fields.has("polygon") ? polygon_from(fields, setting, reading, findings)
                                        : strip_from(fields, value, kind, setting, reading, findings);
  hazard.kind = kind;
  check_not_in_mitre(hazard, reading.line(setting.units), at_value(value, findings));
  return hazard;
}

// A hole whose length is not that of its par has most likely changed places with another one.
void check_par(const Value& value, const HoleReading& reading, Units units, Findings& findings) {
  const int par = reading.hole.par;
  if (!reading.longest_yd || par < limits::lowest_par || par > limits::highest_par) return;
  const Limits& usual = limits::usual_length[par - limits::lowest_par];
  constexpr double slack = 0.1;
  const double length_yd = *reading.longest_yd;
  if (length_yd >= usual.low * (1.0 - slack) && length_yd <= usual.high * (1.0 + slack)) return;
  findings.advice(value, fmt::format("a par {} of {}", par, spoken(length_yd, units)),
                  fmt::format("a par {} {}, or a reason", par, bounds(in_units(usual, units))));
}

HoleReading hole_from(const Value& value, const Setting& setting, Findings& findings) {
  Fields fields(value, {"number", "par", "stroke_index", "length", "dogleg", "fairway", "green", "hazards"}, findings);
  HoleReading reading;
  Hole& hole = reading.hole;
  hole.number = fields.whole("number", 1, setting.numbers_to, Need::required).value_or(0);
  reading.number = fields.get("number", Need::optional);
  const auto lengths = fields.get("length", Need::required, "the length from each tee, such as {back: 398}");
  if (lengths) read_lengths(*lengths, setting, reading, findings);
  const int usual_par = default_par(reading.longest_yd.value_or(400.0));
  hole.par = fields.whole("par", limits::lowest_par, limits::highest_par, Need::required).value_or(usual_par);
  if (lengths && fields.has("par")) check_par(*lengths, reading, setting.units, findings);
  hole.stroke_index = fields.whole("stroke_index", 1, limits::most_holes);
  reading.stroke_index = fields.get("stroke_index", Need::optional);
  read_doglegs(fields, setting, reading, findings);
  read_fairway(fields, setting, reading, findings);
  hole.green = green_from(fields, setting, findings);
  for (const Value& hazard : fields.list("hazards", 0, limits::most_parts, "hazards")) {
    hole.hazards.push_back(hazard_from(hazard, setting, reading, findings));
  }
  return reading;
}

void check_unique(const std::vector<HoleReading>& readings, Findings& findings) {
  std::vector<const Hole*> holes;
  for (const HoleReading& reading : readings) holes.push_back(&reading.hole);
  check_holes_differ(holes, [&](std::size_t i) -> Tell {
    return [&, i](std::string_view key, std::string found, std::string expected) {
      const Value& at = key == "number" ? *readings[i].number : *readings[i].stroke_index;
      findings.fault(at, std::move(found), std::move(expected));
    };
  });
}

// The whole course from each tee, where every hole says it.
std::vector<std::optional<double>> totals(const std::vector<HoleReading>& readings, std::size_t tees) {
  std::vector<std::optional<double>> sums(tees, 0.0);
  for (const HoleReading& reading : readings) {
    for (std::size_t tee = 0; tee < tees; ++tee) {
      const bool known = sums[tee] && tee < reading.length_yd.size() && reading.length_yd[tee];
      sums[tee] = known ? std::optional<double>(*sums[tee] + *reading.length_yd[tee]) : std::nullopt;
    }
  }
  return sums;
}

// ", without hole 7": which numbers up to the last are not there, where they are few.
std::string missing_from(const std::vector<Value>& holes) {
  std::set<int> there;
  for (const Value& hole : holes) {
    for (const Entry& entry : hole.node->entries) {
      if (entry.key == "number") there.insert(parse_whole_number(entry.value.text).value_or(0));
    }
  }
  std::vector<int> missing;
  const int last = there.empty() ? 0 : std::min(*there.rbegin(), limits::most_holes);
  for (int number = 1; number <= last; ++number) {
    if (there.count(number) == 0) missing.push_back(number);
  }
  if (missing.empty() || missing.size() > 3) return "";
  return fmt::format(", without hole {}", fmt::join(missing, ", "));
}

int holes_meant(const std::vector<Value>& holes) { return holes.size() <= 9 ? 9 : limits::most_holes; }

}  // namespace

Course course_from(const Value& root, Findings& findings) {
  Fields fields(root, {"format", "name", "units", "tees", "ground", "holes"}, findings);
  Course course;
  Setting setting;
  course.name = fields.words("name", Need::required).value_or("");
  course.units = setting.units = read_units(fields);
  const auto holes = fields.list("holes", 1, limits::most_holes, "holes", Need::required);
  setting.numbers_to = holes_meant(holes);
  const bool wrong_count = !holes.empty() && holes.size() != half_round_holes && holes.size() != full_round_holes;
  if (wrong_count) {
    findings.fault(*fields.get("holes", Need::required), fmt::format("{} holes{}", holes.size(), missing_from(holes)),
                   "9 or 18 holes");
  }

  const auto tees = fields.list("tees", 1, limits::most_tees, "tees", Need::required);
  for (const Value& tee : tees) course.tees.push_back(tee_from(tee, holes.size(), findings));
  check_tees_differ(course.tees, at_values(tees, findings));
  setting.tees = names_of(course.tees);

  if (const auto value = fields.get("ground", Need::optional)) {
    Fields ground(*value, {"firmness"}, findings);
    course.firmness =
        ground.choice<Firmness>("firmness", {"soft", "normal", "firm"}, firmness_named).value_or(Firmness::normal);
  }

  std::vector<HoleReading> readings;
  for (const Value& hole : holes) readings.push_back(hole_from(hole, setting, findings));
  check_unique(readings, findings);
  check_longest_first(setting.tees, totals(readings, setting.tees.size()), course.units, at_values(tees, findings));
  for (HoleReading& reading : readings) course.holes.push_back(std::move(reading.hole));
  std::sort(course.holes.begin(), course.holes.end(), [](const Hole& a, const Hole& b) { return a.number < b.number; });
  if (findings.has_fault()) return course;
  if (const auto doubt = doubt_about_units(course)) {
    findings.advice(*fields.get(fields.has("units") ? "units" : "tees", Need::optional), doubt->found, doubt->expected);
  }
  return course;
}

}  // namespace yardworth::input
