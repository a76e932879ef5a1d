#include "yardworth/weigh.hpp"

#include <memory>

#include "cli/command.hpp"
#include "cli/inputs.hpp"
#include "cli/options.hpp"
#include "cli/progress.hpp"
#include "yardworth/report.hpp"

namespace yardworth::cli {
namespace {

struct WeighOptions {
  InputOptions inputs;
  OutputOptions output;
  std::string file;
  PolicyChoice policy = PolicyChoice::habit;
  std::optional<double> stroke_worth;
  bool sensitivity = false;
  int threads = 0;
};

std::string weigh_written(const WeighReport& report, const OutputOptions& output, const Surroundings& surroundings) {
  switch (output.format) {
    case Format::json:
      return weigh_json(report);
    case Format::csv:
      return weigh_csv(report);
    case Format::text:
      break;
  }
  return text_of(weigh_text, report, output, surroundings);
}

Outcome run_weigh(const WeighOptions& options, const Surroundings& surroundings) {
  std::vector<std::string> files = options.inputs.files();
  files.push_back(options.file);
  if (const auto refused = refuse_outputs({options.output.path}, files, options.output.replace)) {
    return refusal_of(*refused);
  }
  std::string complaints;
  const std::optional<Inputs> inputs = read_inputs(options.inputs, complaints);
  std::string advice;
  Reading<OptionsFile> file = read_file(options.file, read_options);
  sort_findings(file.findings, complaints, advice);
  if (!inputs || !file.value) return {at_fault, "", complaints};
  return computed([&] {
    WeighReport report;
    {
      const Progress progress(surroundings.progress);
      const WeighRequest request{inputs->tee,         std::move(file.value->options),
                                 options.policy,      options.stroke_worth,
                                 options.sensitivity, options.threads};
      report.result = compute_weigh(inputs->course, inputs->player, inputs->baseline, request);
    }
    report.opening = inputs->assumed;
    Outcome outcome = deliver(weigh_written(report, options.output, surroundings), options.output, report.opening);
    outcome.err = advice + outcome.err;
    return outcome;
  });
}

}  // namespace

void add_weigh(CLI::App& app, const Surroundings& surroundings, Action& action) {
  auto options = std::make_shared<WeighOptions>();
  CLI::App* command = app.add_subcommand(
      "weigh", "Ways to spend money and hours side by side: strokes saved, how surely, and what a stroke costs");
  command->add_option("FILE", options->file, "Options file: docs/formats.md has one to copy")->required();
  add_input_options(*command, options->inputs);
  add_choice<PolicyChoice>(*command, "--plan", options->policy,
                           {{"habit", PolicyChoice::habit}, {"best", PolicyChoice::best}, {"both", PolicyChoice::both}},
                           "habit: as most club golfers play, unless given; best, or both: with the fewest expected "
                           "strokes, as gain says it, "
                           "which takes longer");
  add_number(*command, "--stroke-worth", options->stroke_worth, limits::stroke_worth,
             "What a stroke saved is worth to the player, in the money of the file: after how many rounds each pays");
  command->add_flag("--sensitivity", options->sensitivity,
                    "Also what a little of everything is worth to this player on this course, the largest first");
  add_threads_option(*command, options->threads);
  add_output_options(*command, options->output);
  command->callback([options, surroundings, &action] {
    action = [options, surroundings] { return run_weigh(*options, surroundings); };
  });
}

}  // namespace yardworth::cli
