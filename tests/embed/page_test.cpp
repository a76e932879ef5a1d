#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <regex>
#include <string>
#include <vector>

#include "embed/question.hpp"
#include "support/scenario.hpp"
#include "support/words.hpp"

// docs/embedding.md has every command and every option of the embedding function, and none besides.

namespace yardworth {
namespace {

using Words = std::vector<std::string>;

Words quoted_words(const std::string& text) {
  const std::regex quoted("`([a-z_]+)`");
  Words words;
  for (std::sregex_iterator match(text.begin(), text.end(), quoted), end; match != end; ++match) {
    words.push_back((*match)[1].str());
  }
  return words;
}

// The options of each command by the rows of the table below "| command | options |".
std::map<std::string, Words> options_on_the_page() {
  const Words lines = test::lines_of(test::text_of("docs/embedding.md"));
  auto line = std::find(lines.begin(), lines.end(), "| command | options |");
  REQUIRE(line != lines.end());
  std::map<std::string, Words> options;
  for (line += 2; line != lines.end() && line->starts_with("|"); ++line) {
    const Words words = quoted_words(*line);
    REQUIRE_FALSE(words.empty());
    options[words.front()] = {words.begin() + 1, words.end()};
  }
  return options;
}

}  // namespace

TEST_CASE("docs/embedding.md has the options of every command of the embedding function") {
  const auto page = options_on_the_page();
  CHECK(page.size() == embed::command_words.size());
  for (const std::string_view word : embed::command_words) {
    CAPTURE(word);
    const auto on_page = page.find(std::string(word));
    REQUIRE(on_page != page.end());
    Words told = on_page->second;
    Words known = embed::option_names(*embed::command_named(word));
    std::sort(told.begin(), told.end());
    std::sort(known.begin(), known.end());
    CHECK(told == known);
  }
}

}  // namespace yardworth
