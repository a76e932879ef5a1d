#pragma once

#include <optional>
#include <string>
#include <vector>

namespace yardworth::input {

// Why two parts of a log, sessions or clubs by their names, cannot be compared whatever the log has in them: there are
// none to tell apart, or both names are one. Nothing where nothing is at fault.
struct PartsFault {
  std::string found, expected;
};
std::optional<PartsFault> parts_fault(const std::vector<std::string>& names, const std::vector<std::string>& known);

}  // namespace yardworth::input
