#include <doctest/doctest.h>

#include <map>
#include <regex>
#include <string>

#include "support/scenario.hpp"
#include "support/words.hpp"

namespace yardworth {
namespace {

using Ranges = std::map<std::string, std::string>;  // name, "10 to 160 mph"

Ranges matches(const std::string& text, const std::regex& pattern) {
  Ranges ranges;
  for (std::sregex_iterator match(text.begin(), text.end(), pattern), end; match != end; ++match) {
    CHECK_MESSAGE(ranges.emplace((*match)[1].str(), (*match)[2].str()).second, (*match)[1].str());
  }
  return ranges;
}

std::string between(const std::string& text, const std::string& from, const std::string& to) {
  const std::size_t begin = text.find(from);
  REQUIRE(begin != std::string::npos);
  const std::size_t end = text.find(to, begin);
  REQUIRE(end != std::string::npos);
  return text.substr(begin, end - begin);
}

// A number as the page has it: without ".0" behind it.
std::string plain(const std::string& number) { return std::regex_replace(number, std::regex("\\.0$"), ""); }

Ranges registered_ranges() {
  const std::string code = between(test::text_of("include/yardworth/limits.hpp"), "// Of a strike and of what it flies",
                                   "// Of a shot log, in yards");
  const std::regex limit(R"re(inline constexpr Limits (\w+)\{([^,]+), ([^,}]+)(?:, "([^"]+)")?\};)re");
  Ranges ranges;
  for (std::sregex_iterator match(code.begin(), code.end(), limit), end; match != end; ++match) {
    const std::string unit = (*match)[4].str();
    ranges[(*match)[1]] = plain((*match)[2]) + " to " + plain((*match)[3]) + (unit.empty() ? "" : " " + unit);
  }
  return ranges;
}

}  // namespace

TEST_CASE("the table of limits of a strike in docs/formats.md has the names and ranges of the library") {
  const std::string section = between(test::text_of("docs/formats.md"), "### The limits of a strike", "\n### `");
  const Ranges page = matches(section, std::regex(R"(\n\| `(\w+)` \| ([^|]+) \| [^|]+ \| [^|]+ \|)"));
  const Ranges library = registered_ranges();
  CHECK(library.size() > 30);
  CHECK(page == library);
  for (const auto& limit : library) CHECK_MESSAGE(page.count(limit.first) == 1, limit.first);
  CHECK(test::says(test::text_of("include/yardworth/limits.hpp"), "inline constexpr int most_board_lines = 50;"));
  CHECK(test::says(section, "at most 50 speeds and 50 attack angles (`most_board_lines`)"));
}

TEST_CASE("no limit or tolerance stands in the code of flight or of the command delivery") {
  for (const char* file : {"src/flight/rules.cpp", "src/flight/delivery.cpp", "src/flight/losses.cpp",
                           "src/flight/trajectory.cpp", "src/cli/delivery.cpp"}) {
    CAPTURE(file);
    const std::string code = test::text_of(file);
    CHECK_FALSE(std::regex_search(code, std::regex(R"(constexpr (Limits|double|int) \w+)")));
  }
}

}  // namespace yardworth
