#include "validate/hole_rules.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "core/plane.hpp"
#include "course/set_up.hpp"

namespace yardworth {
namespace {

// How far after another dogleg one has to be, so that the strips of the leg between them do not fold over each other:
// at an offset to the side, each corner takes the offset times the tangent of half its turn off the leg.
double least_leg_yd(const Dogleg& before, double turn_rad) {
  constexpr double widest_fairway_side_yd = 25.0;
  return widest_fairway_side_yd * std::abs(std::tan(before.turn_rad / 2.0) + std::tan(turn_rad / 2.0));
}

bool on_one_line(const Polygon& polygon) {
  return std::all_of(polygon.begin(), polygon.end(), [&](Point p) {
    return std::all_of(polygon.begin(), polygon.end(), [&](Point q) {
      const Point a = p - polygon.front();
      const Point b = q - polygon.front();
      return std::abs(a.x * b.y - a.y * b.x) < limits::least_area;
    });
  });
}

double last_place_yd(const HoleLine& line) {
  return line.longest_yd.value_or(limits::hole_length.high) + limits::past_the_hole;
}

void complete_across(const StripEntry& entry, Hazard& hazard, const Tell& tell) {
  const char* expected = "near and far only with side left or right";
  if (entry.near_yd) tell("near", "near of a hazard across the hole", expected);
  if (entry.far_yd) tell("far", "far of a hazard across the hole", expected);
  hazard.near_yd = 0.0;
  hazard.far_yd = farthest_out_yd;
}

void complete_beside(const StripEntry& entry, Units units, Hazard& hazard, const Tell& tell) {
  const double usual = default_near_yd(hazard.kind);
  const double assumed = entry.far_yd ? std::min(usual, *entry.far_yd / 2.0) : usual;
  hazard.near_yd = entry.near_yd.value_or(assumed);
  hazard.far_yd = entry.far_yd.value_or(default_far_yd(hazard.kind, hazard.near_yd));
  if (hazard.near_yd > limits::beside_the_hole) {
    tell("near", spoken(hazard.near_yd, units) + ": a hazard wholly off the hole",
         "at most " + spoken(limits::beside_the_hole, units));
  }
  if (entry.far_yd) begins_before_it_ends(hazard.near_yd, *entry.far_yd, units, "near", "far", tell);
}

}  // namespace

bool dogleg_fits(const Dogleg& dogleg, double last_yd, const HoleLine& line, const Tell& tell) {
  const std::string found = spoken(dogleg.at_yd, line.units);
  const bool outside = dogleg.at_yd <= 0.0 || (line.longest_yd && dogleg.at_yd >= *line.longest_yd);
  if (outside) {
    tell("at", found, "a place between the longest tee and the green");
    return false;
  }
  if (dogleg.at_yd <= last_yd) {
    tell("at", found, fmt::format("more than the {} of the dogleg before", spoken(last_yd, line.units)));
    return false;
  }
  if (line.doglegs.empty()) return true;
  const Dogleg& before = line.doglegs.back();
  const double least_at_yd = before.at_yd + least_leg_yd(before, dogleg.turn_rad);
  if (dogleg.at_yd >= least_at_yd) return true;
  tell("at", found,
       fmt::format("{:.0f} {} or more, so that the leg from the dogleg before does not fold over itself",
                   std::ceil(from_yards(least_at_yd, line.units)), name(line.units)));
  return false;
}

bool begins_before_it_ends(double from_yd, double to_yd, Units units, std::string_view from_key,
                           std::string_view to_key, const Tell& tell) {
  if (from_yd < to_yd) return true;
  tell(to_key, spoken(to_yd, units), fmt::format("more than {}: {}", from_key, spoken(from_yd, units)));
  return false;
}

void check_fairway_width(const FairwayStretch& stretch, const Tell& tell) {
  if (stretch.left_yd + stretch.right_yd <= 0.0) tell("", "a fairway without width", "left or right above 0");
}

bool check_fairway_ends(const FairwayStretch& stretch, const HoleLine& line, const Tell& tell) {
  if (!begins_before_it_ends(stretch.from_yd, stretch.to_yd, line.units, "from", "to", tell)) return false;
  if (stretch.from_yd < 0.0) tell("from", spoken(stretch.from_yd, line.units), "0, the longest tee, or more");
  if (line.longest_yd && stretch.to_yd > *line.longest_yd) {
    tell("to", spoken(stretch.to_yd, line.units),
         fmt::format("at most the hole's length, {}", spoken(*line.longest_yd, line.units)));
  }
  return true;
}

void check_fairway_follows(const FairwayStretch& stretch, double last_yd, Units units, const Tell& tell) {
  if (stretch.from_yd >= last_yd) return;
  tell("", fmt::format("a fairway that begins at {}", spoken(stretch.from_yd, units)),
       fmt::format("the end of the one before, {}, or more", spoken(last_yd, units)));
}

Hazard strip_of(const StripEntry& entry, const HoleLine& line, const Tell& tell) {
  Hazard hazard;
  hazard.kind = entry.kind.value_or(HazardKind::bunker);
  hazard.side = entry.side;
  const bool both = entry.from_yd && entry.to_yd;
  if (both && begins_before_it_ends(*entry.from_yd, *entry.to_yd, line.units, "from", "to", tell)) {
    hazard.from_yd = *entry.from_yd;
    hazard.to_yd = *entry.to_yd;
    const double limit = last_place_yd(line);
    const bool off = hazard.from_yd > limit || hazard.to_yd < -limits::past_the_hole;
    if (off) {
      tell("from", spoken(hazard.from_yd, line.units) + ": a hazard wholly off the hole",
           fmt::format("a place from {} to {}", spoken(-limits::past_the_hole, line.units), spoken(limit, line.units)));
    }
  }
  if (hazard.side == Side::across) {
    complete_across(entry, hazard, tell);
  } else {
    complete_beside(entry, line.units, hazard, tell);
  }
  return hazard;
}

void check_polygon(const std::vector<LinePlace>& corners, const HoleLine& line, const Tell& tell) {
  Polygon polygon;
  for (const LinePlace& corner : corners) polygon.push_back({corner.right_yd, corner.along_yd});
  const bool flat = on_one_line(polygon);
  if (!flat && !is_simple(polygon)) {
    tell("", "a polygon that crosses or touches itself", "corners in order around the area");
  } else if (flat || area_sq_yd(polygon) < limits::least_area) {
    tell("", "a polygon without area", "corners that enclose an area");
  }
  if (!line.longest_yd) return;
  const double limit = last_place_yd(line);
  const auto all = [&](auto beyond) { return std::all_of(corners.begin(), corners.end(), beyond); };
  const bool off = all([&](const LinePlace& p) { return p.along_yd > limit; }) ||
                   all([&](const LinePlace& p) { return p.along_yd < -limits::past_the_hole; }) ||
                   all([&](const LinePlace& p) { return p.right_yd > limits::beside_the_hole; }) ||
                   all([&](const LinePlace& p) { return p.right_yd < -limits::beside_the_hole; });
  if (off) tell("", "a hazard wholly off the hole", "a hazard on the hole or close to it");
}

void check_not_in_mitre(const Hazard& hazard, const HoleLine& line, const Tell& tell) {
  const std::vector<LinePlace> corners = corners_of(hazard);
  if (line.doglegs.empty() || corners.size() < limits::fewest_corners) return;
  Polygon straight;
  double middle_yd = 0.0;
  double near_yd = limits::beside_line.high;
  for (const LinePlace& corner : corners) {
    straight.push_back({corner.right_yd, corner.along_yd});
    middle_yd += corner.along_yd / static_cast<double>(corners.size());
    near_yd = std::min(near_yd, std::abs(corner.right_yd));
  }
  const double length_yd = line.longest_yd.value_or(limits::hole_length.high);
  const Polygon bent = LineOfPlay(length_yd, line.doglegs).bend(corners);
  const bool no_ground = bent.size() < limits::fewest_corners || area_sq_yd(bent) < limits::least_area;
  if (!no_ground || area_sq_yd(straight) <= limits::least_area) return;
  const Dogleg& dogleg = *std::min_element(
      line.doglegs.begin(), line.doglegs.end(),
      [&](const Dogleg& a, const Dogleg& b) { return std::abs(a.at_yd - middle_yd) < std::abs(b.at_yd - middle_yd); });
  const double cut_yd = near_yd * std::tan(std::abs(dogleg.turn_rad) / 2.0);
  tell("",
       fmt::format("a hazard wholly inside the corner at {}, where neither leg reaches it",
                   spoken(dogleg.at_yd, line.units)),
       fmt::format("one that begins before {} or ends past {}, or that lies nearer to the line",
                   spoken(dogleg.at_yd - cut_yd, line.units), spoken(dogleg.at_yd + cut_yd, line.units)));
}

void check_holes_differ(const std::vector<const Hole*>& holes, const TellOf& tell_of) {
  std::set<int> numbers;
  std::set<int> indices;
  for (std::size_t i = 0; i < holes.size(); ++i) {
    const Hole& hole = *holes[i];
    const bool number_again = hole.number > 0 && !numbers.insert(hole.number).second;
    if (number_again) tell_of(i)("number", fmt::format("hole {} again", hole.number), "each hole once");
    const bool index_again = hole.stroke_index && !indices.insert(*hole.stroke_index).second;
    if (index_again) tell_of(i)("stroke_index", fmt::format("stroke index {} again", *hole.stroke_index), "each once");
  }
}

}  // namespace yardworth
