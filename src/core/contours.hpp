#pragma once

#include <cstddef>
#include <vector>

#include "yardworth/geometry.hpp"

namespace yardworth {

// A function of the plane, known at the nodes of a square grid and bilinear between them: node (column, row) lies at
// origin + step * (column, row). Outside the grid it is 0.
struct GridField {
  Point origin;
  double step = 1.0;  // > 0
  std::size_t columns = 0;
  std::size_t rows = 0;
  std::vector<double> values;  // by row

  double& node(std::size_t column, std::size_t row) { return values[row * columns + column]; }
  double node(std::size_t column, std::size_t row) const { return values[row * columns + column]; }
  double at(Point p) const;
};

// The outlines of where the field is at least `level` (> 0), by marching squares: edges of the grid are crossed where a
// straight line between their nodes comes to the level, and a cell that two outlines cross is decided by the mean of
// its corners (W. E. Lorensen and H. E. Cline, Marching Cubes, SIGGRAPH 1987, in the plane). A place is inside where an
// odd number of outlines hold it. Nodes at the rim have to be below the level.
std::vector<Polygon> contours_at(const GridField& field, double level);

// Whether an odd number of the outlines hold the point.
bool inside_outlines(const std::vector<Polygon>& outlines, Point p);

// The polygon with corners left out that lie within `tolerance` of what is left (D. H. Douglas and T. K. Peucker,
// Algorithms for the reduction of the number of points required to represent a digitized line, 1973).
Polygon simplified(const Polygon& polygon, double tolerance);

}  // namespace yardworth
