#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/distance_words.hpp"
#include "report/bag_parts.hpp"
#include "report/sentence_words.hpp"
#include "report/text.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace report {
namespace {

std::string few_shots_words(const ClubChange& change) {
  return fmt::format("{}: too few shots to tell ({} before, {} after; {} each at least).", shown_name(change.club),
                     change.before.shots, change.after.shots, fewest_own_shots);
}

std::string more_shots_words(const ClubChange& change) {
  if (!change.more_shots) return ".";
  return fmt::format("; about {} more {} each would, if it is what it seems.", *change.more_shots,
                     *change.more_shots == 1 ? "shot" : "shots");
}

// What is sure of the club head's speed, and what the carry has of it where the answer leaves it out.
std::string speed_words(const ClubChange& change, Units units) {
  const auto& speed = change.club_speed_mps;
  if (!speed || (speed->low <= 0.0 && speed->high >= 0.0)) return "";
  const bool faster = speed->value > 0.0;
  const auto mph = [&](double mps) { return fixed(to_mph(faster ? mps : -mps), 1); };
  const std::string words =
      fmt::format(" The club head is {} mph {} ({} to {})", mph(speed->value), faster ? "faster" : "slower",
                  mph(faster ? speed->low : speed->high), mph(faster ? speed->high : speed->low));
  if (!change.at_equal_club_speed_yd) return words + ".";
  const auto carry = [&](double yards) { return with_plus(fixed(from_yards(yards, units), 0)); };
  return fmt::format("{}; with that carry changes by {} ({} to {}).", words, carry(change.carry_yd.value),
                     carry(change.carry_yd.low), carry(change.carry_yd.high));
}

}  // namespace

std::string_view verdict_words(ClubChange::Verdict verdict) {
  switch (verdict) {
    case ClubChange::Verdict::real:
      return "real";
    case ClubChange::Verdict::cannot_tell:
      return "cannot tell";
    case ClubChange::Verdict::too_few_shots:
      return "too few shots";
  }
  return "";
}

std::vector<std::string> comparison_notes(const BagComparison& comparison) {
  std::vector<std::string> words;
  const auto with_speed = std::count_if(comparison.changes.begin(), comparison.changes.end(),
                                        [](const ClubChange& one) { return one.at_equal_club_speed_yd.has_value(); });
  if (with_speed > 0) {
    words.emplace_back(
        "At the same club speed: what a shot gains by its strike and not by its speed, since shots hit harder are not "
        "shots hit better.");
  } else if (!comparison.changes.empty()) {
    words.emplace_back(
        "Without club head speeds on both sides nobody knows whether the ball was struck better or only harder.");
  }
  words.emplace_back(
      "Changes are compared by Welch, which lets the spreads before and after differ; \"real\" is an interval of 90% "
      "without 0 in it. The number of more shots is the one that would do if the change is what it seems; by chance "
      "half "
      "of all such changes need more.");
  if (comparison.changes.size() > 1) {
    words.push_back(fmt::format(
        "{} clubs are compared. Of clubs that did not change at all one in ten is called real, and up to one in five "
        "where many shots are mild misses, neither solid nor poor.",
        comparison.changes.size()));
  }
  for (const ClubChange& change : comparison.changes) {
    if (!change.club_speed_mps || change.at_equal_club_speed_yd) continue;
    words.push_back(fmt::format(
        "{}: the club head speeds before and after lie too far apart to tell what carries were at the same one.",
        shown_name(change.club)));
  }
  const auto alone = [&](const std::vector<std::string>& clubs, const std::string& where) {
    std::string names;
    for (const std::string& club : clubs) names += (names.empty() ? "" : ", ") + shown_name(club);
    if (!names.empty()) words.push_back(fmt::format("Only in {}: {}.", shown_name(where), names));
  };
  alone(comparison.only_before, comparison.before);
  alone(comparison.only_after, comparison.after);
  return words;
}

}  // namespace report

std::string change_sentence(const ClubChange& change, Units units) {
  if (change.verdict == ClubChange::Verdict::too_few_shots) return report::few_shots_words(change);
  const Estimate& answer = change.answer();
  const auto shown = [&](double yards) { return fixed(from_yards(yards, units), 0); };
  const std::string where = change.at_equal_club_speed_yd ? " at the same club speed" : "";
  const std::string club = report::shown_name(change.club);
  if (change.verdict == ClubChange::Verdict::cannot_tell) {
    return fmt::format("{} {} {}{} ({} to {}): cannot tell yet{}{}", club, report::with_plus(shown(answer.value)),
                       unit_after(shown(std::abs(answer.value)), units), where, report::with_plus(shown(answer.low)),
                       report::with_plus(shown(answer.high)), report::more_shots_words(change),
                       report::speed_words(change, units));
  }
  const bool longer = answer.value > 0.0;
  const std::string number = shown(std::abs(answer.value));
  const double least = longer ? answer.low : -answer.high;
  // What is called real does not go down to 0.
  const std::string down_to = shown(least) == "0" ? fixed(from_yards(least, units), 1) : shown(least);
  return fmt::format("{} {} {} {}{} ({} to {}): real.{}", club, number, unit_after(number, units),
                     longer ? "longer" : "shorter", where, down_to == "0.0" ? "just over 0" : down_to,
                     shown(longer ? answer.high : -answer.low), report::speed_words(change, units));
}

}  // namespace yardworth
