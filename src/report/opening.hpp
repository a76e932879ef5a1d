#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "flight/delivery_fields.hpp"
#include "gain/strike_change.hpp"
#include "yardworth/player.hpp"
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

// Which numbers of a strike are typical of the club since they were not said; empty where all were.
std::vector<std::string> typical_words(const TypicalClub& club, const Delivery& delivery, const SaidFields& said);

// The carries that were worked out from strikes, and what of those is typical of the club: a phrase for each.
std::vector<std::string> struck_carries(const Player& player);
// The same as sentences of a report; empty where there are none.
std::vector<std::string> struck_words(const Player& player);

// What a report says of a change of the driver's strike, of what of it is typical since it was not said, and of the
// irons where nothing is said of them.
std::vector<std::string> opening_of_strikes(const TypicalClub& driver, const SaidFields& said,
                                            const StrikeChange& change, bool irons_said, Units units);

}  // namespace yardworth::report
