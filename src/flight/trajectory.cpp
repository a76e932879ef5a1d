#include "flight/trajectory.hpp"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <boost/numeric/odeint.hpp>
#include <cmath>
#include <stdexcept>

#include "core/numerics.hpp"
#include "flight/aerodynamics.hpp"
#include "flight/frame.hpp"

namespace yardworth {
namespace {

namespace odeint = boost::numeric::odeint;

// x, y, z, their speeds, spin.
using State = std::array<double, 7>;
constexpr std::size_t height = 2;
constexpr std::size_t climb = 5;

Eigen::Map<const Eigen::Vector3d> velocity_in(const State& state) {
  return Eigen::Map<const Eigen::Vector3d>(&state[3]);
}

// The equations of motion; the axis of spin keeps its direction.
class Motion {
 public:
  Motion(const Launch& launch, const FlightConditions& conditions)
      : conditions_(conditions),
        axis_(spin_axis(launch.launch_rad, launch.start_rad, launch.axis_tilt_rad)),
        wind_(-conditions.wind.speed_mps * direction_of(0.0, conditions.wind.from_rad)) {
    const double density = air_density(conditions.air);
    const double radius = conditions.ball.radius_m;
    pressure_ = density * pi * radius * radius / (2.0 * conditions.ball.mass_kg);
    decay_ = conditions.aerodynamics.spin_decay * density / 1.2 / radius;
    reynolds_ = density * 2.0 * radius / viscosity(conditions.air.temperature_c);
  }

  void operator()(const State& state, State& change, double /*time*/) const {
    const double share = conditions_.wind.speed_mps > 0.0 ? wind_share(conditions_.wind, state[height]) : 0.0;
    const Eigen::Vector3d through_air = velocity_in(state) - share * wind_;
    const double speed = through_air.norm();
    const double spin = state[6];
    Eigen::Vector3d push(0.0, 0.0, -numerics::gravity_mps2);
    if (speed > 0.0) {
      const DragAndLift both =
          drag_and_lift(conditions_.aerodynamics, spin * conditions_.ball.radius_m / speed, reynolds_ * speed);
      push -= pressure_ * speed * both.drag * through_air;
      // Lift is full on whatever part of the motion is across the axis; along it there is none.
      const Eigen::Vector3d across = axis_.cross(through_air);
      const double across_speed = across.norm();
      if (across_speed > 0.0) push += pressure_ * speed * speed * both.lift / across_speed * across;
    }
    for (std::size_t i = 0; i < 3; ++i) {
      change[i] = state[i + 3];
      change[i + 3] = push[static_cast<Eigen::Index>(i)];
    }
    change[6] = -decay_ * speed * spin;
  }

 private:
  const FlightConditions& conditions_;
  Eigen::Vector3d axis_;
  Eigen::Vector3d wind_;
  double pressure_ = 0.0, decay_ = 0.0, reynolds_ = 0.0;
};

State start_of(const Launch& launch) {
  const Eigen::Vector3d velocity = launch.ball_speed_mps * direction_of(launch.launch_rad, launch.start_rad);
  return {0.0, 0.0, 0.0, velocity.x(), velocity.y(), velocity.z(), launch.spin_radps};
}

FlightPoint point_of(double time, const State& state) {
  return {time, {state[0], state[1], state[2]}, {state[3], state[4], state[5]}, state[6]};
}

// When one coordinate of the dense output passes zero between two times at which its signs differ.
template <class Stepper>
double zero_of(const Stepper& stepper, std::size_t coordinate, double from, double to) {
  const auto value = [&](double time) {
    State state;
    stepper.calc_state(time, state);
    return state[coordinate];
  };
  const double first = value(from);
  const double last = value(to);
  if (first == 0.0) return from;
  if (last == 0.0 || (first > 0.0) == (last > 0.0)) return to;
  std::uintmax_t evaluations = numerics::most_root_evaluations;
  const auto found = boost::math::tools::toms748_solve(value, from, to, first, last,
                                                       boost::math::tools::eps_tolerance<double>(), evaluations);
  return 0.5 * (found.first + found.second);
}

}  // namespace

Trajectory trajectory_of(const Launch& launch, const FlightConditions& conditions, std::vector<FlightPoint>* path) {
  const Motion motion(launch, conditions);
  auto stepper = odeint::make_dense_output(conditions.tolerance, conditions.tolerance, numerics::longest_flight_step_s,
                                           odeint::runge_kutta_dopri5<State>());
  State state = start_of(launch);
  Trajectory trajectory;
  trajectory.landing = point_of(0.0, state);
  if (path != nullptr) path->push_back(trajectory.landing);
  if (state[climb] <= 0.0) return trajectory;  // struck into the ground
  stepper.initialize(state, 0.0, numerics::first_flight_step_s);
  while (stepper.current_time() < numerics::longest_flight_s) {
    const auto [from, to] = stepper.do_step(std::cref(motion));
    const State& before = stepper.previous_state();
    const State& after = stepper.current_state();
    // A short hop goes up and down within one step: what is looked for then begins at its top.
    double descends_from = from;
    if (before[climb] > 0.0 && after[climb] <= 0.0) {
      descends_from = zero_of(stepper, climb, from, to);
      stepper.calc_state(descends_from, state);
      trajectory.apex_m = std::max(trajectory.apex_m, state[height]);
    }
    if (after[height] <= 0.0) {
      const double landing = zero_of(stepper, height, descends_from, to);
      stepper.calc_state(landing, state);
      trajectory.landing = point_of(landing, state);
      if (path != nullptr) path->push_back(trajectory.landing);
      return trajectory;
    }
    if (path != nullptr) path->push_back(point_of(to, after));
  }
  throw std::runtime_error("the ball does not come down");
}

}  // namespace yardworth
