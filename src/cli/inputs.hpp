#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "cli/command.hpp"
#include "cli/options.hpp"
#include "core/file_output.hpp"
#include "yardworth/baseline.hpp"
#include "yardworth/course.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/player.hpp"
#include "yardworth/read.hpp"
#include "yardworth/report.hpp"

namespace yardworth::cli {

// The files that most commands are about; empty: not given.
struct InputOptions {
  std::string course;
  std::string player;
  std::string baseline;
  std::string tee;

  std::vector<std::string> files() const { return {course, player, baseline}; }
};

void add_input_options(CLI::App& app, InputOptions& options);
// Of those the files alone.
void add_input_file_options(CLI::App& app, InputOptions& options);
// What is said of the tees where only one may be named.
inline constexpr const char* help_of_tee =
    "Tees to play from; unless given, the first that the course marks as rated for the player's gender, or, if none is "
    "marked, the middle one of its list";

// What a reader makes of the file; where it cannot be read, why.
template <class T>
Reading<T> read_file(const std::string& path, Reading<T> (*reader)(std::string_view text, const std::string& file)) {
  const Reading<std::string> text = read_text(path);
  if (!text.ok()) return {std::nullopt, text.findings};
  return reader(*text.value, path);
}

// Faults become complaints, advice is told beside the answer; a line each.
void sort_findings(const std::vector<Diagnostic>& findings, std::string& complaints, std::string& advice);

struct Inputs {
  Course course;
  Player player;
  Baseline baseline;
  std::size_t tee = 0;               // index into course.tees
  std::vector<std::string> assumed;  // sentences: what was taken because it was not given
};

// Reads what is given and takes the built-in scenario for the rest. Nothing when there are faults; complaints then has
// one line for each fault of all files.
std::optional<Inputs> read_inputs(const InputOptions& options, std::string& complaints);

// What a report says first where lengths look like metres called yards, or the other way about.
std::optional<std::string> units_advice(const Course& course);
std::optional<std::string> units_advice(const Player& player);

// For commands that ask for no player: the course's file, or the built-in course where path is empty.
std::optional<Course> read_course_or_scenario(const std::string& path, std::string& complaints);

// The tee of that name; nothing, and a complaint, where there is none.
std::optional<std::size_t> tee_named(const std::string& tee, const Course& course, std::string& complaints);

// Why one of the files (those not asked for are empty) cannot be written, looked at before the work begins; read are
// the files that the command is about.
std::optional<OutputRefusal> refuse_outputs(const std::vector<std::string>& paths, const std::vector<std::string>& read,
                                            bool replace);
// Whether both are given and lead to one file.
bool same_file(const std::string& a, const std::string& b);
// Why the options of an answer with a picture beside it do not go together; empty where they do.
std::string svg_conflict(const std::string& svg, const OutputOptions& output);
// The finding with the option that helps.
Outcome refusal_of(OutputRefusal refusal);

// What compute comes to, or the refusal of what it throws: InvalidRequest is the command's fault and told by its
// options, CannotFinish what could not be done.
Outcome computed(const std::function<Outcome()>& compute);

// A report as text for where it goes: plain in a file, as wide as there is room.
// write(report, emphasis, columns) gives the text.
template <class Write, class Report>
std::string text_of(const Write& write, const Report& report, const OutputOptions& output,
                    const Surroundings& surroundings) {
  const bool to_file = !output.path.empty();
  return write(report, surroundings.colour && !to_file, surroundings.columns(to_file).value_or(report_width));
}

// Hands the text out, or to the file that was asked for. A table for a program has no room for the sentences of the
// opening: they go to standard error.
Outcome deliver(std::string text, const OutputOptions& options, const std::vector<std::string>& opening);

}  // namespace yardworth::cli
