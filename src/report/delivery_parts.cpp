#include "report/delivery_parts.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

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

bool has_side_wind(const DeliveryResult& result) {
  return fixed(std::abs(wind_from_right_mps(result.conditions.wind)), 1) != "0.0";
}

namespace {

// The weather and the ground; pressure and wind only where they are not what is taken unless told.
std::string air_words(const FlightConditions& conditions) {
  std::string text =
      fmt::format("{:.0f} degrees Celsius, {:.0f} m up", conditions.air.temperature_c, conditions.air.altitude_m);
  if (conditions.air.pressure_hpa != Air().pressure_hpa) {
    text += fmt::format(", {} hPa reduced to sea level", plain_number(conditions.air.pressure_hpa));
  }
  if (conditions.wind.speed_mps != 0.0) {
    text += fmt::format(", wind of {} m/s from {} degrees (0 is ahead, 90 the right)",
                        plain_number(conditions.wind.speed_mps), plain_number(degrees(conditions.wind.from_rad)));
  }
  return text + fmt::format(", {} ground", conditions.turf.name);
}

// The angles that lie outside the limits, which were widened to hold them; empty where there are none.
std::string widened_words(const DeliveryResult& result) {
  const Delivery& own = result.own.delivery;
  std::string angles;
  const auto look = [&angles](DeliveryAngle angle, double own_rad, const Limits& limits) {
    if (own_rad >= limits.low && own_rad <= limits.high) return;
    angles += fmt::format("{}{} {:.1f} (from {:.1f} to {:.1f})", angles.empty() ? "" : ", ", words_of(angle),
                          degrees(own_rad), degrees(limits.low), degrees(limits.high));
  };
  look(DeliveryAngle::attack, own.attack_rad, result.limits.attack);
  look(DeliveryAngle::dynamic_loft, own.dynamic_loft_rad, result.limits.dynamic_loft);
  look(DeliveryAngle::path, own.path_rad, result.limits.path);
  look(DeliveryAngle::face, own.face_rad, result.limits.face);
  return angles.empty() ? "" : fmt::format("Limits that were widened to the golfer's own degrees: {}.", angles);
}

// Straight as far as a report shows.
bool best_is_straight(const DeliveryResult& result) {
  const Delivery& best = result.losses.best.delivery;
  const auto none = [](double angle_rad) { return fixed(std::abs(degrees(angle_rad)), 1) == "0.0"; };
  return none(best.path_rad) && none(best.face_rad);
}

}  // namespace

std::vector<std::string> delivery_basis(const DeliveryResult& result) {
  const auto range = [](const Limits& limits) {
    return fmt::format("{:.1f} to {:.1f}", degrees(limits.low), degrees(limits.high));
  };
  std::vector<std::string> basis = {
      fmt::format("The best is the most carry at the same club head speed with an attack angle from {}, a dynamic loft "
                  "from {}, path and face {}: what an ordinary golfer can learn (common practice, no source).",
                  range(result.limits.attack), range(result.limits.dynamic_loft),
                  best_is_straight(result) ? "straight" : "from " + range(result.limits.path))};
  if (const std::string widened = widened_words(result); !widened.empty()) basis.push_back(widened);
  basis.emplace_back(
      "Alone: this one at its best, the others as they are. In turn: one after the other, the one that gains most "
      "first; these add up.");
  if (has_side_wind(result)) {
    basis.emplace_back(
        "The best and what is given away are worked out without the wind from the side, with that from ahead or behind "
        "alone: a bent ball can be carried further by a wind across, which is no better strike. The columns now, after "
        "and best are in the whole wind.");
  }
  if (!best_is_straight(result)) {
    basis.emplace_back(
        "In a wind from ahead or behind a bent ball can carry further than a straight one, so the best is bent: it is "
        "longer, not better aimed.");
  }
  basis.push_back(
      fmt::format("Strikes in the middle of the face, {}. Differences are surer than carries, which may be 5% off; run "
                  "is right in its order of size.",
                  air_words(result.conditions)));
  basis.push_back(fmt::format("Drag and lift: {}.", result.conditions.aerodynamics.source));
  return basis;
}

std::vector<std::string> delivery_cautions() { return all_caution_words(common_cautions()); }

}  // namespace yardworth::report
