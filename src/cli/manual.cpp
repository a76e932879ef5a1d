#include "cli/manual.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "gain/what_was_asked.hpp"
#include "report/basis_words.hpp"
#include "yardworth/version.hpp"

namespace yardworth::cli {
namespace {

// As it stands, whatever roff would make of it.
std::string plain(const std::string& text) {
  std::string safe;
  for (const char c : text) {
    if (c == '\\') {
      safe += "\\e";
    } else if (c == '-') {
      safe += "\\-";
    } else {
      safe += c;
    }
  }
  // At the beginning of a line both would be a request.
  if (safe.starts_with('.') || safe.starts_with('\'')) safe.insert(0, "\\&");
  return safe;
}

std::string bold(const std::string& text) { return "\\fB" + plain(text) + "\\fR"; }
std::string italic(const std::string& text) { return "\\fI" + plain(text) + "\\fR"; }

std::string page_name(const CommandEntry& of, bool program) { return program ? of.name : "yardworth-" + of.name; }

std::string options_of(const CommandEntry& of) {
  std::string text;
  for (const OptionEntry& option : of.options) {
    std::string names;
    for (const std::string& name : option.names) {
      names += (names.empty() ? "" : ", ") + (option.positional ? italic(name) : bold(name));
    }
    if (!option.value.empty()) names += " " + italic(option.value);
    text += fmt::format(".TP\n{}\n{}\n", names, plain(option.help));
  }
  return text;
}

std::string synopsis(const CommandEntry& of, bool program) {
  if (program) return fmt::format("{} {} [{}]\n", bold("yardworth"), italic("COMMAND"), italic("OPTIONS"));
  std::string line = bold("yardworth " + of.name);
  for (const OptionEntry& option : of.options) {
    if (option.positional) line += " " + italic(option.names.front());
  }
  return fmt::format("{} [{}]\n", line, italic("OPTIONS"));
}

}  // namespace

std::string manual_page(const std::vector<CommandEntry>& table, const CommandEntry& of) {
  const bool program = of.name == table.front().name;
  const std::string name = page_name(of, program);
  std::string page = fmt::format(".TH {} 1 \"\" \"yardworth {}\" \"User Commands\"\n", plain(name), version);
  page += fmt::format(".SH NAME\n{} \\- {}\n.SH SYNOPSIS\n{}", plain(name), plain(of.help), synopsis(of, program));
  if (program) {
    page += ".SH COMMANDS\n";
    for (std::size_t i = 1; i < table.size(); ++i) {
      page += fmt::format(".TP\n{}\n{}\n", bold(table[i].name), plain(table[i].help));
    }
  }
  page += ".SH OPTIONS\n" + options_of(of);
  page += ".SH EXIT STATUS\n0: done.\n1: could not be done.\n2: the command or the input is at fault.\n";
  page += ".SH CAUTION\n";
  for (const std::string& caution : report::all_caution_words(common_cautions())) page += plain(caution) + '\n';
  std::vector<std::string> others;
  for (const CommandEntry& other : table) {
    if (other.name != of.name) others.push_back(bold(page_name(other, other.name == table.front().name)) + "(1)");
  }
  return page + fmt::format(".SH SEE ALSO\n{}\n", fmt::join(others, ", "));
}

}  // namespace yardworth::cli
