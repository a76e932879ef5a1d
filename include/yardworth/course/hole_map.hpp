#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "yardworth/core/plane.hpp"
#include "yardworth/core/whole_part.hpp"
#include "yardworth/course/course.hpp"

namespace yardworth {

// What the ground is at a point. Where areas overlap the first of this order that covers the point counts: a bunker
// inside a fairway is a bunker, and a green inside a penalty area is a green.
enum class Ground : std::uint8_t { green, out_of_bounds, penalty_area, bunker, trees, fairway, rough };
std::string_view name(Ground ground);

// A polygon of one ground. Its edge belongs to it.
struct Area {
  Ground ground = Ground::rough;
  int hazard = -1;  // index into Hole::hazards, -1 for fairway and green
  Polygon polygon;
};

// The plan view of a hole: its areas, and what lies at a point. Look-ups are exact: a raster of two-yard cells knows
// the cells that lie wholly in one ground; in a cell that a single edge crosses the side of that edge decides; only in
// the cells at corners and crossings are the polygons themselves asked.
class HoleMap {
 public:
  HoleMap(const Hole& hole, Firmness firmness);

  struct Look {
    Ground ground;
    double clearance_yd;  // the ground stays the same at least this far in every direction, up to 60; 0 near an edge
    double trouble_yd;    // no edge but those between fairway and rough comes nearer than this, up to 60
  };
  Look look_at(Point p) const {
    const Cell* cell = cell_at(p);
    if (cell == nullptr || cell->edge == many_edges) return {ground_by_areas(p), 0.0, 0.0};
    if (cell->edge == no_edge) {
      return {cell->ground, static_cast<double>(cell->clearance_yd), static_cast<double>(cell->trouble_yd)};
    }
    const Edge& edge = edges_[cell->edge];
    const double cross =
        (edge.end.x - edge.start.x) * (p.y - edge.start.y) - (edge.end.y - edge.start.y) * (p.x - edge.start.x);
    return {cross >= 0.0 ? edge.left : edge.right, 0.0, static_cast<double>(cell->trouble_yd)};
  }
  Ground ground_at(Point p) const { return look_at(p).ground; }
  // The index in areas() of the area that counts at p, or -1 in the rough.
  int area_at(Point p) const;

  const LineOfPlay& line() const { return line_; }
  const std::vector<Area>& areas() const { return areas_; }
  Point pin() const { return pin_; }
  // The place of a tee from which the hole has this length.
  Point tee(double length_yd) const { return line_.at(line_.length_yd() - length_yd); }
  Firmness firmness() const { return firmness_; }

 private:
  static constexpr double cell_yd = 2.0;
  static constexpr std::uint16_t no_edge = 65535;
  static constexpr std::uint16_t many_edges = 65534;
  struct Cell {
    Ground ground;
    std::uint8_t clearance_yd;
    std::uint8_t trouble_yd;
    bool near_trouble;
    std::uint16_t edge;  // index into edges_, or one of the two above
  };
  // The only edge that crosses a cell, with the ground on both sides of it; the edge itself belongs to `left`.
  struct Edge {
    Point start, end;
    Ground left, right;
  };
  struct Box {
    Point low, high;
  };

  const Cell* cell_at(Point p) const {
    const double column = (p.x - origin_.x) * (1.0 / cell_yd);
    const double row = (p.y - origin_.y) * (1.0 / cell_yd);
    if (!(column >= 0.0 && row >= 0.0 && column < end_.x && row < end_.y)) return nullptr;
    return &cells_[whole_part(row) * columns_ + whole_part(column)];
  }
  Ground ground_by_areas(Point p) const;
  bool covers_area(std::size_t area, Point p) const;
  void add_area(Ground ground, int hazard, Polygon polygon);
  void place_raster();
  void fill_raster();
  void mark_edges(std::size_t area);
  void mark_cell(std::size_t row, std::size_t column, std::size_t area, Point start, Point end);
  void measure_clearance(std::uint8_t Cell::*clearance, bool trouble_only);

  LineOfPlay line_;
  Firmness firmness_;
  Point pin_;
  std::vector<Area> areas_;  // in the order of Ground, so that the first that covers a point counts
  std::vector<Box> boxes_;
  std::vector<bool> anticlockwise_;
  Point origin_;
  std::size_t columns_ = 0;
  std::size_t rows_ = 0;
  Point end_;  // of the raster, in cells
  std::vector<Cell> cells_;
  std::vector<Edge> edges_;
};

// Inside the polygon or on its edge, by counting crossings: the same answer as covers(), without its set-up cost.
bool contains(const Polygon& polygon, Point p);

}  // namespace yardworth
