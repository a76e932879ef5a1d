#include "yardworth/weigh.hpp"

#include <filesystem>
#include <memory>

#include "cli/command.hpp"
#include "cli/inputs.hpp"
#include "cli/options.hpp"
#include "cli/progress.hpp"
#include "yardworth/read.hpp"
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
  int draws = default_draws;
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

// A file that an options file names: from where that lies.
std::string beside(const std::string& options_file, const std::string& name) {
  return (std::filesystem::path(options_file).parent_path() / name).string();
}

// The options with all changes worked out; nothing where anything is at fault.
std::optional<OptionsFile> read_weighed(const WeighOptions& options, const std::optional<Inputs>& inputs,
                                        std::string& complaints, std::string& advice) {
  Reading<OptionsFile> file = read_file(options.file, read_options);
  sort_findings(file.findings, complaints, advice);
  if (!inputs || !file.ok()) return std::nullopt;
  const TextOfFile text_of = [&](const std::string& name, std::size_t most_bytes) {
    return read_text(beside(options.file, name), most_bytes);
  };
  const std::vector<Diagnostic> findings = work_out_changes(*file.value, inputs->player, text_of, options.draws);
  sort_findings(findings, complaints, advice);
  return has_fault(findings) ? std::nullopt : std::move(file.value);
}

// All that the options file reads.
std::vector<std::string> files_read(const std::string& path, const OptionsFile& file) {
  std::vector<std::string> all;
  for (const Option& option : file.options) {
    if (!option.source) continue;
    if (!option.source->after.empty()) all.push_back(beside(path, option.source->after));
    for (const std::string& log : option.source->logs) all.push_back(beside(path, log));
  }
  return all;
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
  std::optional<OptionsFile> file = read_weighed(options, inputs, complaints, advice);
  if (!inputs || !file) return {at_fault, "", complaints};
  if (const auto refused =
          refuse_outputs({options.output.path}, files_read(options.file, *file), options.output.replace)) {
    return refusal_of(*refused);
  }
  return computed([&] {
    WeighReport report;
    {
      const Progress progress(surroundings.progress);
      const WeighRequest request{inputs->tee,          std::move(file->options), options.policy,
                                 options.stroke_worth, options.sensitivity,      options.threads};
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
  add_whole_number(*command, "--draws", options->draws, {2.0, limits::most_draws},
                   "Solve again for so many draws of an option that was measured in logs; 200 unless given");
  add_threads_option(*command, options->threads);
  add_output_options(*command, options->output);
  command->callback([options, surroundings, &action] {
    action = [options, surroundings] { return run_weigh(*options, surroundings); };
  });
}

}  // namespace yardworth::cli
