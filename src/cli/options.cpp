#include "cli/options.hpp"

#include <cmath>
#include <cstdint>

#include "core/number_text.hpp"
#include "core/spelling.hpp"
#include "validate/tell.hpp"

namespace yardworth::cli {
double number_within(const std::string& option, const std::string& text, Limits limits, std::string_view kind) {
  const ParsedNumber number = parse_number(text);
  if (number.fault != NumberFault::none || number.value < limits.low || number.value > limits.high) {
    const auto point = with_decimal_point(text);
    throw misfit(option, text,
                 point ? fmt::format("{}, with a point in the place of the comma", *point)
                       : fmt::format("{} from {} to {}", kind, limits.low, limits.high));
  }
  return number.value;
}

CLI::ValidationError misfit(const std::string& option, const std::string& found, const std::string& expected) {
  return CLI::ValidationError(option, fmt::format("found \"{}\", expected {}", found, expected));
}

std::string expected_word(const std::string& word, const std::vector<std::string>& words) {
  std::string expected = words.front();
  for (std::size_t i = 1; i < words.size(); ++i) expected += (i + 1 == words.size() ? " or " : ", ") + words[i];
  if (const auto meant = nearest_word(word, words)) expected += fmt::format("; the nearest is {}", *meant);
  return expected;
}

CLI::Option* add_text_option(CLI::App& app, const std::string& name,
                             const std::function<void(const std::string&)>& store, const std::string& help) {
  return app.add_option_function<std::string>(name, store, help);
}

CLI::Option* add_number(CLI::App& app, const std::string& name, std::optional<double>& target, Limits limits,
                        const std::string& help) {
  const auto store = [name, &target, limits](const std::string& text) {
    target = number_within(name, text, limits, "a number");
  };
  return add_text_option(app, name, store, help)->type_name("N");
}

CLI::Option* add_percent(CLI::App& app, const std::string& name, std::optional<double>& target, Limits limits,
                         const std::string& help) {
  const auto store = [name, &target, limits](const std::string& text) {
    const ParsedNumber number = parse_percent(text);
    if (number.fault != NumberFault::none || number.value < limits.low || number.value > limits.high) {
      throw misfit(name, text, percent_words(limits));
    }
    target = number.value;
  };
  return add_text_option(app, name, store, help)->type_name("N%");
}

CLI::Option* add_whole_number(CLI::App& app, const std::string& name, int& target, Limits limits,
                              const std::string& help) {
  const auto store = [name, &target, limits](const std::string& text) {
    const double number = number_within(name, text, limits, "a whole number");
    if (std::trunc(number) != number) throw misfit(name, text, "a whole number");
    target = static_cast<int>(number);
  };
  return add_text_option(app, name, store, help)->type_name("N");
}

CLI::Option* add_words(CLI::App& app, const std::string& name, std::string& target, const std::string& kind,
                       const std::string& help) {
  const auto store = [name, &target](const std::string& text) {
    if (text.empty()) throw misfit(name, text, "something between the quotes");
    target = text;
  };
  return add_text_option(app, name, store, help)->type_name(kind);
}

void add_repeated(CLI::App& app, const std::string& name, std::vector<std::string>& target, const std::string& kind,
                  const std::string& help) {
  const auto store = [name, &target](const std::string& text) {
    if (text.empty()) throw misfit(name, text, "something between the quotes");
    target.push_back(text);
  };
  add_text_option(app, name, store, help)->type_name(kind)->trigger_on_parse()->expected(1);
}

void add_output_options(CLI::App& app, OutputOptions& options) {
  add_choice<Format>(app, "--format", options.format,
                     {{"text", Format::text}, {"json", Format::json}, {"csv", Format::csv}},
                     "How the answer is written; text unless given");
  add_file_options(app, options, "Write the answer to this file, whole or not at all");
}

void add_file_options(CLI::App& app, OutputOptions& options, const std::string& help) {
  auto* output = add_words(app, "--output", options.path, "FILE", help);
  app.add_flag("--force", options.replace, "Let --output replace a file that exists")->needs(output);
}

void add_svg_option(CLI::App& app, std::string& path, const std::string& help) {
  app.get_option("--force")->remove_needs(app.get_option("--output"));
  add_words(app, "--svg", path, "FILE", help);
}

void add_bars_option(CLI::App& app, BarCharacters& bars) {
  const auto plain = [&bars](std::int64_t /*times*/) { bars = BarCharacters::ascii; };
  app.add_flag_function("--ascii", plain, "Bars of plain characters, where a terminal or a reader knows no others");
}

void add_threads_option(CLI::App& app, int& threads) {
  add_whole_number(app, "--threads", threads, {1, limits::most_threads},
                   "Threads to compute with; as many as there are cores unless given; the answer is the same");
}

}  // namespace yardworth::cli
