#pragma once

#include <optional>

#include "flight/delivery_fields.hpp"
#include "yardworth/change.hpp"
#include "yardworth/flight.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// What the irons gain where only the driver's strike is known, as a share of what the driver gains: the yards of the
// reference iron for each of the driver's (common practice, no source: 5 to 7 at 20).
inline constexpr double irons_share = default_irons_change / default_driver_change;

// The carry that another strike of the driver adds, by the mechanics of flight (docs/model.md, "Impact" and what
// follows) in still air over level ground.
struct StrikeChange {
  DeliveryFlight before, after;

  double driver_carry_yd() const { return to_yards(after.flight.carry_m - before.flight.carry_m, Units::metres); }
  double irons_carry_yd() const { return irons_share * driver_carry_yd(); }
  // irons: what is said of them, in these units; where nothing is, they gain their share.
  DistanceChange in_yards(const std::optional<double>& irons, Units units) const {
    return {driver_carry_yd(), irons ? to_yards(*irons, units) : irons_carry_yd()};
  }
};

// How this golfer strikes the driver: as the file says, else as is typical. What is said of a strike before a change is
// said on top of it.
SaidStrike own_driver_strike(const Player& player);

// Throws InvalidRequest where a strike cannot be.
StrikeChange change_of_strike(const Delivery& before, const Delivery& after);

// What the strike before gives away, with the one after beside it.
DeliveryResult losses_before(const StrikeChange& change);

}  // namespace yardworth
