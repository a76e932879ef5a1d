#pragma once

#include <CLI/CLI.hpp>
#include <optional>
#include <string>
#include <vector>

#include "gain/said_change.hpp"
#include "gain/strike_change.hpp"

namespace yardworth::cli {

// The change that is asked about: added carry, or in the driver's place two strikes as KEY=VALUE.
struct AskedChange {
  SaidChange carry;
  std::vector<std::string> from, to;  // of the driver's strike before; what is different after
  std::optional<DistanceChange> by_strike;
  std::optional<StrikeChange> strikes;  // where by_strike is

  bool given() const { return carry.given() || !from.empty(); }
  DistanceChange in_yards(Units units) const { return by_strike ? *by_strike : carry.in_yards(units); }
};

// unless_given: what the help says of both where they are not given.
void add_change_options(CLI::App& command, SaidChange& change, const std::string& unless_given);
void add_strike_before_option(CLI::App& command, AskedChange& change);
// --to of a command that knows no other.
void add_strike_after_option(CLI::App& command, AskedChange& change);

// What is wrong with the options together, if anything.
std::string conflict(const AskedChange& change);

// Works out by_strike where strikes are said, on top of the player's own, and what a report says of them; false, with
// complaints, where a strike cannot be.
bool fly_strikes(AskedChange& change, const Player& player, Units units, std::vector<std::string>& opening,
                 std::string& complaints);

}  // namespace yardworth::cli
