#include "flight/run.hpp"

#include <algorithm>
#include <cmath>

#include "core/numerics.hpp"

namespace yardworth {
namespace {

constexpr double fast_mps = 20.0;  // beyond it restitution is one number

double restitution_of(const Turf& turf, double speed) {
  if (speed > fast_mps) return turf.restitution_fast;
  return turf.restitution_at_rest - turf.restitution_fall * speed + turf.restitution_bend * speed * speed;
}

double hop_height(const PlaneMotion& motion) {
  return motion.upward_mps * motion.upward_mps / (2.0 * numerics::gravity_mps2);
}

}  // namespace

PlaneMotion bounce(const PlaneMotion& in, const Turf& turf, const Ball& ball) {
  const double down = -in.upward_mps;
  const double speed = std::hypot(in.forward_mps, down);
  const double from_vertical = std::atan2(in.forward_mps, down);
  const double deepest = turf.tilt_rad * (speed / turf.tilt_speed_mps) * (from_vertical / turf.tilt_angle_rad);
  const double tilt = std::clamp(deepest, -turf.most_tilt_rad, turf.most_tilt_rad);
  const double along = in.forward_mps * std::cos(tilt) - down * std::sin(tilt);
  const double into = in.forward_mps * std::sin(tilt) + down * std::cos(tilt);
  const double share = ball.inertia_share;  // of a solid ball 2/5, which gives the 2/7 and 5/7 of the equations
  const double restitution = restitution_of(turf, into);
  const double slip = along + ball.radius_m * in.backspin_radps;
  const double impulse = (1.0 + restitution) * into;
  const double to_roll = share / (1.0 + share) * slip;
  // Friction takes the slip away, or as much of it as it can, whichever way the ball slips.
  const double taken = std::clamp(to_roll, -turf.friction * impulse, turf.friction * impulse);
  PlaneMotion out;
  const double along_after = along - taken;
  const double off = restitution * into;
  out.backspin_radps = in.backspin_radps - taken / (share * ball.radius_m);
  out.forward_mps = along_after * std::cos(tilt) - off * std::sin(tilt);
  out.upward_mps = along_after * std::sin(tilt) + off * std::cos(tilt);
  return out;
}

double run_of(const PlaneMotion& landing, const Turf& turf, const Ball& ball) {
  PlaneMotion motion = landing;
  double run = 0.0;
  for (int hop = 0; hop < numerics::most_hops; ++hop) {
    motion = bounce(motion, turf, ball);
    if (motion.upward_mps <= 0.0 || hop_height(motion) < numerics::least_hop_m) break;
    run += motion.forward_mps * 2.0 * motion.upward_mps / numerics::gravity_mps2;
    motion.upward_mps = -motion.upward_mps;
  }
  const double slows = turf.rolling * numerics::gravity_mps2 / (1.0 + ball.inertia_share);
  return run + motion.forward_mps * std::abs(motion.forward_mps) / (2.0 * slows);
}

}  // namespace yardworth
