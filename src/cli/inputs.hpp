#pragma once

#include <optional>
#include <string>
#include <vector>

#include "command.hpp"
#include "options.hpp"
#include "yardworth/baseline/baseline.hpp"
#include "yardworth/core/diagnostics.hpp"
#include "yardworth/course/course.hpp"
#include "yardworth/player/golfer.hpp"

namespace yardworth::cli {

// The files that most commands are about; empty: not given.
struct InputOptions {
  std::string course;
  std::string player;
  std::string baseline;
  std::string tee;
};

void add_input_options(CLI::App& app, InputOptions& options);

struct Inputs {
  Course course;
  Player player;
  Baseline baseline;
  std::size_t tee = 0;               // index into course.tees
  std::vector<std::string> assumed;  // sentences: what was taken because it was not given
};

// Reads what is given and takes the built-in scenario for the rest. Nothing when there are faults; complaints then has
// one line for each fault of all files.
std::optional<Inputs> read_inputs(const InputOptions& options, std::string& complaints);

// The first tee marked for this gender, otherwise the middle one of the list (the longer of two).
std::size_t default_tee(const Course& course, Gender gender);

// Hands the text out, or to the file that was asked for.
Outcome deliver(std::string text, const OutputOptions& options);

}  // namespace yardworth::cli
