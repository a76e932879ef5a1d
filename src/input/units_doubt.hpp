#pragma once

#include <optional>
#include <string>

#include "yardworth/course.hpp"
#include "yardworth/player.hpp"

namespace yardworth::input {

// Lengths that look like metres called yards, or the other way about. It is never more than advice: a rule speaks only
// where hardly any course or golfer is like that. docs/formats.md, "Yards called metres".
struct UnitsDoubt {
  std::string found;
  std::string expected;
};
std::optional<UnitsDoubt> doubt_about_units(const Course& course);
std::optional<UnitsDoubt> doubt_about_units(const Player& player);

}  // namespace yardworth::input
