#include <memory>

#include "cli/gain.hpp"
#include "cli/progress.hpp"
#include "yardworth/flight.hpp"
#include "yardworth/strategy.hpp"

namespace yardworth::cli {
namespace {

StrategyResult drawn_holes(const GainOptions& options, const Inputs& inputs) {
  StrategyRequest request;
  request.tee = inputs.tee;
  request.change = change_of(options, inputs.course.units);
  request.threads = options.threads;
  request.drawing = true;
  return compute_strategy(inputs.course, inputs.player, inputs.baseline, request);
}

// What the strike before the change gives away; nothing where no strike was said.
std::optional<DeliveryResult> losses_of(const AskedChange& change) {
  if (!change.strikes) return std::nullopt;
  DeliveryRequest request;
  request.club = *typical_club("driver");
  request.delivery = change.strikes->before.delivery;
  request.after = change.strikes->after.delivery;
  return compute_delivery(request);
}

Outcome report_outcome(const GainOptions& options, const Inputs& inputs, const Surroundings& surroundings) {
  LessonReport report;
  {
    Progress progress(surroundings.progress);
    report.gain = gain_report(options, inputs, progress);
    report.strategy = drawn_holes(options, inputs);
    report.delivery = losses_of(options.change);
    report.seed = options.seed;
  }
  return deliver(lesson_html(report), options.output, report.gain.opening);
}

}  // namespace

void add_report(CLI::App& app, const Surroundings& surroundings, Action& action) {
  auto options = std::make_shared<GainOptions>();
  CLI::App* command =
      app.add_subcommand("report", "A lesson sheet of a gain: one page to read on a screen or to print");
  add_gain_options(*command, *options);
  add_file_options(*command, options->output, "Write the page, HTML, to this file, whole or not at all");
  command->callback([options, surroundings, &action] {
    action = [options, surroundings] { return run_on_inputs(*options, surroundings, report_outcome); };
  });
}

}  // namespace yardworth::cli
