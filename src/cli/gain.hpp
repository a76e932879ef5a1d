#pragma once

#include <optional>
#include <string>
#include <vector>

#include "cli/change.hpp"
#include "cli/command.hpp"
#include "cli/inputs.hpp"
#include "cli/options.hpp"
#include "cli/progress.hpp"
#include "yardworth/options.hpp"
#include "yardworth/report.hpp"

namespace yardworth::cli {

// What commands share that ask for a gain.

struct GainOptions {
  InputOptions inputs;
  OutputOptions output;
  std::string svg;
  BarCharacters bars = BarCharacters::blocks;
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

// The change that is asked about, the usual one where nothing is said.
Change change_of(const GainOptions& options, Units units);

// What is asked of what was read.
GainRequest gain_request(const GainOptions& options, const Inputs& inputs);

// What a command makes of what was read.
using OutcomeOfGain = Outcome (*)(const GainOptions& options, const Inputs& inputs, const Surroundings& surroundings);
// Refuses what is at fault in options, outputs or files before anything is computed; else that, with advice before it.
Outcome run_on_inputs(GainOptions options, const Surroundings& surroundings, OutcomeOfGain outcome_of);

// Throws like compute_gain.
GainReport gain_report(const GainOptions& options, const Inputs& inputs, Progress& progress);

}  // namespace yardworth::cli
