#include "strategy/needed_carry.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/numerics.hpp"

namespace yardworth {

namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();
constexpr double cell_yd = numerics::carry_cell_yd;
constexpr double margin_yd = numerics::carry_margin_yd;

// The hole as a raster of places where a ball can or cannot be played, and the islands of those where it can.
struct Islands {
  Point origin;
  int columns = 0;
  int rows = 0;
  std::vector<int> island;  // by cell; -1: cannot be played
  int count = 0;

  Point middle(int cell) const {
    const int row = cell / columns;
    const int column = cell % columns;
    return origin + cell_yd * Point{column + 0.5, row + 0.5};
  }
  int at(Point p) const {
    const int column = std::clamp(static_cast<int>((p.x - origin.x) / cell_yd), 0, columns - 1);
    const int row = std::clamp(static_cast<int>((p.y - origin.y) / cell_yd), 0, rows - 1);
    return island[static_cast<std::size_t>(row * columns + column)];
  }
};

void flood(Islands& islands, int start, int label) {
  constexpr int open = -2;
  std::vector<int> edge = {start};
  islands.island[static_cast<std::size_t>(start)] = label;
  while (!edge.empty()) {
    const int cell = edge.back();
    edge.pop_back();
    const auto spread = [&](int to, bool inside) {
      if (!inside || islands.island[static_cast<std::size_t>(to)] != open) return;
      islands.island[static_cast<std::size_t>(to)] = label;
      edge.push_back(to);
    };
    spread(cell - 1, cell % islands.columns > 0);
    spread(cell + 1, cell % islands.columns + 1 < islands.columns);
    spread(cell - islands.columns, cell >= islands.columns);
    spread(cell + islands.columns, cell + islands.columns < islands.columns * islands.rows);
  }
}

Islands find_islands(const HoleMap& map) {
  const LineOfPlay& line = map.line();
  Point low = line.at(0.0);
  Point high = low;
  for (double along = 0.0; along <= line.length_yd(); along += numerics::carry_line_step_yd) {
    const Point p = line.at(along);
    low = {std::min(low.x, p.x), std::min(low.y, p.y)};
    high = {std::max(high.x, p.x), std::max(high.y, p.y)};
  }
  Islands islands;
  islands.origin = low - Point{margin_yd, margin_yd};
  islands.columns = static_cast<int>((high.x - low.x + 2.0 * margin_yd) / cell_yd) + 1;
  islands.rows = static_cast<int>((high.y - low.y + 2.0 * margin_yd) / cell_yd) + 1;
  const int cells = islands.columns * islands.rows;
  for (int cell = 0; cell < cells; ++cell) {
    const Ground ground = map.ground_at(islands.middle(cell));
    islands.island.push_back(ground == Ground::penalty_area || ground == Ground::out_of_bounds ? -1 : -2);
  }
  for (int cell = 0; cell < cells; ++cell) {
    if (islands.island[static_cast<std::size_t>(cell)] == -2) flood(islands, cell, islands.count++);
  }
  return islands;
}

// Cells of each island that border on ground that cannot be played.
std::vector<std::vector<Point>> shores(const Islands& islands) {
  std::vector<std::vector<Point>> shore(static_cast<std::size_t>(islands.count));
  const int cells = islands.columns * islands.rows;
  for (int cell = 0; cell < cells; ++cell) {
    const int label = islands.island[static_cast<std::size_t>(cell)];
    if (label < 0) continue;
    for (const int step : {-1, 1, -islands.columns, islands.columns}) {
      const int to = cell + step;
      if (to < 0 || to >= cells || islands.island[static_cast<std::size_t>(to)] >= 0) continue;
      shore[static_cast<std::size_t>(label)].push_back(islands.middle(cell));
      break;
    }
  }
  return shore;
}

double gap_yd(const std::vector<Point>& a, const std::vector<Point>& b) {
  double least = infinity;
  for (const Point p : a) {
    for (const Point q : b) least = std::min(least, distance_yd(p, q));
  }
  // Shores are told by the middles of cells, half a cell inside on both sides.
  return std::max(0.0, least - cell_yd);
}

}  // namespace

double needed_carry_yd(const HoleMap& map, Point tee) {
  const Islands islands = find_islands(map);
  const int start = islands.at(tee);
  const int end = islands.at(map.pin());
  if (start == end || start < 0 || end < 0) return 0.0;
  const std::vector<std::vector<Point>> shore = shores(islands);
  // The least of the widest gaps on the way, island by island, nearest first.
  std::vector<double> widest(shore.size(), infinity);
  std::vector<bool> reached(shore.size(), false);
  widest[static_cast<std::size_t>(start)] = 0.0;
  for (;;) {
    std::size_t here = shore.size();
    for (std::size_t i = 0; i < shore.size(); ++i) {
      if (!reached[i] && widest[i] < infinity && (here == shore.size() || widest[i] < widest[here])) here = i;
    }
    if (here == shore.size() || here == static_cast<std::size_t>(end)) break;
    reached[here] = true;
    for (std::size_t to = 0; to < shore.size(); ++to) {
      if (!reached[to]) widest[to] = std::min(widest[to], std::max(widest[here], gap_yd(shore[here], shore[to])));
    }
  }
  return widest[static_cast<std::size_t>(end)];
}

}  // namespace yardworth
