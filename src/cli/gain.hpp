#pragma once

#include <optional>
#include <string>
#include <vector>

#include "cli/change.hpp"
#include "cli/command.hpp"
#include "cli/inputs.hpp"
#include "cli/options.hpp"
#include "cli/progress.hpp"
#include "gain/saved_draws.hpp"
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
  int draws = -1;  // not given: as many as a measured change is drawn without being asked
  int seed = 1;

  int draws_wanted() const { return draws >= 0 ? draws : change.logs.empty() ? 0 : default_draws; }
  std::vector<std::string> files() const;  // that are read
};

// All but where the answer goes.
void add_gain_options(CLI::App& command, GainOptions& options);

// What is wrong with the options together, if anything; each by itself has been looked at.
std::string conflict(const GainOptions& options);

// Reads what the options name and works out the change they ask for; nothing, with complaints, where something is at
// fault. advice: what is worth saying of the files all the same.
std::optional<Inputs> read_for_gain(GainOptions& options, std::string& complaints, std::string& advice);

// The change that is asked about, the usual one where nothing is said.
Change change_of(const GainOptions& options, Units units);

// Throws like compute_gain.
GainReport gain_report(const GainOptions& options, const Inputs& inputs, Progress& progress);

}  // namespace yardworth::cli
