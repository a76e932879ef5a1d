#pragma once

#include <string>
#include <vector>

#include "cli/option_table.hpp"

namespace yardworth::cli {

// The manual page of the program, or of one of its commands, in the man macros of roff.
std::string manual_page(const std::vector<CommandEntry>& table, const CommandEntry& of);

}  // namespace yardworth::cli
