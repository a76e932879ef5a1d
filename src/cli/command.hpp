#pragma once

#include <CLI/CLI.hpp>
#include <cstddef>
#include <functional>
#include <optional>
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
  // Columns: of the terminal that standard output is, and of the environment variable COLUMNS, where there are any.
  std::optional<std::size_t> terminal_columns = std::nullopt;
  std::optional<std::size_t> said_columns = std::nullopt;
  // Of the terminal that standard error is, where it is one: longer lines are then broken between words.
  std::optional<std::size_t> error_columns = std::nullopt;
  std::string installed_page = {};  // where yardworth.html would be; empty: nobody knows

  // How many columns text for standard output, or for a file, has; nothing where nobody says. Longer lines than those
  // of reports are hard to read, however wide a terminal is.
  std::optional<std::size_t> columns(bool to_file = false) const;
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
void add_report(CLI::App& app, const Surroundings& surroundings, Action& action);
void add_page(CLI::App& app, const Surroundings& surroundings, Action& action);
void add_bands(CLI::App& app, const Surroundings& surroundings, Action& action);
void add_delivery(CLI::App& app, const Surroundings& surroundings, Action& action);
void add_bag(CLI::App& app, const Surroundings& surroundings, Action& action);
void add_weigh(CLI::App& app, const Surroundings& surroundings, Action& action);
void add_check(CLI::App& app, const Surroundings& surroundings, Action& action);
void add_completion(CLI::App& app, const Surroundings& surroundings, Action& action);
void add_manual(CLI::App& app, const Surroundings& surroundings, Action& action);

}  // namespace yardworth::cli
