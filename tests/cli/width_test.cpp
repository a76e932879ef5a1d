#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <sstream>
#include <string>
#include <vector>

#include "cli/command.hpp"
#include "support/terminal.hpp"
#include "support/words.hpp"

// The built program writes for the terminal it has, else for COLUMNS, else as wide as ever.

namespace {

using yardworth::test::written;
using yardworth::test::written_to_terminal;

constexpr const char* any_text[] = {
    "--help", "gain --help", "strategy --help", "bands --help", "delivery --help", "check --help",
    "gain --method table --plan habit --driver +20 --to 20 --step 10", "strategy --hole 11 --driver +20",
    "bands --tee middle --band bogey --band scratch --hole 4", "delivery", "delivery --to attack-deg=2",
    "delivery --table", "delivery --table attack-deg=-8..8:1 --wind-mps 5 --wind-from-deg 90",
    // What is wrong with a file, and what was understood, both longer than a line.
    "check courses/heron-ferry/course.yaml courses/heron-ferry/members/12-woman.yaml docs/formats.md"};

// Characters, not bytes.
std::size_t longest_line(const std::string& text) {
  std::size_t longest = 0;
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) {
    const auto begins = [](char c) { return (static_cast<unsigned char>(c) & 0xc0U) != 0x80U; };
    longest = std::max(longest, static_cast<std::size_t>(std::count_if(line.begin(), line.end(), begins)));
  }
  return longest;
}

}  // namespace

TEST_CASE("no line is wider than COLUMNS says") {
  for (const char* arguments : any_text) {
    for (const std::size_t columns : {std::size_t{60}, std::size_t{80}, std::size_t{100}}) {
      CAPTURE(arguments);
      CAPTURE(columns);
      const std::string text = written(fmt::format("COLUMNS={}", columns), arguments);
      CHECK(longest_line(text) <= columns);
      CHECK(longest_line(text) > columns / 2);
    }
  }
}

TEST_CASE("the terminal's own width counts before COLUMNS, and lines never grow longer than those of a file") {
  const std::string arguments = "delivery --table";
  const std::string in_60 = written("COLUMNS=60", arguments);
  const std::string by_default = written("", arguments);
  CHECK(in_60 != by_default);
  CHECK(written_to_terminal(60, "", arguments) == in_60);
  CHECK(written_to_terminal(60, "COLUMNS=80", arguments) == in_60);
  CHECK(written_to_terminal(250, "", arguments) == by_default);
  CHECK(written_to_terminal(0, "COLUMNS=60", arguments) == in_60);
  for (const char* no_number : {"COLUMNS=", "COLUMNS=many", "COLUMNS=-5", "COLUMNS=0"}) {
    CHECK(written(no_number, arguments) == by_default);
  }
}

TEST_CASE("findings keep to one line each where nobody says a width: programs look for their places") {
  const std::string text = written("", "check docs/formats.md courses/heron-ferry/course.yaml");
  CHECK(std::count(text.begin(), text.end(), '\n') == 2);
  CHECK(longest_line(text) > 100);
}

TEST_CASE("complaints are broken between words where standard error is a terminal, and left alone elsewhere") {
  constexpr std::size_t columns = 50;
  using yardworth::cli::run;
  for (const std::vector<std::string>& arguments :
       {std::vector<std::string>{"gian"}, std::vector<std::string>{"gain", "--driver", "+2000", "--tee", "nowhere"}}) {
    const std::string one_line = run(arguments, {}).err;
    CHECK(one_line.size() > columns);
    yardworth::cli::Surroundings terminal;
    terminal.error_columns = columns;
    const std::string broken = run(arguments, terminal).err;
    CHECK(yardworth::test::words_of(broken) == yardworth::test::words_of(one_line));
    std::istringstream lines(broken);
    std::string line;
    std::getline(lines, line);
    CHECK(line.size() <= columns);
    std::getline(lines, line);
    CHECK(line.size() <= columns);
    CHECK(line.rfind("  ", 0) == 0);
    terminal.error_columns = one_line.size();
    CHECK(run(arguments, terminal).err == one_line);
  }
}
