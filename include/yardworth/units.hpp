#pragma once

namespace yardworth {

// Everything inside the library is in yards and radians. Files and commands may speak metres or degrees;
// they are converted where they are read and where they are printed, nowhere else.

enum class Units { yards, metres };

// International yard, 1959: 0.9144 m exactly.
inline constexpr double metres_per_yard = 0.9144;
inline constexpr double feet_per_yard = 3.0;
inline constexpr double metres_per_foot = metres_per_yard / feet_per_yard;
inline constexpr double mps_per_mph = 0.44704;  // 1,760 yards an hour
inline constexpr double pi = 3.14159265358979323846;

constexpr double to_yards(double value, Units units) { return units == Units::yards ? value : value / metres_per_yard; }

constexpr double from_yards(double yards, Units units) {
  return units == Units::yards ? yards : yards * metres_per_yard;
}

constexpr double radians(double degrees) { return degrees * pi / 180.0; }
constexpr double degrees(double radians_value) { return radians_value * 180.0 / pi; }

constexpr double from_mph(double mph) { return mph * mps_per_mph; }
constexpr double to_mph(double mps) { return mps / mps_per_mph; }
constexpr double from_rpm(double rpm) { return rpm * pi / 30.0; }
constexpr double to_rpm(double radps) { return radps * 30.0 / pi; }

constexpr const char* name(Units units) { return units == Units::yards ? "yards" : "metres"; }

}  // namespace yardworth
