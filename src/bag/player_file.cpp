#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "bag/borrowed.hpp"
#include "input/edit_player.hpp"
#include "yardworth/bag.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/read.hpp"

namespace yardworth {
namespace {

bool same_name(std::string_view one, std::string_view other) { return plain_name(one) == plain_name(other); }

// Spreads and poor strikes as a player's file is to have them: a dozen shots without a poor strike are no golfer
// without any, so that what is typical counts beside every number of shots (docs/model.md, "Few shots").
void draw_to_typical(const TypicalOfClub& typical, ClubMeasure& measure) {
  if (measure.borrowed_share > 0.0) return;  // drawn already
  const double shots = static_cast<double>(measure.shots);
  const double own = shots / (shots + typical_counts_for_shots);
  const auto spread = [&](std::optional<Estimate>& sd, double of_typical) {
    if (sd) sd->value = std::sqrt(own * sd->value * sd->value + (1.0 - own) * of_typical * of_typical);
  };
  spread(measure.carry_sd_yd, typical.mixture.carry_sd_yd);
  spread(measure.direction_sd_rad, typical.mixture.direction_sd_rad);
  if (measure.poor_strike) {
    measure.poor_strike->value = own * measure.poor_strike->value + (1.0 - own) * typical.mixture.poor_strike;
  }
}

std::vector<input::ClubNumbers> numbers_of(const BagResult& result, const Player& golfer, Units units) {
  std::vector<input::ClubNumbers> clubs;
  const double longest_yd = result.clubs.empty() ? 0.0 : result.clubs.front().carry_yd.value;
  for (ClubMeasure measure : result.clubs) {
    if (!measure.carry_sd_yd) continue;  // too few shots, and nothing to borrow
    draw_to_typical(typical_of_club(golfer, measure.club, measure.carry_yd.value, longest_yd), measure);
    input::ClubNumbers club;
    club.club = measure.club;
    club.carry = from_yards(measure.carry_yd.value, units);
    if (measure.total_yd && measure.total_yd->value >= measure.carry_yd.value) {
      club.roll = from_yards(measure.total_yd->value - measure.carry_yd.value, units);
    }
    club.carry_sd = from_yards(measure.carry_sd_yd->value, units);
    if (measure.direction_sd_rad) club.direction_sd = degrees(measure.direction_sd_rad->value);
    // A miss to one side that may as well be none is not written: the best shots would be aimed against it.
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
      "# Measured shots. Carries are those of solid strikes; spreads and poor strikes are drawn towards what is "
      "typical\n"
      "# of such a golfer, which counts for ten shots.\n"
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
    text = input::edit_player(*existing, numbers_of(result, golfer, before.value->units), same_name);
    if (text.empty()) {
      return {std::nullopt,
              {file_fault(file, "clubs that do not begin on lines of their own", "one club a line, to be changed")}};
    }
  } else {
    text = new_file(golfer, numbers_of(result, golfer, result.units), result.units);
  }
  const Reading<Player> written = read_player(text, file);
  if (!written.ok()) return {std::nullopt, written.findings};
  return {std::move(text), {}};
}

}  // namespace yardworth
