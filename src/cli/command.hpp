#pragma once

#include <CLI/CLI.hpp>
#include <functional>
#include <string>
#include <vector>

namespace yardworth::cli {

// The exit statuses of the command.
inline constexpr int done = 0;
inline constexpr int not_done = 1;  // it could not be done
inline constexpr int at_fault = 2;  // the command or the input is at fault

// What a command gives: whole texts, written only after all the work is done.
struct Outcome {
  int status = done;
  std::string out;
  std::string err;
};

// What a command has to know of where its output goes.
struct Surroundings {
  bool colour = false;    // standard output is a terminal that wants it
  bool progress = false;  // standard error is a terminal
};

// Why nothing was done, in one line.
Outcome refusal(int status, const std::string& why);

// What the arguments ask for, ready to be done.
using Action = std::function<Outcome()>;

// Does what the arguments (without the program's name) ask for. Exceptions that a command does not expect pass.
Outcome run(std::vector<std::string> arguments, const Surroundings& surroundings);

// Each command adds itself to app and sets action when it is the one that is asked for. To add a command: a file with
// such a function, a line here and a line in command.cpp.
void add_gain(CLI::App& app, const Surroundings& surroundings, Action& action);
void add_strategy(CLI::App& app, const Surroundings& surroundings, Action& action);
void add_bands(CLI::App& app, const Surroundings& surroundings, Action& action);
void add_delivery(CLI::App& app, const Surroundings& surroundings, Action& action);
void add_check(CLI::App& app, const Surroundings& surroundings, Action& action);

}  // namespace yardworth::cli
