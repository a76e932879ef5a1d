#include "gain/tee_view.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include "core/telling.hpp"

namespace yardworth {

namespace {

using telling::aim_precision_yd;
using telling::edge_step_yd;
using telling::edge_width_yd;
using telling::end_slack_yd;
using telling::widest_fairway_yd;

struct Stretch {
  double from = 0.0;
  double to = 0.0;
};

// A place on the line of play.
struct OnLine {
  double along = 0.0;
  Point at;
};

std::vector<OnLine> places_on(const LineOfPlay& line) {
  std::vector<OnLine> places;
  for (double along = 0.0; along <= line.length_yd() + telling::beyond_green_yd; along += edge_step_yd) {
    places.push_back({along, line.at(along)});
  }
  return places;
}

// Where the line of play lies in the polygon, from the first such place to the last.
std::optional<Stretch> crossing(const std::vector<OnLine>& line, const Polygon& polygon) {
  std::optional<Stretch> found;
  for (const auto& [along, at] : line) {
    if (!contains(polygon, at)) continue;
    if (!found) found = Stretch{along, along};
    found->to = along;
  }
  return found;
}

HazardView view_of(const HoleMap& map, const std::vector<OnLine>& line, const Area& area, double tee_along) {
  constexpr double infinity = std::numeric_limits<double>::infinity();
  Stretch along{infinity, -infinity};
  Stretch right{infinity, -infinity};
  for (const Point corner : area.polygon) {
    const LinePlace place = map.line().nearest(corner);
    along = {std::min(along.from, place.along_yd), std::max(along.to, place.along_yd)};
    right = {std::min(right.from, place.right_yd), std::max(right.to, place.right_yd)};
  }
  HazardView view{area.hazard, area.ground, right.from + right.to < 0.0 ? HazardSide::left : HazardSide::right};
  if (const auto crossed = crossing(line, area.polygon)) {
    along = *crossed;
    view.side = right.to - right.from < telling::narrow_yd ? HazardSide::in_the_middle : HazardSide::across;
  }
  if (along.from >= map.line().length_yd()) view.side = HazardSide::behind_the_green;
  view.from_yd = along.from - tee_along;
  view.to_yd = along.to - tee_along;
  view.all_along = view.from_yd <= end_slack_yd && along.to >= map.line().length_yd() - end_slack_yd;
  return view;
}

// The fairway on both sides of a place of the line, as offsets from it; nothing where the line is not on fairway.
std::optional<Stretch> fairway_at(const HoleMap& map, double along_yd) {
  const auto is_fairway = [&](double right_yd) {
    const Point p = map.line().to_plane({right_yd, along_yd});
    return std::any_of(map.areas().begin(), map.areas().end(),
                       [&](const Area& area) { return area.ground == Ground::fairway && contains(area.polygon, p); });
  };
  if (!is_fairway(0.0)) return std::nullopt;
  Stretch edges;
  while (edges.from > -widest_fairway_yd && is_fairway(edges.from - edge_step_yd)) edges.from -= edge_step_yd;
  while (edges.to < widest_fairway_yd && is_fairway(edges.to + edge_step_yd)) edges.to += edge_step_yd;
  return edges;
}

AimSide side_of(double right_yd) {
  if (std::abs(right_yd) < aim_precision_yd) return AimSide::straight;
  return right_yd < 0.0 ? AimSide::left : AimSide::right;
}

// The mark is the one in the middle: what is not straight is beside it.
Aim beside(AimMark mark, LinePlace place) {
  const AimSide side = side_of(place.right_yd);
  return {place.right_yd, place.along_yd, mark, side, side == AimSide::straight ? 0.0 : std::abs(place.right_yd)};
}

}  // namespace

std::vector<HazardView> hazards_from(const HoleMap& map, Point tee) {
  const double tee_along = map.line().nearest(tee).along_yd;
  const std::vector<OnLine> line = places_on(map.line());
  std::vector<HazardView> hazards;
  for (const Area& area : map.areas()) {
    if (area.hazard < 0) continue;
    const HazardView view = view_of(map, line, area, tee_along);
    if (view.to_yd > 0.0) hazards.push_back(view);
  }
  std::stable_sort(hazards.begin(), hazards.end(), [](const HazardView& a, const HazardView& b) {
    return std::max(0.0, a.from_yd) < std::max(0.0, b.from_yd);
  });
  return hazards;
}

const Polygon& area_of(const HoleMap& map, const HazardView& hazard) {
  return std::find_if(map.areas().begin(), map.areas().end(),
                      [&](const Area& area) { return area.hazard == hazard.hazard; })
      ->polygon;
}

Aim aim_at_green(LinePlace from_tee) { return beside(AimMark::middle_of_green, from_tee); }

Aim aim_on_hole(const HoleMap& map, Point tee, LinePlace from_tee) {
  const double right = from_tee.right_yd;
  const double along = from_tee.along_yd + map.line().nearest(tee).along_yd;
  const AimSide side = side_of(right);
  if (map.ground_at(map.line().to_plane({right, along})) == Ground::bunker) {
    return {right, from_tee.along_yd, AimMark::bunker, side, 0.0};
  }
  const auto fairway = fairway_at(map, along);
  // Where more of the fairway is on one side, the line of play is not its middle.
  const bool even = fairway && std::abs(fairway->from + fairway->to) <= 2.0 * edge_width_yd;
  if (side == AimSide::straight || !fairway) {
    const bool down_middle = even || (side == AimSide::straight && !fairway);
    return beside(down_middle ? AimMark::middle : AimMark::line_of_play, from_tee);
  }
  const double outside = std::abs(right) - std::abs(right < 0.0 ? fairway->from : fairway->to);
  if (outside < -edge_width_yd) return beside(even ? AimMark::middle : AimMark::line_of_play, from_tee);
  return {right, from_tee.along_yd, AimMark::fairway_edge, side, outside > edge_width_yd ? outside : 0.0};
}

Aim aim_of(const HoleMap& map, Point tee, const Swing& swing, double heading_rad) {
  const double to_hole = distance_yd(tee, map.pin());
  if (swing.total_yd(roll_factor(Ground::green, map.firmness())) >= to_hole - telling::near_green_yd) {
    return aim_at_green({to_hole * std::sin(heading_rad - yardworth::heading_rad(tee, map.pin())), to_hole});
  }
  const double total = swing.total_yd(roll_factor(Ground::fairway, map.firmness()));
  const LinePlace place = map.line().nearest(tee + total * along_heading(heading_rad));
  return aim_on_hole(map, tee, {place.right_yd, place.along_yd - map.line().nearest(tee).along_yd});
}

}  // namespace yardworth
