#include "yardworth/flight.hpp"

#include <cmath>

#include "flight/flown.hpp"
#include "flight/impact.hpp"
#include "flight/rules.hpp"
#include "flight/run.hpp"
#include "flight/trajectory.hpp"

namespace yardworth {
namespace {

// Of a motion in the plane; to the right.
double right_of_line(double forward, double left) { return std::atan2(-left, forward); }

// The run goes on in the direction of the landing; only spin about an axis across it counts.
void put_run(const FlightPoint& landing, const Launch& launch, const FlightConditions& conditions, Flight& flight) {
  const auto& velocity = landing.velocity_mps;
  const double forward = std::hypot(velocity[0], velocity[1]);
  const double backspin = landing.spin_radps * std::cos(launch.axis_tilt_rad);
  const double run = run_of({forward, velocity[2], backspin}, conditions.turf, conditions.ball);
  const double direction = right_of_line(velocity[0], velocity[1]);
  const double along = landing.at_m[0] + run * std::cos(direction);
  flight.total_offline_m = flight.offline_m + run * std::sin(direction);
  flight.total_m = std::hypot(along, flight.total_offline_m);
  flight.run_m = flight.total_m - flight.carry_m;
}

}  // namespace

Flight flown(const Launch& launch, const FlightConditions& conditions) {
  const Trajectory trajectory = trajectory_of(launch, conditions);
  const FlightPoint& landing = trajectory.landing;
  const auto& velocity = landing.velocity_mps;
  Flight flight;
  flight.launch = launch;
  flight.carry_m = std::hypot(landing.at_m[0], landing.at_m[1]);
  flight.offline_m = -landing.at_m[1];
  flight.curve_m = -landing.at_m[1] * std::cos(launch.start_rad) - landing.at_m[0] * std::sin(launch.start_rad);
  flight.apex_m = trajectory.apex_m;
  flight.landing_rad = std::atan2(-velocity[2], std::hypot(velocity[0], velocity[1]));
  flight.landing_speed_mps = std::hypot(velocity[0], velocity[1], velocity[2]);
  flight.hang_time_s = landing.time_s;
  put_run(landing, launch, conditions, flight);
  return flight;
}

Flight flown(const Delivery& delivery, const ClubHead& head, const FlightConditions& conditions) {
  return flown(impact(delivery, head, conditions.ball, conditions.grip), conditions);
}

Launch launch_of(const Delivery& delivery, const ClubHead& head, const FlightConditions& conditions) {
  refuse_faults(delivery, head, conditions);
  return impact(delivery, head, conditions.ball, conditions.grip);
}

Flight fly(const Delivery& delivery, const ClubHead& head, const FlightConditions& conditions) {
  return flown(launch_of(delivery, head, conditions), conditions);
}

Flight fly(const Launch& launch, const FlightConditions& conditions) {
  refuse_faults(validate(launch));
  refuse_faults(validate(conditions));
  return flown(launch, conditions);
}

}  // namespace yardworth
