#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <vector>

#include "core/whole_part.hpp"
#include "strategy/discretisation.hpp"
#include "yardworth/geometry.hpp"

namespace yardworth {

// Of a place between two rings, by its share of the way from the nearer to the further one and of the way between the
// two vertices of each: the weights of the two nearer vertices and of the two further ones.
inline std::array<double, 4> bilinear_weights(double ring, double near, double far) {
  return {(1.0 - ring) * (1.0 - near), (1.0 - ring) * near, ring * (1.0 - far), ring * far};
}

// States lie on rings around the hole: the value of a lie changes mostly with the distance, so the states of a ring may
// be far apart. A point between two rings lies between four states.
class RingGrid {
 public:
  // From first_yd to last_yd at least; the rest as in DiscretisationOptions.
  RingGrid(double first_yd, double last_yd, const DiscretisationOptions& options);

  // The four vertices around a point, and how it lies between them.
  struct Corners {
    std::array<int, 4> vertex;  // two on the nearer ring, two on the further one
    std::size_t ring;           // the nearer ring
    double ring_share;          // of the way from the nearer ring to the further one
    double near_share;          // of the way between the two vertices of the nearer ring
    double far_share;

    std::array<double, 4> weights() const { return bilinear_weights(ring_share, near_share, far_share); }
  };
  // offset: from the hole; distance_yd: its length, >= first_yd (nearer is taken as on the first ring).
  Corners corners(Point offset, double distance_yd) const {
    const double inside = std::min(std::max(distance_yd, radius_.front()), radius_.back());
    std::size_t ring = ring_below_[whole_part(inside)];
    while (inside >= gaps_[ring].to_yd) ++ring;
    const Gap& gap = gaps_[ring];
    const double turn = diamond_angle(offset);
    const auto [near0, near1, near_share] = gap.near.at(turn);
    const auto [far0, far1, far_share] = gap.far.at(turn);
    return {{near0, near1, far0, far1}, ring, (inside - gap.from_yd) * gap.per_yard, near_share, far_share};
  }
  const std::vector<double>& radii() const { return radius_; }
  int size() const { return first_vertex_.back(); }
  int first_vertex(std::size_t ring) const { return first_vertex_[ring]; }  // size() behind the last ring
  // The places of all vertices, from the hole.
  std::vector<Point> offsets() const;

 private:
  // A stand-in for the angle that needs no arc tangent: rises from 0 to 4 once round, anticlockwise from +x.
  static double diamond_angle(Point p) {
    const double s = std::abs(p.x) + std::abs(p.y);
    if (s == 0.0) return 0.0;
    const double t = p.x / s;
    return p.y >= 0.0 ? 1.0 - t : 3.0 + t;
  }
  struct OnRing {
    int first, second;
    double share;
  };
  struct Ring {
    double per_turn;  // vertices in a quarter
    int first_vertex, count;

    OnRing at(double turn) const {
      const double place = turn * per_turn;
      int index = static_cast<int>(place);
      const double share = place - index;
      if (index >= count) index = 0;
      const int next = index + 1 == count ? 0 : index + 1;
      return {first_vertex + index, first_vertex + next, share};
    }
  };
  // Two rings and what lies between them, together in memory.
  struct Gap {
    double from_yd, to_yd;  // the last one has no end
    double per_yard;        // one over the yards between
    Ring near, far;
  };

  std::vector<double> radius_;
  std::vector<int> first_vertex_;          // one more than rings
  std::vector<Gap> gaps_;                  // by the nearer ring
  std::vector<std::uint16_t> ring_below_;  // by whole yards
};

}  // namespace yardworth
