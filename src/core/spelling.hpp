#pragma once

#include <optional>
#include <string>
#include <vector>

namespace yardworth {

// The letters A to Z small, everything else as it is.
std::string small_letters(std::string text);

// The candidate that a misspelt word was most likely meant to be, if one is near enough.
std::optional<std::string> nearest_word(const std::string& word, const std::vector<std::string>& candidates);

// What is expected where a word is none of these: "one of left, right; the nearest is left".
std::string one_of(const std::string& word, const std::vector<std::string>& words);

}  // namespace yardworth
