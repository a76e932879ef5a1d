#include <fmt/format.h>

#include <cmath>

#include "validate/course_rules.hpp"
#include "validate/hole_rules.hpp"
#include "yardworth/read.hpp"

namespace yardworth {
namespace {

// Each number by itself; whether all are within their limits, so that they can be held against each other.
bool check_numbers(const Hazard& hazard, Units units, const Tell& tell) {
  if (!hazard.corners.empty()) {
    bool fits =
        check_count(hazard.corners.size(), limits::fewest_corners, limits::most_parts, "corners", "polygon", tell);
    for (std::size_t i = 0; i < hazard.corners.size(); ++i) {
      const Tell corner = below(tell, "polygon", i);
      fits = check_length(hazard.corners[i].right_yd, limits::beside_line, units, "", corner) && fits;
      fits = check_length(hazard.corners[i].along_yd, limits::along_hole, units, "", corner) && fits;
    }
    return fits;
  }
  bool fits = check_length(hazard.from_yd, limits::along_hole, units, "from", tell);
  fits = check_length(hazard.to_yd, limits::along_hole, units, "to", tell) && fits;
  fits = check_length(hazard.near_yd, limits::from_line, units, "near", tell) && fits;
  return check_length(hazard.far_yd, limits::from_line, units, "far", tell) && fits;
}

StripEntry entry_of(const Hazard& hazard) {
  StripEntry entry{hazard.kind, hazard.side, hazard.from_yd, hazard.to_yd, {}, {}};
  // What lies across the hole has no edges beside the line, whatever stands in their place.
  if (hazard.side == Side::across) return entry;
  entry.near_yd = hazard.near_yd;
  entry.far_yd = hazard.far_yd;
  return entry;
}

void check_hazard(const Hazard& hazard, const HoleLine& line, const Tell& tell) {
  const bool polygon = !hazard.corners.empty();
  if (polygon && hazard.side) tell("side", "side beside polygon", "either a polygon or a place along the line");
  if (!polygon && !hazard.side) tell("side", missing_key, "one of left, right, across");
  if (!check_numbers(hazard, line.units, tell)) return;
  if (polygon) {
    check_polygon(hazard.corners, line, below(tell, "polygon"));
  } else {
    strip_of(entry_of(hazard), line, tell);
  }
  check_not_in_mitre(hazard, line, tell);
}

void check_doglegs(const Hole& hole, HoleLine& line, const Tell& tell) {
  check_count(hole.doglegs.size(), 0, limits::most_parts, "doglegs", "dogleg", tell);
  double last_yd = 0.0;
  for (std::size_t i = 0; i < hole.doglegs.size(); ++i) {
    const Dogleg& dogleg = hole.doglegs[i];
    const Tell here = below(tell, "dogleg", i);
    const bool at = check_length(dogleg.at_yd, limits::along_hole, line.units, "at", here);
    const bool turn = check_number(degrees(dogleg.turn_rad), limits::turn, "turn", here);
    if (!at || !turn) continue;
    if (dogleg_fits(dogleg, last_yd, line, here)) line.doglegs.push_back(dogleg);
    last_yd = std::max(last_yd, dogleg.at_yd);
  }
}

void check_fairway(const Hole& hole, const HoleLine& line, const Tell& tell) {
  check_count(hole.fairway.size(), 0, limits::most_parts, "stretches of fairway", "fairway", tell);
  double last_yd = limits::along_hole.low;
  for (std::size_t i = 0; i < hole.fairway.size(); ++i) {
    const FairwayStretch& stretch = hole.fairway[i];
    const Tell here = below(tell, "fairway", i);
    bool fits = check_length(stretch.from_yd, limits::along_hole, line.units, "from", here);
    fits = check_length(stretch.to_yd, limits::along_hole, line.units, "to", here) && fits;
    fits = check_length(stretch.left_yd, limits::half_width, line.units, "left", here) && fits;
    fits = check_length(stretch.right_yd, limits::half_width, line.units, "right", here) && fits;
    if (!fits) continue;
    check_fairway_width(stretch, here);
    if (!check_fairway_ends(stretch, line, here)) continue;
    check_fairway_follows(stretch, last_yd, line.units, here);
    last_yd = std::max(last_yd, stretch.to_yd);
  }
}

void check_lengths(const Hole& hole, const Course& course, HoleLine& line, const Tell& tell) {
  if (hole.length_yd.size() != course.tees.size()) {
    tell("length", fmt::format("{} lengths", hole.length_yd.size()),
         fmt::format("{}, one from each tee", course.tees.size()));
  }
  for (std::size_t tee = 0; tee < std::min(hole.length_yd.size(), course.tees.size()); ++tee) {
    const bool fits = check_length(hole.length_yd[tee], limits::hole_length, course.units, course.tees[tee].name,
                                   below(tell, "length"));
    if (tee == 0 && fits) line.longest_yd = hole.length_yd[tee];
  }
}

void check_hole(const Hole& hole, const Course& course, const Tell& tell) {
  check_whole(hole.number, 1, limits::most_holes, "number", tell);
  check_whole(hole.par, limits::lowest_par, limits::highest_par, "par", tell);
  if (hole.stroke_index) check_whole(*hole.stroke_index, 1, limits::most_holes, "stroke_index", tell);
  HoleLine line{course.units, {}, {}};
  check_lengths(hole, course, line, tell);
  check_doglegs(hole, line, tell);
  check_fairway(hole, line, tell);
  check_length(hole.green.depth_yd, limits::green_extent, course.units, "depth", below(tell, "green"));
  check_length(hole.green.width_yd, limits::green_extent, course.units, "width", below(tell, "green"));
  check_count(hole.hazards.size(), 0, limits::most_parts, "hazards", "hazards", tell);
  for (std::size_t i = 0; i < hole.hazards.size(); ++i) check_hazard(hole.hazards[i], line, below(tell, "hazards", i));
}

void check_tees(const Course& course, const Tell& tell) {
  check_count(course.tees.size(), 1, limits::most_tees, "tees", "tees", tell);
  const TellOf tell_of = [&](std::size_t i) { return below(tell, "tees", i); };
  std::vector<std::string> names;
  for (std::size_t i = 0; i < course.tees.size(); ++i) {
    const Tee& tee = course.tees[i];
    check_text(tee.name, "name", tell_of(i));
    if (tee.course_rating) {
      check_number(*tee.course_rating, rating_limits(course.holes.size()), "course_rating", tell_of(i));
    }
    if (tee.slope) check_number(*tee.slope, limits::slope, "slope", tell_of(i));
    names.push_back(tee.name);
  }
  check_tees_differ(course.tees, tell_of);
  std::vector<std::optional<double>> totals_yd(course.tees.size(), 0.0);
  for (const Hole& hole : course.holes) {
    for (std::size_t tee = 0; tee < totals_yd.size(); ++tee) {
      const bool known = totals_yd[tee] && tee < hole.length_yd.size() && std::isfinite(hole.length_yd[tee]);
      totals_yd[tee] = known ? std::optional<double>(*totals_yd[tee] + hole.length_yd[tee]) : std::nullopt;
    }
  }
  check_longest_first(names, totals_yd, course.units, tell_of);
}

void check_holes(const Course& course, const Tell& tell) {
  check_count(course.holes.size(), 1, static_cast<std::size_t>(limits::most_holes), "holes", "holes", tell);
  const TellOf tell_of = [&](std::size_t i) { return below(tell, "holes", i); };
  std::vector<const Hole*> holes;
  for (std::size_t i = 0; i < course.holes.size(); ++i) {
    check_hole(course.holes[i], course, tell_of(i));
    holes.push_back(&course.holes[i]);
    const bool in_order = i == 0 || course.holes[i - 1].number <= course.holes[i].number;
    if (!in_order) {
      tell_of(i)("number", fmt::format("hole {} after hole {}", course.holes[i].number, course.holes[i - 1].number),
                 "holes by number");
    }
  }
  check_holes_differ(holes, tell_of);
}

}  // namespace

std::vector<Diagnostic> validate(const Course& course) {
  std::vector<Diagnostic> findings;
  const Tell tell = tell_into(findings, "course");
  check_text(course.name, "name", tell);
  check_tees(course, tell);
  check_holes(course, tell);
  return findings;
}

}  // namespace yardworth
