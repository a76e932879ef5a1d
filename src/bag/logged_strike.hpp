#pragma once

#include <array>
#include <cstddef>
#include <optional>

#include "flight/delivery_fields.hpp"
#include "yardworth/flight.hpp"
#include "yardworth/shot_log.hpp"

namespace yardworth {

// How a golfer strikes a club, by the shots of a log: the median of each number of a delivery, where the log has it.
struct LoggedStrike {
  std::size_t shots = 0;
  std::array<std::optional<double>, delivery_fields.size()> medians;  // SI units and radians
};

// The shots are of one club.
LoggedStrike logged_strike(const ShotLog& log);

// By how much carries differ (standard deviation, metres) since the dynamic loft does, if every shot is struck like
// `strike` but for its own loft; solid strikes count. Nothing where fewer than two shots have one.
struct UnevenLoft {
  double loft_sd_rad = 0.0;
  double carry_sd_m = 0.0;
};
std::optional<UnevenLoft> uneven_loft(const ShotLog& log, const Delivery& strike, const ClubHead& head,
                                      const FlightConditions& conditions);

}  // namespace yardworth
