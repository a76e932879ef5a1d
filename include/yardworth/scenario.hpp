#pragma once

#include <string_view>

namespace yardworth {

// The scenario compiled into the program, used where a command is given no course or no player: the texts of the
// files under courses/heron-ferry, and the names by which messages speak of them.

std::string_view scenario_course_yaml();
std::string_view scenario_player_yaml();

inline constexpr std::string_view scenario_course_file = "built-in heron-ferry/course.yaml";
inline constexpr std::string_view scenario_player_file = "built-in heron-ferry/members/weekend-16-man.yaml";

}  // namespace yardworth
