#include "strategy/ring_grid.hpp"

#include <limits>

#include "core/plane.hpp"
#include "yardworth/units.hpp"

namespace yardworth {

namespace {

std::vector<double> ring_radii(double first_yd, double last_yd, const DiscretisationOptions& options) {
  using numerics::ring_beside_edge_yd;
  std::vector<double> radii = {first_yd};
  while (radii.back() < last_yd) {
    const double share = std::clamp(radii.back() / numerics::rings_even_from_yd, numerics::closest_rings_share, 1.0);
    const double shift = radii.size() == 1 ? options.ring_shift : 0.0;
    radii.push_back(radii.back() + options.ring_yd * share * (1.0 - shift));
  }
  const double furthest_yd = radii.back();
  for (const double edge : options.edges_yd) {
    for (const double radius : {edge - ring_beside_edge_yd, edge + ring_beside_edge_yd}) {
      if (radius > first_yd && radius < furthest_yd) radii.push_back(radius);
    }
  }
  std::sort(radii.begin(), radii.end());
  const auto close = [](double a, double b) { return b - a < ring_beside_edge_yd; };
  radii.erase(std::unique(radii.begin(), radii.end(), close), radii.end());
  return radii;
}

}  // namespace

RingGrid::RingGrid(double first_yd, double last_yd, const DiscretisationOptions& options)
    : radius_(ring_radii(first_yd, last_yd, options)) {
  first_vertex_.push_back(0);
  for (const double radius : radius_) {
    const double in_quarter = 2.0 * pi * radius / options.arc_yd / 4.0;
    const int count = 4 * std::max(numerics::least_states_in_quarter, static_cast<int>(std::ceil(in_quarter)));
    first_vertex_.push_back(first_vertex_.back() + count);
  }
  const auto ring_at = [&](std::size_t ring) {
    const int count = first_vertex_[ring + 1] - first_vertex_[ring];
    return Ring{0.25 * count, first_vertex_[ring], count};
  };
  for (std::size_t ring = 0; ring + 1 < radius_.size(); ++ring) {
    const double per_yard = 1.0 / (radius_[ring + 1] - radius_[ring]);
    gaps_.push_back({radius_[ring], radius_[ring + 1], per_yard, ring_at(ring), ring_at(ring + 1)});
  }
  gaps_.back().to_yd = std::numeric_limits<double>::infinity();
  const auto yards = static_cast<std::size_t>(radius_.back()) + 2;
  std::size_t ring = 0;
  for (std::size_t yard = 0; yard < yards; ++yard) {
    while (ring + 2 < radius_.size() && radius_[ring + 1] <= static_cast<double>(yard)) ++ring;
    ring_below_.push_back(static_cast<std::uint16_t>(ring));
  }
}

std::vector<Point> RingGrid::offsets() const {
  std::vector<Point> all;
  all.reserve(static_cast<std::size_t>(size()));
  for (std::size_t ring = 0; ring < radius_.size(); ++ring) {
    const int count = first_vertex_[ring + 1] - first_vertex_[ring];
    for (int vertex = 0; vertex < count; ++vertex) {
      const double turn = 4.0 * vertex / count;
      const double x = turn <= 2.0 ? 1.0 - turn : turn - 3.0;
      const double y = turn <= 2.0 ? 1.0 - std::abs(x) : std::abs(x) - 1.0;
      all.push_back((radius_[ring] / std::sqrt(x * x + y * y)) * Point{x, y});
    }
  }
  return all;
}

}  // namespace yardworth
