#include "yardworth/strategy.hpp"

#include <fmt/format.h>

#include <memory>

#include "cli/change.hpp"
#include "cli/command.hpp"
#include "cli/inputs.hpp"
#include "cli/options.hpp"
#include "cli/progress.hpp"
#include "core/file_output.hpp"
#include "yardworth/report.hpp"

namespace yardworth::cli {
namespace {

struct StrategyOptions {
  InputOptions inputs;
  OutputOptions output;
  AskedChange change;
  int hole = 0;  // 0: all
  std::string dot;
  std::string svg;
  bool prove = false;
  int threads = 0;
};

// What is wrong with the options together, if anything; each by itself has been looked at.
std::string conflict(const StrategyOptions& options) {
  if (std::string why = conflict(options.change); !why.empty()) return why;
  if (options.output.replace && options.output.path.empty() && options.dot.empty() && options.svg.empty()) {
    return "--force needs --output, --dot or --svg, the file that it may replace";
  }
  if (same_file(options.svg, options.output.path)) return "--svg and --output are the same file";
  if (same_file(options.svg, options.dot)) return "--svg and --dot are the same file";
  if (options.dot.empty()) return "";
  if (options.hole == 0) return "--dot needs --hole, the hole whose graph is drawn";
  if (same_file(options.dot, options.output.path)) return "--dot and --output are the same file";
  return "";
}

StrategyRequest request_of(const StrategyOptions& options, const Inputs& inputs) {
  StrategyRequest request;
  request.tee = inputs.tee;
  if (options.change.given()) request.change = options.change.in_yards(inputs.course.units);
  if (options.hole > 0) request.holes = {options.hole};
  request.threads = options.threads;
  request.prove = options.prove;
  request.graph = !options.dot.empty();
  request.drawing = !options.svg.empty();
  return request;
}

std::string written(const StrategyReport& report, const OutputOptions& output, const Surroundings& surroundings) {
  switch (output.format) {
    case Format::json:
      return strategy_json(report);
    case Format::csv:
      return strategy_csv(report);
    case Format::text:
      break;
  }
  return text_of(strategy_text, report, output, surroundings);
}

Outcome give(const StrategyOptions& options, const StrategyReport& report, const Surroundings& surroundings) {
  if (!options.dot.empty()) {
    const std::string& graph = report.result.holes.front().graph;
    if (const auto refused = write_file(options.dot, graph, options.output.replace)) return refusal_of(*refused);
  }
  if (!options.svg.empty()) {
    if (const auto refused = write_file(options.svg, strategy_svg(report.result), options.output.replace)) {
      return refusal_of(*refused);
    }
  }
  return deliver(written(report, options.output, surroundings), options.output, report.opening);
}

Outcome run_strategy(StrategyOptions options, const Surroundings& surroundings) {
  if (const std::string why = conflict(options); !why.empty()) return refusal(at_fault, why);
  const std::vector<std::string> outputs = {options.output.path, options.dot, options.svg};
  std::vector<std::string> read = options.inputs.files();
  for (const std::string& file : options.change.files()) read.push_back(file);
  if (const auto refused = refuse_outputs(outputs, read, options.output.replace)) {
    return refusal_of(*refused);
  }
  std::string complaints;
  std::string advice;
  std::optional<Inputs> inputs = read_inputs(options.inputs, complaints);
  if (!inputs || !fly_strikes(options.change, inputs->player, inputs->course.units, inputs->assumed, complaints)) {
    return {at_fault, "", complaints};
  }
  if (!read_change_files(options.change, inputs->player, inputs->course.units, inputs->assumed, complaints, advice)) {
    return {at_fault, "", complaints};
  }
  return computed([&] {
    StrategyReport report;
    {
      const Progress progress(surroundings.progress);
      report.result = compute_strategy(inputs->course, inputs->player, inputs->baseline, request_of(options, *inputs));
    }
    report.opening = inputs->assumed;
    Outcome outcome = give(options, report, surroundings);
    outcome.err = advice + outcome.err;
    return outcome;
  });
}

}  // namespace

void add_strategy(CLI::App& app, const Surroundings& surroundings, Action& action) {
  auto options = std::make_shared<StrategyOptions>();
  CLI::App* command = app.add_subcommand("strategy", "How each hole is best played, before and after added carry");
  add_input_options(*command, options->inputs);
  add_whole_number(*command, "--hole", options->hole, {1, 18}, "Only this hole; all unless given");
  add_carry_options(*command, options->change.said, "0 unless given");
  add_wider_change_options(*command, options->change.said);
  add_strike_before_option(*command, options->change);
  add_strike_after_option(*command, options->change);
  add_change_file_options(*command, options->change);
  add_output_options(*command, options->output);
  // The flag serves all files.
  command->get_option("--force")->remove_needs(command->get_option("--output"));
  add_words(*command, "--dot", options->dot, "FILE",
            "Also write the graph of the hole's states under its plan for Graphviz; needs --hole");
  add_words(
      *command, "--svg", options->svg, "FILE",
      "Also draw the hole, or all of them one below the other: where the tee shots finish, the aims, the hazards");
  command->add_flag("--prove", options->prove,
                    "Search completely, and say by how much anything played from any place beats the plan");
  add_threads_option(*command, options->threads);
  command->callback([options, surroundings, &action] {
    action = [options, surroundings] { return run_strategy(*options, surroundings); };
  });
}

}  // namespace yardworth::cli
