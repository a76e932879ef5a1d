#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "yardworth/diagnostics.hpp"
#include "yardworth/shot_log.hpp"

namespace yardworth::cli {

// Shot logs as commands read them.

std::optional<ShotLog> read_log(const std::string& path, BadRows bad_rows, std::string& complaints,
                                std::string& advice);

// The logs that are asked about: one, or two that are compared.
struct TwoLogs {
  std::optional<ShotLog> one, after;
};

using PartOfLog = std::optional<ShotLog> (*)(const ShotLog&, std::string_view);

// Two parts of a log, by their names: known are those that it has.
TwoLogs parts_of(const ShotLog& log, const std::string& option, const std::vector<std::string>& names, PartOfLog part,
                 const std::vector<std::string>& known, std::string& complaints);

}  // namespace yardworth::cli
