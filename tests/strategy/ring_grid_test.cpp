#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "yardworth/strategy/hole_model.hpp"

namespace yardworth {

TEST_CASE("a point lies between its corners, however close the rings are") {
  // Habits that change at places less than a yard apart put several rings into one yard.
  Resolution resolution;
  resolution.edges_yd = {341.45, 340.9, 201.45, 200.9};
  const RingGrid grid(50.0, 400.0, resolution);
  for (double distance = 50.0; distance < 400.0; distance += 0.07) {
    const RingGrid::Corners corners = grid.corners({0.6 * distance, 0.8 * distance}, distance);
    CAPTURE(distance);
    REQUIRE(corners.ring_share >= 0.0);
    REQUIRE(corners.ring_share <= 1.0);
    REQUIRE(grid.radii()[corners.ring] <= distance + 1e-9);
    REQUIRE(grid.radii()[corners.ring + 1] >= distance - 1e-9);
  }
}

TEST_CASE("every edge has a ring close on each side, in whatever order they come") {
  Resolution resolution;
  resolution.edges_yd = {120.3, 341.4, 201.2, 260.9};
  const RingGrid grid(50.0, 400.0, resolution);
  for (const double edge : resolution.edges_yd) {
    CAPTURE(edge);
    for (const double wanted : {edge - 0.5, edge + 0.5}) {
      double off = 1.0;
      for (const double radius : grid.radii()) off = std::min(off, std::abs(radius - wanted));
      CHECK(off < 0.5);
    }
  }
}

}  // namespace yardworth
