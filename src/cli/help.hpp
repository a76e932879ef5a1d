#pragma once

#include <CLI/CLI.hpp>
#include <cstddef>
#include <memory>

namespace yardworth::cli {

// Writes help for a terminal of so many columns.
std::shared_ptr<CLI::FormatterBase> help_in(std::size_t columns);

}  // namespace yardworth::cli
