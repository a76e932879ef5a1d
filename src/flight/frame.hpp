#pragma once

#include <Eigen/Core>
#include <Eigen/Geometry>
#include <cmath>

namespace yardworth {

// The frame of impact and flight: x to the target, y to the left, z up.

// So much upwards and to the right.
inline Eigen::Vector3d direction_of(double up_rad, double right_rad) {
  return {std::cos(up_rad) * std::cos(right_rad), -std::cos(up_rad) * std::sin(right_rad), std::sin(up_rad)};
}

// The axis of pure backspin of a ball that starts in that direction points level to the right; a tilt lowers its right
// end, in the plane across the start.
inline Eigen::Vector3d spin_axis(double up_rad, double right_rad, double tilt_rad) {
  const Eigen::Vector3d level(-std::sin(right_rad), -std::cos(right_rad), 0.0);
  const Eigen::Vector3d above = level.cross(direction_of(up_rad, right_rad));
  return std::cos(tilt_rad) * level - std::sin(tilt_rad) * above;
}

// The tilt of an axis that lies across the start.
inline double tilt_of(const Eigen::Vector3d& axis, double up_rad, double right_rad) {
  const Eigen::Vector3d level(-std::sin(right_rad), -std::cos(right_rad), 0.0);
  const Eigen::Vector3d above = level.cross(direction_of(up_rad, right_rad));
  return std::atan2(-axis.dot(above), axis.dot(level));
}

}  // namespace yardworth
