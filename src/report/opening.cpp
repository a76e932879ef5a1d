#include "report/opening.hpp"

#include <fmt/format.h>

#include "yardworth/change.hpp"

namespace yardworth::report {

std::vector<std::string> opening_of(const StoodIn& stood_in) {
  std::vector<std::string> parts;
  if (stood_in.course) parts.push_back("built-in course " + *stood_in.course);
  if (stood_in.player) parts.push_back("built-in player " + *stood_in.player);
  if (stood_in.tee) parts.push_back(*stood_in.tee + " tees");
  if (stood_in.driver) {
    parts.push_back(fmt::format("{:.0f} {} more with the driver", *stood_in.driver, name(stood_in.units)));
  }
  if (parts.empty()) return {};
  return {fmt::format("Assumed: {}.", fmt::join(parts, ", "))};
}

std::string default_change_words(std::string_view unsaid, Units units) {
  return fmt::format("Assumed, with {}: {} {} more with the driver, {} with the irons.", unsaid, default_driver_change,
                     name(units), default_irons_change);
}

}  // namespace yardworth::report
