#include <fmt/format.h>

#include <memory>

#include "cli/command.hpp"
#include "report/text.hpp"
#include "yardworth/read.hpp"
#include "yardworth/report.hpp"

namespace yardworth::cli {
namespace {

Reading<AnyFile> read(const std::string& path) {
  const Reading<std::string> text = read_text(path);
  if (!text.ok()) return {std::nullopt, text.findings};
  return read_any(*text.value, path);
}

// Findings are what this command is for, so they go to standard output: each in one line, as programs that look for
// places in files expect, but on a terminal.
Outcome run_check(const std::vector<std::string>& paths, const Surroundings& surroundings) {
  Outcome outcome;
  const auto line = [columns = surroundings.columns()](const std::string& words) {
    return columns ? wrap(words, *columns, 2) : words + "\n";
  };
  for (const std::string& path : paths) {
    const Reading<AnyFile> reading = read(path);
    for (const Diagnostic& finding : reading.findings) outcome.out += line(to_line(finding));
    if (reading.ok()) outcome.out += line(fmt::format("{}: {}", escape_control(path), summarise(*reading.value)));
    if (!reading.ok()) outcome.status = at_fault;
  }
  return outcome;
}

}  // namespace

void add_check(CLI::App& app, const Surroundings& surroundings, Action& action) {
  auto paths = std::make_shared<std::vector<std::string>>();
  CLI::App* command = app.add_subcommand(
      "check", "Every fault and every advice about files, each with its place, or what was understood");
  command->add_option("FILE", *paths, "Course, player or baseline files")->required();
  command->callback(
      [paths, surroundings, &action] { action = [paths, surroundings] { return run_check(*paths, surroundings); }; });
}

}  // namespace yardworth::cli
