#include "input/two_parts.hpp"

#include <algorithm>

#include "core/message_text.hpp"
#include "yardworth/shot_log.hpp"

namespace yardworth::input {

std::optional<PartsFault> parts_fault(const std::vector<std::string>& names, const std::vector<std::string>& known) {
  if (std::all_of(known.begin(), known.end(), [](const std::string& name) { return name.empty(); })) {
    return PartsFault{"no column for that in the log", "one that tells them apart"};
  }
  if (plain_name(names[0]) == plain_name(names[1])) {
    return PartsFault{quoted(names[0]) + " twice", "two to compare"};
  }
  return std::nullopt;
}

}  // namespace yardworth::input
