#include "report/delivery_parts.hpp"

#include <fmt/format.h>

#include "gain/what_was_asked.hpp"
#include "report/basis_words.hpp"
#include "report/text.hpp"

namespace yardworth::report {

double yards_of(double metres) { return metres / metres_per_yard; }

std::vector<DeliveryNumber> delivery_numbers() {
  using D = const DeliveryFlight&;
  return {
      {"club_speed_mph", "club head speed, mph", 1, [](D d) { return to_mph(d.delivery.club_speed_mps); }},
      {"attack_deg", "attack angle, degrees", 1, [](D d) { return degrees(d.delivery.attack_rad); }},
      {"dynamic_loft_deg", "dynamic loft, degrees", 1, [](D d) { return degrees(d.delivery.dynamic_loft_rad); }},
      {"path_deg", "club path, degrees", 1, [](D d) { return degrees(d.delivery.path_rad); }},
      {"face_deg", "face angle, degrees", 1, [](D d) { return degrees(d.delivery.face_rad); }},
  };
}

std::vector<DeliveryNumber> flight_numbers() {
  using D = const DeliveryFlight&;
  return {
      {"spin_loft_deg", "spin loft, degrees", 1, [](D d) { return degrees(d.flight.launch.spin_loft_rad); }},
      {"ball_speed_mph", "ball speed, mph", 1, [](D d) { return to_mph(d.flight.launch.ball_speed_mps); }},
      {"smash_factor", "smash factor", 2, [](D d) { return d.flight.launch.smash_factor; }},
      {"launch_deg", "launch, degrees", 1, [](D d) { return degrees(d.flight.launch.launch_rad); }},
      {"start_deg", "start, degrees", 1, [](D d) { return degrees(d.flight.launch.start_rad); }},
      {"spin_rpm", "spin, rpm", 0, [](D d) { return to_rpm(d.flight.launch.spin_radps); }},
      {"axis_deg", "axis tilt, degrees", 1, [](D d) { return degrees(d.flight.launch.axis_tilt_rad); }},
      {"carry_yd", "carry, yards", 1, [](D d) { return yards_of(d.flight.carry_m); }},
      {"curve_yd", "curve, yards", 1, [](D d) { return yards_of(d.flight.curve_m); }},
      {"offline_yd", "offline, yards", 1, [](D d) { return yards_of(d.flight.offline_m); }},
      {"apex_ft", "apex, feet", 0, [](D d) { return d.flight.apex_m / metres_per_foot; }},
      {"landing_deg", "landing angle, degrees", 1, [](D d) { return degrees(d.flight.landing_rad); }},
      {"run_yd", "run, yards", 1, [](D d) { return yards_of(d.flight.run_m); }},
      {"total_yd", "total, yards", 1, [](D d) { return yards_of(d.flight.total_m); }},
  };
}

std::string key_of(DeliveryAngle angle) { return std::string(name(angle)) + "_deg"; }

std::string_view words_of(DeliveryAngle angle) {
  switch (angle) {
    case DeliveryAngle::dynamic_loft:
      return "dynamic loft";
    case DeliveryAngle::attack:
      return "attack angle";
    case DeliveryAngle::path:
      return "club path";
    case DeliveryAngle::face:
      break;
  }
  return "face angle";
}

std::vector<std::string> delivery_basis(const DeliveryResult& result) {
  const auto range = [](const Limits& limits) {
    return fmt::format("{:.1f} to {:.1f}", degrees(limits.low), degrees(limits.high));
  };
  const FlightConditions& conditions = result.conditions;
  return {
      fmt::format("The best is the most carry at the same club head speed with an attack angle from {}, a dynamic loft "
                  "from {}, path and face straight: what an ordinary golfer can learn (common practice, no source).",
                  range(result.limits.attack), range(result.limits.dynamic_loft)),
      "Alone: this one at its best, the others as they are. In turn: one after the other, the one that gains most "
      "first; these add up.",
      fmt::format("Strikes in the middle of the face, {:.0f} degrees Celsius, {:.0f} m up, {} ground. Differences are "
                  "surer than carries, which may be 5% off; run is right in its order of size.",
                  conditions.air.temperature_c, conditions.air.altitude_m, conditions.turf.name),
      fmt::format("Drag and lift: {}.", conditions.aerodynamics.source)};
}

std::vector<std::string> delivery_cautions() { return all_caution_words(common_cautions()); }

}  // namespace yardworth::report
