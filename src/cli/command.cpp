#include "cli/command.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <sstream>

#include "cli/help.hpp"
#include "core/spelling.hpp"
#include "report/text.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/report.hpp"
#include "yardworth/version.hpp"

namespace yardworth::cli {
namespace {

void add_commands(CLI::App& app, const Surroundings& surroundings, Action& action) {
  add_gain(app, surroundings, action);
  add_strategy(app, surroundings, action);
  add_report(app, surroundings, action);
  add_page(app, surroundings, action);
  add_bands(app, surroundings, action);
  add_delivery(app, surroundings, action);
  add_bag(app, surroundings, action);
  add_weigh(app, surroundings, action);
  add_check(app, surroundings, action);
  add_completion(app, surroundings, action);
  add_manual(app, surroundings, action);
}

CLI::App* chosen_command(CLI::App& app) {
  const auto chosen = app.get_subcommands();
  return chosen.empty() ? nullptr : chosen.front();
}

std::vector<std::string> command_names(const CLI::App& app) {
  std::vector<std::string> names;
  for (const CLI::App* command : app.get_subcommands([](const CLI::App*) { return true; })) {
    names.push_back(command->get_name());
  }
  return names;
}

std::vector<std::string> option_names(const CLI::App& app) {
  std::vector<std::string> names;
  for (const CLI::Option* option : app.get_options()) {
    for (const std::string& name : option->get_lnames()) names.push_back("--" + name);
  }
  return names;
}

std::string help_call(const CLI::App* command) {
  return command == nullptr ? "yardworth --help" : fmt::format("yardworth {} --help", command->get_name());
}

std::string did_you_mean(const std::string& word, const std::vector<std::string>& known) {
  const auto meant = nearest_word(word, known);
  return meant ? fmt::format("did you mean {}? ", *meant) : "";
}

// What to say about the first argument that nothing knows.
std::string unknown_argument(CLI::App& app, const std::vector<std::string>& unknown) {
  const CLI::App* command = chosen_command(app);
  const auto option = std::find_if(unknown.begin(), unknown.end(), [](const std::string& argument) {
    return argument.size() > 1 && argument.front() == '-';
  });
  if (option != unknown.end()) {
    const std::string name = option->substr(0, option->find('='));
    return fmt::format("there is no option {}; {}see {}", name,
                       did_you_mean(name, option_names(command == nullptr ? app : *command)), help_call(command));
  }
  if (command == nullptr) {
    return fmt::format("there is no command \"{}\"; {}see yardworth --help", unknown.front(),
                       did_you_mean(unknown.front(), command_names(app)));
  }
  return fmt::format("\"{}\" belongs to no option; see {}", unknown.front(), help_call(command));
}

std::string what_is_wrong(CLI::App& app, const CLI::ParseError& error) {
  const std::vector<std::string> unknown = app.remaining(true);
  if (!unknown.empty()) return unknown_argument(app, unknown);
  const CLI::App* command = chosen_command(app);
  if (command == nullptr) return "which command? For the built-in scenario: yardworth gain; for all: yardworth --help";
  const bool count = error.get_name() == "ArgumentMismatch";
  return fmt::format("{}{}; see {}", count ? "a value is missing or given twice: " : "", error.what(),
                     help_call(command));
}

Outcome refuse(CLI::App& app, const CLI::ParseError& error) {
  std::ostringstream out;
  std::ostringstream err;
  // Help and the version are errors to the parser, with the status of success.
  if (app.exit(error, out, err) == 0) return {done, out.str(), ""};
  return refusal(at_fault, what_is_wrong(app, error));
}

}  // namespace

std::optional<std::size_t> Surroundings::columns(bool to_file) const {
  const std::optional<std::size_t> found = terminal_columns && !to_file ? terminal_columns : said_columns;
  return found ? std::optional<std::size_t>(std::min(*found, report_width)) : std::nullopt;
}

Outcome refusal(int status, const std::string& why) {
  return {status, "", fmt::format("yardworth: {}\n", escape_control(why))};
}

namespace {

// Each line is a finding of its own; what it goes on with is indented.
std::string broken_at_words(const std::string& lines, std::size_t columns) {
  constexpr std::size_t indent = 2;
  const std::size_t width = std::max(columns, narrowest_page);
  std::string broken;
  std::istringstream all(lines);
  for (std::string line; std::getline(all, line);) {
    broken += display_width(line) <= width ? line + '\n' : wrap(line, width, indent);
  }
  return broken;
}

Outcome run_unbroken(std::vector<std::string> arguments, const Surroundings& surroundings) {
  CLI::App app("What added distance is worth in strokes on a real course, and why.", "yardworth");
  app.formatter(help_in(surroundings.columns().value_or(report_width)));
  app.set_version_flag("--version", fmt::format("yardworth {}", version));
  app.require_subcommand(1);
  app.footer(
      "Exit status: 0 done, 1 could not be done, 2 the command or the input is at fault.\n"
      "yardworth COMMAND --help tells about a command.");
  Action action;
  add_commands(app, surroundings, action);
  try {
    std::reverse(arguments.begin(), arguments.end());  // as the parser takes them
    app.parse(std::move(arguments));
  } catch (const CLI::ParseError& error) {
    return refuse(app, error);
  }
  return action();
}

}  // namespace

Outcome run(std::vector<std::string> arguments, const Surroundings& surroundings) {
  Outcome outcome = run_unbroken(std::move(arguments), surroundings);
  if (surroundings.error_columns) outcome.err = broken_at_words(outcome.err, *surroundings.error_columns);
  return outcome;
}

}  // namespace yardworth::cli
