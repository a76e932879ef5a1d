#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "gain/strike_change.hpp"
#include "yardworth/units.hpp"

namespace yardworth::report {

// What stands in for what a question does not say: names, where they stand in.
struct StoodIn {
  std::optional<std::string> course, player;  // built-in ones
  std::optional<std::string> tee;
  std::optional<double> driver;  // added carry, in the course's units
  Units units = Units::yards;
};

// What a report says of that before all else; empty where nothing stands in.
std::vector<std::string> opening_of(const StoodIn& stood_in);

// What a gain says where no change is given; unsaid: "neither --driver nor --irons".
std::string default_change_words(std::string_view unsaid, Units units);

// What a report says of a change of the driver's strike, and of the irons where nothing is said of them.
std::vector<std::string> strike_change_words(const StrikeChange& change, bool irons_said, Units units);

}  // namespace yardworth::report
