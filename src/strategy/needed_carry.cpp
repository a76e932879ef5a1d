#include "strategy/needed_carry.hpp"

#include <algorithm>
#include <boost/graph/adjacency_list.hpp>
#include <boost/graph/adjacency_matrix.hpp>
#include <boost/graph/connected_components.hpp>
#include <boost/graph/dijkstra_shortest_paths.hpp>
#include <limits>

#include "core/numerics.hpp"
#include "course/ground.hpp"

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
  std::vector<int> island;  // by cell; sea: cannot be played
  int count = 0;

  static constexpr int sea = -1;

  int cells() const { return columns * rows; }
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

Islands raster_of(const LineOfPlay& line) {
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
  return islands;
}

// Islands are the components of the graph of playable cells, in which neighbours are joined.
Islands find_islands(const HoleMap& map) {
  Islands islands = raster_of(map.line());
  std::vector<int> vertex;  // by cell
  int land = 0;
  for (int cell = 0; cell < islands.cells(); ++cell) {
    vertex.push_back(is_playable(map.ground_at(islands.middle(cell))) ? land++ : Islands::sea);
  }
  boost::adjacency_list<boost::vecS, boost::vecS, boost::undirectedS> neighbours(static_cast<std::size_t>(land));
  const auto join = [&](int cell, int other) {
    const int a = vertex[static_cast<std::size_t>(cell)];
    const int b = vertex[static_cast<std::size_t>(other)];
    if (a != Islands::sea && b != Islands::sea) {
      boost::add_edge(static_cast<std::size_t>(a), static_cast<std::size_t>(b), neighbours);
    }
  };
  for (int cell = 0; cell < islands.cells(); ++cell) {
    if ((cell + 1) % islands.columns != 0) join(cell, cell + 1);
    if (cell + islands.columns < islands.cells()) join(cell, cell + islands.columns);
  }
  std::vector<int> component(static_cast<std::size_t>(land));
  islands.count = boost::connected_components(neighbours, component.data());
  for (const int number : vertex) {
    islands.island.push_back(number == Islands::sea ? Islands::sea : component[static_cast<std::size_t>(number)]);
  }
  return islands;
}

// Cells of each island that border on ground that cannot be played.
std::vector<std::vector<Point>> shores(const Islands& islands) {
  std::vector<std::vector<Point>> shore(static_cast<std::size_t>(islands.count));
  for (int cell = 0; cell < islands.cells(); ++cell) {
    const int island = islands.island[static_cast<std::size_t>(cell)];
    if (island == Islands::sea) continue;
    for (const int step : {-1, 1, -islands.columns, islands.columns}) {
      const int to = cell + step;
      if (to < 0 || to >= islands.cells() || islands.island[static_cast<std::size_t>(to)] != Islands::sea) continue;
      shore[static_cast<std::size_t>(island)].push_back(islands.middle(cell));
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

// The islands, each joined to every other by the gap between them.
using Crossings =
    boost::adjacency_matrix<boost::undirectedS, boost::no_property, boost::property<boost::edge_weight_t, double>>;

Crossings crossings_between(const std::vector<std::vector<Point>>& shore) {
  Crossings crossings(shore.size());
  for (std::size_t i = 0; i < shore.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) boost::add_edge(i, j, gap_yd(shore[i], shore[j]), crossings);
  }
  return crossings;
}

}  // namespace

double needed_carry_yd(const HoleMap& map, Point tee) {
  const Islands islands = find_islands(map);
  const int start = islands.at(tee);
  const int end = islands.at(map.pin());
  if (start == end || start == Islands::sea || end == Islands::sea) return 0.0;
  const Crossings crossings = crossings_between(shores(islands));
  // A way is as long as its widest gap, so that the shortest way is the one whose widest gap is the least.
  std::vector<double> widest(static_cast<std::size_t>(islands.count));
  boost::dijkstra_shortest_paths(
      crossings, static_cast<std::size_t>(start),
      boost::distance_map(widest.data()).distance_combine([](double way, double gap) { return std::max(way, gap); }));
  return widest[static_cast<std::size_t>(end)];
}

}  // namespace yardworth
