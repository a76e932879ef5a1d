#pragma once

#include "yardworth/flight.hpp"

namespace yardworth {

// In the vertical plane of the landing.
struct PlaneMotion {
  double forward_mps = 0.0;
  double upward_mps = 0.0;
  double backspin_radps = 0.0;
};

// A ball that comes down and leaves again.
PlaneMotion bounce(const PlaneMotion& in, const Turf& turf, const Ball& ball);

// How far a ball goes on after it lands, metres: hops, then a roll; negative where its spin takes it back.
double run_of(const PlaneMotion& landing, const Turf& turf, const Ball& ball);

}  // namespace yardworth
