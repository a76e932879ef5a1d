#include "cli/option_table.hpp"

#include <algorithm>
#include <sstream>

namespace yardworth::cli {
namespace {

std::vector<std::string> names_of(const CLI::Option& option) {
  if (option.get_positional()) return {option.get_name(true)};
  std::vector<std::string> names;
  for (const std::string& name : option.get_lnames()) names.push_back("--" + name);
  for (const std::string& name : option.get_snames()) names.push_back("-" + name);
  return names;
}

// "play|table" lists words; a part in capitals stands for something that is not listed.
std::vector<std::string> words_of(const std::string& value) {
  std::vector<std::string> words;
  std::istringstream parts(value);
  for (std::string word; std::getline(parts, word, '|');) {
    const bool listed = std::none_of(word.begin(), word.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
    if (listed && !word.empty()) words.push_back(word);
  }
  return words;
}

// What stands for a file's name in the help.
bool is_file(const OptionEntry& option) {
  const std::string& kind = option.positional ? option.names.front() : option.value;
  if (option.positional && kind == "AFTER") return true;
  return kind == "FILE" || kind == "LOG" || kind == "PLAYER" || kind.find(".csv") != std::string::npos ||
         kind.find(".yaml") != std::string::npos;
}

OptionEntry entry_of(const CLI::Option& option) {
  OptionEntry entry;
  entry.names = names_of(option);
  entry.positional = option.get_positional();
  if (!entry.positional && option.get_type_size() != 0) entry.value = option.get_type_name();
  entry.words = words_of(entry.value);
  entry.file = is_file(entry);
  entry.help = option.get_description();
  return entry;
}

CommandEntry entry_of(const CLI::App& command) {
  CommandEntry entry{command.get_name(), command.get_description(), {}};
  for (const CLI::Option* option : command.get_options()) entry.options.push_back(entry_of(*option));
  return entry;
}

}  // namespace

std::vector<CommandEntry> option_table(const CLI::App& app) {
  std::vector<CommandEntry> table{entry_of(app)};
  for (const CLI::App* command : app.get_subcommands([](const CLI::App*) { return true; })) {
    table.push_back(entry_of(*command));
  }
  return table;
}

}  // namespace yardworth::cli
