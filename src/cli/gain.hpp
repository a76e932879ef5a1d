#pragma once

#include <optional>
#include <string>

#include "cli/change.hpp"
#include "cli/command.hpp"
#include "cli/inputs.hpp"
#include "cli/options.hpp"
#include "yardworth/report.hpp"

namespace yardworth::cli {

// What commands share that ask for a gain.

struct GainOptions {
  InputOptions inputs;
  OutputOptions output;
  std::string svg;
  AskedChange change;
  std::optional<double> to, step;  // in the course's units
  Method method = Method::play;
  PolicyChoice policy = PolicyChoice::both;
  int threads = 0;
  int mark = 0;  // 0: none was given
  bool control = false;
};

// All but where the answer goes.
void add_gain_options(CLI::App& command, GainOptions& options);

// What is wrong with the options together, if anything; each by itself has been looked at.
std::string conflict(const GainOptions& options);

// Reads what the options name and works out the change they ask for; nothing, with complaints, where something is at
// fault.
std::optional<Inputs> read_for_gain(GainOptions& options, std::string& complaints);

// The change that is asked about, the usual one where nothing is said.
DistanceChange change_of(const GainOptions& options, Units units);

// Throws like compute_gain.
GainReport gain_report(const GainOptions& options, const Inputs& inputs);

}  // namespace yardworth::cli
