#pragma once

#include <vector>

#include "yardworth/course.hpp"
#include "yardworth/geometry.hpp"

namespace yardworth {

// A hole from above, to scale: what its file comes to, ready to be drawn. Yards, as geometry.hpp has them.

// A polygon of one ground; its edge belongs to it.
struct PlanArea {
  Ground ground = Ground::rough;
  int hazard = -1;  // index into Hole::hazards, -1 for fairway and green
  Polygon outline;
};

struct PlanView {
  std::vector<Point> line;      // of play, from the longest tee by its corners to the middle of the green
  std::vector<Point> tees;      // in the course's order
  std::vector<PlanArea> areas;  // where several cover a place the first counts; rough where none does
};

// The hole has to be valid.
PlanView plan_view(const Hole& hole);

}  // namespace yardworth
