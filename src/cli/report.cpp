#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <memory>
#include <string_view>

#include "cli/bands.hpp"
#include "cli/gain.hpp"
#include "cli/progress.hpp"
#include "gain/drawn_holes.hpp"

namespace yardworth::cli {
namespace {

Outcome lesson_outcome(const GainOptions& options, const Inputs& inputs, const Surroundings& surroundings) {
  LessonReport report;
  {
    Progress progress(surroundings.progress);
    report.gain = gain_report(options, inputs, progress);
    report.strategy = compute_drawn_holes(inputs.course, inputs.player, inputs.baseline, gain_request(options, inputs));
    if (options.change.strikes) report.delivery = losses_before(*options.change.strikes);
    report.seed = options.seed;
  }
  return deliver(lesson_html(report), options.output, report.gain.opening);
}

// A lesson sheet is about one golfer, a page for a club about bands.
struct ReportOptions {
  GainOptions lesson;
  BandsOptions club;  // what a lesson has too is taken from there
  bool bands = false;
  std::vector<std::string> given;  // the options that were said
};

// The options that only one of the two pages takes, and those that both do.
constexpr std::string_view club_alone[] = {"--members", "--band", "--gender", "--move-hazard", "--add-hazard"};
constexpr std::string_view of_both[] = {"--bands", "--course",  "--tee",    "--driver", "--irons",
                                        "--plan",  "--threads", "--output", "--force"};

bool is_among(const std::string& option, const auto& options) {
  return std::find(std::begin(options), std::end(options), option) != std::end(options);
}

// What was said that the page asked for does not take; empty where all goes together.
std::string misplaced(const ReportOptions& options) {
  for (const std::string& option : options.given) {
    const bool of_club = is_among(option, club_alone);
    if (!options.bands && of_club) return fmt::format("{} needs --bands, the page for a club", option);
    if (options.bands && !of_club && !is_among(option, of_both)) {
      return fmt::format("{} is about one golfer; leave it out, or --bands, the page for a club", option);
    }
  }
  if (options.bands && is_among("--plan", options.given) && options.lesson.policy == PolicyChoice::both) {
    return "--plan: found both, expected habit or best with --bands";
  }
  if (!options.bands && options.club.tees.size() > 1) {
    return fmt::format("--tee: found {} of them, expected one: only with --bands a page is about several",
                       options.club.tees.size());
  }
  return "";
}

BandsOptions club_options(const ReportOptions& options) {
  BandsOptions club = options.club;
  club.course = options.lesson.inputs.course;
  club.change = options.lesson.change.said;
  club.policy = options.lesson.policy == PolicyChoice::best ? PolicyChoice::best : PolicyChoice::habit;
  club.threads = options.lesson.threads;
  club.output = options.lesson.output;
  return club;
}

Outcome run_report(const ReportOptions& options, const Surroundings& surroundings) {
  if (const std::string why = misplaced(options); !why.empty()) return refusal(at_fault, why);
  if (options.bands) return run_club_page(club_options(options), surroundings);
  GainOptions lesson = options.lesson;
  if (!options.club.tees.empty()) lesson.inputs.tee = options.club.tees.front();
  return run_on_inputs(std::move(lesson), surroundings, lesson_outcome);
}

void add_club_options(CLI::App& command, ReportOptions& options) {
  command.add_flag("--bands", options.bands,
                   "A page for a club in place of a lesson sheet: bands by tee, hazards by band, which tees suit whom; "
                   "with --course, --tee, --driver, --irons, --plan and what follows");
  add_whom_options(command, options.club, "beside the bands");
  add_changed_hazard_options(command, options.club.hazards);
  // A page for a club may be about several tees.
  command.remove_option(command.get_option("--tee"));
  add_repeated(command, "--tee", options.club.tees, "NAME",
               std::string(help_of_tee) + ". With --bands several times for several; all unless given");
}

std::vector<std::string> given_options(const CLI::App& command) {
  std::vector<std::string> given;
  for (const CLI::Option* option : command.get_options()) {
    if (option->count() > 0) given.push_back(option->get_name());
  }
  return given;
}

}  // namespace

void add_report(CLI::App& app, const Surroundings& surroundings, Action& action) {
  auto options = std::make_shared<ReportOptions>();
  CLI::App* command = app.add_subcommand(
      "report", "A lesson sheet of a gain, or a page for a club: one page to read on a screen or to print");
  add_gain_options(*command, options->lesson);
  add_club_options(*command, *options);
  add_file_options(*command, options->lesson.output, "Write the page, HTML, to this file, whole or not at all");
  command->footer(
      "What is added carry worth to one golfer?\n"
      "  yardworth report --player player.yaml --driver +20 --irons +6 --output lesson.html\n"
      "Which tees suit whom, and who finds which hazard?\n"
      "  yardworth report --bands --course course.yaml --members members.csv --output club.html");
  command->callback([options, command, surroundings, &action] {
    options->given = given_options(*command);
    action = [options, surroundings] { return run_report(*options, surroundings); };
  });
}

}  // namespace yardworth::cli
