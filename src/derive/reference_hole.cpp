#include "yardworth/derive/reference_hole.hpp"

#include <algorithm>

namespace yardworth {

namespace {

constexpr double fairway_half_yd = 16.0;
constexpr double narrow_half_yd = 11.0;
constexpr double narrow_stretch_yd = 100.0;
constexpr double apron_yd = 8.0;
constexpr double bunker_every_yd = 45.0;
constexpr double bunker_length_yd = 20.0;
constexpr double bunker_width_yd = 9.0;
constexpr double trees_near_yd = 36.0;
constexpr double trees_far_yd = 60.0;
constexpr double beyond_yd = 60.0;  // behind the tee and behind the green

Hazard beside(HazardKind kind, Side side, double from_yd, double to_yd, double near_yd, double far_yd) {
  Hazard hazard;
  hazard.kind = kind;
  hazard.side = side;
  hazard.from_yd = from_yd;
  hazard.to_yd = to_yd;
  hazard.near_yd = near_yd;
  hazard.far_yd = far_yd;
  return hazard;
}

void add_fairway(Hole& hole, double length_yd, double green_front_yd) {
  const double end = green_front_yd - apron_yd;
  const double narrow_from = length_yd - narrow_stretch_yd;
  if (hole.par == 3) {
    hole.fairway.push_back({std::max(0.5 * length_yd, green_front_yd - 30.0), end, narrow_half_yd, narrow_half_yd});
    return;
  }
  hole.fairway.push_back({std::min(100.0, length_yd / 3.0), narrow_from, fairway_half_yd, fairway_half_yd});
  hole.fairway.push_back({narrow_from, end, narrow_half_yd, narrow_half_yd});
}

void add_fairway_bunkers(Hole& hole, double length_yd) {
  bool left = true;
  for (double to_green = bunker_every_yd; to_green < length_yd - 100.0; to_green += bunker_every_yd) {
    const double from = length_yd - to_green;
    const bool narrow = to_green <= narrow_stretch_yd;
    const double near = (narrow ? narrow_half_yd : fairway_half_yd) + 1.0;
    for (const Side side : {Side::left, Side::right}) {
      if (!narrow && side != (left ? Side::left : Side::right)) continue;
      hole.hazards.push_back(
          beside(HazardKind::bunker, side, from, from + bunker_length_yd, near, near + bunker_width_yd));
    }
    left = !left;
  }
}

}  // namespace

Hole reference_hole(double length_yd) {
  Hole hole;
  hole.number = 1;
  hole.par = default_par(length_yd);
  hole.length_yd = {length_yd};
  hole.green = {27.0, 22.0};
  const double front = length_yd - 0.5 * hole.green.depth_yd;
  const double edge = 0.5 * hole.green.width_yd;
  add_fairway(hole, length_yd, front);
  if (hole.par > 3) add_fairway_bunkers(hole, length_yd);
  hole.hazards.push_back(beside(HazardKind::bunker, Side::left, front, front + 18.0, edge + 1.0, edge + 10.0));
  hole.hazards.push_back(beside(HazardKind::bunker, Side::right, front, front + 18.0, edge + 1.0, edge + 10.0));
  const double end = length_yd + beyond_yd;
  for (const Side side : {Side::left, Side::right}) {
    hole.hazards.push_back(beside(HazardKind::trees, side, 0.0, end, trees_near_yd, trees_far_yd));
  }
  hole.hazards.push_back(beside(HazardKind::out_of_bounds, Side::left, -beyond_yd, end, trees_far_yd, farthest_out_yd));
  hole.hazards.push_back(beside(HazardKind::penalty_area, Side::right, -beyond_yd, end, trees_far_yd, farthest_out_yd));
  return hole;
}

}  // namespace yardworth
