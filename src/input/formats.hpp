#pragma once

#include <string>
#include <string_view>

#include "input/fields.hpp"
#include "yardworth/baseline.hpp"
#include "yardworth/course.hpp"
#include "yardworth/options.hpp"
#include "yardworth/player.hpp"
#include "yardworth/read.hpp"

namespace yardworth::input {

// The four formats: each reads the whole of a document's root. What they return is of use only without faults.
inline constexpr std::string_view course_format = "yardworth/course/1";
inline constexpr std::string_view player_format = "yardworth/player/1";
inline constexpr std::string_view baseline_format = "yardworth/baseline/1";
inline constexpr std::string_view options_format = "yardworth/options/1";

Course course_from(const Value& root, Findings& findings);
Player player_from(const Value& root, Findings& findings);
BaselineTable baseline_from(const Value& root, Findings& findings);
OptionsFile options_from(const Value& root, Findings& findings);

}  // namespace yardworth::input
