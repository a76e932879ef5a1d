#pragma once

#include <array>
#include <cmath>

#include "yardworth/flight.hpp"

namespace yardworth::test {

// mph and degrees, as deliveries are told.
inline Delivery delivery_of(double club_speed_mph, double attack_deg, double dynamic_loft_deg, double path_deg = 0.0,
                            double face_deg = 0.0) {
  return {from_mph(club_speed_mph), radians(attack_deg), radians(dynamic_loft_deg), radians(path_deg),
          radians(face_deg)};
}

inline Launch launch_at(double ball_speed_mph, double launch_deg, double spin_rpm) {
  Launch launch;
  launch.ball_speed_mps = from_mph(ball_speed_mph);
  launch.launch_rad = radians(launch_deg);
  launch.spin_radps = from_rpm(spin_rpm);
  return launch;
}

inline double yards(double metres) { return metres / metres_per_yard; }

// No drag and no lift.
inline Aerodynamics vacuum() {
  Aerodynamics none;
  none.source = "nothing";
  return none;
}

using Vector = std::array<double, 3>;

inline Vector along(double size, double up_rad, double right_rad) {
  return {size * std::cos(up_rad) * std::cos(right_rad), -size * std::cos(up_rad) * std::sin(right_rad),
          size * std::sin(up_rad)};
}

}  // namespace yardworth::test
