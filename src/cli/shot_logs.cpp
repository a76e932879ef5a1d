#include "cli/shot_logs.hpp"

#include <fmt/format.h>

#include <utility>

#include "cli/inputs.hpp"
#include "cli/options.hpp"
#include "input/two_parts.hpp"
#include "yardworth/read.hpp"

namespace yardworth::cli {

std::optional<ShotLog> read_log(const std::string& path, BadRows bad_rows, std::string& complaints,
                                std::string& advice) {
  const Reading<std::string> text = read_text(path, largest_log_bytes);
  sort_findings(text.findings, complaints, advice);
  if (!text.ok()) return std::nullopt;
  Reading<ShotLog> log = read_shot_log(*text.value, path, bad_rows);
  sort_findings(log.findings, complaints, advice);
  if (!log.ok() && bad_rows == BadRows::refused && complaints.find(": fault: ") != std::string::npos &&
      read_shot_log(*text.value, path, BadRows::skipped).ok()) {
    complaints +=
        escape_control(fmt::format("yardworth: {}: the other rows can be used: --skip-bad-rows", path)) + "\n";
  }
  return std::move(log.value);
}

TwoLogs parts_of(const ShotLog& log, const std::string& option, const std::vector<std::string>& names, PartOfLog part,
                 const std::vector<std::string>& known, std::string& complaints) {
  std::vector<std::optional<ShotLog>> parts;
  if (const auto fault = input::parts_fault(names, known)) {
    complaints +=
        escape_control(fmt::format("yardworth: {}: found {}, expected {}", option, fault->found, fault->expected)) +
        "\n";
    return {};
  }
  for (const std::string& name : names) {
    parts.push_back(part(log, name));
    if (parts.back()) continue;
    complaints += escape_control(fmt::format("yardworth: {}: found \"{}\", expected {}", option, name,
                                             expected_word(name, known))) +
                  "\n";
  }
  return {std::move(parts[0]), std::move(parts[1])};
}

}  // namespace yardworth::cli
