#pragma once

#include <optional>
#include <string>
#include <vector>

#include "input/fields.hpp"
#include "yardworth/flight.hpp"
#include "yardworth/player.hpp"

namespace yardworth::input {

// The carry of a club: as the file says it, or as it follows from the strike that the file gives in its place
// (docs/model.md, "A carry from a strike").
struct SaidCarry {
  std::optional<double> carry_yd;
  std::optional<StruckClub> strike;
};

// The club with a flight that is called so, as files may call it: "7i" is a 7-iron, "driver 9" a driver.
std::optional<TypicalClub> club_with_flight(const std::string& club);
std::vector<std::string> names_with_flight();

// The keys of a club that say a strike.
std::vector<std::string> strike_keys();

// club: its name, empty where it is not known.
SaidCarry read_carry(Fields& fields, const std::string& club, Units units, Findings& findings);

}  // namespace yardworth::input
