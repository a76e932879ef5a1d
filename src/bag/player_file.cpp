#include <fmt/format.h>

#include <algorithm>

#include "input/edit_player.hpp"
#include "yardworth/bag.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/read.hpp"

namespace yardworth {
namespace {

bool same_name(std::string_view one, std::string_view other) { return plain_name(one) == plain_name(other); }

std::vector<input::ClubNumbers> numbers_of(const BagResult& result, Units units) {
  std::vector<input::ClubNumbers> clubs;
  for (const ClubMeasure& measure : result.clubs) {
    if (!measure.carry_sd_yd) continue;  // too few shots, and nothing to borrow
    input::ClubNumbers club;
    club.club = measure.club;
    club.carry = from_yards(measure.carry_yd.value, units);
    if (measure.total_yd && measure.total_yd->value >= measure.carry_yd.value) {
      club.roll = from_yards(measure.total_yd->value - measure.carry_yd.value, units);
    }
    club.carry_sd = from_yards(measure.carry_sd_yd->value, units);
    if (measure.direction_sd_rad) club.direction_sd = degrees(measure.direction_sd_rad->value);
    // A miss to one side that may as well be none is not written: plans would aim against it.
    if (const auto& mean = measure.direction_mean_rad; mean && (mean->low > 0.0 || mean->high < 0.0)) {
      club.direction_mean = degrees(mean->value);
    }
    if (measure.poor_strike) club.poor_strike = measure.poor_strike->value;
    clubs.push_back(std::move(club));
  }
  return clubs;
}

std::string new_file(const Player& golfer, const std::vector<input::ClubNumbers>& clubs, Units units) {
  std::string label = golfer.label;
  std::replace_if(
      label.begin(), label.end(), [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == '"' || c == '\\'; },
      ' ');
  std::string text = fmt::format(
      "# Measured shots; spreads and poor strikes are those of solid strikes.\n"
      "format: yardworth/player/1\nlabel: \"{}\"\n",
      label);
  text += golfer.handicap_index ? fmt::format("handicap_index: {:.1f}\n", *golfer.handicap_index)
                                : fmt::format("band: {}\n", name(golfer.band));
  text += fmt::format("gender: {}\nunits: {}\nclubs:\n", name(golfer.gender), name(units));
  for (const input::ClubNumbers& club : clubs) text += "  - " + input::club_line(club) + "\n";
  return text;
}

}  // namespace

Reading<std::string> write_measured_player(const BagResult& result, const Player& golfer,
                                           const std::optional<std::string>& existing, const std::string& file) {
  std::string text;
  if (existing) {
    const Reading<Player> before = read_player(*existing, file);
    if (!before.ok()) return {std::nullopt, before.findings};
    text = input::edit_player(*existing, numbers_of(result, before.value->units), same_name);
    if (text.empty()) {
      return {std::nullopt,
              {file_fault(file, "clubs that do not begin on lines of their own", "one club a line, to be changed")}};
    }
  } else {
    text = new_file(golfer, numbers_of(result, result.units), result.units);
  }
  const Reading<Player> written = read_player(text, file);
  if (!written.ok()) return {std::nullopt, written.findings};
  return {std::move(text), {}};
}

}  // namespace yardworth
