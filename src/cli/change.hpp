#pragma once

#include <CLI/CLI.hpp>
#include <optional>
#include <string>
#include <vector>

#include "gain/measured_change.hpp"
#include "gain/said_change.hpp"
#include "gain/strike_change.hpp"

namespace yardworth::cli {

// The change that is asked about; in the driver's place two strikes as KEY=VALUE.
struct AskedChange {
  SaidChange said;
  std::vector<std::string> from, to;  // of the driver's strike before; what is different after
  std::optional<DistanceChange> by_strike;
  std::optional<StrikeChange> strikes;      // where by_strike is
  std::string after;                        // a second player file; empty: none
  std::vector<std::string> logs, sessions;  // of measured shots: two logs, or one with two sessions
  bool skip_bad_rows = false;
  std::optional<Change> by_files;
  std::optional<MeasuredChange> measured;  // where by_files is of logs

  bool given() const { return said.given() || !from.empty() || has_files(); }
  bool has_files() const { return !after.empty() || !logs.empty(); }
  std::vector<std::string> files() const;
  Change in_yards(Units units) const;
};

// Of driver and irons. unless_given: what the help says of both where they are not given.
void add_carry_options(CLI::App& command, SaidChange& change, const std::string& unless_given);
// Of all else that may change.
void add_wider_change_options(CLI::App& command, SaidChange& change);
void add_strike_before_option(CLI::App& command, AskedChange& change);
// --to of a command that knows no other.
void add_strike_after_option(CLI::App& command, AskedChange& change);

// A second player file, or logs of measured shots, in the place of all that.
void add_change_file_options(CLI::App& command, AskedChange& change);

// What is wrong with the options together, if anything.
std::string conflict(const AskedChange& change);

// Works out by_strike where strikes are said, on top of the player's own, and what a report says of them; false, with
// complaints, where a strike cannot be.
bool fly_strikes(AskedChange& change, const Player& player, Units units, std::vector<std::string>& opening,
                 std::string& complaints);

// Works out by_files where files say the change, and what a report says of it; false, with complaints, where they
// cannot. advice: what is worth saying of the files beside that.
bool read_change_files(AskedChange& change, const Player& player, Units units, std::vector<std::string>& opening,
                       std::string& complaints, std::string& advice);

}  // namespace yardworth::cli
