#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

#include "support/terminal.hpp"
#include "support/words.hpp"

// Bars and colour in what the built program writes: plain characters where they are asked for, colour on a terminal
// alone, and only where that wants it.

namespace {

using yardworth::test::says;
using yardworth::test::written;
using yardworth::test::written_to_terminal;

const std::string short_gain = "gain --method table --plan habit --driver +20";
constexpr char escape = '\x1b';

bool has_escape(const std::string& text) { return text.find(escape) != std::string::npos; }

bool is_plain(const std::string& text) {
  return std::all_of(text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 0x80; });
}

// Without what a terminal takes for commands.
std::string without_colour(const std::string& text) {
  std::string left;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] == escape)
      i = text.find('m', i);
    else
      left += text[i];
  }
  return left;
}

}  // namespace

TEST_CASE("gain writes bars in blocks, or with --ascii in plain characters alone") {
  const std::string blocks = written("", short_gain);
  CHECK(says(blocks, "│█"));
  const std::string plain = written("", short_gain + " --ascii");
  CHECK(says(plain, "|#"));
  CHECK(is_plain(plain));
  CHECK(written("", short_gain + " --ascii --threads 1") == written("", short_gain + " --ascii --threads 3"));
  for (const char* format : {" --format json", " --format csv"}) {
    CHECK(is_plain(written("", short_gain + format)));
    CHECK(written("", short_gain + format) == written("", short_gain + format + " --ascii"));
  }
}

TEST_CASE("there is colour on a terminal, and nothing is told by it") {
  const std::string coloured = written_to_terminal(80, "TERM=xterm", short_gain);
  CHECK(says(coloured, "\x1b[36m█"));
  CHECK(says(coloured, "\x1b[1m"));
  CHECK(without_colour(coloured) == written("COLUMNS=80", short_gain));
  const std::string empty = written_to_terminal(80, "NO_COLOR= TERM=xterm", short_gain);
  CHECK(empty == coloured);
}

TEST_CASE("there is no colour with NO_COLOR, on a dumb terminal, in a pipe or in a file") {
  const std::string plain = written("COLUMNS=80", short_gain);
  CHECK(written_to_terminal(80, "NO_COLOR=1 TERM=xterm", short_gain) == plain);
  CHECK(written_to_terminal(80, "TERM=dumb", short_gain) == plain);
  CHECK_FALSE(has_escape(written("TERM=xterm", short_gain)));
  const std::filesystem::path path =
      std::filesystem::temp_directory_path() / fmt::format("yardworth-bars-{}.txt", ::getpid());
  const std::string to_file = fmt::format(" --force --output '{}'", path.string());
  CHECK(written_to_terminal(80, "TERM=xterm", short_gain + to_file).empty());
  std::ostringstream text;
  text << std::ifstream(path, std::ios::binary).rdbuf();
  std::filesystem::remove(path);
  CHECK(says(text.str(), "│█"));
  CHECK_FALSE(has_escape(text.str()));
}
