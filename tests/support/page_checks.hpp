#pragma once

#include <doctest/doctest.h>

#include <regex>
#include <set>
#include <string>
#include <vector>

#include "support/well_formed.hpp"
#include "support/words.hpp"

namespace yardworth::test {

// What holds of every page of HTML that is made.

// The first group of every match.
inline std::vector<std::string> all_matches(const std::string& text, const std::string& pattern) {
  const std::regex regex(pattern);
  std::vector<std::string> found;
  for (std::sregex_iterator at(text.begin(), text.end(), regex), end; at != end; ++at) found.push_back((*at)[1].str());
  return found;
}

// One after the other; where the last one begins.
inline std::size_t check_says_in_order(const std::string& html, const std::vector<std::string>& in_order) {
  std::size_t at = 0;
  for (const std::string& words : in_order) {
    CAPTURE(words);
    at = html.find(words, at);
    REQUIRE(at != std::string::npos);
  }
  return at;
}

inline void check_stands_by_itself(const std::string& html) {
  check_well_formed(html);
  for (const char* reach_out : {"<script", "src=", "href", "@import", "<link", "<image", "<iframe", "onload"}) {
    CAPTURE(reach_out);
    CHECK_FALSE(says(html, reach_out));
  }
  // Addresses are names of what the file is written in, no more; what fills a shape is in the file.
  for (const std::string& before : all_matches(html, "(.{7})https?:")) CHECK(before == "xmlns=\"");
  for (const std::string& first : all_matches(html, "url\\((.)")) CHECK(first == "#");
  const std::vector<std::string> ids = all_matches(html, " id=\"([^\"]*)\"");
  const std::set<std::string> different(ids.begin(), ids.end());
  CHECK(different.size() == ids.size());
  for (const std::string& used : all_matches(html, "url\\(#([^)]*)\\)")) CHECK(different.count(used) == 1);
  CHECK_FALSE(std::regex_search(html, std::regex("[^a-z]nan[^a-z]|[^a-z]inf[^a-z]")));
}

}  // namespace yardworth::test
