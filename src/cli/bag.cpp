#include "yardworth/bag.hpp"

#include <fmt/format.h>

#include <memory>

#include "cli/command.hpp"
#include "cli/inputs.hpp"
#include "cli/options.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/read.hpp"
#include "yardworth/report.hpp"
#include "yardworth/shot_log.hpp"

namespace yardworth::cli {
namespace {

struct BagOptions {
  std::string log;
  bool skip_bad_rows = false;
  std::string player;
  std::optional<double> index;
  Gender gender = Gender::men;
  OutputOptions output;
};

// Faults become complaints, advice is told beside the answer.
void sort_findings(const std::vector<Diagnostic>& findings, std::string& complaints, std::string& advice) {
  for (const Diagnostic& finding : findings) {
    (finding.severity == Severity::fault ? complaints : advice) += to_line(finding) + "\n";
  }
}

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

BagRequest read_golfer(const BagOptions& options, std::string& complaints, std::string& advice) {
  BagRequest request;
  if (options.index && !options.player.empty()) {
    complaints += "yardworth: --index: found --player beside it, expected one of them: both say whom to borrow from\n";
  }
  if (!options.player.empty()) {
    const Reading<std::string> text = read_text(options.player);
    sort_findings(text.findings, complaints, advice);
    if (!text.ok()) return request;
    Reading<Player> player = read_player(*text.value, options.player);
    std::string of_no_account;
    sort_findings(player.findings, complaints, of_no_account);
    request.golfer = std::move(player.value);
    request.golfer_has_file = true;
  } else if (options.index) {
    request.golfer = golfer_of_index(*options.index, options.gender);
  }
  return request;
}

std::string written(const BagReport& report, const OutputOptions& output, const Surroundings& surroundings) {
  switch (output.format) {
    case Format::json:
      return bag_json(report);
    case Format::csv:
      return bag_csv(report);
    case Format::text:
      break;
  }
  return text_of(bag_text, report, output, surroundings);
}

Outcome run_bag(const BagOptions& options, const Surroundings& surroundings) {
  if (const auto refused =
          refuse_outputs({options.output.path}, {options.log, options.player}, options.output.replace)) {
    return refusal_of(*refused);
  }
  std::string complaints, advice;
  const BadRows bad_rows = options.skip_bad_rows ? BadRows::skipped : BadRows::refused;
  const std::optional<ShotLog> log = read_log(options.log, bad_rows, complaints, advice);
  const BagRequest request = read_golfer(options, complaints, advice);
  if (!complaints.empty()) return {at_fault, "", complaints};
  return computed([&] {
    const BagReport report{measure_bag(*log, request), {}, {}};
    Outcome outcome = deliver(written(report, options.output, surroundings), options.output, report.opening);
    outcome.err = advice + outcome.err;
    return outcome;
  });
}

}  // namespace

void add_bag(CLI::App& app, const Surroundings& surroundings, Action& action) {
  auto options = std::make_shared<BagOptions>();
  CLI::App* command =
      app.add_subcommand("bag", "What measured shots say of each club: carry, spreads, poor strikes, gaps");
  command->add_option("LOG", options->log, "Shot log (CSV): docs/formats.md has its columns")->required();
  command->add_flag("--skip-bad-rows", options->skip_bad_rows, "Use the log without the rows that cannot be read");
  add_words(*command, "--player", options->player, "FILE", "Player file: clubs of few shots are borrowed from it");
  add_number(*command, "--index", options->index, limits::handicap_index,
             "Handicap Index, a plus handicap negative: clubs of few shots are borrowed from such golfers");
  add_choice<Gender>(*command, "--gender", options->gender, {{"men", Gender::men}, {"women", Gender::women}},
                     "Whose golfers of that index; men unless given");
  add_output_options(*command, options->output);
  command->callback([options, surroundings, &action] {
    action = [options, surroundings] { return run_bag(*options, surroundings); };
  });
}

}  // namespace yardworth::cli
