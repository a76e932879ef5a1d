#include "report/bag_parts.hpp"

#include <fmt/format.h>

#include <cmath>

#include "core/distance_words.hpp"
#include "core/message_text.hpp"
#include "gain/what_was_asked.hpp"
#include "report/basis_words.hpp"
#include "report/sentence_words.hpp"
#include "report/text.hpp"

namespace yardworth::report {
namespace {

std::string one_number(double value, const BagNumber& number, Units units) {
  if (number.share) return percent(value);
  const double shown = number.length ? from_yards(value, units) : number.factor * value;
  const std::string text = fixed(shown, number.decimals);
  return number.sign ? with_plus(text) : text;
}

std::string few_words(const BagNote& note) {
  return fmt::format("{} of {}: fewer than {}", note.shots == 1 ? "one shot" : fmt::format("{} shots", note.shots),
                     shortened(note.club), fewest_own_shots);
}

std::string note_words(const BagNote& note, const BagResult& result) {
  switch (note.kind) {
    case BagNote::Kind::too_few_shots:
      return few_words(note) +
             " tell a carry alone. With the golfer's Handicap Index the rest can be borrowed from golfers like that.";
    case BagNote::Kind::borrowed: {
      for (const ClubMeasure& club : result.clubs) {
        if (club.club != note.club) continue;
        return fmt::format(
            "{}, so {} of its spreads and poor strikes and {} of its carry are borrowed from what is typical of the "
            "golfer (shrinkage; docs/model.md, \"Few shots\").",
            few_words(note), percent(club.borrowed_share), percent(club.carry_borrowed_share));
      }
      return few_words(note) + ".";
    }
    case BagNote::Kind::no_typical_carry:
      return fmt::format("No carry is typical of {}, so its own is taken as it is.", shortened(note.club));
    case BagNote::Kind::all_the_same:
      return fmt::format(
          "All {} carries of {} are the same: no golfer is as even, so its spread is not to be believed.", note.shots,
          shortened(note.club));
    case BagNote::Kind::unknown_club:
      return fmt::format("{} is no name of a driver, wood, hybrid, iron or wedge: it is measured like any other.",
                         quoted(note.club));
    case BagNote::Kind::not_in_bag:
      return fmt::format("The player's file has no {}.", shortened(note.club));
    case BagNote::Kind::like_metres:
      return fmt::format(
          "The carries are {:.2f} of what such ball speeds, launch angles and spins fly: they may be metres that are "
          "called yards. If so, the column's name is carry_m.",
          note.ratio);
    case BagNote::Kind::unlike_golfer:
      return fmt::format("No such golfer has these carries: if they are {}, the column's name is {}.",
                         result.units == Units::yards ? "metres" : "yards",
                         result.units == Units::yards ? "carry_m" : "carry_yd");
    case BagNote::Kind::odd_smash:
      return fmt::format(
          "Ball speed over club head speed is {:.2f}, which no strike has: one of the columns is in another unit than "
          "its name says.",
          note.ratio);
  }
  return "";
}

}  // namespace

std::vector<BagNumber> bag_numbers() {
  const double in_degrees = degrees(1.0);
  return {
      {"carry",
       "carry",
       0,
       true,
       false,
       false,
       1.0,
       {},
       [](const ClubMeasure& club) { return std::optional(club.carry_yd); }},
      {"total", "total", 0, true, false, false, 1.0, {}, [](const ClubMeasure& club) { return club.total_yd; }},
      {"gap", "gap", 0, true, false, false, 1.0, {}, [](const ClubMeasure& club) { return club.gap_yd; }},
      {"poor_strike_probability",
       "poor strikes",
       0,
       false,
       true,
       false,
       1.0,
       {},
       [](const ClubMeasure& club) { return club.poor_strike; }},
      {"carry_sd",
       "spread of carry",
       1,
       true,
       false,
       false,
       1.0,
       {},
       [](const ClubMeasure& club) { return club.carry_sd_yd; }},
      {"direction_sd_deg", "spread of direction", 1, false, false, false, in_degrees, "degrees",
       [](const ClubMeasure& club) { return club.direction_sd_rad; }},
      {"direction_mean_deg", "mean direction", 1, false, false, true, in_degrees, "degrees",
       [](const ClubMeasure& club) { return club.direction_mean_rad; }},
      {"smash_factor",
       "smash factor",
       2,
       false,
       false,
       false,
       1.0,
       {},
       [](const ClubMeasure& club) { return club.smash_factor; }},
      {"club_speed_mph", "club head speed", 1, false, false, false, to_mph(1.0), "mph",
       [](const ClubMeasure& club) { return club.club_speed_mps; }},
  };
}

std::string with_plus(const std::string& number) {
  const bool positive = number.front() != '-' && number.find_first_not_of("0.") != std::string::npos;
  return positive ? "+" + number : number;
}

std::string heading_of(std::string_view words, const BagNumber& number, Units units) {
  const std::string_view unit = number.length ? name(units) : number.unit;
  return unit.empty() ? std::string(words) : fmt::format("{}, {}", words, unit);
}

std::string estimate_words(const std::optional<Estimate>& estimate, const BagNumber& number, Units units) {
  if (!estimate) return "";
  const std::string value = one_number(estimate->value, number, units);
  const bool known = std::isfinite(estimate->low) && std::isfinite(estimate->high);
  if (!known) return value + " (?)";
  return fmt::format("{} ({} to {})", value, one_number(estimate->low, number, units),
                     one_number(estimate->high, number, units));
}

std::string change_words(const std::optional<Estimate>& change, const BagNumber& number, Units units) {
  if (!change) return "";
  const auto shown = [&](double value) {
    const double in_units = number.length ? from_yards(value, units) : number.factor * value;
    const std::string text = number.share ? fixed(100.0 * value, 0) : fixed(in_units, number.decimals);
    return number.sign ? with_plus(text) : text;
  };
  if (!std::isfinite(change->low) || !std::isfinite(change->high)) return shown(change->value) + " (?)";
  return fmt::format("{} ({} to {})", shown(change->value), shown(change->low), shown(change->high));
}

std::string why_words(const OutlyingShot& shot, Units units) {
  std::string words = fmt::format("{} of {}", shortened(shot.club), distance_words(shot.carry_yd, units));
  if (shot.direction_rad) words += fmt::format(", {} degrees off line", signed_tenths(degrees(*shot.direction_rad)));
  switch (shot.why) {
    case OutlyingShot::Why::longer:
      return words + ": longer than any strike of the club";
    case OutlyingShot::Why::shorter:
      return words + ": shorter than any strike of the club, solid or poor";
    case OutlyingShot::Why::wider:
      return words + ": further off line than its other strikes go";
  }
  return words;
}

std::vector<std::string> bag_notes(const BagResult& result) {
  std::vector<std::string> words;
  for (const BagNote& note : result.notes) words.push_back(note_words(note, result));
  words.emplace_back(
      "Every interval is of 90%. Carry and spreads are those of solid strikes; a strike counts as much as it is likely "
      "to be solid (docs/model.md, \"What shots say\"). Shots are taken to be independent: one session is one day.");
  if (result.sessions.size() > 1) {
    words.push_back(fmt::format("Shots of {} sessions are taken together: {}. --sessions compares two of them.",
                                result.sessions.size(), session_names(result.sessions)));
  }
  if (!result.outliers.empty()) {
    words.emplace_back(
        "Outliers are among the shots that are counted. A carry that no strike of the club has weighs nothing in other "
        "numbers, and a direction far off counts for little.");
  }
  if (result.skipped_rows > 0) {
    words.push_back(fmt::format("{} of the log could not be read and {} left out, as was asked for.",
                                result.skipped_rows == 1 ? "One row" : fmt::format("{} rows", result.skipped_rows),
                                result.skipped_rows == 1 ? "is" : "are"));
  }
  return words;
}

std::vector<std::string> bag_cautions() {
  std::vector<std::string> words = all_caution_words({{Caution::Kind::swing_changes_load_the_body}});
  words.emplace_back(
      "Measure with clubs and balls that conform to the rules, the same ball each time: many range balls fly shorter.");
  return words;
}

}  // namespace yardworth::report
