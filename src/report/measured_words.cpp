#include "report/measured_words.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>

#include "gain/golfers.hpp"
#include "report/sentence_words.hpp"
#include "report/text.hpp"
#include "yardworth/report.hpp"

namespace yardworth::report {
namespace {

std::string listed(const std::vector<std::string>& clubs) {
  std::vector<std::string> names;
  for (const std::string& club : clubs) names.push_back(shown_name(club));
  return fmt::format("{}", fmt::join(names, ", "));
}

}  // namespace

std::string after_words(const std::string& label) {
  return fmt::format(
      "After: the clubs of {}. What is typical of a Handicap Index in either file, the short game and putting stay as "
      "they are.",
      shown_name(label));
}

std::vector<std::string> measured_words(const MeasuredChange& measured, const Player& player, Units units) {
  std::vector<std::string> words;
  bool driver = false;
  bool others = false;
  for (const MeasuredClub& club : measured.clubs) {
    words.push_back("Measured: " + change_sentence(club.change, units));
    const Club* of_bag = club_named(player, club.club);
    (of_bag->kind == ClubKind::driver ? driver : others) = true;
  }
  if (!measured.few_shots.empty()) {
    words.push_back(fmt::format("Too few shots, before or after, to say anything of: {}.", listed(measured.few_shots)));
  }
  if (!measured.not_in_bag.empty()) {
    words.push_back(fmt::format("Measured, and not among the player's clubs: {}.", listed(measured.not_in_bag)));
  }
  const bool has_driver = player.clubs.front().kind == ClubKind::driver;
  if (has_driver && !driver) words.emplace_back("The driver was not measured before and after, and stays as it is.");
  if (others && measured.clubs.size() + (driver ? 0 : 1) < player.clubs.size()) {
    words.emplace_back(
        "Clubs below the driver that were not measured gain carry in proportion to it, as much as those that were.");
  } else if (!others) {
    words.emplace_back("No club below the driver was measured before and after: they stay as they are.");
  }
  words.emplace_back(
      "Each change is taken for what it was measured to be, real or not; mean directions are not taken.");
  return words;
}

std::string interval_sentence(const GainResult& result) {
  if (!result.interval) return "";
  const SavedInterval& interval = *result.interval;
  const bool best = interval.policy == PolicyChoice::best;
  const PolicyGain& gain = best ? *result.best : *result.habit;
  const double saved = gain.round.strokes_saved();
  const std::string strokes = fixed(saved, 1);
  return fmt::format(
      "As sure as the shots make it: {} {} a round under the {} plan, {} to {} ({:.0f} in 100 of {} draws of what was "
      "measured).",
      strokes, strokes == "1.0" ? "stroke" : "strokes", best ? "best" : "habit", fixed(interval.low, 1),
      fixed(interval.high, 1), 100.0 * interval.level, interval.draws);
}

}  // namespace yardworth::report
