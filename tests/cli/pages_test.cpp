#include <doctest/doctest.h>
#include <stdlib.h>

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include "cli/command.hpp"
#include "support/scenario.hpp"
#include "support/words.hpp"

// Completions and manual pages are held against the help, which is made of the same table, and against the programs
// that read them: bash, zsh, fish, and mandoc (Debian's packages of these names), skipped aloud where one is missing.

namespace yardworth::cli {
namespace {

const std::vector<std::string> commands = {"gain", "strategy", "report", "page",       "bands", "delivery",
                                           "bag",  "weigh",    "check",  "completion", "manual"};

std::string output_of(const std::vector<std::string>& arguments) {
  const Outcome outcome = run(arguments, {});
  REQUIRE(outcome.status == done);
  REQUIRE(outcome.err.empty());
  return outcome.out;
}

// The options that the help of a command lists, each once.
std::vector<std::string> options_in_help(const std::string& command) {
  std::istringstream lines(output_of({command, "--help"}));
  std::vector<std::string> options;
  for (std::string line; std::getline(lines, line);) {
    if (!line.starts_with("  --")) continue;
    options.push_back(line.substr(2, line.find_first_of(" ,", 2) - 2));
  }
  return options;
}

class WrittenPage {
 public:
  explicit WrittenPage(const std::string& text) {
    char name[] = "/tmp/yardworth-page-XXXXXX";
    const int descriptor = ::mkstemp(name);
    REQUIRE(descriptor >= 0);
    path_ = name;
    std::ofstream(path_) << text;
    ::close(descriptor);
  }
  WrittenPage(const WrittenPage&) = delete;
  WrittenPage& operator=(const WrittenPage&) = delete;
  ~WrittenPage() { std::filesystem::remove(path_); }
  const std::string& path() const { return path_; }

 private:
  std::string path_;
};

std::string said_by(const std::string& line) {
  std::FILE* pipe = ::popen(line.c_str(), "r");
  REQUIRE(pipe != nullptr);
  std::string said;
  char part[512];
  while (std::fgets(part, sizeof part, pipe) != nullptr) said += part;
  ::pclose(pipe);
  return said;
}

bool is_installed(const std::string& program) {
  const bool there = std::system(("command -v " + program + " >/dev/null 2>&1").c_str()) == 0;
  if (!there) MESSAGE("skipped: " << program << " is not installed");
  return there;
}

// What bash offers for the last of these words.
std::string completed(const WrittenPage& script, const std::string& words, int last) {
  return said_by("bash -c '. " + script.path() + "; COMP_WORDS=(" + words + "); COMP_CWORD=" + std::to_string(last) +
                 "; _yardworth; echo \"${COMPREPLY[*]}\"'");
}

}  // namespace

TEST_CASE("every option of the help is in the completions of all shells and in the manual") {
  const std::string bash = output_of({"completion", "bash"});
  const std::string zsh = output_of({"completion", "zsh"});
  const std::string fish = output_of({"completion", "fish"});
  for (const std::string& command : commands) {
    CAPTURE(command);
    const std::string manual = output_of({"manual", command});
    CHECK(output_of({"manual"}).find("yardworth\\-" + command) != std::string::npos);
    for (const std::string& option : options_in_help(command)) {
      CAPTURE(option);
      CHECK(bash.find(option) != std::string::npos);
      CHECK(zsh.find("'" + option + "[") != std::string::npos);
      CHECK(fish.find(" -l " + option.substr(2) + " ") != std::string::npos);
      std::string escaped;
      for (const char c : option) escaped += c == '-' ? std::string("\\-") : std::string(1, c);
      CHECK(manual.find(escaped) != std::string::npos);
    }
  }
}

TEST_CASE("a manual page of every command is installed") {
  const std::string in_bash = output_of({"completion", "bash"});
  std::string said = "set(commands";
  for (const std::string& command : commands) said += " " + command;
  CHECK(test::says(test::text_of("CMakeLists.txt"), said + ")"));
  CHECK(test::says(in_bash, "compgen -W '" + said.substr(said.find(' ') + 1) + " --help"));
}

TEST_CASE("bash completes commands, options, words and files") {
  if (!is_installed("bash")) return;
  const WrittenPage script(output_of({"completion", "bash"}));
  CHECK(completed(script, "yardworth ga", 1) == "gain\n");
  CHECK(completed(script, "yardworth gain --pla", 2) == "--player --plan\n");
  CHECK(completed(script, "yardworth gain --plan \"\"", 3) == "both habit best\n");
  CHECK(completed(script, "yardworth gain --plan h", 3) == "habit\n");
  CHECK(completed(script, "yardworth gain --course " + script.path().substr(0, script.path().size() - 1), 3) ==
        script.path() + "\n");
  CHECK(completed(script, "yardworth bag " + script.path().substr(0, script.path().size() - 1), 2) ==
        script.path() + "\n");
  CHECK(completed(script, "yardworth gain --driver \"\"", 3) == "\n");
}

TEST_CASE("the other shells, and a reader of manuals, find no fault in what is written for them") {
  for (const std::string shell : {"zsh", "fish"}) {
    const WrittenPage script(output_of({"completion", shell}));
    if (is_installed(shell)) CHECK(said_by(shell + " -n " + script.path() + " 2>&1").empty());
  }
  if (!is_installed("mandoc")) return;
  for (const std::string& command : commands) {
    const WrittenPage page(output_of({"manual", command}));
    CHECK(said_by("mandoc -T lint -W error " + page.path() + " 2>&1").empty());
    const std::string read = said_by("mandoc -T ascii " + page.path() + " | sed 's/.\\x08//g'");
    CHECK(read.find("yardworth-" + command) != std::string::npos);
    CHECK(read.find("a medical professional") != std::string::npos);
  }
}

TEST_CASE("an unknown shell or command is refused with what there is") {
  const Outcome shell = run({"completion", "fash"}, {});
  CHECK(shell.status == at_fault);
  CHECK(shell.err.find("bash, zsh or fish; the nearest is bash") != std::string::npos);
  const Outcome command = run({"manual", "gian"}, {});
  CHECK(command.status == at_fault);
  CHECK(command.err.find("the nearest is gain") != std::string::npos);
}

}  // namespace yardworth::cli
