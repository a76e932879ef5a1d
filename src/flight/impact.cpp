#include "flight/impact.hpp"

#include <Eigen/Core>
#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>

#include "core/numerics.hpp"
#include "flight/frame.hpp"

namespace yardworth {
namespace {

double tangential_restitution(const Grip& grip, double spin_loft_rad) {
  const double line = grip.at_reference + grip.rise_per_rad * (spin_loft_rad - grip.reference_rad);
  return std::clamp(line, grip.least, grip.most);
}

}  // namespace

Launch impact(const Delivery& delivery, const ClubHead& head, const Ball& ball, const Grip& grip) {
  const Eigen::Vector3d speed = delivery.club_speed_mps * direction_of(delivery.attack_rad, delivery.path_rad);
  const Eigen::Vector3d normal = direction_of(delivery.dynamic_loft_rad, delivery.face_rad);
  const double closing = speed.dot(normal);
  const Eigen::Vector3d along_face = speed - closing * normal;
  const double sliding = along_face.norm();

  Launch launch;
  launch.spin_loft_rad = std::atan2(sliding, closing);
  const double mass_share = ball.mass_kg / head.mass_kg;
  const double restitution = head.restitution.at_rest - head.restitution.fall_per_mps * closing;
  const double normal_speed = (1.0 + restitution) * closing / (1.0 + mass_share);
  const double gripped = sliding * (1.0 + tangential_restitution(grip, launch.spin_loft_rad)) /
                         (1.0 + mass_share + 1.0 / ball.inertia_share);
  const double tangential_speed = std::min(gripped, head.friction * normal_speed);
  // A head that moves along its face normal slides nowhere: any direction will do for no speed.
  const Eigen::Vector3d tangent = sliding > numerics::least_sliding_share * closing
                                      ? Eigen::Vector3d(along_face / sliding)
                                      : Eigen::Vector3d::Zero();
  const Eigen::Vector3d velocity = normal_speed * normal + tangential_speed * tangent;

  launch.ball_speed_mps = velocity.norm();
  launch.smash_factor = launch.ball_speed_mps / delivery.club_speed_mps;
  launch.launch_rad = std::asin(std::clamp(velocity.z() / launch.ball_speed_mps, -1.0, 1.0));
  launch.start_rad = std::atan2(-velocity.y(), velocity.x());
  launch.spin_radps = tangential_speed / (ball.inertia_share * ball.radius_m);
  const Eigen::Vector3d axis = -normal.cross(tangent);
  launch.axis_tilt_rad = tilt_of(axis, launch.launch_rad, launch.start_rad);
  return launch;
}

}  // namespace yardworth
