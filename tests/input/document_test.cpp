#include <doctest/doctest.h>
#include <fmt/format.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <random>
#include <string>
#include <variant>
#include <vector>

#include "baseline/published.hpp"
#include "input/samples.hpp"
#include "support/sanitized.hpp"
#include "yardworth/read.hpp"

namespace yardworth {
namespace {

using samples::changed;
using samples::lines;

std::vector<std::string> document_findings(const std::string& text) { return lines(read_any(text, "f").findings); }
std::string first_of(const std::string& text) {
  const auto found = document_findings(text);
  return found.empty() ? "" : found.front();
}
std::string repeated(const std::string& text, int times) {
  std::string all;
  for (int i = 0; i < times; ++i) all += text;
  return all;
}

TEST_CASE("whichever of our files it is") {
  const auto course = read_any(samples::course, "f");
  REQUIRE(course.ok());
  CHECK(std::holds_alternative<Course>(*course.value));
  const auto player = read_any(samples::player, "f");
  REQUIRE(player.ok());
  CHECK(std::holds_alternative<Player>(*player.value));
  const auto table = read_any(write_baseline(tour_table()), "f");
  REQUIRE(table.ok());
  CHECK(std::holds_alternative<BaselineTable>(*table.value));
}

TEST_CASE("the format line") {
  CHECK(document_findings("format: yardworth/course/2\nname: x\n") ==
        std::vector<std::string>{"1:9: fault: format: found \"yardworth/course/2\", expected yardworth/course/1"});
  CHECK(document_findings("format: recipe\n") ==
        std::vector<std::string>{"1:9: fault: format: found \"recipe\", expected yardworth/course/1 or "
                                 "yardworth/player/1 or yardworth/baseline/1 or yardworth/options/1"});
  CHECK(first_of("format: [yardworth/course/1]\n").find("1:9: fault: format: found a list") == 0);
  CHECK(lines(read_course(samples::player, "f").findings) ==
        std::vector<std::string>{"1:9: fault: format: found \"yardworth/player/1\", expected yardworth/course/1"});
  // A file without it is still read as what it looks like.
  std::string text = changed(samples::course, "format: yardworth/course/1\n", "");
  text = changed(text, "slope: 129", "slope: 12");
  CHECK(document_findings(text) ==
        std::vector<std::string>{
            "1:1: fault: format: found nothing: the required key is missing, expected "
            "yardworth/course/1 or yardworth/player/1 or yardworth/baseline/1 or yardworth/options/1",
            "4:46: fault: tees[0].slope: found 12, expected a number from 55 to 155"});
  CHECK(document_findings(changed(samples::player, "format:", "fromat:")) ==
        std::vector<std::string>{
            "1:1: fault: fromat: found unknown key \"fromat\", expected \"format\", the nearest known key"});
}

TEST_CASE("files that say nothing, or not a map") {
  const std::string empty = "1:1: fault: found an empty file, expected a file that begins with format:";
  CHECK(document_findings("") == std::vector<std::string>{empty});
  CHECK(document_findings("# nothing\n") == std::vector<std::string>{empty});
  CHECK(document_findings("---\n") == std::vector<std::string>{empty});
  CHECK(document_findings("hello") ==
        std::vector<std::string>{"1:1: fault: found \"hello\", expected a map that begins with format:"});
  CHECK(document_findings("- a\n") ==
        std::vector<std::string>{"1:1: fault: found a list, expected a map that begins with format:"});
}

TEST_CASE("a byte order mark and other line ends are read, and places stay right") {
  const std::string crlf = changed(samples::course, "\n", "\r\n", true);
  CHECK(read_course("\xEF\xBB\xBF" + crlf, "f").ok());
  CHECK(read_course(changed(samples::course, "\n", "\r", true), "f").ok());
  CHECK(document_findings("\xEF\xBB\xBF" + changed(crlf, "slope: 129", "slope: 12")) ==
        std::vector<std::string>{"5:46: fault: tees[0].slope: found 12, expected a number from 55 to 155"});
  CHECK(document_findings("\xEF\xBB\xBF"
                          "form: x") == document_findings("form: x"));
}

TEST_CASE("columns are counted in characters") {
  // Two letters of two bytes each stand before the slope.
  CHECK(document_findings(changed(changed(samples::course, "name: back", "name: b\xC3\xA4\xC3\xA4k"), "back",
                                  "b\xC3\xA4\xC3\xA4k", true)) == std::vector<std::string>{});
  std::string text = changed(samples::course, "back", "b\xC3\xA4\xC3\xA4k", true);
  CHECK(document_findings(changed(text, "slope: 129", "slope: 12")) ==
        std::vector<std::string>{"5:46: fault: tees[0].slope: found 12, expected a number from 55 to 155"});
}

TEST_CASE("what is not text") {
  CHECK(document_findings(changed(samples::course, "Nine", "N\xE9ne")) ==
        std::vector<std::string>{"2:13: fault: found byte 0xE9, which is not UTF-8, expected text in UTF-8"});
  CHECK(first_of(std::string("\xFF\xFE"
                             "f\0o\0",
                             6)) == "1:1: fault: found byte 0xFF, which is not UTF-8, expected text in UTF-8");
  CHECK(first_of(changed(samples::course, "Nine", "N\xC0\x80ne")).find("2:13: fault: found byte 0xC0") == 0);
  CHECK(first_of(changed(samples::course, "Nine", "N\xED\xA0\x80ne")).find("2:13: fault: found byte 0xED") == 0);
  CHECK(first_of(changed(samples::course, "Nine", std::string("N\0ne", 4))) ==
        "2:13: fault: found control character 0x00, expected text");
  // The YAML reader takes this one for the end of the file and would drop the rest in silence.
  CHECK(first_of(samples::course + "\x04"
                                   "junk") == "28:1: fault: found control character 0x04, expected text");
  CHECK(first_of(changed(samples::course, "Nine", "\x1B[31m")) ==
        "2:12: fault: found control character 0x1B, expected text");
}

TEST_CASE("text that YAML cannot read") {
  CHECK(
      document_findings("format: yardworth/course/1\nholes: [{number: 1, par") ==
      std::vector<std::string>{"2:24: fault: found a { that is not closed, expected } at the end of the list of keys"});
  CHECK(first_of("format: yardworth/course/1\n\tname: x\n").find("fault: found a tab") != std::string::npos);
  CHECK(first_of("name: \"no end").find("quotation mark") != std::string::npos);
  CHECK(first_of("a: @x").find("fault: found text that YAML cannot read") != std::string::npos);
}

TEST_CASE("what YAML allows and our formats do without") {
  CHECK(document_findings(changed(samples::player, "label: weekend 16", "label: &l weekend 16")) ==
        std::vector<std::string>{"2:8: fault: found an anchor (&), expected the value without a name of its own"});
  CHECK(document_findings(
            changed(changed(samples::player, "label: weekend", "label: &l weekend"), "gender: men", "gender: *l")) ==
        std::vector<std::string>{"2:8: fault: found an anchor (&), expected the value without a name of its own",
                                 "4:9: fault: found an alias (*), expected the value itself"});
  CHECK(document_findings(changed(samples::player, "label: weekend 16", "label: !!binary aGk=")) ==
        std::vector<std::string>{
            "2:8: fault: found the tag tag:yaml.org,2002:binary, expected a plain value without a tag"});
  CHECK(document_findings(changed(samples::player, "clubs:\n", "clubs: !!set\n")) ==
        std::vector<std::string>{
            "6:8: fault: found the tag tag:yaml.org,2002:set, expected a plain value without a tag"});
  CHECK(document_findings(samples::player + "---\na: b\n") ==
        std::vector<std::string>{"11:1: fault: found a second document, expected one document in a file"});
  CHECK(document_findings("---\n" + samples::player + "...\n").empty());
  CHECK(document_findings(samples::player + "[a]: b\n") ==
        std::vector<std::string>{"11:1: fault: found a key that is not text, expected a key"});
}

TEST_CASE("an alias bomb costs nothing") {
  std::string text = "a: &a [x, x, x, x, x, x, x, x]\n";
  for (char name = 'b'; name <= 'z'; ++name) {
    const std::string before = std::string("*") + static_cast<char>(name - 1);
    text += std::string(1, name) + ": &" + name + " [" + before + repeated(", " + before, 8) + "]\n";
  }
  const auto reading = read_any(text, "f");
  CHECK_FALSE(reading.ok());
  CHECK(lines(reading.findings).front().find("found") != std::string::npos);
  CHECK(reading.findings.size() <= 201);
}

TEST_CASE("depth and size have limits") {
  const std::string deep = "fault: found lists and maps in one another too deeply, expected at most 20 levels";
  CHECK(first_of("a: " + repeated("[", 100'000)).find(deep) != std::string::npos);
  CHECK(first_of(repeated("{a: ", 100'000)).find(deep) != std::string::npos);
  CHECK(first_of(repeated("- ", 100'000)).find(deep) != std::string::npos);
  CHECK(first_of(repeated("? ", 100'000)).find(deep) != std::string::npos);
  CHECK(first_of("[" + repeated("[],", 200'000)).find("fault: found too much in one file") != std::string::npos);
  const auto found = document_findings(changed(samples::course, "Test Nine", std::string(1'000'000, 'x')));
  REQUIRE(found.size() == 1);
  CHECK(found.front() ==
        "2:7: fault: name: found \"" + std::string(60, 'x') + "...\", expected text of at most 1000 bytes");
}

// What `check` ends with, given no more memory than 100 MB beside the program itself; 1: out of memory.
int status_in_little_memory(const std::string& text) {
  const std::string file = (std::filesystem::temp_directory_path() / fmt::format("yardworth_{}", ::getpid())).string();
  std::ofstream(file, std::ios::binary) << text;
  const std::string line =
      fmt::format("ulimit -v 100000; '{}' check '{}' >/dev/null 2>/dev/null", YARDWORTH_PROGRAM, file);
  const int status = std::system(line.c_str());
  std::filesystem::remove(file);
  return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

TEST_CASE("a file of any signs takes little memory to refuse") {
  if (test::sanitized) return;  // the sanitizers take more than that for themselves
  for (const char* piece :
       {"[", "{",      "[{",  "{a: ", "a: ",  "- ",      "? ", ": ", "[],", "\"\", ",       "\" ", "\"",
        "'", "&a *a ", "&a ", "*a, ", "!!a ", "!!a b, ", "a,", ",",  "\n",  "- &a !!t x\n", "|\n", "[\n# \"]\",\n"}) {
    for (const char* before : {"", "["}) {
      CAPTURE(piece);
      CAPTURE(before);
      std::string text = before;
      while (text.size() + 10 < largest_file_bytes) text += piece;
      CHECK(status_in_little_memory(text) == 2);
    }
  }
}

TEST_CASE("what a limit is passed by is told, and comments may be as long as they like") {
  const std::string signs = "fault: found too much in one file, expected at most 200000 brackets, commas, colons";
  CHECK(first_of("a: \"" + repeated("],", 110'000) + "\"").find(signs) != std::string::npos);
  CHECK(first_of("# [\" " + repeated("],", 110'000)).find(signs) != std::string::npos);
  CHECK(read_course(samples::course + repeated("  # [[[,,,\n", 100'000), "f").ok());
  // A line that begins like a comment, but ends a text in quotes.
  CHECK(first_of("[\"\n# \"" + repeated("[", 300'000)).find("not closed on its line") != std::string::npos);
  CHECK(first_of("a: 1\nb: [" + repeated("[", 300'000)).find("in one another too deeply") != std::string::npos);
  CHECK(first_of("[" + repeated("x,", 300'000)).find("at most 100000 values") != std::string::npos);
}

TEST_CASE("text from the file is escaped when it is printed") {
  CHECK(document_findings(samples::player + "\"\\e[2J\\n\": 1\n").front() ==
        "11:1: fault: \\x1B[2J\\x0A: found unknown key \"\\x1B[2J\\x0A\", expected one of format, label, "
        "handicap_index, band, gender, units, direction_mean, clubs");
}

TEST_CASE("a file cut off anywhere is a value or a finding with a place") {
  for (const std::string& text : {samples::course, samples::player}) {
    for (std::size_t length = 0; length < text.size(); ++length) {
      const auto reading = read_any(text.substr(0, length), "f");
      CHECK(reading.ok() != has_fault(reading.findings));
      for (const Diagnostic& finding : reading.findings) CHECK(finding.line > 0);
    }
  }
}

TEST_CASE("a file with bytes flipped, dropped or doubled is a value or a finding") {
  std::mt19937 random(20240229);
  const std::string signs = "{}[]:,-#&*!|>'\"%@`?\n\t 0.9ex\xC3\xFF";
  const auto below = [&](std::size_t limit) { return static_cast<std::size_t>(random() % limit); };
  for (int round = 0; round < 3000; ++round) {
    std::string text = round % 2 == 0 ? samples::course : samples::player;
    for (std::size_t change = 0; change <= below(4); ++change) {
      const std::size_t at = below(text.size());
      switch (below(4)) {
        case 0:
          text[at] = static_cast<char>(text[at] ^ (1 << below(8)));
          break;
        case 1:
          text[at] = signs[below(signs.size())];
          break;
        case 2:
          text.erase(at, 1 + below(20));
          break;
        default:
          text.insert(at, text.substr(below(text.size()), 1 + below(40)));
      }
    }
    CAPTURE(text);
    const auto reading = read_any(text, "f");
    CHECK(reading.ok() != has_fault(reading.findings));
  }
}

}  // namespace
}  // namespace yardworth
