#include <algorithm>
#include <cmath>

#include "yardworth/flight.hpp"

namespace yardworth {
namespace {

constexpr double dry_gas_constant = 287.058;     // J/(kg K)
constexpr double vapour_gas_constant = 461.495;  // J/(kg K)
constexpr double told_height_m = 10.0;           // of the wind of weather reports

}  // namespace

double air_density(const Air& air) {
  const double pressure = 100.0 * air.pressure_hpa * std::pow(1.0 - 2.25577e-5 * air.altitude_m, 5.25588);
  const double saturated = 611.2 * std::exp(17.62 * air.temperature_c / (243.12 + air.temperature_c));
  const double vapour = air.humidity * saturated;
  const double kelvin = air.temperature_c + 273.15;
  return (pressure - vapour) / (dry_gas_constant * kelvin) + vapour / (vapour_gas_constant * kelvin);
}

double wind_share(const Wind& wind, double height_m) {
  if (wind.roughness_m <= 0.0) return 1.0;
  const double above = std::max(height_m, 0.0) / wind.roughness_m;
  return std::log1p(above) / std::log1p(told_height_m / wind.roughness_m);
}

double headwind_mps(const Wind& wind) { return wind.speed_mps * std::cos(wind.from_rad); }

double wind_from_right_mps(const Wind& wind) { return wind.speed_mps * std::sin(wind.from_rad); }

Wind without_side_wind(const Wind& wind) {
  const double ahead = headwind_mps(wind);
  return {std::abs(ahead), ahead < 0.0 ? radians(180.0) : 0.0, wind.roughness_m};
}

}  // namespace yardworth
