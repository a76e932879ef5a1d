#pragma once

#include <CLI/CLI.hpp>
#include <string>

#include "gain/said_change.hpp"

namespace yardworth::cli {

// unless_given: what the help says of both where they are not given.
void add_change_options(CLI::App& command, SaidChange& change, const std::string& unless_given);

}  // namespace yardworth::cli
