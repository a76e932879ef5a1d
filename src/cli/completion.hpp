#pragma once

#include <string>
#include <vector>

#include "cli/option_table.hpp"

namespace yardworth::cli {

// Scripts by which a shell completes the commands, options, words and file names of a call.
std::string bash_completion(const std::vector<CommandEntry>& table);
std::string zsh_completion(const std::vector<CommandEntry>& table);
std::string fish_completion(const std::vector<CommandEntry>& table);

}  // namespace yardworth::cli
