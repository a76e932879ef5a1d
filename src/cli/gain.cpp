#include "cli/gain.hpp"

#include <fmt/format.h>

#include <cmath>
#include <memory>

#include "core/numerics.hpp"
#include "gain/saved_draws.hpp"
#include "report/opening.hpp"
#include "yardworth/report.hpp"

namespace yardworth::cli {

std::vector<std::string> GainOptions::files() const {
  std::vector<std::string> read = inputs.files();
  for (const std::string& file : change.files()) read.push_back(file);
  return read;
}

Change change_of(const GainOptions& options, Units units) {
  return options.change.given() ? options.change.in_yards(units) : default_gain_change().in_yards(units);
}

namespace {

// What is wrong with the options together, if anything; each by itself has been looked at.
std::string conflict(const GainOptions& options) {
  if (std::string why = conflict(options.change); !why.empty()) return why;
  if (std::string why = svg_conflict(options.svg, options.output); !why.empty()) return why;
  if (options.draws > 0 && options.change.logs.empty())
    return "--draws needs --from-log; of a change that was not measured there is no doubt to draw from";
  if (options.draws == 1) return "--draws needs 2 at least, or 0 for none";
  if (options.mark > 0 && options.method == Method::table)
    return "--mark needs --method play; the table method does not know how scores vary";
  if (options.control && options.method == Method::table)
    return "--control needs --method play; the table method knows only the tee shot";
  if (options.step && !options.to) return "--step needs --to, the added carry at which the curve ends";
  if (!options.to) return "";
  const double steps = *options.to / options.step.value_or(default_curve_step);
  if (steps > limits::most_curve_steps + numerics::curve_rounding)
    return fmt::format("--to is more than {} times --step; give a larger --step", limits::most_curve_steps);
  if (std::round(steps) < 1.0 || std::abs(steps - std::round(steps)) > numerics::curve_rounding * steps) {
    return fmt::format("--to has to be a multiple of --step, which is {}", options.step.value_or(default_curve_step));
  }
  const SaidChange& said = options.change.said;
  if (!is_carry_alone(said.in_yards(Units::yards)) || !options.change.after.empty())
    return "--to draws a curve of added carry alone; leave out what else changes, or --to";
  if (!options.change.logs.empty()) return "";
  const bool no_driver = said.driver ? *said.driver == 0.0 : said.irons && options.change.from.empty();
  if (no_driver)
    return "--to needs a --driver other than 0, since the irons keep their proportion to it along the curve";
  return "";
}

void say_default_change(const GainOptions& options, Inputs& inputs) {
  if (options.change.given()) return;
  inputs.assumed.push_back(report::default_change_words("neither --driver nor --irons", inputs.course.units));
}

// Reads what the options name and works out the change they ask for; nothing, with complaints, where something is at
// fault. advice: what is worth saying of the files all the same.
std::optional<Inputs> read_for_gain(GainOptions& options, std::string& complaints, std::string& advice) {
  std::optional<Inputs> inputs = read_inputs(options.inputs, complaints);
  if (!inputs) return std::nullopt;
  if (!fly_strikes(options.change, inputs->player, inputs->course.units, inputs->assumed, complaints)) {
    return std::nullopt;
  }
  if (!read_change_files(options.change, inputs->player, inputs->course.units, inputs->assumed, complaints, advice)) {
    return std::nullopt;
  }
  say_default_change(options, *inputs);
  return inputs;
}

}  // namespace

Outcome run_on_inputs(GainOptions options, const Surroundings& surroundings, OutcomeOfGain outcome_of) {
  if (const std::string why = conflict(options); !why.empty()) return refusal(at_fault, why);
  if (const auto refused =
          refuse_outputs({options.output.path, options.svg}, options.files(), options.output.replace)) {
    return refusal_of(*refused);
  }
  std::string complaints;
  std::string advice;
  const std::optional<Inputs> inputs = read_for_gain(options, complaints, advice);
  if (!inputs) return {at_fault, "", complaints};
  return computed([&] {
    Outcome outcome = outcome_of(options, *inputs, surroundings);
    outcome.err = advice + outcome.err;
    return outcome;
  });
}

GainRequest gain_request(const GainOptions& options, const Inputs& inputs) {
  const Change change = change_of(options, inputs.course.units);
  GainRequest request{inputs.tee, change, options.method, options.policy, options.threads};
  if (options.mark > 0) request.mark = options.mark;
  return request;
}

GainReport gain_report(const GainOptions& options, const Inputs& inputs, Progress& progress) {
  const Units units = inputs.course.units;
  const GainRequest request = gain_request(options, inputs);
  GainReport report;
  report.result = compute_gain(inputs.course, inputs.player, inputs.baseline, request);
  if (options.to) {
    GainRequest along = request;
    along.change = change_along_curve(request.change, options.change.measured.has_value());
    report.curve = compute_curve(inputs.course, inputs.player, inputs.baseline, along, to_yards(*options.to, units),
                                 to_yards(options.step.value_or(default_curve_step), units));
  }
  if (const int draws = options.draws_wanted(); draws > 0) {
    const auto changes =
        drawn_changes(*options.change.measured, inputs.player, draws, static_cast<std::uint64_t>(options.seed));
    const auto saved = compute_saved_draws(
        inputs.course, inputs.player, inputs.baseline, request, changes,
        [&](int finished, int of) { progress.tell(static_cast<std::size_t>(finished), static_cast<std::size_t>(of)); });
    report.result.interval = interval_of(saved, bag_level, policy_of_draws(request));
  }
  report.control_asked = options.control;
  if (options.control) {
    report.control = compute_control_to_spare(inputs.course, inputs.player, inputs.baseline, request);
  }
  report.opening = inputs.assumed;
  return report;
}

namespace {

std::string written(const GainReport& report, const GainOptions& options, const Surroundings& surroundings) {
  const OutputOptions& output = options.output;
  switch (output.format) {
    case Format::json:
      return gain_json(report);
    case Format::csv:
      return report.curve.empty() ? gain_csv(report) : gain_curve_csv(report);
    case Format::text:
      break;
  }
  const auto write = [&options](const GainReport& gain, bool emphasis, std::size_t columns) {
    return gain_text(gain, emphasis, columns, options.bars);
  };
  return text_of(write, report, output, surroundings);
}

Outcome gain_outcome(const GainOptions& options, const Inputs& inputs, const Surroundings& surroundings) {
  GainReport report;
  {
    Progress progress(surroundings.progress);
    report = gain_report(options, inputs, progress);
  }
  if (!options.svg.empty()) {
    if (const auto refused = write_file(options.svg, gain_svg(report), options.output.replace)) {
      return refusal_of(*refused);
    }
  }
  return deliver(written(report, options, surroundings), options.output, report.opening);
}

// --to says the end of a curve by a number, and what changes of a strike by KEY=VALUE.
void store_to(const std::vector<std::string>& all, GainOptions& options) {
  for (const std::string& said : all) {
    if (said.find('=') != std::string::npos) {
      options.change.to.push_back(said);
    } else if (options.to) {
      throw misfit("--to", said, "one number, where the curve ends");
    } else {
      options.to = number_within("--to", said, {limits::curve_step.low, limits::carry_change.high}, "a number");
    }
  }
}

void add_curve_options(CLI::App& command, GainOptions& options) {
  const auto store = [&options](const std::vector<std::string>& all) { store_to(all, options); };
  command
      .add_option_function<std::vector<std::string>>(
          "--to", store,
          "N: also the curve of strokes saved against added driver carry from 0 to N, the irons in the same "
          "proportion, which with --from-log is that of the usual change; with --format csv the curve alone. "
          "KEY=VALUE: what is different of --from-delivery afterwards")
      ->type_name("N|KEY=VALUE ...");
  add_number(command, "--step", options.step, limits::curve_step,
             "Step of the curve; 5 unless given; --to is a multiple of it, at most 200 times as large");
}

void add_way_options(CLI::App& command, GainOptions& options) {
  add_choice<Method>(command, "--method", options.method, {{"play", Method::play}, {"table", Method::table}},
                     "play: the player's own shots to the green, unless given; table: one tee shot, then the baseline");
  add_choice<PolicyChoice>(
      command, "--plan", options.policy,
      {{"both", PolicyChoice::both}, {"habit", PolicyChoice::habit}, {"best", PolicyChoice::best}},
      "habit: as most club golfers play; best: with the fewest expected strokes; both, unless given");
  add_whole_number(command, "--mark", options.mark, limits::mark,
                   "A score to break: how often a round takes fewer strokes; unless given, the ten nearest to the mean "
                   "score before (of 9 holes, the five)");
  command.add_flag("--control", options.control,
                   "Also how much wilder the longer clubs may become before nothing is saved; takes longer");
  add_whole_number(command, "--draws", options.draws, {0.0, limits::most_draws},
                   "With --from-log: solve again for so many draws of what was measured, under the habit plan or, with "
                   "--plan best, the best; 200 unless given");
  add_whole_number(command, "--seed", options.seed, {0.0, limits::largest_seed}, "Of the draws; 1 unless given");
  add_threads_option(command, options.threads);
}

}  // namespace

void add_gain_options(CLI::App& command, GainOptions& options) {
  add_input_options(command, options.inputs);
  add_carry_options(command, options.change.said, "with nothing said to change, +20 and +6");
  add_wider_change_options(command, options.change.said);
  add_strike_before_option(command, options.change);
  add_change_file_options(command, options.change);
  add_curve_options(command, options);
  add_way_options(command, options);
}

void add_gain(CLI::App& app, const Surroundings& surroundings, Action& action) {
  auto options = std::make_shared<GainOptions>();
  CLI::App* command = app.add_subcommand("gain", "What added carry is worth in strokes, hole by hole");
  add_gain_options(*command, *options);
  add_output_options(*command, options->output);
  add_bars_option(*command, options->bars);
  add_svg_option(*command, options->svg,
                 "Also draw where the strokes come from, hole by hole, second shots and scores; with --to the curve");
  command->callback([options, surroundings, &action] {
    action = [options, surroundings] { return run_on_inputs(*options, surroundings, gain_outcome); };
  });
}

}  // namespace yardworth::cli
