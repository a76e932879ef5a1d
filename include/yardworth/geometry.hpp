#pragma once

#include <vector>

namespace yardworth {

// Places of a hole: the plan view, and the line of play's own terms. Yards and radians.

// A point of the plan view, in yards: x to the right, y along the first leg of the line of play, origin at the
// longest tee.
struct Point {
  double x = 0.0;
  double y = 0.0;

  friend bool operator==(const Point&, const Point&) = default;
};

// A simple polygon, open (the last corner is not the first one repeated).
using Polygon = std::vector<Point>;

// A corner of the line of play: at so many yards from the longest tee it turns by so much, right positive.
struct Dogleg {
  double at_yd = 0.0;
  double turn_rad = 0.0;
};

// A place said in the line's own terms: so far right of the line, so far along it.
struct LinePlace {
  double right_yd = 0.0;
  double along_yd = 0.0;
};

}  // namespace yardworth
