#include "gain/tee_view.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>

#include "shot/area_found.hpp"
#include "strategy/strikes.hpp"

namespace yardworth {

namespace {

// How finely lines are walked to find edges.
constexpr double step_yd = 0.5;
// Nobody aims closer than this.
constexpr double aim_precision_yd = 2.0;
constexpr double edge_width_yd = 3.0;
// A hazard that lies on both sides of the line within so little is told as one that can be passed on either side.
constexpr double narrow_yd = 40.0;
// What would finish this close to the hole, or beyond it, is played at the green.
constexpr double near_green_yd = 30.0;
// Closer than this to the tee or to the green nobody tells where a long hazard begins or ends.
constexpr double end_slack_yd = 25.0;

struct Stretch {
  double from = 0.0;
  double to = 0.0;
};

// Where the line of play lies in the polygon, from the first such place to the last.
std::optional<Stretch> crossing(const LineOfPlay& line, const Polygon& polygon) {
  constexpr double beyond_green_yd = 40.0;
  std::optional<Stretch> found;
  for (double along = 0.0; along <= line.length_yd() + beyond_green_yd; along += step_yd) {
    if (!contains(polygon, line.at(along))) continue;
    if (!found) found = Stretch{along, along};
    found->to = along;
  }
  return found;
}

HazardView view_of(const HoleMap& map, std::size_t index, double tee_along) {
  const Area& area = map.areas()[index];
  Stretch along{1e9, -1e9};
  Stretch right{1e9, -1e9};
  for (const Point corner : area.polygon) {
    const LinePlace place = map.line().nearest(corner);
    along = {std::min(along.from, place.along_yd), std::max(along.to, place.along_yd)};
    right = {std::min(right.from, place.right_yd), std::max(right.to, place.right_yd)};
  }
  HazardView view{index, area.ground, right.from + right.to < 0.0 ? "left" : "right", 0.0, 0.0, false};
  if (const auto crossed = crossing(map.line(), area.polygon)) {
    along = *crossed;
    view.side = right.to - right.from < narrow_yd ? "in the middle" : "across";
  }
  if (along.from >= map.line().length_yd()) view.side = "behind the green";
  view.from_yd = along.from - tee_along;
  view.to_yd = along.to - tee_along;
  view.all_along = view.from_yd <= end_slack_yd && along.to >= map.line().length_yd() - end_slack_yd;
  return view;
}

// The fairway on both sides of a place of the line, as offsets from it; nothing where the line is not on fairway.
std::optional<Stretch> fairway_at(const HoleMap& map, double along_yd) {
  constexpr double widest_yd = 80.0;
  const auto is_fairway = [&](double right_yd) {
    const Point p = map.line().to_plane({right_yd, along_yd});
    return std::any_of(map.areas().begin(), map.areas().end(),
                       [&](const Area& area) { return area.ground == Ground::fairway && contains(area.polygon, p); });
  };
  if (!is_fairway(0.0)) return std::nullopt;
  Stretch edges;
  while (edges.from > -widest_yd && is_fairway(edges.from - step_yd)) edges.from -= step_yd;
  while (edges.to < widest_yd && is_fairway(edges.to + step_yd)) edges.to += step_yd;
  return edges;
}

std::string_view side_of(double right_yd) { return right_yd < 0.0 ? "left" : "right"; }

std::string beside(double right_yd, Units units, std::string_view what) {
  return fmt::format("{} {} of {}", distance_words(std::abs(right_yd), units), side_of(right_yd), what);
}

}  // namespace

std::vector<HazardView> hazards_from(const HoleMap& map, Point tee) {
  const double tee_along = map.line().nearest(tee).along_yd;
  std::vector<HazardView> hazards;
  for (std::size_t i = 0; i < map.areas().size(); ++i) {
    if (map.areas()[i].hazard < 0) continue;
    const HazardView view = view_of(map, i, tee_along);
    if (view.to_yd > 0.0) hazards.push_back(view);
  }
  std::stable_sort(hazards.begin(), hazards.end(), [](const HazardView& a, const HazardView& b) {
    return std::max(0.0, a.from_yd) < std::max(0.0, b.from_yd);
  });
  return hazards;
}

std::string hazard_words(const HazardView& hazard, Units units) {
  const std::string what = fmt::format("{} {}", name(hazard.ground), hazard.side);
  if (hazard.all_along) return what + ", all along";
  const double to = from_yards(hazard.to_yd, units);
  if (hazard.from_yd <= 0.0) return fmt::format("{} up to {:.0f}", what, to);
  return fmt::format("{} at {:.0f}-{:.0f}", what, from_yards(hazard.from_yd, units), to);
}

std::string distance_words(double yards, Units units) {
  const std::string number = fmt::format("{:.0f}", from_yards(yards, units));
  return fmt::format("{} {}{}", number, units == Units::yards ? "yard" : "metre", number == "1" ? "" : "s");
}

AimPlace aim_place(const HoleMap& map, Point tee, const Swing& swing, double heading_rad) {
  const double to_hole = distance_yd(tee, map.pin());
  if (swing.total_yd(roll_factor(Ground::green, map.firmness())) >= to_hole - near_green_yd) {
    return {to_hole * std::sin(heading_rad - yardworth::heading_rad(tee, map.pin())), to_hole, true};
  }
  const double total = swing.total_yd(roll_factor(Ground::fairway, map.firmness()));
  const LinePlace place = map.line().nearest(tee + total * along_heading(heading_rad));
  return {place.right_yd, place.along_yd - map.line().nearest(tee).along_yd, false};
}

std::string aim_words(const HoleMap& map, Point tee, const AimPlace& aim, Units units) {
  const bool straight = std::abs(aim.right_yd) < aim_precision_yd;
  if (aim.at_green) {
    return straight ? "at the middle of the green" : beside(aim.right_yd, units, "the middle of the green");
  }
  const double along = aim.along_yd + map.line().nearest(tee).along_yd;
  if (map.ground_at(map.line().to_plane({aim.right_yd, along})) == Ground::bunker) {
    return straight ? "at the bunker in the middle" : fmt::format("at the {}-hand bunker", side_of(aim.right_yd));
  }
  const auto fairway = fairway_at(map, along);
  // Where more of the fairway is on one side, the line of play is not its middle.
  const bool even = fairway && std::abs(fairway->from + fairway->to) <= 2.0 * edge_width_yd;
  if (straight) return even || !fairway ? "down the middle" : "down the line of play";
  if (!fairway) return beside(aim.right_yd, units, "the line of play");
  const double edge = std::abs(aim.right_yd < 0.0 ? fairway->from : fairway->to);
  const double outside = std::abs(aim.right_yd) - edge;
  if (std::abs(outside) <= edge_width_yd) return fmt::format("at the {} edge of the fairway", side_of(aim.right_yd));
  if (outside > 0.0) {
    return fmt::format("{} outside the {} edge of the fairway", distance_words(outside, units), side_of(aim.right_yd));
  }
  return beside(aim.right_yd, units, even ? "the middle" : "the line of play");
}

std::vector<double> area_chances(const HoleModel& model, const Action& tee_shot) {
  std::vector<double> chances(model.map().areas().size(), 0.0);
  const Swing swing = model.swing_of(Lie::tee, tee_shot);
  const double heading = HoleModel::heading_of(swing, tee_shot);
  for_each_tee_flight(model, swing, heading, [&](Point direction, double carry, double weight) {
    const int area = area_found(model.map(), model.tee(), direction, carry, carry * swing.roll_share);
    if (area >= 0) chances[static_cast<std::size_t>(area)] += weight;
  });
  return chances;
}

}  // namespace yardworth
