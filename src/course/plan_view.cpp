#include "yardworth/plan_view.hpp"

#include "course/hole_map.hpp"

namespace yardworth {

PlanView plan_view(const Hole& hole) {
  const LineOfPlay line(hole.length_yd.front(), hole.doglegs);
  PlanView plan;
  plan.line.push_back(line.at(0.0));
  for (const Dogleg& dogleg : hole.doglegs) plan.line.push_back(line.at(dogleg.at_yd));
  plan.line.push_back(line.at(line.length_yd()));
  for (const double length : hole.length_yd) plan.tees.push_back(line.at(line.length_yd() - length));
  for (Area& area : areas_of(hole, line)) plan.areas.push_back({area.ground, area.hazard, std::move(area.polygon)});
  return plan;
}

}  // namespace yardworth
