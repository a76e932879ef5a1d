#pragma once

#include <optional>
#include <string>
#include <vector>

#include "yardworth/change.hpp"
#include "yardworth/units.hpp"

namespace yardworth {

// A club and the carry that is added to it.
struct SaidClub {
  std::string club;
  double carry = 0.0;
};

// A change as a question says it: lengths in the course's units, spreads in percent of themselves, poor strikes in 100,
// angles in degrees.
struct SaidChange {
  std::optional<double> driver = std::nullopt, irons = std::nullopt;
  std::vector<SaidClub> clubs = {};
  std::optional<double> carry_sd = std::nullopt, direction_sd = std::nullopt, direction_mean = std::nullopt;
  std::optional<double> poor_strike = std::nullopt, short_game = std::nullopt, putting = std::nullopt;

  bool given() const {
    return driver || irons || !clubs.empty() || carry_sd || direction_sd || direction_mean || poor_strike ||
           short_game || putting;
  }
  // Of driver and irons. What is not given is 0.
  DistanceChange carry_in_yards(Units units) const {
    return {to_yards(driver.value_or(0.0), units), to_yards(irons.value_or(0.0), units)};
  }
  Change in_yards(Units units) const;
};

// The same with another carry of driver and irons.
inline Change with_carry(Change change, const DistanceChange& carry) {
  change.driver_carry_yd = carry.driver_carry_yd;
  change.irons_carry_yd = carry.irons_carry_yd;
  return change;
}

// What gain asks about where nothing is said.
inline SaidChange default_gain_change() { return {default_driver_change, default_irons_change}; }
// The change that a curve beside this one is along. What was measured is of all clubs, and its curve of what is usual.
inline Change change_along_curve(const Change& change, bool measured) {
  return measured ? default_gain_change().in_yards(Units::yards) : change;
}

}  // namespace yardworth
