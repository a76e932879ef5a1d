#pragma once

#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "yardworth/limits.hpp"
#include "yardworth/report.hpp"

namespace yardworth::cli {

// Options of the kinds that commands share. What is given to one of them is stored in target, which has to live as
// long as app; what does not fit is refused with what was found and what was expected.

// An option with a value that store takes or refuses (see misfit).
CLI::Option* add_text_option(CLI::App& app, const std::string& name,
                             const std::function<void(const std::string&)>& store, const std::string& help);

CLI::Option* add_number(CLI::App& app, const std::string& name, std::optional<double>& target, Limits limits,
                        const std::string& help);
// A number with a percent sign.
CLI::Option* add_percent(CLI::App& app, const std::string& name, std::optional<double>& target, Limits limits,
                         const std::string& help);
CLI::Option* add_whole_number(CLI::App& app, const std::string& name, int& target, Limits limits,
                              const std::string& help);
// A file's or a tee's name, which cannot be empty; kind stands for it in the help.
CLI::Option* add_words(CLI::App& app, const std::string& name, std::string& target, const std::string& kind,
                       const std::string& help);

// The same several times, each with one value.
void add_repeated(CLI::App& app, const std::string& name, std::vector<std::string>& target, const std::string& kind,
                  const std::string& help);

// The number that a text says, refused where it is none within the limits; kind: "a number".
double number_within(const std::string& option, const std::string& text, Limits limits, std::string_view kind);

// The refusal of a value.
CLI::ValidationError misfit(const std::string& option, const std::string& found, const std::string& expected);
// "play or table", with the nearest one where the word is a misspelling.
std::string expected_word(const std::string& word, const std::vector<std::string>& words);

template <class T>
CLI::Option* add_choice(CLI::App& app, const std::string& name, T& target,
                        const std::vector<std::pair<std::string, T>>& choices, const std::string& help) {
  std::vector<std::string> words;
  words.reserve(choices.size());
  for (const auto& choice : choices) words.push_back(choice.first);
  const auto store = [name, &target, choices, words](const std::string& word) {
    for (const auto& [known, value] : choices) {
      if (known == word) {
        target = value;
        return;
      }
    }
    throw misfit(name, word, expected_word(word, words));
  };
  return add_text_option(app, name, store, help)->type_name(fmt::format("{}", fmt::join(words, "|")));
}

// Where a report goes and how it is written.
enum class Format { text, json, csv };

struct OutputOptions {
  Format format = Format::text;
  std::string path;  // empty: standard output
  bool replace = false;
};

void add_output_options(CLI::App& app, OutputOptions& options);
// The same of an answer that is written in one way alone.
void add_file_options(CLI::App& app, OutputOptions& options, const std::string& help);
// A picture in a file beside the answer; --force serves both. After the options of the output.
void add_svg_option(CLI::App& app, std::string& path, const std::string& help);
// Of an answer whose text has bars.
void add_bars_option(CLI::App& app, BarCharacters& bars);
void add_threads_option(CLI::App& app, int& threads);

}  // namespace yardworth::cli
