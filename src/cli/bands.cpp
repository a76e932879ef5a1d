#include "cli/bands.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <memory>

#include "cli/change.hpp"
#include "cli/command.hpp"
#include "cli/hazard_text.hpp"
#include "cli/inputs.hpp"
#include "cli/options.hpp"
#include "cli/progress.hpp"
#include "report/opening.hpp"
#include "yardworth/bands.hpp"
#include "yardworth/members.hpp"
#include "yardworth/read.hpp"
#include "yardworth/report.hpp"

namespace yardworth::cli {
namespace {

// A question about hazards is about golfers as they are, unless it says otherwise.
bool assumes_change(const BandsOptions& options) { return !options.change.given() && options.hazards.empty(); }

std::vector<std::string> assumptions(const BandsOptions& options, const Course& course) {
  report::StoodIn stood_in;
  stood_in.units = course.units;
  if (options.course.empty()) stood_in.course = course.name;
  if (assumes_change(options)) stood_in.driver = default_driver_change;
  std::vector<std::string> said = report::opening_of(stood_in);
  if (const auto advice = units_advice(course)) said.push_back(*advice);
  return said;
}

template <class T>
void add_once(std::vector<T>& all, const T& one) {
  if (std::find(all.begin(), all.end(), one) == all.end()) all.push_back(one);
}

// Nothing where something asked for is not there; complaints then says what.
std::optional<BandsRequest> request_of(const BandsOptions& options, const Course& course, std::string& complaints) {
  BandsRequest request;
  if (options.genders) request.genders = *options.genders;
  if (!options.bands.empty()) request.bands = options.bands;
  for (const std::string& tee_name : options.tees) {
    if (const auto tee = tee_named(tee_name, course, complaints)) add_once(request.tees, *tee);
  }
  std::sort(request.tees.begin(), request.tees.end());
  request.change = options.change.carry_in_yards(course.units);
  if (assumes_change(options)) request.change.driver_carry_yd = to_yards(default_driver_change, course.units);
  request.policy = options.policy;
  request.threads = options.threads;
  if (options.hole > static_cast<int>(course.holes.size())) {
    complaints += fmt::format("yardworth: --hole: found {}, expected a hole of {}, 1 to {}\n", options.hole,
                              escape_control(course.name), course.holes.size());
  }
  if (!options.hazards.empty()) {
    Reading<ChangedCourse> changed = change_hazards(course, options.hazards);
    for (const Diagnostic& finding : changed.findings) complaints += to_line(finding) + "\n";
    request.changed_course = std::move(changed.value);
  }
  return complaints.empty() ? std::optional<BandsRequest>(std::move(request)) : std::nullopt;
}

std::string written(const BandsReport& report, const OutputOptions& output, const Surroundings& surroundings) {
  switch (output.format) {
    case Format::json:
      return bands_json(report);
    case Format::csv:
      return report.hole || !report.result.changed_hazards.empty() ? bands_hazards_csv(report) : bands_csv(report);
    case Format::text:
      break;
  }
  return text_of(bands_text, report, output, surroundings);
}

// What is about bands or holes alone cannot stand beside members.
std::string beside_members(const BandsOptions& options) {
  std::string complaints;
  const auto refuse = [&](bool given, const char* option, const char* expected) {
    if (!given) return;
    complaints += fmt::format("yardworth: {}: found --members beside it, expected {}\n", option, expected);
  };
  const char* const one_of_them = "one of them: both say who is asked about";
  refuse(!options.bands.empty(), "--band", one_of_them);
  refuse(options.genders.has_value(), "--gender", one_of_them);
  refuse(options.hole > 0, "--hole", "a question about bands");
  refuse(!options.hazards.empty(), "--move-hazard or --add-hazard", "a question about bands");
  refuse(!options.svg.empty(), "--svg", "a question about bands");
  return complaints;
}

std::string written_members(const MembersReport& report, const OutputOptions& output,
                            const Surroundings& surroundings) {
  if (output.format == Format::json) return members_json(report);
  if (output.format == Format::csv) return members_csv(report);
  return text_of(members_text, report, output, surroundings);
}

// Of what a list is asked: the part of the question that bands have too.
MembersRequest members_of(const BandsRequest& bands, std::vector<Member> members) {
  MembersRequest request;
  request.members = std::move(members);
  request.tees = bands.tees;
  request.change = bands.change;
  request.policy = bands.policy;
  request.threads = bands.threads;
  return request;
}

MembersReport members_report(const BandsOptions& options, const Course& course, MembersRequest request,
                             Progress& progress) {
  request.progress = [&progress](std::size_t finished, std::size_t of) { progress.tell(finished, of); };
  return {compute_members(course, request), assumptions(options, course)};
}

Outcome run_members(const BandsOptions& options, const Surroundings& surroundings) {
  std::string complaints = beside_members(options);
  std::string advice;
  Reading<std::vector<Member>> list = read_file(options.members, read_members);
  sort_findings(list.findings, complaints, advice);
  const std::optional<Course> course = read_course_or_scenario(options.course, complaints);
  const auto bands = course ? request_of(options, *course, complaints) : std::nullopt;
  if (!complaints.empty() || !bands || !list.value) return {at_fault, "", complaints + advice};
  const MembersRequest request = members_of(*bands, std::move(*list.value));
  return computed([&] {
    MembersReport report;
    {
      Progress progress(surroundings.progress);
      report = members_report(options, *course, request, progress);
    }
    Outcome outcome = deliver(written_members(report, options.output, surroundings), options.output, report.opening);
    outcome.err += advice;
    return outcome;
  });
}

Outcome run_bands(const BandsOptions& options, const Surroundings& surroundings) {
  if (const std::string why = svg_conflict(options.svg, options.output); !why.empty()) return refusal(at_fault, why);
  if (const auto refused = refuse_outputs({options.output.path, options.svg}, {options.course, options.members},
                                          options.output.replace)) {
    return refusal_of(*refused);
  }
  if (!options.members.empty()) return run_members(options, surroundings);
  std::string complaints;
  const std::optional<Course> course = read_course_or_scenario(options.course, complaints);
  const auto request = course ? request_of(options, *course, complaints) : std::nullopt;
  if (!request) return {at_fault, "", complaints};
  return computed([&] {
    BandsReport report;
    {
      const Progress progress(surroundings.progress);
      report.result = compute_bands(*course, *request);
    }
    if (options.hole > 0) report.hole = options.hole;
    report.opening = assumptions(options, *course);
    report.asking = {"--tee NAME --gender men", "--hole N", "--plan best", "--format json"};
    if (!options.svg.empty()) {
      if (const auto refused = write_file(options.svg, bands_svg(report), options.output.replace)) {
        return refusal_of(*refused);
      }
    }
    return deliver(written(report, options.output, surroundings), options.output, report.opening);
  });
}

void add_band_option(CLI::App& command, std::vector<Band>& bands) {
  const auto store = [&bands](const std::string& text) {
    const auto band = band_named(text);
    if (band) return add_once(bands, *band);
    std::vector<std::string> names;
    for (const Band known : all_bands) names.emplace_back(name(known));
    throw misfit("--band", text, expected_word(text, names));
  };
  add_text_option(command, "--band", store, "Only this band; several times for several; all unless given")
      ->type_name("NAME")
      ->trigger_on_parse()
      ->expected(1);
}

}  // namespace

void add_tees_option(CLI::App& command, std::vector<std::string>& tees) {
  add_repeated(command, "--tee", tees, "NAME", "Only these tees; several times for several; all unless given");
}

void add_whom_options(CLI::App& command, BandsOptions& options, const std::string& where_members) {
  add_words(command, "--members", options.members, "FILE",
            "A list of members (CSV: label, index, gender and, where known, driver_carry_yd) " + where_members);
  add_band_option(command, options.bands);
  add_choice<std::optional<std::vector<Gender>>>(
      command, "--gender", options.genders,
      {{"men", {{Gender::men}}}, {"women", {{Gender::women}}}, {"both", {{Gender::men, Gender::women}}}},
      "Whose bands; both unless given");
}

void add_changed_hazard_options(CLI::App& command, HazardTexts& hazards) {
  add_repeated(
      command, "--move-hazard", hazards.moves, "HOLE:NUMBER:from=N,to=N",
      "What it does to whom when the hazard (numbered from 1 as the file lists them) lies elsewhere; also "
      "near=, far=, side=, kind=; or along=N,right=N, by how much it moves as it is; in the course's units from "
      "its longest tees; several times for several");
  add_repeated(command, "--add-hazard", hazards.additions, "HOLE:kind=bunker,...",
               "The same for a new hazard: kind=, side=, from=, to= and, if wanted, near=, far=, as in a course file");
}

Outcome run_club_page(const BandsOptions& options, const Surroundings& surroundings) {
  if (const auto refused =
          refuse_outputs({options.output.path}, {options.course, options.members}, options.output.replace)) {
    return refusal_of(*refused);
  }
  std::string complaints;
  std::string advice;
  Reading<std::vector<Member>> list;
  if (!options.members.empty()) list = read_file(options.members, read_members);
  sort_findings(list.findings, complaints, advice);
  const std::optional<Course> course = read_course_or_scenario(options.course, complaints);
  const auto request = course ? request_of(options, *course, complaints) : std::nullopt;
  if (!complaints.empty() || !request) return {at_fault, "", complaints + advice};
  return computed([&] {
    ClubReport report;
    {
      Progress progress(surroundings.progress);
      report.bands.result = compute_bands(*course, *request);
      report.bands.opening = assumptions(options, *course);
      if (list.value) {
        report.members = members_report(options, *course, members_of(*request, std::move(*list.value)), progress);
      }
    }
    Outcome outcome = deliver(club_html(report), options.output, report.bands.opening);
    outcome.err += advice;
    return outcome;
  });
}

void add_bands(CLI::App& app, const Surroundings& surroundings, Action& action) {
  auto options = std::make_shared<BandsOptions>();
  CLI::App* command = app.add_subcommand(
      "bands",
      "What a change is worth to every band, or to a club's members, from every tee, and what a hazard does to whom");
  add_words(*command, "--course", options->course, "FILE", "Course file; unless given, the built-in course");
  add_tees_option(*command, options->tees);
  add_whom_options(*command, *options, "in place of the bands");
  add_carry_options(*command, options->change,
                    "with neither --driver nor --irons, +20 and 0, or nothing where hazards change");
  add_whole_number(*command, "--hole", options->hole, {1, 18},
                   "Also, band by band, who finds, reaches and clears which hazard of this hole; with --format csv "
                   "those alone");
  add_changed_hazard_options(*command, options->hazards);
  add_choice<PolicyChoice>(
      *command, "--plan", options->policy, {{"habit", PolicyChoice::habit}, {"best", PolicyChoice::best}},
      "habit: as most club golfers play, unless given; best: with the fewest expected strokes, which "
      "takes several times as long");
  add_threads_option(*command, options->threads);
  add_output_options(*command, options->output);
  add_svg_option(*command, options->svg,
                 "Also draw what is saved, or what changed hazards do, band by band and tee by tee");
  command->footer(
      "What would a bunker 230 yards out on the left of the fourth do, and to whom?\n"
      "  yardworth bands --add-hazard 4:kind=bunker,side=left,from=230,to=245,near=10,far=22\n"
      "Who gains what, and which tees suit whom?\n"
      "  yardworth bands --members members.csv --driver +20");
  command->callback([options, surroundings, &action] {
    action = [options, surroundings] { return run_bands(*options, surroundings); };
  });
}

}  // namespace yardworth::cli
