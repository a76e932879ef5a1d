#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "yardworth/limits.hpp"
#include "yardworth/shot_log.hpp"
#include "yardworth/units.hpp"

namespace yardworth::input {

// A column of a shot log that holds a number.
struct LogColumn {
  std::string_view name;
  std::string_view unit;
  Limits limits;                                  // as the library has them
  double shown = 1.0;                             // a number in the column, for one as the limits have it
  double inside = 1.0;                            // a number in a Shot, for one in the column
  std::optional<double> Shot::*member = nullptr;  // nothing: the carry
};

// What a log may say in metres too stands twice.
inline constexpr std::array<LogColumn, 16> log_columns = {{
    {"carry_yd", "yards", limits::shot_carry, 1.0, 1.0, nullptr},
    {"carry_m", "metres", limits::shot_carry, metres_per_yard, 1.0 / metres_per_yard, nullptr},
    {"total_yd", "yards", limits::shot_total, 1.0, 1.0, &Shot::total_yd},
    {"total_m", "metres", limits::shot_total, metres_per_yard, 1.0 / metres_per_yard, &Shot::total_yd},
    {"offline_yd", "yards", limits::shot_offline, 1.0, 1.0, &Shot::offline_yd},
    {"offline_m", "metres", limits::shot_offline, metres_per_yard, 1.0 / metres_per_yard, &Shot::offline_yd},
    {"club_speed_mph", "mph", limits::club_speed, 1.0, mps_per_mph, &Shot::club_speed_mps},
    {"club_speed_mps", "metres a second", limits::club_speed, mps_per_mph, 1.0, &Shot::club_speed_mps},
    {"ball_speed_mph", "mph", limits::ball_speed, 1.0, mps_per_mph, &Shot::ball_speed_mps},
    {"ball_speed_mps", "metres a second", limits::ball_speed, mps_per_mph, 1.0, &Shot::ball_speed_mps},
    {"launch_deg", "degrees", limits::launch, 1.0, radians(1.0), &Shot::launch_rad},
    {"spin_rpm", "rpm", limits::spin, 1.0, from_rpm(1.0), &Shot::spin_radps},
    {"attack_deg", "degrees", limits::attack, 1.0, radians(1.0), &Shot::attack_rad},
    {"dynamic_loft_deg", "degrees", limits::dynamic_loft, 1.0, radians(1.0), &Shot::dynamic_loft_rad},
    {"path_deg", "degrees", limits::path, 1.0, radians(1.0), &Shot::path_rad},
    {"face_deg", "degrees", limits::face, 1.0, radians(1.0), &Shot::face_rad},
}};

}  // namespace yardworth::input
