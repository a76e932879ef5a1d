#pragma once

#include <optional>

#include "yardworth/change.hpp"
#include "yardworth/units.hpp"

namespace yardworth {

// Added carry as a question says it, in the course's units.
struct SaidChange {
  std::optional<double> driver, irons;

  bool given() const { return driver || irons; }
  // What is not given is 0.
  DistanceChange in_yards(Units units) const {
    return {to_yards(driver.value_or(0.0), units), to_yards(irons.value_or(0.0), units)};
  }
};

// What gain asks about where nothing is said.
inline SaidChange default_gain_change() { return {default_driver_change, default_irons_change}; }

}  // namespace yardworth
