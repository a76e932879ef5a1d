#pragma once

#include "yardworth/flight.hpp"

namespace yardworth {

struct DragAndLift {
  double drag = 0.0;
  double lift = 0.0;
};

DragAndLift drag_and_lift(const Aerodynamics& set, double spin_ratio, double reynolds);

// kg/(m s), by Sutherland's formula.
double viscosity(double temperature_c);

}  // namespace yardworth
