#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bag/logged_strike.hpp"
#include "flight/delivery_fields.hpp"

namespace yardworth::report {

// A delivery that was taken from a log, as far as the user did not give its numbers.
struct LoggedDelivery {
  std::string club;      // as the log calls it
  ShotLog shots;         // of the club
  SaidFields given{};    // by the user, who counts before the log
  SaidFields known{};    // by the user or the log; the others are assumed
  double carry_m = 0.0;  // of the strike that came of it
  std::optional<UnevenLoft> uneven;
};

// What a report of it says of the log: what was taken from it, how few or mixed its shots are, and what of the answer
// is not the log's.
std::vector<std::string> logged_strike_words(const LoggedDelivery& logged);

}  // namespace yardworth::report
