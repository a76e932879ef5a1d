#include <fmt/format.h>

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <system_error>

#include "cli/command.hpp"
#include "cli/inputs.hpp"
#include "cli/options.hpp"
#include "embed/page_case.hpp"
#include "yardworth/read.hpp"
#include "yardworth/shot_log.hpp"

namespace yardworth::cli {
namespace {

struct PageOptions {
  InputOptions inputs;  // all but the tees, which are chosen in the page
  std::vector<std::string> logs;
  std::string page;  // empty: the installed one
  OutputOptions output;
};

// The files that the page is to hold, and what is wrong with them.
struct CaseFiles {
  std::vector<embed::CaseText> texts;
  std::string complaints, advice;
};

// The text of a file that a reader takes, under the file's name alone: where it was is nobody else's business.
template <class T>
void take(CaseFiles& files, const std::string& member, const std::string& path, std::size_t most_bytes,
          const std::function<Reading<T>(std::string_view, const std::string&)>& read) {
  if (path.empty()) return;
  Reading<std::string> text = read_text(path, most_bytes);
  sort_findings(text.findings, files.complaints, files.advice);
  if (!text.ok()) return;
  sort_findings(read(*text.value, path).findings, files.complaints, files.advice);
  files.texts.push_back({member, std::filesystem::path(path).filename().string(), std::move(*text.value)});
}

CaseFiles read_case(const PageOptions& options) {
  CaseFiles files;
  take<Course>(files, "course", options.inputs.course, largest_file_bytes, read_course);
  take<Player>(files, "player", options.inputs.player, largest_file_bytes, read_player);
  take<BaselineTable>(files, "baseline", options.inputs.baseline, largest_file_bytes, read_baseline);
  // What a request takes is no larger than a file.
  const auto read_whole_log = [](std::string_view text, const std::string& file) { return read_shot_log(text, file); };
  for (std::size_t i = 0; i < options.logs.size(); ++i) {
    take<ShotLog>(files, i == 0 ? "log" : "after", options.logs[i], largest_file_bytes, read_whole_log);
  }
  return files;
}

constexpr const char* how_to_get_one = "README.md, \"As one page\", says how to make one; --page says where it is";

Outcome run_page(const PageOptions& options, const Surroundings& surroundings) {
  const std::string& path = options.page.empty() ? surroundings.installed_page : options.page;
  std::vector<std::string> read = options.inputs.files();
  read.insert(read.end(), options.logs.begin(), options.logs.end());
  read.push_back(path);
  if (const auto refused = refuse_outputs({options.output.path}, read, options.output.replace)) {
    return refusal_of(*refused);
  }
  CaseFiles files = read_case(options);
  std::error_code ignored;
  if (options.page.empty() && (path.empty() || !std::filesystem::exists(path, ignored))) {
    files.complaints += fmt::format("yardworth: no page to copy is installed; {}\n", how_to_get_one);
    return {at_fault, "", files.complaints};
  }
  const Reading<std::string> page = read_text(path);
  sort_findings(page.findings, files.complaints, files.advice);
  std::optional<std::string> copy;
  if (page.ok() && !(copy = embed::page_with_case(*page.value, files.texts))) {
    files.complaints += escape_control(
        fmt::format("{}: fault: found no place for a case, expected yardworth.html; {}\n", path, how_to_get_one));
  }
  if (!files.complaints.empty()) return {at_fault, "", files.complaints};
  Outcome outcome = deliver(std::move(*copy), options.output, {});
  outcome.err = files.advice + outcome.err;
  return outcome;
}

}  // namespace

void add_page(CLI::App& app, const Surroundings& surroundings, Action& action) {
  auto options = std::make_shared<PageOptions>();
  CLI::App* command = app.add_subcommand("page", "A copy of the page yardworth.html with a course and a golfer inside");
  add_input_file_options(*command, options->inputs);
  command
      ->add_option_function<std::vector<std::string>>(
          "--log", [options](const std::vector<std::string>& logs) { options->logs = logs; },
          "A log of measured shots, or two, before and after")
      ->type_name("BEFORE.csv AFTER.csv")
      ->expected(1, 2);
  add_words(*command, "--page", options->page, "FILE", "The page to copy; unless given, the one that is installed");
  add_file_options(*command, options->output, "Write the copy to this file, whole or not at all");
  command->callback([options, surroundings, &action] {
    action = [options, surroundings] { return run_page(*options, surroundings); };
  });
}

}  // namespace yardworth::cli
