#pragma once

#include <CLI/CLI.hpp>
#include <string>
#include <vector>

namespace yardworth::cli {

// What the parser knows of the commands and their options, for pages and completions that are made of it: one table for
// all of them, and for --help.

struct OptionEntry {
  std::vector<std::string> names;  // "--course", "-h"; of what has none, what it is called: "LOG"
  bool positional = false;
  std::string value;               // what stands for it: "FILE", "N", "habit|best"; empty of a flag
  std::vector<std::string> words;  // the values there are, where they are words
  bool file = false;               // the value is a file's name
  std::string help;
};

struct CommandEntry {
  std::string name;
  std::string help;
  std::vector<OptionEntry> options;  // in the order of --help
};

// Of the program itself, whose name is "yardworth", and then of each command.
std::vector<CommandEntry> option_table(const CLI::App& app);

}  // namespace yardworth::cli
