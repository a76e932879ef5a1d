#include "derive/reference_hole.hpp"

#include <algorithm>

#include "course/set_up.hpp"

namespace yardworth {

namespace {

// Yards, as reference_hole.hpp tells them.
struct Widths {
  double fairway_half;
  double narrow_half;
  double bunker_every;
  double trees_near;
  double trees_far;
  GreenSize green;
  GreenSize short_green;  // of a hole below 130 yards
  bool guarded;
};

constexpr Widths championship = {16.0, 11.0, 45.0, 36.0, 60.0, {27.0, 22.0}, {22.0, 18.0}, true};
constexpr Widths club = {18.0, 14.0, 60.0, 42.0, 70.0, {30.0, 26.0}, {30.0, 26.0}, false};

constexpr double narrow_stretch_yd = 100.0;
constexpr double apron_yd = 8.0;
constexpr double bunker_length_yd = 20.0;
constexpr double bunker_width_yd = 9.0;
constexpr double beyond_yd = 60.0;  // behind the tee and behind the green

void add_fairway(Hole& hole, const Widths& widths, double length_yd, double green_front_yd) {
  const double end = green_front_yd - apron_yd;
  const double narrow_from = length_yd - narrow_stretch_yd;
  const double from = std::min(100.0, std::max(0.5 * length_yd, green_front_yd - 30.0));
  if (from < narrow_from) hole.fairway.push_back({from, narrow_from, widths.fairway_half, widths.fairway_half});
  hole.fairway.push_back({std::max(from, narrow_from), end, widths.narrow_half, widths.narrow_half});
}

void add_fairway_bunkers(Hole& hole, const Widths& widths, double length_yd) {
  bool left = true;
  for (double to_green = widths.bunker_every; to_green < length_yd - 100.0; to_green += widths.bunker_every) {
    const double from = length_yd - to_green;
    const bool narrow = widths.guarded && to_green <= narrow_stretch_yd;
    const double near = (narrow ? widths.narrow_half : widths.fairway_half) + 1.0;
    for (const Side side : {Side::left, Side::right}) {
      if (!narrow && side != (left ? Side::left : Side::right)) continue;
      hole.hazards.push_back(
          hazard_beside(HazardKind::bunker, side, from, from + bunker_length_yd, near, near + bunker_width_yd));
    }
    left = !left;
  }
}

// A green that a long drive could reach is guarded in front.
void add_front_bunker(Hole& hole, double length_yd, double green_front_yd) {
  constexpr double guarded_below_yd = 350.0;
  if (hole.par != 4 || length_yd >= guarded_below_yd) return;
  Hazard bunker;
  bunker.kind = HazardKind::bunker;
  const double near = green_front_yd - 3.0;
  const double far = near - 20.0;
  bunker.corners = {{-12.0, far}, {12.0, far}, {12.0, near}, {-12.0, near}};
  hole.hazards.push_back(bunker);
}

}  // namespace

SetUp set_up_of(Band band) { return band == Band::tour ? SetUp::championship : SetUp::club; }

Hole reference_hole(double length_yd, SetUp set_up) {
  const Widths& widths = set_up == SetUp::championship ? championship : club;
  Hole hole;
  hole.number = 1;
  hole.par = default_par(length_yd);
  hole.length_yd = {length_yd};
  hole.green = length_yd < 130.0 ? widths.short_green : widths.green;
  const double front = length_yd - 0.5 * hole.green.depth_yd;
  const double edge = 0.5 * hole.green.width_yd;
  add_fairway(hole, widths, length_yd, front);
  if (hole.par > 3) add_fairway_bunkers(hole, widths, length_yd);
  for (const Side side : {Side::left, Side::right}) {
    hole.hazards.push_back(hazard_beside(HazardKind::bunker, side, front, front + 18.0, edge + 1.0, edge + 10.0));
  }
  if (widths.guarded) add_front_bunker(hole, length_yd, front);
  const double end = length_yd + beyond_yd;
  for (const Side side : {Side::left, Side::right}) {
    hole.hazards.push_back(hazard_beside(HazardKind::trees, side, 0.0, end, widths.trees_near, widths.trees_far));
  }
  const double out = widths.trees_far;
  hole.hazards.push_back(hazard_beside(HazardKind::out_of_bounds, Side::left, -beyond_yd, end, out, farthest_out_yd));
  hole.hazards.push_back(hazard_beside(HazardKind::penalty_area, Side::right, -beyond_yd, end, out, farthest_out_yd));
  return hole;
}

double reference_off_line_yd(Lie lie, SetUp set_up) {
  const Widths& widths = set_up == SetUp::championship ? championship : club;
  switch (lie) {
    case Lie::rough:
      return widths.fairway_half + 7.0;
    case Lie::bunker:
      return widths.fairway_half + 1.0 + 0.5 * bunker_width_yd;
    case Lie::recovery:
      return widths.trees_near + 6.0;
    default:
      return 0.0;
  }
}

}  // namespace yardworth
