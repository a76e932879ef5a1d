#pragma once

#include <optional>
#include <string>
#include <vector>

namespace yardworth {

// The letters A to Z small, everything else as it is.
std::string small_letters(std::string text);

// The candidate that a misspelt word, or another word of the trade for it, was most likely meant to be, if one is near
// enough: "OB" is out_of_bounds.
std::optional<std::string> nearest_word(const std::string& word, const std::vector<std::string>& candidates);

// What is expected where a word is none of these: "one of left, right; the nearest is left", or, for another word of
// the trade, "right; the words are left, right".
std::string one_of(const std::string& word, const std::vector<std::string>& words);

}  // namespace yardworth
