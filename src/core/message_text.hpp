#pragma once

#include <string>

namespace yardworth {

// Text of files and commands as findings show it.

// Its beginning, where it is long.
std::string shortened(const std::string& text);
// The same between quotation marks.
std::string quoted(const std::string& text);

}  // namespace yardworth
