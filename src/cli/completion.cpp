#include "cli/completion.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

namespace yardworth::cli {
namespace {

// A list beside what is typed has no room for more.
constexpr std::size_t longest_hint = 60;
constexpr std::size_t shortest_part = 12;

// The first sentence, or as many parts of it as have room.
std::string hint(const std::string& help) {
  const std::string first = help.substr(0, help.find_first_of(";."));
  if (first.size() <= longest_hint) return first;
  const std::size_t part = first.find_last_of(",:", longest_hint);
  if (part != std::string::npos && part >= shortest_part) return first.substr(0, part);
  return first.substr(0, first.find_last_of(' ', longest_hint)) + " ...";
}

std::string replaced(std::string text, char what, const std::string& by) {
  for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + by.size())) {
    text.replace(at, 1, by);
  }
  return text;
}

std::string in_single_quotes(const std::string& text) { return "'" + replaced(text, '\'', "'\\''") + "'"; }

std::vector<std::string> names_of(const CommandEntry& command) {
  std::vector<std::string> names;
  for (const OptionEntry& option : command.options) {
    if (!option.positional) names.insert(names.end(), option.names.begin(), option.names.end());
  }
  return names;
}

std::vector<std::string> names_of(const std::vector<CommandEntry>& table) {
  std::vector<std::string> names;
  for (std::size_t i = 1; i < table.size(); ++i) names.push_back(table[i].name);
  return names;
}

bool takes_files(const CommandEntry& command) {
  return std::any_of(command.options.begin(), command.options.end(),
                     [](const OptionEntry& option) { return option.positional && option.file; });
}

// What a command's options are followed by, as the branches of a shell's case.
std::string bash_values(const CommandEntry& command) {
  std::string cases;
  for (const OptionEntry& option : command.options) {
    if (option.positional || option.value.empty()) continue;
    const std::string names = fmt::format("{}", fmt::join(option.names, "|"));
    if (option.file) {
      cases += fmt::format("        {}) COMPREPLY=($(compgen -f -- \"$word\")); return ;;\n", names);
    } else {
      cases += fmt::format("        {}) COMPREPLY=($(compgen -W '{}' -- \"$word\")); return ;;\n", names,
                           fmt::join(option.words, " "));
    }
  }
  return cases;
}

}  // namespace

std::string bash_completion(const std::vector<CommandEntry>& table) {
  std::string script =
      "# Completes calls of yardworth in bash; written by: yardworth completion bash\n"
      "_yardworth() {\n"
      "  local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]}\n"
      "  COMPREPLY=()\n"
      "  if [ \"$COMP_CWORD\" -eq 1 ]; then\n";
  script += fmt::format("    COMPREPLY=($(compgen -W '{} {}' -- \"$word\"))\n    return\n  fi\n",
                        fmt::join(names_of(table), " "), fmt::join(names_of(table.front()), " "));
  script += "  case ${COMP_WORDS[1]} in\n";
  for (std::size_t i = 1; i < table.size(); ++i) {
    const CommandEntry& command = table[i];
    script += fmt::format("    {})\n", command.name);
    if (const std::string values = bash_values(command); !values.empty()) {
      script += "      case $before in\n" + values + "      esac\n";
    }
    script += fmt::format("      COMPREPLY=($(compgen -W '{}' -- \"$word\"))\n", fmt::join(names_of(command), " "));
    if (takes_files(command)) script += "      [[ $word == -* ]] || COMPREPLY+=($(compgen -f -- \"$word\"))\n";
    script += "      ;;\n";
  }
  return script + "  esac\n}\ncomplete -o filenames -F _yardworth yardworth\n";
}

namespace {

// "--plan[habit: as most club golfers play]:value:(habit best)"
std::string zsh_argument(const OptionEntry& option, const std::string& name) {
  std::string said = hint(option.help);
  for (const char special : {'[', ']', ':'}) said = replaced(said, special, std::string("\\") + special);
  std::string argument = option.positional ? "*" : fmt::format("{}[{}]", name, said);
  if (!option.positional && option.value.empty()) return argument;
  argument += ":value:";
  if (option.file) return argument + "_files";
  return argument + (option.words.empty() ? "( )" : fmt::format("({})", fmt::join(option.words, " ")));
}

std::string zsh_arguments(const CommandEntry& command) {
  std::string arguments;
  bool positional = false;
  for (const OptionEntry& option : command.options) {
    if (option.positional && positional) continue;
    positional = positional || option.positional;
    for (const std::string& name : option.names) {
      arguments += fmt::format(" \\\n        {}", in_single_quotes(zsh_argument(option, name)));
    }
  }
  return arguments;
}

}  // namespace

std::string zsh_completion(const std::vector<CommandEntry>& table) {
  std::string script =
      "#compdef yardworth\n"
      "# Completes calls of yardworth in zsh; written by: yardworth completion zsh\n"
      "_yardworth() {\n"
      "  local -a commands\n"
      "  commands=(";
  for (std::size_t i = 1; i < table.size(); ++i) {
    script += "\n    " + in_single_quotes(table[i].name + ":" + replaced(hint(table[i].help), ':', "\\:"));
  }
  script +=
      "\n  )\n"
      "  if (( CURRENT == 2 )); then\n"
      "    _describe command commands\n";
  script += fmt::format("    _arguments{}\n    return\n  fi\n", zsh_arguments(table.front()));
  script += "  local chosen=$words[2]\n  shift words\n  (( CURRENT-- ))\n  case $chosen in\n";
  for (std::size_t i = 1; i < table.size(); ++i) {
    script += fmt::format("    {})\n      _arguments{}\n      ;;\n", table[i].name, zsh_arguments(table[i]));
  }
  return script + "  esac\n}\n_yardworth \"$@\"\n";
}

namespace {

std::string fish_quoted(const std::string& text) {
  return "'" + replaced(replaced(text, '\\', "\\\\"), '\'', "\\'") + "'";
}

std::string fish_option(const CommandEntry& command, const OptionEntry& option, bool program) {
  std::string line =
      "complete -c yardworth -n " +
      (program ? std::string("__fish_use_subcommand") : fish_quoted("__fish_seen_subcommand_from " + command.name));
  for (const std::string& name : option.names) {
    line += name.starts_with("--") ? " -l " + name.substr(2) : " -s " + name.substr(1);
  }
  if (!option.value.empty()) line += option.file ? " -r -F" : " -x";
  if (!option.words.empty()) line += " -a " + fish_quoted(fmt::format("{}", fmt::join(option.words, " ")));
  return line + " -d " + fish_quoted(hint(option.help)) + '\n';
}

}  // namespace

std::string fish_completion(const std::vector<CommandEntry>& table) {
  std::string script =
      "# Completes calls of yardworth in fish; written by: yardworth completion fish\n"
      "complete -c yardworth -f\n";
  for (std::size_t i = 1; i < table.size(); ++i) {
    script += fmt::format("complete -c yardworth -n __fish_use_subcommand -a {} -d {}\n", table[i].name,
                          fish_quoted(hint(table[i].help)));
  }
  for (std::size_t i = 0; i < table.size(); ++i) {
    for (const OptionEntry& option : table[i].options) {
      if (!option.positional) script += fish_option(table[i], option, i == 0);
    }
    if (i > 0 && takes_files(table[i])) {
      script +=
          fmt::format("complete -c yardworth -n {} -F\n", fish_quoted("__fish_seen_subcommand_from " + table[i].name));
    }
  }
  return script;
}

}  // namespace yardworth::cli
