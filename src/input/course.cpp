#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <utility>

#include "core/message_text.hpp"
#include "core/plane.hpp"
#include "course/set_up.hpp"
#include "input/formats.hpp"

namespace yardworth::input {
namespace {

// Limits of what is taken for golf rather than for a slip of the pen, in yards and degrees.
constexpr Range hole_length{40.0, 1000.0};
constexpr Range along_hole{-200.0, 1300.0};
constexpr Range half_width{0.0, 100.0};
constexpr Range green_extent{5.0, 100.0};
constexpr Range from_line{0.0, 400.0};
constexpr Range beside_line{-400.0, 400.0};
constexpr Range turn_degrees{-120.0, 120.0, "degrees"};
constexpr Range rating_of_18{50.0, 90.0};
constexpr Range rating_of_9{25.0, 45.0};
constexpr Range rating_of_any{25.0, 90.0};  // where it is not clear which of the two it is
constexpr Range slope_rating{55.0, 155.0};
constexpr double past_the_hole_yd = 60.0;  // a hazard wholly beyond this is not on the hole
constexpr double beside_the_hole_yd = 200.0;
constexpr double least_area_sq_yd = 0.1;
constexpr int most_holes = 18;
constexpr std::size_t most_tees = 20;
constexpr std::size_t most_parts = 200;  // fairways, doglegs, hazards of a hole; corners of a polygon

// What every hole of the file is read against.
struct Setting {
  Units units = Units::yards;
  std::vector<std::string> tees;  // names; empty when they could not be read
  int numbers_to = most_holes;
};

std::string spoken(double yards, Units units) {
  return fmt::format("{:.4g} {}", from_yards(yards, units), name(units));
}

// A hole while it is read: the longest length is what places along the line are held against, once it is known.
struct HoleReading {
  Hole hole;
  std::optional<double> longest_yd;
  std::vector<std::optional<double>> length_yd;  // by tee
  std::optional<Value> number;
  std::optional<Value> stroke_index;
  std::optional<Value> lengths;
};

Tee tee_from(const Value& value, std::size_t holes, Findings& findings) {
  Fields fields(value, {"name", "course_rating", "slope", "for"}, findings);
  Tee tee;
  tee.name = fields.words("name", Need::required).value_or("");
  tee.course_rating = fields.number("course_rating", holes == 9    ? rating_of_9
                                                     : holes == 18 ? rating_of_18
                                                                   : rating_of_any);
  tee.slope = fields.number("slope", slope_rating);
  tee.rated_for = fields.choice<Gender>("for", {"men", "women"}, gender_named);
  return tee;
}

void check_names_differ(const std::vector<Value>& values, const std::vector<Tee>& tees, Findings& findings) {
  std::set<std::string> seen;
  for (std::size_t i = 0; i < tees.size(); ++i) {
    const bool repeated = !tees[i].name.empty() && !seen.insert(tees[i].name).second;
    if (repeated)
      findings.fault(values[i], fmt::format("the tee \"{}\" again", shortened(tees[i].name)), "each tee once");
  }
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
  reading.lengths = value;
  Fields fields(value, setting.tees, findings);
  for (std::size_t tee = 0; tee < setting.tees.size(); ++tee) {
    reading.length_yd[tee] = fields.length(setting.tees[tee], hole_length, setting.units, Need::required);
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

// How far after another dogleg one has to be, so that the strips of the leg between them do not fold over each other:
// at an offset to the side, each corner takes the offset times the tangent of half its turn off the leg.
double least_leg_yd(const Dogleg& before, double turn_rad) {
  constexpr double widest_fairway_side_yd = 25.0;
  return widest_fairway_side_yd * std::abs(std::tan(before.turn_rad / 2.0) + std::tan(turn_rad / 2.0));
}

void read_doglegs(Fields& fields, const Setting& setting, HoleReading& reading, Findings& findings) {
  double last_yd = 0.0;
  std::vector<Dogleg>& doglegs = reading.hole.doglegs;
  for (const Value& value : fields.list("dogleg", 0, most_parts, "doglegs")) {
    Fields dogleg(value, {"at", "turn"}, findings);
    const auto at = dogleg.length("at", along_hole, setting.units, Need::required);
    const auto turn = dogleg.number("turn", turn_degrees, Need::required);
    if (!at || !turn) continue;
    const Value at_value = *dogleg.get("at", Need::required);
    const bool outside = *at <= 0.0 || (reading.longest_yd && *at >= *reading.longest_yd);
    const double least_at_yd =
        doglegs.empty() ? 0.0 : doglegs.back().at_yd + least_leg_yd(doglegs.back(), radians(*turn));
    if (outside) {
      findings.fault(at_value, spoken(*at, setting.units), "a place between the longest tee and the green");
    } else if (*at <= last_yd) {
      findings.fault(at_value, spoken(*at, setting.units),
                     fmt::format("more than the {} of the dogleg before", spoken(last_yd, setting.units)));
    } else if (*at < least_at_yd) {
      const double first = std::ceil(from_yards(least_at_yd, setting.units));
      findings.fault(at_value, spoken(*at, setting.units),
                     fmt::format("{:.0f} {} or more, so that the leg from the dogleg before does not fold over itself",
                                 first, name(setting.units)));
    } else {
      doglegs.push_back({*at, radians(*turn)});
    }
    last_yd = std::max(last_yd, *at);
  }
}

// Whether a stretch of the line begins before it ends; a fault otherwise. Unknown ends are no fault here.
bool begins_before_it_ends(Fields& fields, std::optional<double> from, std::optional<double> to, Units units,
                           const char* from_key, const char* to_key, Findings& findings) {
  if (!from || !to) return false;
  if (*from < *to) return true;
  findings.fault(*fields.get(to_key, Need::required), spoken(*to, units),
                 fmt::format("more than {}: {}", from_key, spoken(*from, units)));
  return false;
}

std::optional<FairwayStretch> fairway_from(const Value& value, const Setting& setting, const HoleReading& reading,
                                           Findings& findings) {
  Fields fields(value, {"from", "to", "left", "right"}, findings);
  const FairwayStretch standard = default_fairway(4, 400.0).front();
  const auto from = fields.length("from", along_hole, setting.units, Need::required);
  const auto to = fields.length("to", along_hole, setting.units, Need::required);
  const double left = fields.length("left", half_width, setting.units).value_or(standard.left_yd);
  const double right = fields.length("right", half_width, setting.units).value_or(standard.right_yd);
  if (left + right <= 0.0) findings.fault(value, "a fairway without width", "left or right above 0");
  if (!begins_before_it_ends(fields, from, to, setting.units, "from", "to", findings)) return std::nullopt;
  if (*from < 0.0) {
    findings.fault(*fields.get("from", Need::required), spoken(*from, setting.units), "0, the longest tee, or more");
  }
  if (reading.longest_yd && *to > *reading.longest_yd) {
    findings.fault(*fields.get("to", Need::required), spoken(*to, setting.units),
                   fmt::format("at most the hole's length, {}", spoken(*reading.longest_yd, setting.units)));
  }
  return FairwayStretch{*from, *to, left, right};
}

void read_fairway(Fields& fields, const Setting& setting, HoleReading& reading, Findings& findings) {
  if (!fields.has("fairway")) {
    reading.hole.fairway = default_fairway(reading.hole.par, reading.longest_yd.value_or(0.0));
    return;
  }
  double last_yd = along_hole.low;
  for (const Value& value : fields.list("fairway", 0, most_parts, "stretches of fairway")) {
    const auto stretch = fairway_from(value, setting, reading, findings);
    if (!stretch) continue;
    if (stretch->from_yd < last_yd) {
      findings.fault(value, fmt::format("a fairway that begins at {}", spoken(stretch->from_yd, setting.units)),
                     fmt::format("the end of the one before, {}, or more", spoken(last_yd, setting.units)));
    }
    last_yd = std::max(last_yd, stretch->to_yd);
    reading.hole.fairway.push_back(*stretch);
  }
}

GreenSize green_from(Fields& hole, const Setting& setting, Findings& findings) {
  GreenSize green = default_green();
  const auto value = hole.get("green", Need::optional);
  if (!value) return green;
  Fields fields(*value, {"depth", "width"}, findings);
  green.depth_yd = fields.length("depth", green_extent, setting.units).value_or(green.depth_yd);
  green.width_yd = fields.length("width", green_extent, setting.units).value_or(green.width_yd);
  return green;
}

std::vector<LinePlace> corners_from(const Value& polygon, const Setting& setting, Findings& findings) {
  std::vector<LinePlace> corners;
  for (const Value& value : read_list(polygon, 3, most_parts, "corners", findings)) {
    const auto pair = read_list(value, 2, 2, "numbers: right of the line, along it", findings);
    if (pair.size() != 2) continue;
    const auto right = read_length(pair[0], beside_line, setting.units, findings);
    const auto along = read_length(pair[1], along_hole, setting.units, findings);
    if (right && along) corners.push_back({*right, *along});
  }
  return corners;
}

bool on_one_line(const Polygon& polygon) {
  return std::all_of(polygon.begin(), polygon.end(), [&](Point p) {
    return std::all_of(polygon.begin(), polygon.end(), [&](Point q) {
      const Point a = p - polygon.front();
      const Point b = q - polygon.front();
      return std::abs(a.x * b.y - a.y * b.x) < least_area_sq_yd;
    });
  });
}

void check_polygon(const Value& value, const std::vector<LinePlace>& corners, const HoleReading& reading,
                   Findings& findings) {
  Polygon polygon;
  for (const LinePlace& corner : corners) polygon.push_back({corner.right_yd, corner.along_yd});
  const bool line = on_one_line(polygon);
  if (!line && !is_simple(polygon)) {
    findings.fault(value, "a polygon that crosses or touches itself", "corners in order around the area");
  } else if (line || area_sq_yd(polygon) < least_area_sq_yd) {
    findings.fault(value, "a polygon without area", "corners that enclose an area");
  }
  if (!reading.longest_yd) return;
  const double limit = *reading.longest_yd + past_the_hole_yd;
  const auto all = [&](auto beyond) { return std::all_of(corners.begin(), corners.end(), beyond); };
  const bool off = all([&](const LinePlace& p) { return p.along_yd > limit; }) ||
                   all([&](const LinePlace& p) { return p.along_yd < -past_the_hole_yd; }) ||
                   all([&](const LinePlace& p) { return p.right_yd > beside_the_hole_yd; }) ||
                   all([&](const LinePlace& p) { return p.right_yd < -beside_the_hole_yd; });
  if (off) findings.fault(value, "a hazard wholly off the hole", "a hazard on the hole or close to it");
}

void read_polygon(Fields& fields, const Setting& setting, const HoleReading& reading, Hazard& hazard,
                  Findings& findings) {
  for (const char* key : {"side", "from", "to", "near", "far"}) {
    const auto other = fields.get(key, Need::optional);
    if (other)
      findings.fault(*other, fmt::format("{} beside polygon", key), "either a polygon or a place along the line");
  }
  const Value value = *fields.get("polygon", Need::required);
  hazard.corners = corners_from(value, setting, findings);
  const bool complete = value.node->kind == Node::Kind::list && hazard.corners.size() == value.node->items.size();
  const auto& corners = hazard.corners;
  // A last corner that repeats the first, as some policies write it, says nothing new.
  const bool closed = corners.size() > 3 && corners.front().right_yd == corners.back().right_yd &&
                      corners.front().along_yd == corners.back().along_yd;
  if (closed) hazard.corners.pop_back();
  if (complete && corners.size() >= 3) check_polygon(value, corners, reading, findings);
}

void read_across(Fields& fields, Hazard& hazard, Findings& findings) {
  for (const char* key : {"near", "far"}) {
    const auto value = fields.get(key, Need::optional);
    if (value)
      findings.fault(*value, fmt::format("{} of a hazard across the hole", key),
                     "near and far only with side left or right");
  }
  hazard.near_yd = 0.0;
  hazard.far_yd = farthest_out_yd;
}

void read_beside(Fields& fields, const Setting& setting, Hazard& hazard, Findings& findings) {
  const auto near = fields.length("near", from_line, setting.units);
  const auto far = fields.length("far", from_line, setting.units);
  const double assumed = far ? std::min(default_near_yd(hazard.kind), *far / 2.0) : default_near_yd(hazard.kind);
  hazard.near_yd = near.value_or(assumed);
  hazard.far_yd = far.value_or(default_far_yd(hazard.kind, hazard.near_yd));
  if (near && *near > beside_the_hole_yd) {
    findings.fault(*fields.get("near", Need::required), spoken(*near, setting.units) + ": a hazard wholly off the hole",
                   "at most " + spoken(beside_the_hole_yd, setting.units));
  }
  if (far) begins_before_it_ends(fields, hazard.near_yd, far, setting.units, "near", "far", findings);
}

void read_strip(Fields& fields, const Setting& setting, const HoleReading& reading, Hazard& hazard,
                Findings& findings) {
  hazard.side = fields.choice<Side>("side", {"left", "right", "across"}, side_named, Need::required);
  const auto from = fields.length("from", along_hole, setting.units, Need::required);
  const auto to = fields.length("to", along_hole, setting.units, Need::required);
  if (begins_before_it_ends(fields, from, to, setting.units, "from", "to", findings)) {
    hazard.from_yd = *from;
    hazard.to_yd = *to;
    const double limit = reading.longest_yd.value_or(hole_length.high) + past_the_hole_yd;
    const bool off = *from > limit || *to < -past_the_hole_yd;
    if (off) {
      findings.fault(
          *fields.get("from", Need::required), spoken(*from, setting.units) + ": a hazard wholly off the hole",
          fmt::format("a place from {} to {}", spoken(-past_the_hole_yd, setting.units), spoken(limit, setting.units)));
    }
  }
  if (hazard.side == Side::across) {
    read_across(fields, hazard, findings);
  } else {
    read_beside(fields, setting, hazard, findings);
  }
}

// Where the line turns towards a place the two legs end at the mitre before they reach it, and what lies wholly past it
// on both has no ground of its own: the hole would be played as if the hazard were not there.
void check_not_in_mitre(const Value& value, const Hazard& hazard, const Setting& setting, const HoleReading& reading,
                        Findings& findings) {
  const std::vector<Dogleg>& doglegs = reading.hole.doglegs;
  const std::vector<LinePlace> corners = corners_of(hazard);
  if (doglegs.empty() || corners.size() < 3) return;
  Polygon straight;
  double middle_yd = 0.0;
  double near_yd = beside_line.high;
  for (const LinePlace& corner : corners) {
    straight.push_back({corner.right_yd, corner.along_yd});
    middle_yd += corner.along_yd / static_cast<double>(corners.size());
    near_yd = std::min(near_yd, std::abs(corner.right_yd));
  }
  const Polygon bent = LineOfPlay(reading.longest_yd.value_or(hole_length.high), doglegs).bend(corners);
  const bool lost = (bent.size() < 3 || area_sq_yd(bent) < least_area_sq_yd) && area_sq_yd(straight) > least_area_sq_yd;
  if (!lost) return;
  const Dogleg& dogleg = *std::min_element(doglegs.begin(), doglegs.end(), [&](const Dogleg& a, const Dogleg& b) {
    return std::abs(a.at_yd - middle_yd) < std::abs(b.at_yd - middle_yd);
  });
  const double cut_yd = near_yd * std::tan(std::abs(dogleg.turn_rad) / 2.0);
  findings.fault(
      value,
      fmt::format("a hazard wholly inside the corner at {}, where neither leg reaches it",
                  spoken(dogleg.at_yd, setting.units)),
      fmt::format("one that begins before {} or ends past {}, or that lies nearer to the line",
                  spoken(dogleg.at_yd - cut_yd, setting.units), spoken(dogleg.at_yd + cut_yd, setting.units)));
}

Hazard hazard_from(const Value& value, const Setting& setting, const HoleReading& reading, Findings& findings) {
  Fields fields(value, {"kind", "side", "from", "to", "near", "far", "polygon"}, findings);
  Hazard hazard;
  hazard.kind = fields
                    .choice<HazardKind>("kind", {"bunker", "penalty_area", "out_of_bounds", "trees"}, hazard_kind_named,
                                        Need::required)
                    .value_or(HazardKind::bunker);
  if (fields.has("polygon")) {
    read_polygon(fields, setting, reading, hazard, findings);
  } else {
    read_strip(fields, setting, reading, hazard, findings);
  }
  check_not_in_mitre(value, hazard, setting, reading, findings);
  return hazard;
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
  hole.par = fields.whole("par", 3, 6, Need::required).value_or(usual_par);
  hole.stroke_index = fields.whole("stroke_index", 1, most_holes);
  reading.stroke_index = fields.get("stroke_index", Need::optional);
  read_doglegs(fields, setting, reading, findings);
  read_fairway(fields, setting, reading, findings);
  hole.green = green_from(fields, setting, findings);
  for (const Value& hazard : fields.list("hazards", 0, most_parts, "hazards")) {
    hole.hazards.push_back(hazard_from(hazard, setting, reading, findings));
  }
  return reading;
}

// That no two holes have the same number or the same stroke index.
void check_unique(const std::vector<HoleReading>& readings, Findings& findings) {
  std::set<int> numbers;
  std::set<int> indices;
  for (const HoleReading& reading : readings) {
    const Hole& hole = reading.hole;
    const bool number_again = hole.number > 0 && !numbers.insert(hole.number).second;
    if (number_again) findings.fault(*reading.number, fmt::format("hole {} again", hole.number), "each hole once");
    const bool index_again = hole.stroke_index && !indices.insert(*hole.stroke_index).second;
    if (index_again) {
      findings.fault(*reading.stroke_index, fmt::format("stroke index {} again", *hole.stroke_index), "each once");
    }
  }
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

void check_longest_first(const std::vector<Value>& tees, const std::vector<HoleReading>& readings,
                         const Setting& setting, Findings& findings) {
  const auto sums = totals(readings, setting.tees.size());
  for (std::size_t tee = 1; tee < sums.size(); ++tee) {
    const bool in_order = !sums[tee] || !sums[tee - 1] || *sums[tee] <= *sums[tee - 1];
    if (in_order) continue;
    findings.fault(tees[tee],
                   fmt::format("{} from \"{}\" after {} from \"{}\"", spoken(*sums[tee], setting.units),
                               shortened(setting.tees[tee]), spoken(*sums[tee - 1], setting.units),
                               shortened(setting.tees[tee - 1])),
                   "tees longest first");
  }
}

int holes_meant(const std::vector<Value>& holes) { return holes.size() <= 9 ? 9 : most_holes; }

}  // namespace

Hazard hazard_on_hole(const Value& value, const Hole& hole, Units units, Findings& findings) {
  Setting setting;
  setting.units = units;
  HoleReading reading;
  reading.longest_yd = hole.length_yd.front();
  reading.hole.doglegs = hole.doglegs;
  return hazard_from(value, setting, reading, findings);
}

Course course_from(const Value& root, Findings& findings) {
  Fields fields(root, {"format", "name", "units", "tees", "ground", "holes"}, findings);
  Course course;
  Setting setting;
  course.name = fields.words("name", Need::required).value_or("");
  course.units = setting.units = read_units(fields);
  const auto holes = fields.list("holes", 1, most_holes, "holes", Need::required);
  setting.numbers_to = holes_meant(holes);
  const bool wrong_count = !holes.empty() && holes.size() != 9 && holes.size() != 18;
  if (wrong_count) {
    findings.fault(*fields.get("holes", Need::required), fmt::format("{} holes", holes.size()), "9 or 18 holes");
  }

  const auto tees = fields.list("tees", 1, most_tees, "tees", Need::required);
  for (const Value& tee : tees) course.tees.push_back(tee_from(tee, holes.size(), findings));
  check_names_differ(tees, course.tees, findings);
  setting.tees = names_of(course.tees);

  if (const auto value = fields.get("ground", Need::optional)) {
    Fields ground(*value, {"firmness"}, findings);
    course.firmness =
        ground.choice<Firmness>("firmness", {"soft", "normal", "firm"}, firmness_named).value_or(Firmness::normal);
  }

  std::vector<HoleReading> readings;
  for (const Value& hole : holes) readings.push_back(hole_from(hole, setting, findings));
  check_unique(readings, findings);
  check_longest_first(tees, readings, setting, findings);
  for (HoleReading& reading : readings) course.holes.push_back(std::move(reading.hole));
  std::sort(course.holes.begin(), course.holes.end(), [](const Hole& a, const Hole& b) { return a.number < b.number; });
  return course;
}

}  // namespace yardworth::input
