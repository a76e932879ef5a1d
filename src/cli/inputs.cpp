#include "cli/inputs.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <string_view>
#include <utility>

#include "input/units_doubt.hpp"
#include "report/opening.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/read.hpp"
#include "yardworth/scenario.hpp"

namespace yardworth::cli {
namespace {

Reading<Course> course_of(const std::string& path) {
  if (!path.empty()) return read_file<Course>(path, read_course);
  return read_course(scenario_course_yaml(), std::string(scenario_course_file));
}

Reading<Player> player_of(const InputOptions& options) {
  if (!options.player.empty()) return read_file<Player>(options.player, read_player);
  return read_player(scenario_player_yaml(), std::string(scenario_player_file));
}

void complain(const std::vector<Diagnostic>& findings, std::string& complaints) {
  for (const Diagnostic& finding : findings) {
    if (finding.severity == Severity::fault) complaints += to_line(finding) + "\n";
  }
}

std::optional<std::size_t> tee_of(const InputOptions& options, const Course& course, Gender gender,
                                  std::string& complaints) {
  return options.tee.empty() ? default_tee(course, gender) : tee_named(options.tee, course, complaints);
}

std::vector<std::string> assumptions(const InputOptions& options, const Inputs& inputs) {
  report::StoodIn stood_in;
  if (options.course.empty()) stood_in.course = inputs.course.name;
  if (options.player.empty()) stood_in.player = inputs.player.label;
  if (options.tee.empty()) stood_in.tee = inputs.course.tees[inputs.tee].name;
  return report::opening_of(stood_in);
}

std::optional<std::string> doubt_words(const std::string& about, const std::optional<input::UnitsDoubt>& doubt) {
  if (!doubt) return std::nullopt;
  return fmt::format("Advice on {}: found {}, expected {}.", about, doubt->found, doubt->expected);
}

}  // namespace

void sort_findings(const std::vector<Diagnostic>& findings, std::string& complaints, std::string& advice) {
  for (const Diagnostic& finding : findings) {
    (finding.severity == Severity::fault ? complaints : advice) += to_line(finding) + "\n";
  }
}

std::optional<std::string> units_advice(const Course& course) {
  return doubt_words(course.name, input::doubt_about_units(course));
}

std::optional<std::string> units_advice(const Player& player) {
  return doubt_words(player.label, input::doubt_about_units(player));
}

void add_input_file_options(CLI::App& app, InputOptions& options) {
  add_words(app, "--course", options.course, "FILE", "Course file; unless given, the built-in course");
  add_words(app, "--player", options.player, "FILE", "Player file; unless given, the built-in player");
  add_words(app, "--baseline", options.baseline, "FILE",
            "Baseline file; unless given, the table of the player's Handicap Index or band");
}

void add_input_options(CLI::App& app, InputOptions& options) {
  add_input_file_options(app, options);
  add_words(app, "--tee", options.tee, "NAME", help_of_tee);
}

std::optional<Course> read_course_or_scenario(const std::string& path, std::string& complaints) {
  Reading<Course> course = course_of(path);
  complain(course.findings, complaints);
  return std::move(course.value);
}

std::optional<std::size_t> tee_named(const std::string& tee, const Course& course, std::string& complaints) {
  const auto index = tee_index(course, tee);
  if (!index) {
    complaints += escape_control(fmt::format("yardworth: --tee: found \"{}\", expected a tee of {}: {}", tee,
                                             course.name, expected_word(tee, tee_names(course)))) +
                  "\n";
  }
  return index;
}

std::optional<Inputs> read_inputs(const InputOptions& options, std::string& complaints) {
  Reading<Course> course = course_of(options.course);
  Reading<Player> player = player_of(options);
  Reading<BaselineTable> baseline;
  if (!options.baseline.empty()) baseline = read_file<BaselineTable>(options.baseline, read_baseline);
  complain(course.findings, complaints);
  complain(player.findings, complaints);
  complain(baseline.findings, complaints);

  std::optional<std::size_t> tee;
  if (course.ok()) tee = tee_of(options, *course.value, player.ok() ? player.value->gender : Gender::men, complaints);
  if (!complaints.empty()) return std::nullopt;

  const Baseline table = baseline.ok() ? Baseline(*baseline.value) : default_baseline(*player.value);
  Inputs inputs{std::move(*course.value), std::move(*player.value), table, *tee, {}};
  inputs.assumed = assumptions(options, inputs);
  for (std::string& sentence : report::struck_words(inputs.player)) inputs.assumed.push_back(std::move(sentence));
  if (const auto advice = units_advice(inputs.course)) inputs.assumed.push_back(*advice);
  if (const auto advice = units_advice(inputs.player)) inputs.assumed.push_back(*advice);
  return inputs;
}

std::optional<OutputRefusal> refuse_outputs(const std::vector<std::string>& paths, const std::vector<std::string>& read,
                                            bool replace) {
  for (const std::string& path : paths) {
    if (path.empty()) continue;
    if (auto refusal = refuse_target(path, replace, read)) return refusal;
  }
  return std::nullopt;
}

bool same_file(const std::string& a, const std::string& b) {
  std::error_code ignored;
  const auto whole = [&](const std::string& path) {
    return std::filesystem::weakly_canonical(std::filesystem::absolute(path, ignored), ignored);
  };
  return !a.empty() && !b.empty() && whole(a) == whole(b);
}

std::string svg_conflict(const std::string& svg, const OutputOptions& output) {
  if (output.replace && output.path.empty() && svg.empty()) {
    return "--force needs --output or --svg, the file that it may replace";
  }
  return same_file(svg, output.path) ? "--svg and --output are the same file" : "";
}

Outcome refusal_of(OutputRefusal refusal) {
  if (refusal.finding.found == existing_file) refusal.finding.expected += " (--force)";
  return {refusal.by_system ? not_done : at_fault, "", to_line(refusal.finding) + "\n"};
}

namespace {

// The option that a member of a request comes from, where there is one; what it names otherwise.
std::string option_for(const std::string& member) {
  constexpr std::pair<std::string_view, std::string_view> options[] = {
      {"change.driver_carry_yd", "--driver"},
      {"change.irons_carry_yd", "--irons"},
      {"change.clubs", "--club"},
      {"change.carry_sd_share", "--carry-sd"},
      {"change.direction_sd_share", "--direction-sd"},
      {"change.direction_mean_rad", "--direction-mean"},
      {"change.poor_strike", "--poor-strike"},
      {"change.short_game_share", "--short-game"},
      {"change.putting_share", "--putting"},
      {"holes", "--hole"},
      {"tee", "--tee"},
      {"threads", "--threads"},
      {"policy", "--plan"},
      {"limit_yd", "--to"},
      {"step_yd", "--step"},
      {"bands", "--band"},
      {"genders", "--gender"},
  };
  for (const auto& [known, option] : options) {
    if (member == known || member.rfind(std::string(known) + "[", 0) == 0) return std::string(option);
  }
  return member;
}

Outcome faults_of_request(const InvalidRequest& error) {
  Outcome outcome{at_fault, "", ""};
  for (Diagnostic finding : error.findings()) {
    const std::string option =
        finding.file == "request" ? option_for(finding.path) : finding.file + ": " + finding.path;
    outcome.err +=
        escape_control(fmt::format("yardworth: {}: found {}, expected {}", option, finding.found, finding.expected)) +
        "\n";
  }
  return outcome;
}

}  // namespace

Outcome computed(const std::function<Outcome()>& compute) {
  try {
    return compute();
  } catch (const InvalidRequest& error) {
    return faults_of_request(error);
  } catch (const CannotFinish& error) {
    return refusal(not_done, error.what());
  }
}

Outcome deliver(std::string text, const OutputOptions& options, const std::vector<std::string>& opening) {
  Outcome outcome;
  if (options.path.empty()) {
    outcome.out = std::move(text);
  } else if (const auto refusal = write_file(options.path, text, options.replace)) {
    return refusal_of(*refusal);
  }
  if (options.format == Format::csv) {
    for (const std::string& sentence : opening) outcome.err += escape_control(sentence) + "\n";
  }
  return outcome;
}

}  // namespace yardworth::cli
