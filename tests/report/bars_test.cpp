#include "report/bars.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "report/sample_gain.hpp"
#include "report/text.hpp"
#include "support/words.hpp"

// Bars of a text: lengths by hand, and the section that they stand in.

namespace yardworth::report {
namespace {

using test::lines_of;
using test::says;

std::string plain(double number, const BarScale& scale) { return bar(number, scale, BarCharacters::ascii, false); }
std::string blocks(double number, const BarScale& scale) { return bar(number, scale, BarCharacters::blocks, false); }

// A round of so many holes whose first one loses.
GainReport round_of(int holes, double first, double others) {
  GainReport report = test::sample_gain();
  std::vector<HoleGain>& played = report.result.best->holes;
  played.resize(1);
  while (static_cast<int>(played.size()) < holes) played.push_back(played.front());
  for (int i = 0; i < holes; ++i) {
    HoleGain& hole = played[static_cast<std::size_t>(i)];
    hole.number = i + 1;
    const double saved = i == 0 ? first : others;
    hole.strokes = test::of_carries(5.0, 5.0, 5.0, 5.0 - saved);
  }
  return report;
}

std::string bars_of(const GainReport& report, std::size_t columns, BarCharacters characters) {
  const std::string text = gain_text(report, false, columns, characters);
  const std::size_t begin = text.find("\nStrokes saved on each hole\n");
  REQUIRE(begin != std::string::npos);
  return text.substr(begin + 1, text.find("\n\n", begin) - begin);
}

bool is_ascii(const std::string& text) {
  return std::all_of(text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 0x80; });
}

}  // namespace

TEST_CASE("a bar is as long as its number: cells by hand") {
  // Ten cells for 0.2: one for each 0.02.
  const BarScale scale = bar_scale(0.0, 0.2, 11);
  CHECK(scale.of_cell == doctest::Approx(0.02));
  CHECK(plain(0.2, scale) == "|##########");
  CHECK(plain(0.1, scale) == "|#####");
  CHECK(plain(0.0, scale) == "|");
  CHECK(plain(1e-9, scale) == "|#");
  CHECK(blocks(0.06, scale) == "│███");
  // A cell and a half, and an eighth.
  CHECK(blocks(0.03, scale) == "│█▌");
  CHECK(blocks(1e-9, scale) == "│▏");
}

TEST_CASE("what is lost goes the other way, in other characters, on the same scale") {
  // Fifteen cells beside the line, a third of them for the losses.
  const BarScale scale = bar_scale(-0.1, 0.2, 16);
  CHECK(scale.of_cell == doctest::Approx(0.02));
  CHECK(plain(-0.1, scale) == "-----|");
  CHECK(plain(-0.04, scale) == "   --|");
  CHECK(plain(0.04, scale) == "     |##");
  CHECK(plain(0.0, scale) == "     |");
  CHECK(blocks(-0.04, scale) == "   ▒▒│");
  const BarScale losses = bar_scale(-0.4, -0.1, 9);
  CHECK(plain(-0.4, losses) == "--------|");
  CHECK(plain(-0.1, losses) == "      --|");
  CHECK(plain(0.0, bar_scale(0.0, 0.0, 9)) == "|");
  // Little on one side has a cell all the same, and nothing is longer than there is room.
  const BarScale uneven = bar_scale(-0.001, 1.0, 11);
  CHECK(plain(-0.001, uneven) == "-|");
  CHECK(plain(1.0, uneven) == " |#########");
  for (const double number : {-0.001, 0.0, 0.3, 1.0}) CHECK(display_width(blocks(number, uneven)) <= 11);
}

TEST_CASE("colour surrounds a bar and changes nothing else") {
  const BarScale scale = bar_scale(-0.1, 0.1, 5);
  CHECK(bar(0.1, scale, BarCharacters::ascii, true) == "  |\x1b[36m##\x1b[0m");
  CHECK(bar(-0.1, scale, BarCharacters::ascii, true) == "\x1b[36m--\x1b[0m|");
  CHECK(bar(0.0, scale, BarCharacters::ascii, true) == "  |");
}

TEST_CASE("holes have bars at any width, the second nine beside the first where there is room") {
  const GainReport report = round_of(18, -0.25, 0.5);
  for (std::size_t columns = 40; columns <= 120; ++columns) {
    CAPTURE(columns);
    const std::vector<std::string> lines = lines_of(bars_of(report, columns, BarCharacters::blocks));
    // The title, the heading, the holes, and what is left and right.
    const bool abreast = columns >= 59;
    const std::size_t rows = abreast ? 9 : 18;
    REQUIRE(lines.size() >= rows + 3);
    CHECK(says(lines[2], "   1    4   -0.25  "));
    CHECK(says(lines[2], "▒"));
    CHECK(says(lines[2], "  10    4    0.50  ") == abreast);
    for (const std::string& line : lines) CHECK_MESSAGE(display_width(line) <= columns, line);
    for (std::size_t row = 0; row < rows; ++row) CHECK(says(lines[row + 2], "│"));
    CHECK(says(lines[rows + 2], "To the right of the line: saved."));
  }
}

TEST_CASE("bars of plain characters are ASCII alone") {
  const GainReport report = round_of(18, -0.25, 0.5);
  CHECK(is_ascii(gain_text(report, false, 100, BarCharacters::ascii)));
  CHECK_FALSE(is_ascii(gain_text(report, false, 100, BarCharacters::blocks)));
  CHECK(says(bars_of(report, 80, BarCharacters::ascii), "|####"));
  CHECK(says(bars_of(report, 80, BarCharacters::ascii), "---|"));
}

TEST_CASE("where no hole loses nothing is said of losses, and what reads 0.00 has no bar") {
  const std::string bars = bars_of(round_of(9, 0.004, 0.5), 80, BarCharacters::ascii);
  CHECK_FALSE(says(bars, "lost"));
  const std::vector<std::string> lines = lines_of(bars);
  CHECK(lines[2] == "   1    4    0.00  |");
  CHECK(lines[3] == "   2    4    0.50  |" + std::string(30, '#'));
  CHECK(lines.size() == 11);
}

}  // namespace yardworth::report
