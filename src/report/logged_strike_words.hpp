#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bag/logged_strike.hpp"

namespace yardworth::report {

// What a report of a delivery says of the log that it was taken from.
std::vector<std::string> logged_strike_words(const std::string& club, const LoggedStrike& strike,
                                             const std::optional<UnevenLoft>& uneven);

}  // namespace yardworth::report
