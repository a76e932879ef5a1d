#include <doctest/doctest.h>

#include <map>
#include <regex>
#include <string>

#include "support/scenario.hpp"

namespace yardworth {
namespace {

using Settings = std::map<std::string, std::string>;  // name, default

// Runs of white space as one space, so that a default may stand on two lines.
std::string on_one_line(const std::string& text) { return std::regex_replace(text, std::regex("\\s+"), " "); }

Settings all_matches(const std::string& text, const std::regex& pattern) {
  Settings settings;
  for (std::sregex_iterator match(text.begin(), text.end(), pattern), end; match != end; ++match) {
    const bool is_new = settings.emplace((*match)[1].str(), (*match)[2].str()).second;
    CHECK_MESSAGE(is_new, (*match)[1].str());
  }
  return settings;
}

Settings registered() {
  const std::string code = on_one_line(test::text_of("src/core/numerics.hpp"));
  Settings settings = all_matches(code, std::regex(R"(inline constexpr [^=;]*?(\w+) = ([^;]+);)"));
  for (auto& [name, value] : settings) {
    if (value == "std::numeric_limits<double>::infinity()") value = "infinity";
  }
  return settings;
}

Settings on_the_page() {
  return all_matches(test::text_of("docs/performance.md"), std::regex(R"(\n\| `(\w+)` \| `([^`]+)` \|)"));
}

}  // namespace

TEST_CASE("the table of settings in docs/performance.md has the names and defaults of the registry") {
  const Settings in_code = registered();
  const Settings told = on_the_page();
  CHECK(in_code.size() > 100);
  for (const auto& setting : in_code) {
    CAPTURE(setting.first);
    REQUIRE(told.count(setting.first) == 1);
    CHECK(told.at(setting.first) == setting.second);
  }
  for (const auto& setting : told) CHECK_MESSAGE(in_code.count(setting.first) == 1, setting.first);
}

}  // namespace yardworth
