#include <algorithm>
#include <cctype>
#include <vector>

#include "core/number_text.hpp"
#include "player/skill.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

std::string_view name(Band band) {
  switch (band) {
    case Band::tour:
      return "tour";
    case Band::scratch:
      return "scratch";
    case Band::below_6:
      return "below 6";
    case Band::from_6_to_12:
      return "6-12";
    case Band::from_13_to_20:
      return "13-20";
    case Band::from_21:
      return "21 and over";
    case Band::bogey:
      return "bogey";
  }
  return "";
}

std::string_view name(Gender gender) { return gender == Gender::men ? "men" : "women"; }

std::string_view name(Lie lie) {
  switch (lie) {
    case Lie::tee:
      return "tee";
    case Lie::fairway:
      return "fairway";
    case Lie::rough:
      return "rough";
    case Lie::bunker:
      return "bunker";
    case Lie::recovery:
      return "recovery";
    case Lie::green:
      return "green";
  }
  return "";
}

std::optional<Band> band_named(std::string_view text) {
  const auto* found = std::find_if(all_bands.begin(), all_bands.end(), [&](Band band) { return name(band) == text; });
  return found == all_bands.end() ? std::nullopt : std::optional<Band>(*found);
}

std::optional<Gender> gender_named(std::string_view text) {
  if (text == name(Gender::men)) return Gender::men;
  if (text == name(Gender::women)) return Gender::women;
  return std::nullopt;
}

Band band_of(double handicap_index) {
  // A Handicap Index has one decimal: 12.4 rounds to 12, 12.5 to 13.
  if (handicap_index < 6.0) return Band::below_6;
  if (handicap_index < 12.5) return Band::from_6_to_12;
  if (handicap_index < 20.5) return Band::from_13_to_20;
  return Band::from_21;
}

double typical_handicap_index(Band band, Gender gender) {
  // The middle of a band where it has two ends; tour and 21 and over: common practice, no source. Bogey: the middle of
  // 17.5 to 22.4 (men) and 21.5 to 26.4 (women), USGA Course Rating System manual, as quoted.
  switch (band) {
    case Band::tour:
      return -6.0;
    case Band::scratch:
      return 0.0;
    case Band::below_6:
      return 3.0;
    case Band::from_6_to_12:
      return 9.0;
    case Band::from_13_to_20:
      return 16.5;
    case Band::from_21:
      return 26.0;
    case Band::bogey:
      return gender == Gender::men ? 20.0 : 24.0;
  }
  return 0.0;
}

namespace {

// Words and numbers of a club's name in small letters: "7i" and "7-Iron" give "7", "i" and "7", "iron".
std::vector<std::string> words_of(std::string_view text) {
  enum class Sort { none, letter, digit };
  std::vector<std::string> words;
  Sort last = Sort::none;
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    const Sort sort = std::isdigit(byte) ? Sort::digit : std::isalpha(byte) ? Sort::letter : Sort::none;
    if (sort != Sort::none) {
      if (sort != last) words.emplace_back();
      words.back() += static_cast<char>(std::tolower(byte));
    }
    last = sort;
  }
  return words;
}

int first_number(const std::vector<std::string>& words) {
  for (const std::string& word : words) {
    if (const auto number = parse_whole_number(word)) return *number;
  }
  return 0;
}

}  // namespace

ClubName parse_club_name(std::string_view text) {
  const std::vector<std::string> words = words_of(text);
  const auto has = [&](std::initializer_list<const char*> any) {
    return std::any_of(any.begin(), any.end(),
                       [&](const char* word) { return std::find(words.begin(), words.end(), word) != words.end(); });
  };
  const int number = first_number(words);
  if (has({"wedge", "pw", "aw", "gw", "sw", "lw", "degree", "degrees"})) return {ClubKind::wedge, 0};
  if (has({"driver"}) && !has({"mini"})) return {ClubKind::driver, 0};
  if (has({"hybrid", "utility", "h"})) return {ClubKind::hybrid, number};
  if (has({"iron", "i"})) return {ClubKind::iron, number};
  if (has({"wood", "w", "mini"})) return number == 1 ? ClubName{ClubKind::driver, 0} : ClubName{ClubKind::wood, number};
  return {};
}

}  // namespace yardworth
