#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <vector>

#include "yardworth/geometry.hpp"

namespace yardworth {

constexpr Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
constexpr Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
constexpr Point operator*(double k, Point p) { return {k * p.x, k * p.y}; }
double distance_yd(Point a, Point b);

// Headings are in radians, 0 along +y, right (clockwise) positive.
Point along_heading(double heading_rad);
double heading_rad(Point from, Point to);

// So many directions side by side.
inline constexpr std::size_t directions_at_a_time = 8;
struct Directions {
  std::array<double, directions_at_a_time> x, y;
};

// What a unit vector becomes that is turned right by each of these angles: to 1e-14 what a sine and a cosine of each
// give, several times as fast.
Directions turned_right(Point direction, std::array<double, directions_at_a_time> right_rad);

bool is_simple(const Polygon& polygon);
double area_sq_yd(const Polygon& polygon);
// Inside or on the edge.
bool covers(const Polygon& polygon, Point p);
double distance_to_edge_yd(const Polygon& polygon, Point p);

// The line of play of a hole: straight legs joined at the doglegs. Places beyond its ends lie on the first or the last
// leg made longer.
class LineOfPlay {
 public:
  // doglegs in order of at_yd, all inside (0, length_yd).
  LineOfPlay(double length_yd, const std::vector<Dogleg>& doglegs);

  double length_yd() const { return length_yd_; }
  // The place in the plan view. On the inner side of a corner the strips of the two legs would overlap: places there
  // move to the mitre of the corner, so that areas made along the line never fold over themselves.
  Point to_plane(LinePlace place) const;
  Point at(double along_yd) const { return to_plane({0.0, along_yd}); }
  double heading_at(double along_yd) const;
  // The nearest place of the line, in the line's own terms.
  LinePlace nearest(Point p) const;
  // The point of the line, between its ends, furthest along it that lies distance_yd from p; nothing where there is
  // none.
  std::optional<Point> furthest_at(Point p, double distance_yd) const;
  // An area whose corners are given in the line's terms; edges that pass a dogleg bend with it.
  Polygon bend(const std::vector<LinePlace>& corners) const;
  // The strip between two offsets (right positive) over a stretch of the line.
  Polygon strip(double from_yd, double to_yd, double left_offset_yd, double right_offset_yd) const;

 private:
  struct Leg {
    double from_yd;
    Point start;
    double heading_rad;
    Point forward;  // along the heading
  };
  std::size_t leg_of(double along_yd) const;

  double length_yd_;
  std::vector<Leg> legs_;
};

}  // namespace yardworth
