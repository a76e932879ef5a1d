#include <memory>

#include "cli/command.hpp"
#include "cli/completion.hpp"
#include "cli/manual.hpp"
#include "cli/options.hpp"

namespace yardworth::cli {
namespace {

enum class Shell { bash, zsh, fish };

std::string completion_for(Shell shell, const std::vector<CommandEntry>& table) {
  switch (shell) {
    case Shell::zsh:
      return zsh_completion(table);
    case Shell::fish:
      return fish_completion(table);
    case Shell::bash:
      break;
  }
  return bash_completion(table);
}

Outcome run_manual(const std::string& name, const std::vector<CommandEntry>& table) {
  std::vector<std::string> names;
  for (const CommandEntry& entry : table) {
    if (entry.name == name) return {done, manual_page(table, entry), ""};
    names.push_back(entry.name);
  }
  return refusal(at_fault, misfit("COMMAND", name, expected_word(name, names)).what());
}

}  // namespace

// The table is read where the answer is made: then all commands have added themselves.
void add_completion(CLI::App& app, const Surroundings& /*surroundings*/, Action& action) {
  auto shell = std::make_shared<Shell>(Shell::bash);
  CLI::App* command = app.add_subcommand("completion", "A script by which a shell completes calls of this program");
  add_choice<Shell>(*command, "SHELL", *shell, {{"bash", Shell::bash}, {"zsh", Shell::zsh}, {"fish", Shell::fish}},
                    "bash, zsh or fish")
      ->required();
  command->callback([shell, &app, &action] {
    action = [shell, table = option_table(app)] { return Outcome{done, completion_for(*shell, table), ""}; };
  });
}

void add_manual(CLI::App& app, const Surroundings& /*surroundings*/, Action& action) {
  auto name = std::make_shared<std::string>("yardworth");
  CLI::App* command = app.add_subcommand("manual", "A manual page, to be read with man -l or installed");
  command->add_option("COMMAND", *name, "Of this command; of the program itself unless given");
  command->callback(
      [name, &app, &action] { action = [name, table = option_table(app)] { return run_manual(*name, table); }; });
}

}  // namespace yardworth::cli
