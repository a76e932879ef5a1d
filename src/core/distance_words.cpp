#include "core/distance_words.hpp"

#include <fmt/format.h>

namespace yardworth {

std::string unit_after(std::string_view number, Units units) {
  if (number.starts_with('+') || number.starts_with('-')) number.remove_prefix(1);
  const std::string unit = units == Units::yards ? "yard" : "metre";
  return number == "1" ? unit : unit + "s";
}

std::string distance_words(double yards, Units units) {
  const std::string number = fmt::format("{:.0f}", from_yards(yards, units));
  return fmt::format("{} {}", number, unit_after(number, units));
}

}  // namespace yardworth
