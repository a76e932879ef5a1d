#include "course/hole_map.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>

#include "core/numerics.hpp"
#include "course/ground.hpp"
#include "course/hazard_kind.hpp"
#include "course/set_up.hpp"

namespace yardworth {

namespace {

using numerics::map_end_margin_yd;
using numerics::map_side_margin_yd;

Polygon green_outline(const LineOfPlay& line, const GreenSize& green) {
  using numerics::green_corners;
  // The last leg made longer, so that a dogleg close to the green does not bend the green itself.
  const Point middle = line.at(line.length_yd());
  const Point forward = along_heading(line.heading_at(line.length_yd()));
  const Point right = {forward.y, -forward.x};
  Polygon outline;
  for (int i = 0; i < green_corners; ++i) {
    const double angle = 2.0 * pi * i / green_corners;
    outline.push_back(middle + (green.depth_yd / 2.0 * std::cos(angle)) * forward +
                      (green.width_yd / 2.0 * std::sin(angle)) * right);
  }
  return outline;
}

double signed_area(const Polygon& polygon) {
  double twice = 0.0;
  for (std::size_t i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++) {
    twice += polygon[j].x * polygon[i].y - polygon[i].x * polygon[j].y;
  }
  return twice / 2.0;
}

}  // namespace

bool contains(const Polygon& polygon, Point p) {
  bool inside = false;
  for (std::size_t i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++) {
    const Point a = polygon[j];
    const Point b = polygon[i];
    if (p.y < std::min(a.y, b.y) || p.y > std::max(a.y, b.y)) continue;
    const double cross = (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
    if (cross == 0.0 && p.x >= std::min(a.x, b.x) && p.x <= std::max(a.x, b.x)) return true;
    if ((a.y > p.y) != (b.y > p.y) && (cross > 0.0) == (b.y > a.y)) inside = !inside;
  }
  return inside;
}

std::vector<Area> areas_of(const Hole& hole, const LineOfPlay& line) {
  std::vector<Area> areas;
  const auto add = [&](Ground ground, int hazard, Polygon polygon) {
    if (polygon.size() >= 3) areas.push_back({ground, hazard, std::move(polygon)});
  };
  add(Ground::green, -1, green_outline(line, hole.green));
  for (const FairwayStretch& stretch : hole.fairway) {
    add(Ground::fairway, -1, line.strip(stretch.from_yd, stretch.to_yd, -stretch.left_yd, stretch.right_yd));
  }
  for (std::size_t i = 0; i < hole.hazards.size(); ++i) {
    add(facts_of(hole.hazards[i].kind).ground, static_cast<int>(i), line.bend(corners_of(hole.hazards[i])));
  }
  std::stable_sort(areas.begin(), areas.end(), [](const Area& a, const Area& b) { return a.ground < b.ground; });
  return areas;
}

HoleMap::HoleMap(const Hole& hole, Firmness firmness)
    : line_(hole.length_yd.front(), hole.doglegs),
      firmness_(firmness),
      pin_(line_.at(line_.length_yd())),
      areas_(areas_of(hole, line_)) {
  for (const GroundFacts& facts : ground_table) {
    roll_factors_[static_cast<std::size_t>(facts.ground)] = roll_factor(facts.ground, firmness);
  }
  for (const Area& area : areas_) {
    Box box{area.polygon.front(), area.polygon.front()};
    for (const Point p : area.polygon) {
      box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y)};
      box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y)};
    }
    boxes_.push_back(box);
    anticlockwise_.push_back(signed_area(area.polygon) > 0.0);
  }
  place_raster();
  fill_raster();
  note_areas_of_rows();
  for (std::size_t area = 0; area < areas_.size(); ++area) mark_edges(area);
  note_crowds();
  measure_clearance(&GroundProbe::clearance_yd, false);
  measure_clearance(&GroundProbe::edge_free_yd, true);
}

bool HoleMap::covers_area(std::size_t area, Point p) const {
  const Box& box = boxes_[area];
  if (p.x < box.low.x || p.x > box.high.x || p.y < box.low.y || p.y > box.high.y) return false;
  return contains(areas_[area].polygon, p);
}

// Only those whose box reaches the row of the point are looked at: a hole may have hundreds of thin strips.
int HoleMap::area_at(Point p) const {
  const double row = (p.y - origin_.y) * (1.0 / cell_yd);
  if (row >= 0.0 && row < end_.y) {
    for (const std::uint16_t area : areas_of_row_[whole_part(row)]) {
      if (covers_area(area, p)) return area;
    }
    return -1;
  }
  for (std::size_t i = 0; i < areas_.size(); ++i) {
    if (covers_area(i, p)) return static_cast<int>(i);
  }
  return -1;
}

std::optional<double> HoleMap::edge_between(Point a, Point b) const {
  const Cell* of_a = cell_at(a);
  const Cell* of_b = cell_at(b);
  if (of_a == nullptr || of_b == nullptr) return std::nullopt;
  const Cell* known = of_a->outline == no_edge ? of_b : of_a;
  const Cell* other = known == of_a ? of_b : of_a;
  // Between cells that share no side the way leads through a third.
  const auto apart = static_cast<std::size_t>(std::abs(of_a - of_b));
  const bool side_by_side = apart <= 1 || apart == columns_;
  const bool alone = other == known || (side_by_side && other->outline == no_edge);
  if (known->outline >= many_edges || !alone) return std::nullopt;
  const Outline& outline = outlines_[known->outline];
  if (outline.corner != Outline::Corner::none) return std::nullopt;
  const double from = outline.edge.left_of(a);
  const double to = outline.edge.left_of(b);
  if ((from >= 0.0) == (to >= 0.0)) return std::nullopt;
  return from / (from - to);
}

HoleMap::GroundProbe HoleMap::probe_closely(const Cell* cell, Point p) const {
  if (cell == nullptr || cell->outline >= many_edges) return probe_areas(cell, p);
  const Outline& outline = outlines_[cell->outline];
  // Past a corner a rolling ball may come to another edge soon: it is watched closely.
  const std::uint8_t edge_free_yd =
      outline.corner == Outline::Corner::none ? cell->probe.edge_free_yd : std::uint8_t{0};
  return {outline.has_inside(p) ? outline.inside : outline.outside, 0, edge_free_yd};
}

HoleMap::GroundProbe HoleMap::probe_areas(const Cell* cell, Point p) const {
  return {ground_of(cell == nullptr ? area_at(p) : area_in(crowds_[cell->outline - many_edges], p)), 0, 0};
}

Ground HoleMap::ground_of(int area) const {
  return area < 0 ? Ground::rough : areas_[static_cast<std::size_t>(area)].ground;
}

int HoleMap::area_in(const Crowd& crowd, Point p) const {
  for (std::uint32_t i = crowd.first; i < crowd.end; ++i) {
    if (covers_area(crowded_areas_[i], p)) return crowded_areas_[i];
  }
  return crowd.behind;
}

void HoleMap::place_raster() {
  Point low{0.0, 0.0};
  Point high{0.0, 0.0};
  for (double along = 0.0;; along += numerics::map_line_step_yd) {
    const Point p = line_.at(std::min(along, line_.length_yd()));
    low = {std::min(low.x, p.x), std::min(low.y, p.y)};
    high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    if (along >= line_.length_yd()) break;
  }
  origin_ = {std::floor(low.x - map_side_margin_yd), std::floor(low.y - map_end_margin_yd)};
  columns_ = static_cast<std::size_t>(std::ceil((high.x + map_side_margin_yd - origin_.x) / cell_yd));
  rows_ = static_cast<std::size_t>(std::ceil((high.y + map_end_margin_yd - origin_.y) / cell_yd));
  end_ = {static_cast<double>(columns_), static_cast<double>(rows_)};
  cells_.assign(columns_ * rows_, {{Ground::rough, 0, 0}, false, no_edge});
}

// A row more on both sides, so that rounding does no harm.
void HoleMap::note_areas_of_rows() {
  areas_of_row_.resize(rows_);
  for (std::size_t area = 0; area < areas_.size(); ++area) {
    const double low = (boxes_[area].low.y - origin_.y) / cell_yd - 1.0;
    const double high = (boxes_[area].high.y - origin_.y) / cell_yd + 1.0;
    for (std::size_t row = 0; row < rows_; ++row) {
      if (static_cast<double>(row) + 1.0 < low || static_cast<double>(row) > high) continue;
      areas_of_row_[row].push_back(static_cast<std::uint16_t>(area));
    }
  }
}

// Row by row through the middles of the cells: between two crossings of a polygon's outline the cells are inside it.
// Later areas in the order lose, so they are painted first.
void HoleMap::fill_raster() {
  std::vector<double> crossings;
  for (auto area = areas_.rbegin(); area != areas_.rend(); ++area) {
    const Polygon& polygon = area->polygon;
    for (std::size_t row = 0; row < rows_; ++row) {
      const double y = origin_.y + (static_cast<double>(row) + 0.5) * cell_yd;
      crossings.clear();
      for (std::size_t i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++) {
        const Point a = polygon[j];
        const Point b = polygon[i];
        if ((a.y > y) != (b.y > y))
          crossings.push_back((a.x + (y - a.y) / (b.y - a.y) * (b.x - a.x) - origin_.x) / cell_yd);
      }
      std::sort(crossings.begin(), crossings.end());
      for (std::size_t k = 0; k + 1 < crossings.size(); k += 2) {
        const double first = std::clamp(std::ceil(crossings[k] - 0.5), 0.0, static_cast<double>(columns_));
        const double end = std::clamp(std::ceil(crossings[k + 1] - 0.5), 0.0, static_cast<double>(columns_));
        for (auto column = static_cast<std::size_t>(first); column < static_cast<std::size_t>(end); ++column) {
          cells_[row * columns_ + column].probe.ground = area->ground;
        }
      }
    }
  }
}

// Every cell that an edge passes through or touches. Within a row the edge spans an interval of columns, and a little
// more on each side that keeps rounding harmless.
void HoleMap::mark_edges(std::size_t area) {
  using numerics::cell_rim;
  const Polygon& polygon = areas_[area].polygon;
  const double rows = static_cast<double>(rows_);
  const double columns = static_cast<double>(columns_);
  for (std::size_t i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++) {
    // The inside of an outline is where its orientation says; of an edge here it is on the left.
    const Edge edge = anticlockwise_[area] ? Edge{polygon[j], polygon[i]} : Edge{polygon[i], polygon[j]};
    const Point a = (1.0 / cell_yd) * (polygon[j] - origin_);
    const Point b = (1.0 / cell_yd) * (polygon[i] - origin_);
    const double low_y = std::min(a.y, b.y);
    const double high_y = std::max(a.y, b.y);
    const double first_row = std::clamp(std::floor(low_y - cell_rim), 0.0, rows);
    const double end_row = std::clamp(std::floor(high_y + cell_rim) + 1.0, 0.0, rows);
    for (double row = first_row; row < end_row; row += 1.0) {
      double x0 = a.x;
      double x1 = b.x;
      if (high_y - low_y > numerics::level_edge) {
        const auto x_at = [&](double y) {
          return a.x + (std::clamp(y, low_y, high_y) - a.y) / (b.y - a.y) * (b.x - a.x);
        };
        x0 = x_at(row - cell_rim);
        x1 = x_at(row + (1.0 + cell_rim));
      }
      const double first = std::clamp(std::floor(std::min(x0, x1) - cell_rim), 0.0, columns);
      const double end = std::clamp(std::floor(std::max(x0, x1) + cell_rim) + 1.0, 0.0, columns);
      for (double column = first; column < end; column += 1.0) {
        mark_cell(static_cast<std::size_t>(row), static_cast<std::size_t>(column), area, edge);
      }
    }
  }
}

Point HoleMap::middle_of(std::size_t row, std::size_t column) const {
  return origin_ + cell_yd * Point{static_cast<double>(column) + 0.5, static_cast<double>(row) + 0.5};
}

void HoleMap::mark_cell(std::size_t row, std::size_t column, std::size_t area, Edge edge) {
  Cell& cell = cells_[row * columns_ + column];
  cell.has_edge_that_counts |= facts_of(areas_[area].ground).edge_counts;
  if (cell.outline == no_edge) {
    cell.outline = static_cast<std::uint32_t>(outlines_.size());
    outlines_.push_back(outline_of(area, edge, row, middle_of(row, column)));
    return;
  }
  if (cell.outline < many_edges) {
    Outline& outline = outlines_[cell.outline];
    if (join(outline, area, edge)) return;
    cell.outline = many_edges + static_cast<std::uint32_t>(crowds_.size());
    crowds_.emplace_back();
    cells_of_crowds_.push_back(row * columns_ + column);
    crowding_.emplace_back(cell.outline - many_edges, outline.area);
  }
  crowding_.emplace_back(cell.outline - many_edges, static_cast<std::uint16_t>(area));
}

// An area without an edge in a cell covers all of it or nothing: of those that do the first alone can count, and hides
// all that come after it.
void HoleMap::note_crowds() {
  for (const auto& [crowd, area] : crowding_) ++crowds_[crowd].end;
  std::uint32_t room = 0;
  for (Crowd& crowd : crowds_) {
    crowd.first = room;
    room += crowd.end;
    crowd.end = crowd.first;
  }
  crowded_areas_.resize(room);
  for (const auto& [crowd, area] : crowding_) {
    Crowd& of_cell = crowds_[crowd];
    // They were met in their order.
    if (of_cell.end > of_cell.first && crowded_areas_[of_cell.end - 1] == area) continue;
    crowded_areas_[of_cell.end++] = area;
  }
  crowding_ = {};
  for (std::size_t i = 0; i < crowds_.size(); ++i) {
    const std::size_t row = cells_of_crowds_[i] / columns_;
    find_behind(crowds_[i], row, middle_of(row, cells_of_crowds_[i] % columns_));
  }
  cells_of_crowds_ = {};
}

void HoleMap::find_behind(Crowd& crowd, std::size_t row, Point middle) const {
  auto in_cell = crowded_areas_.begin() + crowd.first;
  const auto end = crowded_areas_.begin() + crowd.end;
  for (const std::uint16_t area : areas_of_row_[row]) {
    while (in_cell != end && *in_cell < area) ++in_cell;
    if ((in_cell != end && *in_cell == area) || !covers_area(area, middle)) continue;
    crowd.behind = area;
    crowd.end = static_cast<std::uint32_t>(in_cell - crowded_areas_.begin());
    return;
  }
}

// Of a cell with nothing else of outlines in it: the other areas cover the whole cell or none of it.
HoleMap::Outline HoleMap::outline_of(std::size_t area, Edge edge, std::size_t row, Point middle) const {
  Ground other = Ground::rough;
  for (const std::uint16_t i : areas_of_row_[row]) {
    if (i != area && covers_area(i, middle)) {
      other = areas_[i].ground;
      break;
    }
  }
  Outline outline;
  outline.edge = edge;
  outline.inside = std::min(other, areas_[area].ground);
  outline.outside = other;
  outline.area = static_cast<std::uint16_t>(area);
  return outline;
}

// Takes up the edge that goes on from the one there is, or comes before it; whether it is that. The area is what lies
// left of both where its outline turns left, and of either where it turns right.
bool HoleMap::join(Outline& outline, std::size_t area, Edge edge) {
  if (outline.area != area || outline.corner != Outline::Corner::none) return false;
  const auto same = [](Point a, Point b) { return a.x == b.x && a.y == b.y; };
  Edge first = outline.edge;
  if (same(edge.end, first.start)) {
    std::swap(first, edge);
  } else if (!same(first.end, edge.start)) {
    return join_apart(outline, edge);
  }
  const Point a = first.end - first.start;
  const Point b = edge.end - edge.start;
  outline.corner = a.x * b.y - a.y * b.x >= 0.0 ? Outline::Corner::outward : Outline::Corner::inward;
  outline.edge = first;
  outline.next = edge;
  return true;
}

// Takes up an edge that does not meet the one there is, where each lies wholly on one side of the other and both have
// the area, or both the rest, between them.
bool HoleMap::join_apart(Outline& outline, Edge edge) {
  const Edge& known = outline.edge;
  const auto all_left = [](const Edge& of, const Edge& other) {
    return of.has_on_left(other.start) && of.has_on_left(other.end);
  };
  const auto all_right = [](const Edge& of, const Edge& other) {
    return !of.has_on_left(other.start) && !of.has_on_left(other.end);
  };
  if (all_left(known, edge) && all_left(edge, known)) {
    outline.corner = Outline::Corner::outward;
  } else if (all_right(known, edge) && all_right(edge, known)) {
    outline.corner = Outline::Corner::inward;
  } else {
    return false;
  }
  outline.next = edge;
  return true;
}

// Chessboard distance, in cells, to the nearest cell that an edge crosses or that is outside the raster; the ball may
// be anywhere in its own cell, so one less is certain. Two passes, each with what the neighbours behind it know.
void HoleMap::measure_clearance(std::uint8_t GroundProbe::*clearance, bool edges_that_count) {
  std::vector<std::uint8_t> cells(cells_.size(), 0);  // distance of each; those on the rim keep 0
  const auto has_edge = [&](const Cell& cell) {
    return edges_that_count ? cell.has_edge_that_counts : cell.outline != no_edge;
  };
  // Of the cell at `other` and those on both sides of it in its row, and of the one at `beside`.
  const auto nearest = [&](std::size_t other, std::size_t beside) {
    return std::min(std::min(int{cells[other - 1]}, int{cells[other]}),
                    std::min(int{cells[other + 1]}, int{cells[beside]}));
  };
  for (std::size_t row = 1; row + 1 < rows_; ++row) {
    for (std::size_t i = row * columns_ + 1; i + 1 < (row + 1) * columns_; ++i) {
      if (has_edge(cells_[i])) continue;
      cells[i] = static_cast<std::uint8_t>(std::min(numerics::most_clearance_cells, nearest(i - columns_, i - 1) + 1));
    }
  }
  for (std::size_t row = rows_ - 1; row-- > 1;) {
    for (std::size_t i = (row + 1) * columns_ - 1; i-- > row * columns_ + 1;) {
      cells[i] = static_cast<std::uint8_t>(std::min(int{cells[i]}, nearest(i + columns_, i + 1) + 1));
    }
  }
  for (std::size_t i = 0; i < cells.size(); ++i) {
    cells_[i].probe.*clearance = static_cast<std::uint8_t>(std::max(0, cells[i] - 1) * static_cast<int>(cell_yd));
  }
}

}  // namespace yardworth
