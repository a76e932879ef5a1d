#include "gain/hazards_met.hpp"

#include "shot/area_found.hpp"

namespace yardworth {

namespace {

// How far along the line of play, from the tee, the tee shots finish, with their probabilities, and which hazard they
// end in (-1: none). A ball that a penalty takes elsewhere counts where it came down.
struct TeeShotEnd {
  double along_yd = 0.0;
  double weight = 0.0;
  int hazard = -1;
};

std::vector<TeeShotEnd> finishes(const HoleModel& model, const std::vector<TeeShotNode>& tee_shot) {
  const HoleMap& map = model.map();
  const double tee_along = map.line().nearest(model.tee()).along_yd;
  std::vector<TeeShotEnd> all;
  for (const TeeShotNode& node : tee_shot) {
    const Point landing = model.tee() + node.carry_yd * node.direction;
    const Point end = node.rest.penalty_strokes > 0 ? landing : node.rest.at;
    const int area = area_found(map, landing, node.direction, node.roll_yd, node.rest);
    const int hazard = area < 0 ? -1 : map.areas()[static_cast<std::size_t>(area)].hazard;
    all.push_back({map.line().nearest(end).along_yd - tee_along, node.weight, hazard});
  }
  return all;
}

}  // namespace

std::vector<HazardMet> hazards_met(const HoleModel& model, const std::vector<HazardView>& hazards,
                                   const std::vector<TeeShotNode>& tee_shot) {
  if (hazards.empty()) return {};
  const std::vector<TeeShotEnd> ends = finishes(model, tee_shot);
  std::vector<HazardMet> met;
  for (const HazardView& view : hazards) {
    HazardMet hazard;
    hazard.hazard = view;
    for (const TeeShotEnd& end : ends) {
      const bool found = end.hazard == view.hazard;
      if (found) hazard.found += end.weight;
      // A ball that rolled into it came down short of it.
      if (found || end.along_yd >= view.from_yd) hazard.reached += end.weight;
      if (!found && end.along_yd > view.to_yd) hazard.cleared += end.weight;
    }
    met.push_back(hazard);
  }
  return met;
}

}  // namespace yardworth
