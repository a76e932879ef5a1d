#pragma once

#include <array>
#include <vector>

#include "yardworth/flight.hpp"

namespace yardworth {

// Where a ball is, how fast it moves (x to the target, y to the left, z up) and how fast it spins.
struct FlightPoint {
  double time_s = 0.0;
  std::array<double, 3> at_m{};
  std::array<double, 3> velocity_mps{};
  double spin_radps = 0.0;
};

struct Trajectory {
  FlightPoint landing;
  double apex_m = 0.0;
};

// From the start to where the ball comes down to the height it started from. Throws std::runtime_error where it stays
// up longer than numerics::longest_flight_s, which no delivery within the limits does. Where path is given it gets a
// point for every step of the integration.
Trajectory trajectory_of(const Launch& launch, const FlightConditions& conditions,
                         std::vector<FlightPoint>* path = nullptr);

}  // namespace yardworth
