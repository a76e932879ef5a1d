#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "yardworth/core/plane.hpp"
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

// The plan view of a hole: its areas, and what lies at a point. Look-ups are exact: a raster of one-yard cells knows
// the cells that lie wholly in one ground, and only in the others are the polygons themselves asked.
class HoleMap {
 public:
  HoleMap(const Hole& hole, Firmness firmness);

  Ground ground_at(Point p) const {
    const Cell* cell = cell_at(p);
    return cell != nullptr && cell->ground != mixed ? static_cast<Ground>(cell->ground) : ground_by_areas(p);
  }
  // The ground stays the same at least this far in every direction, in whole yards up to 60; 0 near an edge.
  double clearance_yd(Point p) const {
    const Cell* cell = cell_at(p);
    return cell != nullptr ? cell->clearance_yd : 0.0;
  }
  // The index in areas() of the area that counts at p, or -1 in the rough.
  int area_at(Point p) const;

  const LineOfPlay& line() const { return line_; }
  const std::vector<Area>& areas() const { return areas_; }
  Point pin() const { return pin_; }
  // The place of a tee from which the hole has this length.
  Point tee(double length_yd) const { return line_.at(line_.length_yd() - length_yd); }
  Firmness firmness() const { return firmness_; }

 private:
  static constexpr std::uint8_t mixed = 255;
  struct Cell {
    std::uint8_t ground;
    std::uint8_t clearance_yd;
  };
  struct Box {
    Point low, high;
  };

  const Cell* cell_at(Point p) const {
    const double column = p.x - origin_.x;
    const double row = p.y - origin_.y;
    if (!(column >= 0.0 && row >= 0.0 && column < static_cast<double>(columns_) && row < static_cast<double>(rows_))) {
      return nullptr;
    }
    return &cells_[static_cast<std::size_t>(row) * columns_ + static_cast<std::size_t>(column)];
  }
  Ground ground_by_areas(Point p) const;
  void add_area(Ground ground, int hazard, Polygon polygon);
  void place_raster();
  void fill_raster();
  void mark_edges(const Polygon& polygon);
  void measure_clearance();

  LineOfPlay line_;
  Firmness firmness_;
  Point pin_;
  std::vector<Area> areas_;  // in the order of Ground, so that the first that covers a point counts
  std::vector<Box> boxes_;
  Point origin_;
  std::size_t columns_ = 0;
  std::size_t rows_ = 0;
  std::vector<Cell> cells_;
};

// Inside the polygon or on its edge, by counting crossings: the same answer as covers(), without its set-up cost.
bool contains(const Polygon& polygon, Point p);

}  // namespace yardworth
