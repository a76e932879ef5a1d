#include <fmt/format.h>

#include <memory>
#include <variant>

#include "cli/command.hpp"
#include "cli/inputs.hpp"
#include "cli/options.hpp"
#include "core/file_output.hpp"
#include "report/text.hpp"
#include "yardworth/read.hpp"
#include "yardworth/report.hpp"

namespace yardworth::cli {
namespace {

struct CheckOptions {
  std::vector<std::string> files;
  std::string svg;  // empty: nothing is drawn
  bool replace = false;
};

// Findings are what this command is for, so they go to standard output: each in one line, as programs that look for
// places in files expect, but on a terminal.
Outcome check_files(const CheckOptions& options, const Surroundings& surroundings, std::vector<Course>& courses) {
  Outcome outcome;
  const auto line = [columns = surroundings.columns()](const std::string& words) {
    return columns ? wrap(words, *columns, 2) : words + "\n";
  };
  for (const std::string& path : options.files) {
    const Reading<AnyFile> reading = read_file(path, read_any);
    for (const Diagnostic& finding : reading.findings) outcome.out += line(to_line(finding));
    if (reading.ok()) outcome.out += line(fmt::format("{}: {}", escape_control(path), summarise(*reading.value)));
    if (!reading.ok()) outcome.status = at_fault;
    if (!reading.ok()) continue;
    if (const auto* course = std::get_if<Course>(&*reading.value)) courses.push_back(*course);
  }
  return outcome;
}

// Nothing is drawn of files that have faults.
Outcome run_check(const CheckOptions& options, const Surroundings& surroundings) {
  if (options.replace && options.svg.empty()) {
    return refusal(at_fault, "--force needs --svg, the file that it may replace");
  }
  if (const auto refused = refuse_outputs({options.svg}, options.files, options.replace)) return refusal_of(*refused);
  std::vector<Course> courses;
  Outcome outcome = check_files(options, surroundings, courses);
  if (options.svg.empty() || outcome.status != done) return outcome;
  const auto refuse = [&](const Outcome& refused) { return Outcome{refused.status, outcome.out, refused.err}; };
  if (courses.size() != 1) {
    return refuse(refusal(at_fault, fmt::format("--svg draws one course; among the files are {}", courses.size())));
  }
  if (const auto refused = write_file(options.svg, course_svg(courses.front()), options.replace)) {
    return refuse(refusal_of(*refused));
  }
  return outcome;
}

}  // namespace

void add_check(CLI::App& app, const Surroundings& surroundings, Action& action) {
  auto options = std::make_shared<CheckOptions>();
  CLI::App* command = app.add_subcommand(
      "check", "Every fault and every advice about files, each with its place, or what was understood");
  command->add_option("FILE", options->files, "Course, player or baseline files")->required();
  add_words(*command, "--svg", options->svg, "FILE",
            "Also draw what was understood of every hole of a course, one below the other, where no file has a fault");
  command->add_flag("--force", options->replace, "Replace that file if it exists");
  command->callback([options, surroundings, &action] {
    action = [options, surroundings] { return run_check(*options, surroundings); };
  });
}

}  // namespace yardworth::cli
