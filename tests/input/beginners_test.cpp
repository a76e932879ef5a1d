#include <doctest/doctest.h>

#include <fstream>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

#include "input/samples.hpp"
#include "support/words.hpp"
#include "yardworth/read.hpp"

// Files spoilt as beginners spoil them, and what is said of each; docs/formats.md shows the same lines.

namespace yardworth {
namespace {

struct Spoilt {
  const char* what;
  std::string text;
  std::string line;  // that has to be among the findings
};

// The sample with one piece of it replaced.
std::string with(std::string text, const std::string& piece, const std::string& other) {
  const std::size_t at = text.find(piece);
  REQUIRE_MESSAGE(at != std::string::npos, piece);
  return text.replace(at, piece.size(), other);
}

std::vector<Spoilt> spoilt_files() {
  const std::string& course = samples::course;
  const std::string& player = samples::player;
  return {
      {"a decimal comma", with(player, "carry: 196", "carry: 196,5"),
       "7:27: fault: clubs[0].carry: found \"196,5\", expected 196.5, with a point in the place of the comma"},
      {"a tab", with(course, "    par: 4", "\tpar: 4"),
       "10:1: fault: found a tab at the beginning of the line, expected blanks in its place: YAML indents by blanks "
       "alone"},
      {"a quotation mark that never closes", with(course, "name: Test Nine", "name: \"Test Nine"),
       "2:7: fault: found a quotation mark that is not closed on its line, expected the same mark at the end of the "
       "text"},
      {"a table in the place of YAML", "club,carry\ndriver,210\n7-iron,140\n",
       "1:1: fault: found a table (CSV), expected YAML that begins with format:; docs/formats.md has a file to copy, "
       "and `yardworth bag LOG.csv` reads a log of shots"},
      {"a table of other things in the place of YAML", "hole,par\n1,4\n",
       "1:1: fault: found a table (CSV), expected YAML that begins with format:; docs/formats.md has a file to copy"},
      {"another word for a hazard", with(course, "kind: penalty_area", "kind: water"),
       "18:16: fault: holes[0].hazards[1].kind: found \"water\", expected penalty_area; the words are bunker, "
       "penalty_area, out_of_bounds, trees"},
      {"a letter for a side", with(course, "side: right", "side: R"),
       "17:30: fault: holes[0].hazards[0].side: found \"R\", expected right; the words are left, right, across"},
      {"a hole left out",
       with(course, "  - {number: 4, par: 3, stroke_index: 4, length: {back: 160, forward: 130}}\n", ""),
       "9:3: fault: holes: found 8 holes, without hole 4, expected 9 or 18 holes"},
      {"a key misspelt", with(player, "handicap_index", "handicap"),
       "3:1: fault: handicap: found unknown key \"handicap\", expected \"handicap_index\", the nearest known key"},
      {"two holes exchanged",
       with(course, "par: 3, stroke_index: 4, length: {back: 160, forward: 130}",
            "par: 3, stroke_index: 4, length: {back: 489, forward: 430}"),
       "22:50: advice: holes[3].length: found a par 3 of 489 yards, expected a par 3 from 40 to 260 yards, or a "
       "reason"},
      {"a carry that no such golfer has", with(player, "carry: 196", "carry: 396"),
       "7:5: advice: clubs[0]: found a driver that carries 396 yards, expected about the "},
  };
}

std::string findings_of(const std::string& text) {
  const Reading<AnyFile> reading = read_any(text, "f");
  std::string lines;
  for (const Diagnostic& finding : reading.findings) lines += to_line(finding) + "\n";
  return lines;
}

TEST_CASE("files spoilt as beginners spoil them are explained, here and on the page of formats") {
  std::ifstream file(YARDWORTH_SOURCE_DIR "/docs/formats.md");
  std::ostringstream page;
  page << file.rdbuf();
  for (const Spoilt& spoilt : spoilt_files()) {
    CAPTURE(spoilt.what);
    const std::string told = findings_of(spoilt.text);
    CHECK_MESSAGE(test::says(told, "f:" + spoilt.line), told);
    CHECK(test::says(page.str(), "| " + std::string(spoilt.what) + " |"));
    // The page breaks no line within a message, and leaves out the place.
    const std::string words = spoilt.line.substr(spoilt.line.find("found"));
    CHECK_MESSAGE(test::says(page.str(), words), words);
  }
}

TEST_CASE("a file as it should be says nothing") {
  CHECK(findings_of(samples::course).empty());
  CHECK(findings_of(samples::player).empty());
}

}  // namespace
}  // namespace yardworth
