#pragma once

#include <CLI/CLI.hpp>
#include <optional>
#include <string>

#include "yardworth/gain.hpp"

namespace yardworth::cli {

// The change that a command asks about, in the course's units.
struct ChangeOptions {
  std::optional<double> driver, irons;

  bool given() const { return driver || irons; }
  // What is not given is 0.
  DistanceChange in_yards(Units units) const {
    return {to_yards(driver.value_or(0.0), units), to_yards(irons.value_or(0.0), units)};
  }
};

// unless_given: what the help says of both where they are not given.
void add_change_options(CLI::App& command, ChangeOptions& options, const std::string& unless_given);

}  // namespace yardworth::cli
