#include "yardworth/bag.hpp"

#include <fmt/format.h>

#include <filesystem>
#include <memory>

#include "cli/command.hpp"
#include "cli/inputs.hpp"
#include "cli/options.hpp"
#include "cli/shot_logs.hpp"
#include "core/file_output.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/read.hpp"
#include "yardworth/report.hpp"
#include "yardworth/shot_log.hpp"

namespace yardworth::cli {
namespace {

struct BagOptions {
  std::string log;
  std::string after_log;                     // empty: one log alone
  std::vector<std::string> sessions, clubs;  // two of the log, to be compared
  bool skip_bad_rows = false;
  std::string player;
  std::optional<double> index;
  Gender gender = Gender::men;
  std::string write;  // a player file; empty: none
  OutputOptions output;
  std::string svg;
};

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
      return bag_changes_csv(report);
    case Format::text:
      break;
  }
  return text_of(bag_text, report, output, surroundings);
}

// The file that is to be written, where it exists already.
std::optional<std::string> existing_player(const BagOptions& options, std::string& complaints) {
  std::error_code error;
  if (options.write.empty() || !std::filesystem::exists(options.write, error)) return std::nullopt;
  Reading<std::string> text = read_text(options.write);
  std::string of_no_account;
  sort_findings(text.findings, complaints, of_no_account);
  return std::move(text.value);
}

// Whom clubs are borrowed from: as is said, or the golfer of the file that is to be written.
BagRequest golfer_to_write(const BagOptions& options, const std::optional<std::string>& existing, BagRequest request,
                           std::string& complaints) {
  if (options.write.empty() || request.golfer || !options.player.empty()) return request;
  if (!existing) {
    complaints +=
        "yardworth: --write: found neither --index nor --player, expected one of them: a player file says of whom it "
        "is\n";
    return request;
  }
  Reading<Player> player = read_player(*existing, options.write);
  std::string of_no_account;
  sort_findings(player.findings, complaints, of_no_account);
  request.golfer = std::move(player.value);
  request.golfer_has_file = true;
  return request;
}

TwoLogs read_sides(const BagOptions& options, std::string& complaints, std::string& advice) {
  const int ways =
      (options.after_log.empty() ? 0 : 1) + (options.sessions.empty() ? 0 : 1) + (options.clubs.empty() ? 0 : 1);
  if (ways > 1) {
    complaints +=
        "yardworth: a second log, --sessions and --clubs: found several, expected one way to say what is compared\n";
  }
  const BadRows bad_rows = options.skip_bad_rows ? BadRows::skipped : BadRows::refused;
  TwoLogs sides;
  sides.one = read_log(options.log, bad_rows, complaints, advice);
  if (!options.after_log.empty()) sides.after = read_log(options.after_log, bad_rows, complaints, advice);
  if (!complaints.empty() || !sides.one) return sides;
  const ShotLog log = *sides.one;
  if (!options.sessions.empty()) {
    return parts_of(log, "--sessions", options.sessions, shots_of_session, log.sessions, complaints);
  }
  if (!options.clubs.empty()) return parts_of(log, "--clubs", options.clubs, shots_of_club, log.clubs, complaints);
  return sides;
}

BagReport report_of(const BagOptions& options, const TwoLogs& sides, const BagRequest& request) {
  if (!sides.after) return {measure_bag(*sides.one, request), {}, {}};
  BagComparison comparison = options.clubs.empty() ? compare_bags(*sides.one, *sides.after, request)
                                                   : compare_clubs(*sides.one, *sides.after, request);
  BagResult after = comparison.measured_after;
  return {std::move(after), std::move(comparison), {}};
}

// Writes the player file that is asked for; the refusal, where it cannot be.
std::optional<Outcome> write_player_of(const BagOptions& options, const BagResult& result, const BagRequest& request,
                                       const std::optional<std::string>& existing) {
  if (options.write.empty()) return std::nullopt;
  const Reading<std::string> text = write_measured_player(result, *request.golfer, existing, options.write);
  if (!text.ok()) {
    std::string complaints, of_no_account;
    sort_findings(text.findings, complaints, of_no_account);
    return Outcome{at_fault, "", complaints + "yardworth: --write: that is what the player file would have at fault\n"};
  }
  if (const auto refused = write_file(options.write, *text.value, options.output.replace)) return refusal_of(*refused);
  return std::nullopt;
}

Outcome run_bag(const BagOptions& options, const Surroundings& surroundings) {
  if (options.output.replace && options.output.path.empty() && options.write.empty() && options.svg.empty()) {
    return refusal(at_fault, "--force needs --output, --write or --svg, the file that it may replace");
  }
  for (const std::string& other : {options.output.path, options.write}) {
    if (same_file(options.svg, other)) return refusal(at_fault, "--svg is the same file as --output or --write");
  }
  const std::vector<std::string> logs = {options.log, options.after_log};
  std::vector<std::string> read = logs;
  read.push_back(options.player);
  if (const auto refused = refuse_outputs({options.output.path, options.svg}, read, options.output.replace)) {
    return refusal_of(*refused);
  }
  // A player file that is borrowed from may be the one that is written.
  if (const auto refused = refuse_outputs({options.write}, logs, options.output.replace)) return refusal_of(*refused);
  if (!options.write.empty() && options.write == options.output.path) {
    return refusal(at_fault, "--write: found the file of --output, expected another one");
  }
  std::string complaints, advice;
  const TwoLogs sides = read_sides(options, complaints, advice);
  const std::optional<std::string> existing = existing_player(options, complaints);
  const BagRequest request = golfer_to_write(options, existing, read_golfer(options, complaints, advice), complaints);
  if (!complaints.empty()) return {at_fault, "", complaints};
  return computed([&] {
    const BagReport report = report_of(options, sides, request);
    if (const auto refused = write_player_of(options, report.result, request, existing)) return *refused;
    if (!options.svg.empty()) {
      if (const auto refused = write_file(options.svg, bag_svg(report), options.output.replace)) {
        return refusal_of(*refused);
      }
    }
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
  command->add_option("AFTER", options->after_log, "A later log: what changed, club by club");
  command->add_option("--sessions", options->sessions, "Two sessions of the log: what changed from one to the other")
      ->type_name("BEFORE AFTER")
      ->expected(2);
  command->add_option("--clubs", options->clubs, "Two clubs of the log, hit in turn: by how much the other is longer")
      ->type_name("ONE OTHER")
      ->expected(2);
  command->add_flag("--skip-bad-rows", options->skip_bad_rows, "Use the log without the rows that cannot be read");
  add_words(*command, "--player", options->player, "FILE", "Player file: clubs of few shots are borrowed from it");
  add_number(*command, "--index", options->index, limits::handicap_index,
             "Handicap Index, a plus handicap negative: clubs of few shots are borrowed from such golfers");
  add_choice<Gender>(*command, "--gender", options->gender, {{"men", Gender::men}, {"women", Gender::women}},
                     "Whose golfers of that index; men unless given");
  add_words(*command, "--write", options->write, "PLAYER",
            "Also write the measured clubs to this player file; with --force an existing one gets their numbers and "
            "keeps the rest");
  add_output_options(*command, options->output);
  add_svg_option(*command, options->svg, "Also draw the carries with their intervals and gaps");
  command->callback([options, surroundings, &action] {
    action = [options, surroundings] { return run_bag(*options, surroundings); };
  });
}

}  // namespace yardworth::cli
