#include "flight/rules.hpp"

#include <fmt/format.h>

#include <cmath>

#include "core/numerics.hpp"
#include "flight/delivery_fields.hpp"
#include "flight/frame.hpp"
#include "validate/tell.hpp"
#include "yardworth/limits.hpp"

namespace yardworth {
namespace {

// One of the engine's tolerances, which a public header cannot have from its registry.
static_assert(usual_flight_tolerance == numerics::flight_tolerance);

bool check_angle(double rad, const Limits& limits_deg, std::string_view key, const Tell& tell) {
  return check_number(degrees(rad), limits_deg, key, tell);
}

void check_range(const Limits& rad, const Limits& limits_deg, std::string_view key, const Tell& tell) {
  if (!check_angle(rad.low, limits_deg, key, tell)) return;
  check_angle(rad.high, {degrees(rad.low), limits_deg.high, limits_deg.unit}, key, tell);
}

void check_restitution(const Restitution& restitution, const Tell& tell) {
  check_number(restitution.at_rest, limits::restitution, "restitution_at_rest", tell);
  check_number(restitution.fall_per_mps, limits::restitution_fall, "restitution_fall_per_mps", tell);
}

// The head comes up to the ball from behind its face, not more steeply than the face lies back.
void check_spin_loft(const Delivery& delivery, const Tell& tell) {
  if (delivery.dynamic_loft_rad < delivery.attack_rad) {
    tell("dynamic_loft_deg", fmt::format("{:.4g}", degrees(delivery.dynamic_loft_rad)),
         fmt::format("a number from the attack angle, {:.4g}, to {:.4g} degrees", degrees(delivery.attack_rad),
                     limits::dynamic_loft.high));
    return;
  }
  const Eigen::Vector3d course = direction_of(delivery.attack_rad, delivery.path_rad);
  const Eigen::Vector3d normal = direction_of(delivery.dynamic_loft_rad, delivery.face_rad);
  check_angle(std::atan2(course.cross(normal).norm(), course.dot(normal)), limits::spin_loft, spin_loft_key, tell);
}

void check_aerodynamics(const Aerodynamics& set, const Tell& tell) {
  for (const double drag : set.drag) check_number(drag, limits::coefficient, "drag", tell);
  for (const double lift : set.lift) check_number(lift, limits::coefficient, "lift", tell);
  check_number(set.drag_wave, limits::coefficient, "drag_wave", tell);
  check_number(set.wave_from, limits::wave_from, "wave_from", tell);
  check_number(set.wave_length, limits::wave_length, "wave_length", tell);
  check_number(set.lift_factor, limits::coefficient, "lift_factor", tell);
  check_number(set.lift_power, limits::lift_power, "lift_power", tell);
  check_number(set.least_spin_ratio, limits::spin_ratio, "least_spin_ratio", tell);
  check_number(set.most_spin_ratio, {set.least_spin_ratio, limits::spin_ratio.high}, "most_spin_ratio", tell);
  check_number(set.spin_decay, limits::spin_decay, "spin_decay", tell);
}

void check_turf(const Turf& turf, const Tell& tell) {
  check_number(turf.restitution_at_rest, limits::restitution, "restitution_at_rest", tell);
  check_number(turf.restitution_fall, limits::restitution, "restitution_fall", tell);
  check_number(turf.restitution_bend, limits::restitution, "restitution_bend", tell);
  check_number(turf.restitution_fast, limits::restitution, "restitution_fast", tell);
  check_angle(turf.tilt_rad, limits::turf_tilt, "tilt_deg", tell);
  check_angle(turf.most_tilt_rad, limits::turf_tilt, "most_tilt_deg", tell);
  check_number(turf.tilt_speed_mps, limits::turf_tilt_speed, "tilt_speed_mps", tell);
  check_angle(turf.tilt_angle_rad, limits::turf_tilt_angle, "tilt_angle_deg", tell);
  check_number(turf.friction, limits::friction, "friction", tell);
  check_number(turf.rolling, limits::turf_rolling, "rolling", tell);
}

void check_ball(const Ball& ball, const Grip& grip, const Tell& tell) {
  check_number(ball.mass_kg, limits::ball_mass, "mass_kg", tell);
  check_number(ball.radius_m, limits::ball_radius, "radius_m", tell);
  check_number(ball.inertia_share, limits::inertia_share, "inertia_share", tell);
  check_number(grip.at_reference, limits::grip_restitution, "grip_at_reference", tell);
  check_angle(grip.reference_rad, limits::spin_loft, "grip_reference_deg", tell);
  check_number(grip.rise_per_rad, limits::coefficient, "grip_rise_per_rad", tell);
  check_number(grip.least, limits::grip_restitution, "grip_least", tell);
  check_number(grip.most, {grip.least, limits::grip_restitution.high}, "grip_most", tell);
}

}  // namespace

std::vector<Diagnostic> validate(const Delivery& delivery) {
  std::vector<Diagnostic> findings;
  const Tell tell = tell_into(findings, "delivery");
  for (const DeliveryField& field : delivery_fields) check_number(field.of(delivery), field.limits, field.key, tell);
  if (findings.empty()) check_spin_loft(delivery, tell);
  return findings;
}

std::vector<Diagnostic> validate(const ClubHead& head) {
  std::vector<Diagnostic> findings;
  const Tell tell = tell_into(findings, "head");
  check_number(head.mass_kg, limits::head_mass, "mass_kg", tell);
  check_restitution(head.restitution, tell);
  check_number(head.friction, limits::friction, "friction", tell);
  return findings;
}

std::vector<Diagnostic> validate(const NewHead& new_head) {
  std::vector<Diagnostic> findings;
  const Tell tell = tell_into(findings, "new_head");
  check_restitution(new_head.restitution, tell);
  check_angle(new_head.most_fitting_rad, limits::fitted_loft, "most_fitting_deg", tell);
  return findings;
}

std::vector<Diagnostic> validate(const Launch& launch) {
  std::vector<Diagnostic> findings;
  const Tell tell = tell_into(findings, "launch");
  check_number(to_mph(launch.ball_speed_mps), limits::ball_speed, "ball_speed_mph", tell);
  check_angle(launch.launch_rad, limits::launch, "launch_deg", tell);
  check_angle(launch.start_rad, limits::start, "start_deg", tell);
  check_number(to_rpm(launch.spin_radps), limits::spin, "spin_rpm", tell);
  check_angle(launch.axis_tilt_rad, limits::axis_tilt, "axis_deg", tell);
  return findings;
}

std::vector<Diagnostic> validate(const FlightConditions& conditions) {
  std::vector<Diagnostic> findings;
  const Tell tell = tell_into(findings, "conditions");
  check_number(conditions.air.temperature_c, limits::temperature, "temperature_c", tell);
  check_number(conditions.air.altitude_m, limits::altitude, "altitude_m", tell);
  check_number(conditions.air.pressure_hpa, limits::pressure, "pressure_hpa", tell);
  check_number(conditions.air.humidity, limits::humidity, "humidity", tell);
  check_number(conditions.wind.speed_mps, limits::wind, "wind_mps", tell);
  check_angle(conditions.wind.from_rad, limits::wind_from, "wind_from_deg", tell);
  check_number(conditions.wind.roughness_m, limits::roughness, "roughness_m", tell);
  check_turf(conditions.turf, below(tell, "turf"));
  check_aerodynamics(conditions.aerodynamics, below(tell, "aerodynamics"));
  check_ball(conditions.ball, conditions.grip, below(tell, "ball"));
  // What check_number leaves to rounding would let 0 pass.
  const Limits& tolerance = limits::flight_tolerance;
  if (!(conditions.tolerance >= tolerance.low && conditions.tolerance <= tolerance.high)) {
    tell("tolerance", fmt::format("{:.4g}", conditions.tolerance), "a number " + bounds(tolerance));
  }
  return findings;
}

std::vector<Diagnostic> validate(const Attainable& attainable_rad) {
  std::vector<Diagnostic> findings;
  const Tell tell = tell_into(findings, "limits");
  check_range(attainable_rad.attack, limits::attack, "attack_deg", tell);
  check_range(attainable_rad.dynamic_loft, limits::dynamic_loft, "dynamic_loft_deg", tell);
  check_range(attainable_rad.path, limits::path, "path_deg", tell);
  check_range(attainable_rad.face, limits::face, "face_deg", tell);
  return findings;
}

void refuse_faults(const std::vector<Diagnostic>& findings) {
  if (!findings.empty()) throw InvalidRequest(findings);
}

void refuse_faults(const Delivery& delivery, const ClubHead& head, const FlightConditions& conditions) {
  refuse_faults(validate(delivery));
  refuse_faults(validate(head));
  refuse_faults(validate(conditions));
}

}  // namespace yardworth
