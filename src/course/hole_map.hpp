#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>
#include <utility>
#include <vector>

#include "core/numerics.hpp"
#include "core/plane.hpp"
#include "core/whole_part.hpp"
#include "course/ground.hpp"
#include "yardworth/course.hpp"

namespace yardworth {

// A polygon of one ground. Its edge belongs to it.
struct Area {
  Ground ground = Ground::rough;
  int hazard = -1;  // index into Hole::hazards, -1 for fairway and green
  Polygon polygon;
};

// The areas of a hole; where several cover a place the first counts.
std::vector<Area> areas_of(const Hole& hole, const LineOfPlay& line);

// The plan view of a hole: its areas, and what lies at a point. Look-ups are exact: a raster of two-yard cells knows
// the cells that lie wholly in one ground; in a cell that a single edge crosses, or two of one area, their sides
// decide; only in the cells where outlines cross or crowd are polygons themselves asked, those that have an edge there.
class HoleMap {
 public:
  HoleMap(const Hole& hole, Firmness firmness);

  // Small enough to be handed over in a register: places are looked at by the million.
  struct GroundProbe {
    Ground ground;
    // The ground stays the same at least so far in every direction, up to 60; 0 near an edge.
    std::uint8_t clearance_yd;
    // No edge that counts (GroundFacts) comes nearer than this, up to 60.
    std::uint8_t edge_free_yd;
  };
  GroundProbe probe(Point p) const {
    const Cell* cell = cell_at(p);
    return cell != nullptr && cell->outline == no_edge ? cell->probe : probe_closely(cell, p);
  }
  Ground ground_at(Point p) const { return probe(p).ground; }
  // How far along the way from a to b, less than two yards, as a share, the ground of a ends, where a single edge known
  // to lie between them says so; none where there may be more than one.
  std::optional<double> edge_between(Point a, Point b) const;
  // The index in areas() of the area that counts at p, or -1 in the rough.
  int area_at(Point p) const;

  const LineOfPlay& line() const { return line_; }
  const std::vector<Area>& areas() const { return areas_; }
  Point pin() const { return pin_; }
  // The place of a tee from which the hole has this length.
  Point tee(double length_yd) const { return line_.at(line_.length_yd() - length_yd); }
  Firmness firmness() const { return firmness_; }
  // Roll on a ground of this hole over roll on a normal fairway.
  double roll_factor_on(Ground ground) const { return roll_factors_[static_cast<std::size_t>(ground)]; }

 private:
  static constexpr double cell_yd = numerics::map_cell_yd;
  static constexpr std::uint32_t no_edge = 0xFFFFFFFF;
  static constexpr std::uint32_t many_edges = 0x80000000;
  struct Cell {
    GroundProbe probe;  // the ground is that of its middle
    bool has_edge_that_counts;
    std::uint32_t outline;  // index into outlines_, or no_edge, or many_edges and an index into crowds_ more
  };
  // An edge of an area, which lies on its left; the edge itself belongs to the area.
  struct Edge {
    Point start, end;

    // In proportion to how far left of the edge a point lies.
    double left_of(Point p) const { return (end.x - start.x) * (p.y - start.y) - (end.y - start.y) * (p.x - start.x); }
    bool has_on_left(Point p) const { return left_of(p) >= 0.0; }
  };
  // All there is of outlines in a cell: one edge, or two of an area, with the ground on both sides. Two that meet make
  // a corner, and so do two that would outside the cell, as those of a thin strip: the area is what lies left of both,
  // or (inward) of either.
  struct Outline {
    enum class Corner : std::uint8_t { none, outward, inward };

    Edge edge;
    Corner corner = Corner::none;
    Ground inside, outside;
    std::uint16_t area;
    Edge next;  // where there is a corner; last, as it is seldom asked for

    bool has_inside(Point p) const {
      const bool left = edge.has_on_left(p);
      if (corner == Corner::none) return left;
      return corner == Corner::outward ? left && next.has_on_left(p) : left || next.has_on_left(p);
    }
  };
  // Of a cell with many edges: the areas that have one in it and may count there, in order, as a stretch of
  // crowded_areas_, and the area that counts where none of them covers a point (-1: none), which covers all of the
  // cell.
  struct Crowd {
    std::uint32_t first = 0;
    std::uint32_t end = 0;
    std::int32_t behind = -1;
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
  // In a cell that has edges, or outside the raster (no cell).
  GroundProbe probe_closely(const Cell* cell, Point p) const;
  // In one with many, or outside: rare, and so kept out of the way.
  [[gnu::noinline]] GroundProbe probe_areas(const Cell* cell, Point p) const;
  Ground ground_of(int area) const;
  int area_in(const Crowd& crowd, Point p) const;
  bool covers_area(std::size_t area, Point p) const;
  void place_raster();
  void fill_raster();
  void note_areas_of_rows();
  void mark_edges(std::size_t area);
  void mark_cell(std::size_t row, std::size_t column, std::size_t area, Edge edge);
  void note_crowds();
  void find_behind(Crowd& crowd, std::size_t row, Point middle) const;
  Point middle_of(std::size_t row, std::size_t column) const;
  Outline outline_of(std::size_t area, Edge edge, std::size_t row, Point middle) const;
  static bool join(Outline& outline, std::size_t area, Edge edge);
  static bool join_apart(Outline& outline, Edge edge);
  void measure_clearance(std::uint8_t GroundProbe::*clearance, bool edges_that_count);

  LineOfPlay line_;
  Firmness firmness_;
  std::array<double, ground_count> roll_factors_{};  // looked up by the million
  Point pin_;
  std::vector<Area> areas_;  // in the order of Ground, so that the first that covers a point counts
  std::vector<Box> boxes_;
  std::vector<std::vector<std::uint16_t>> areas_of_row_;  // of the raster: those that may cover a point of it, in order
  std::vector<bool> anticlockwise_;
  Point origin_;
  std::size_t columns_ = 0;
  std::size_t rows_ = 0;
  Point end_;  // of the raster, in cells
  std::vector<Cell> cells_;
  std::vector<Outline> outlines_;
  // While edges are marked: crowd and area, and where the crowds are.
  std::vector<std::pair<std::uint32_t, std::uint16_t>> crowding_;
  std::vector<std::size_t> cells_of_crowds_;
  std::vector<Crowd> crowds_;
  std::vector<std::uint16_t> crowded_areas_;
};

// Inside the polygon or on its edge, by counting crossings: the same answer as covers(), without its set-up cost.
bool contains(const Polygon& polygon, Point p);

}  // namespace yardworth
