#include "core/spelling.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cctype>
#include <string_view>
#include <utility>

namespace yardworth {
namespace {

// Insertions, deletions, replacements and swaps of neighbours that turn one word into the other (optimal string
// alignment).
std::size_t edit_distance(const std::string& a, const std::string& b) {
  std::vector<std::vector<std::size_t>> cost(a.size() + 1, std::vector<std::size_t>(b.size() + 1));
  for (std::size_t i = 0; i <= a.size(); ++i) cost[i][0] = i;
  for (std::size_t j = 0; j <= b.size(); ++j) cost[0][j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t replaced = cost[i - 1][j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
      cost[i][j] = std::min({cost[i - 1][j] + 1, cost[i][j - 1] + 1, replaced});
      const bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
      if (swapped) cost[i][j] = std::min(cost[i][j], cost[i - 2][j - 2] + 1);
    }
  }
  return cost[a.size()][b.size()];
}

// What golfers write for a word of ours (common practice, no source).
constexpr std::pair<std::string_view, std::string_view> other_words[] = {
    {"water", "penalty_area"},
    {"water hazard", "penalty_area"},
    {"pond", "penalty_area"},
    {"lake", "penalty_area"},
    {"creek", "penalty_area"},
    {"ditch", "penalty_area"},
    {"sand", "bunker"},
    {"trap", "bunker"},
    {"ob", "out_of_bounds"},
    {"oob", "out_of_bounds"},
    {"tree", "trees"},
    {"wood", "trees"},
    {"woods", "trees"},
    {"r", "right"},
    {"l", "left"},
    {"rh", "right"},
    {"lh", "left"},
    {"man", "men"},
    {"male", "men"},
    {"m", "men"},
    {"woman", "women"},
    {"female", "women"},
    {"f", "women"},
    {"w", "women"},
    {"ladies", "women"},
    {"m.", "men"},
    {"meters", "metres"},
    {"meter", "metres"},
    {"metre", "metres"},
    {"yds", "yards"},
    {"yard", "yards"},
    {"yd", "yards"},
    {"hard", "firm"},
    {"wet", "soft"},
    {"hcp", "handicap_index"},
    {"handicap", "handicap_index"},
};

// The word of ours that another one stands for, where it is among the candidates.
std::optional<std::string> word_for(const std::string& word, const std::vector<std::string>& candidates) {
  const std::string small = small_letters(word);
  for (const auto& [other, ours] : other_words) {
    if (small == other && std::find(candidates.begin(), candidates.end(), ours) != candidates.end()) {
      return std::string(ours);
    }
  }
  return std::nullopt;
}

}  // namespace

std::string small_letters(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return text;
}

std::optional<std::string> nearest_word(const std::string& word, const std::vector<std::string>& candidates) {
  if (auto ours = word_for(word, candidates)) return ours;
  constexpr std::size_t longest_word = 40;
  if (word.size() > longest_word) return std::nullopt;
  std::optional<std::string> best;
  std::size_t best_distance = std::max<std::size_t>(1, word.size() / 3) + 1;
  for (const std::string& candidate : candidates) {
    const std::size_t distance = edit_distance(small_letters(word), small_letters(candidate));
    const bool near = distance < best_distance && distance < candidate.size();
    if (!near) continue;
    best_distance = distance;
    best = candidate;
  }
  return best;
}

std::string one_of(const std::string& word, const std::vector<std::string>& words) {
  const std::string all = fmt::format("one of {}", fmt::join(words, ", "));
  if (const auto ours = word_for(word, words))
    return fmt::format("{}; the words are {}", *ours, fmt::join(words, ", "));
  const auto meant = nearest_word(word, words);
  return meant ? fmt::format("{}; the nearest is {}", all, *meant) : all;
}

}  // namespace yardworth
