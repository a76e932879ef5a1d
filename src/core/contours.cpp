#include "core/contours.hpp"

#include <algorithm>
#include <array>
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/linestring.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <cmath>
#include <cstdint>
#include <unordered_map>

#include "core/plane.hpp"

namespace yardworth {

namespace {

// An edge of the grid by a number: that which goes right from a node, or up from it.
using EdgeId = std::uint64_t;

// From where an outline comes into a cell to where it leaves, with what is inside on its left.
struct Piece {
  EdgeId from, to;
};

class Marching {
 public:
  Marching(const GridField& field, double level) : field_(field), level_(level) {}

  std::vector<Polygon> outlines() {
    for (std::size_t row = 0; row + 1 < field_.rows; ++row) {
      for (std::size_t column = 0; column + 1 < field_.columns; ++column) cross_cell(column, row);
    }
    std::vector<Polygon> found;
    for (const Piece& piece : pieces_) {
      if (next_.contains(piece.from)) found.push_back(follow(piece.from));
    }
    return found;
  }

 private:
  EdgeId right_of(std::size_t column, std::size_t row) const { return 2 * (row * field_.columns + column); }
  EdgeId above(std::size_t column, std::size_t row) const { return right_of(column, row) + 1; }
  bool inside(std::size_t column, std::size_t row) const { return field_.node(column, row) >= level_; }

  void add(EdgeId from, EdgeId to) {
    pieces_.push_back({from, to});
    next_[from] = to;
  }

  // Corners and sides are numbered from the lower left corner, and the lower side, anticlockwise. An outline comes in
  // where the corner before a side is inside and the one behind it is not.
  void cross_cell(std::size_t column, std::size_t row) {
    const std::array<bool, 4> corner = {inside(column, row), inside(column + 1, row), inside(column + 1, row + 1),
                                        inside(column, row + 1)};
    const std::array<EdgeId, 4> side = {right_of(column, row), above(column + 1, row), right_of(column, row + 1),
                                        above(column, row)};
    std::vector<std::size_t> in;
    std::vector<std::size_t> out;
    for (std::size_t i = 0; i < 4; ++i) {
      const bool here = corner[i];
      const bool next = corner[(i + 1) % 4];
      if (here && !next) in.push_back(i);
      if (!here && next) out.push_back(i);
    }
    if (in.size() == 1) add(side[in[0]], side[out[0]]);
    if (in.size() == 2) cross_twice(column, row, side, in);
  }

  // Two opposite corners are inside. With the middle inside too they are joined, and each outline turns round a corner
  // that is outside, the one behind the side where it comes in; else round the corner before it.
  void cross_twice(std::size_t column, std::size_t row, const std::array<EdgeId, 4>& side,
                   const std::vector<std::size_t>& in) {
    const double middle = 0.25 * (field_.node(column, row) + field_.node(column + 1, row) +
                                  field_.node(column + 1, row + 1) + field_.node(column, row + 1));
    const std::size_t turn = middle >= level_ ? 1 : 3;
    for (const std::size_t i : in) add(side[i], side[(i + turn) % 4]);
  }

  Polygon follow(EdgeId start) {
    Polygon outline;
    for (EdgeId edge = start; next_.contains(edge);) {
      outline.push_back(crossing(edge));
      const EdgeId next = next_[edge];
      next_.erase(edge);
      edge = next;
    }
    return outline;
  }

  Point crossing(EdgeId edge) const {
    const std::size_t node = edge / 2;
    const std::size_t column = node % field_.columns;
    const std::size_t row = node / field_.columns;
    const bool up = edge % 2 == 1;
    const double here = field_.node(column, row);
    const double there = up ? field_.node(column, row + 1) : field_.node(column + 1, row);
    const double share = (level_ - here) / (there - here);
    const Point place = {static_cast<double>(column) + (up ? 0.0 : share),
                         static_cast<double>(row) + (up ? share : 0.0)};
    return field_.origin + field_.step * place;
  }

  const GridField& field_;
  double level_;
  std::vector<Piece> pieces_;
  std::unordered_map<EdgeId, EdgeId> next_;
};

// As `contains` of the map of a hole does, but for what lies on an edge.
bool holds(const Polygon& polygon, Point p) {
  bool inside = false;
  for (std::size_t i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++) {
    const Point a = polygon[j];
    const Point b = polygon[i];
    if ((a.y > p.y) == (b.y > p.y)) continue;
    if (p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x)) inside = !inside;
  }
  return inside;
}

}  // namespace

double GridField::at(Point p) const {
  const double x = (p.x - origin.x) / step;
  const double y = (p.y - origin.y) / step;
  if (!(x >= 0.0 && y >= 0.0)) return 0.0;
  const auto column = static_cast<std::size_t>(x);
  const auto row = static_cast<std::size_t>(y);
  if (column + 1 >= columns || row + 1 >= rows) return 0.0;
  const double right = x - static_cast<double>(column);
  const double up = y - static_cast<double>(row);
  return (1.0 - up) * std::lerp(node(column, row), node(column + 1, row), right) +
         up * std::lerp(node(column, row + 1), node(column + 1, row + 1), right);
}

std::vector<Polygon> contours_at(const GridField& field, double level) { return Marching(field, level).outlines(); }

bool inside_outlines(const std::vector<Polygon>& outlines, Point p) {
  return std::count_if(outlines.begin(), outlines.end(), [&](const Polygon& outline) { return holds(outline, p); }) %
             2 ==
         1;
}

Polygon simplified(const Polygon& polygon, double tolerance) {
  namespace bg = boost::geometry;
  using Line = bg::model::linestring<bg::model::d2::point_xy<double>>;
  if (polygon.empty()) return {};
  Line line;
  for (const Point p : polygon) line.push_back({p.x, p.y});
  line.push_back(line.front());
  Line kept;
  bg::simplify(line, kept, tolerance);
  Polygon simple;
  for (std::size_t i = 0; i + 1 < kept.size(); ++i) simple.push_back({kept[i].x(), kept[i].y()});
  return simple.size() >= 3 ? simple : polygon;
}

}  // namespace yardworth
