#include "cli/help.hpp"

#include <algorithm>
#include <sstream>
#include <string>

#include "report/text.hpp"

namespace yardworth::cli {
namespace {

// The widest that the names of options are, beside what is said of them; longer ones stand on a line of their own.
constexpr std::size_t widest_names = 30;

class Help : public CLI::Formatter {
 public:
  explicit Help(std::size_t columns)
      : columns_(std::max(columns, narrowest_page)), names_(std::min(widest_names, 3 * columns_ / 8)) {}

  std::string make_option(const CLI::Option* option, bool is_positional) const override {
    return entry(make_option_name(option, is_positional) + make_option_opts(option), make_option_desc(option));
  }

  std::string make_subcommand(const CLI::App* command) const override {
    return entry(command->get_display_name(true), command->get_description());
  }

  std::string make_description(const CLI::App* app) const override {
    return wrap(CLI::Formatter::make_description(app), columns_);
  }

  std::string make_usage(const CLI::App* app, std::string name) const override {
    return wrap(CLI::Formatter::make_usage(app, std::move(name)), columns_, 2);
  }

  // Its lines are paragraphs, but for those that begin with a blank: a call, to be copied.
  std::string make_footer(const CLI::App* app) const override {
    std::istringstream lines(CLI::Formatter::make_footer(app));
    std::string footer;
    for (std::string line; std::getline(lines, line);) {
      footer += line.starts_with(' ') ? call(line) : wrap(line, columns_);
    }
    return footer;
  }

 private:
  std::string entry(const std::string& name, const std::string& words) const {
    const std::string indent(names_, ' ');
    std::istringstream lines(wrap(words, columns_ - names_));
    std::string text = "  " + name;
    if (words.empty()) return text + '\n';
    text += text.size() < names_ ? std::string(names_ - text.size(), ' ') : '\n' + indent;
    bool first = true;
    for (std::string line; std::getline(lines, line); first = false) text += (first ? "" : indent) + line + '\n';
    return text;
  }

  // A call that goes on in a second line, as a shell has it, where one has no room.
  std::string call(const std::string& line) const {
    constexpr std::string_view goes_on = " \\";
    if (display_width(line) <= columns_) return line + '\n';
    std::istringstream lines(wrap(line, columns_ - goes_on.size() - 2, 2));
    std::string text;
    for (std::string part; std::getline(lines, part);) {
      text += (text.empty() ? "  " : std::string(goes_on) + "\n  ") + part;
    }
    return text + '\n';
  }

  std::size_t columns_;
  std::size_t names_;
};

}  // namespace

std::shared_ptr<CLI::FormatterBase> help_in(std::size_t columns) { return std::make_shared<Help>(columns); }

}  // namespace yardworth::cli
