#include "report/change_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/distance_words.hpp"
#include "report/text.hpp"
#include "yardworth/diagnostics.hpp"

namespace yardworth::report {
namespace {

constexpr std::size_t most_clubs_named = 2;

// The part of a change of single clubs that a step is about.
double OwnChange::*own_part(ChangeStep step) {
  switch (step) {
    case ChangeStep::carry_spread:
      return &OwnChange::carry_sd_share;
    case ChangeStep::direction_spread:
      return &OwnChange::direction_sd_share;
    case ChangeStep::mean_direction:
      return &OwnChange::direction_mean_rad;
    case ChangeStep::poor_strikes:
      return &OwnChange::poor_strike;
    default:
      return &OwnChange::carry_yd;
  }
}

std::vector<OwnChange> clubs_of(const Change& change, ChangeStep step) {
  std::vector<OwnChange> clubs;
  for (const OwnChange& own : change.clubs) {
    const bool rolls = step == ChangeStep::club_carry && own.roll_yd != 0.0;
    if (own.*own_part(step) != 0.0 || rolls) clubs.push_back(own);
  }
  return clubs;
}

// "with the 9-iron", "with 5 clubs".
std::string with_clubs(const std::vector<OwnChange>& clubs) {
  if (clubs.size() == 1) return "with the " + escape_control(clubs.front().club);
  return fmt::format("with {} clubs", clubs.size());
}

std::string percent_words(double share, const std::string& of_what) {
  return fmt::format("{}% {} spread {}", plain_number(std::abs(100.0 * share)), share < 0.0 ? "less" : "more", of_what);
}

struct Phrase {
  std::string text;
  bool singular = true;
};
using Phrases = std::vector<Phrase>;

void add_carries(const Change& change, Units units, Phrases& phrases) {
  if (change.driver_carry_yd != 0.0 || change.irons_carry_yd != 0.0) {
    const Subject carry = carry_subject(change.carry(), units);
    phrases.push_back({carry.text, carry.singular});
  }
  const std::vector<OwnChange> clubs = clubs_of(change, ChangeStep::club_carry);
  if (clubs.size() > most_clubs_named) return phrases.push_back({"another carry " + with_clubs(clubs)});
  for (const OwnChange& own : clubs) {
    const std::string number = plain_number(std::abs(from_yards(own.carry_yd, units)));
    if (own.carry_yd == 0.0) phrases.push_back({"another roll with the " + escape_control(own.club)});
    if (own.carry_yd == 0.0) continue;
    phrases.push_back({fmt::format("{} {} {} with the {}", number, own.carry_yd < 0.0 ? "fewer" : "more",
                                   unit_after(number, units), escape_control(own.club)),
                       number == "1"});
  }
}

void add_spread(const Change& change, ChangeStep step, double of_all, const std::string& of_what, Phrases& phrases) {
  if (of_all != 0.0) phrases.push_back({percent_words(of_all, of_what)});
  const std::vector<OwnChange> clubs = clubs_of(change, step);
  if (clubs.size() == 1) {
    phrases.push_back({percent_words(clubs.front().*own_part(step), of_what) + " " + with_clubs(clubs)});
  } else if (!clubs.empty()) {
    phrases.push_back({fmt::format("another spread {} {}", of_what, with_clubs(clubs))});
  }
}

void add_turn(const Change& change, Phrases& phrases) {
  const auto turned = [](double angle_rad) {
    const std::string amount = plain_number(std::abs(degrees(angle_rad)));
    return fmt::format("shots that start {} degree{} further {}", amount, amount == "1" ? "" : "s",
                       angle_rad < 0.0 ? "left" : "right");
  };
  if (change.direction_mean_rad != 0.0) phrases.push_back({turned(change.direction_mean_rad), false});
  const std::vector<OwnChange> clubs = clubs_of(change, ChangeStep::mean_direction);
  if (clubs.size() == 1) {
    phrases.push_back({turned(clubs.front().direction_mean_rad) + " " + with_clubs(clubs), false});
  } else if (!clubs.empty()) {
    phrases.push_back({"another mean direction " + with_clubs(clubs)});
  }
}

void add_poor_strikes(const Change& change, Phrases& phrases) {
  const auto in_100 = [](double added) {
    const std::string number = plain_number(std::abs(100.0 * added));
    const std::string strikes = number == "1" ? "strike" : "strikes";
    return Phrase{fmt::format("{} {} poor {} in 100", number, added < 0.0 ? "fewer" : "more", strikes), number == "1"};
  };
  if (change.poor_strike != 0.0) phrases.push_back(in_100(change.poor_strike));
  const std::vector<OwnChange> clubs = clubs_of(change, ChangeStep::poor_strikes);
  if (clubs.size() == 1) {
    const Phrase phrase = in_100(clubs.front().poor_strike);
    phrases.push_back({phrase.text + " " + with_clubs(clubs), phrase.singular});
  } else if (!clubs.empty()) {
    phrases.push_back({"other poor strikes " + with_clubs(clubs), false});
  }
}

// "less spread of carry" where it is that of all clubs; of single ones one may fall and another rise.
std::string spread_source(double of_all, const std::string& of_what) {
  if (of_all == 0.0) return "the spread " + of_what;
  return (of_all < 0.0 ? "less spread " : "more spread ") + of_what;
}

std::string club_source(const Change& change) {
  const std::vector<OwnChange> clubs = clubs_of(change, ChangeStep::club_carry);
  if (clubs.size() != 1 || clubs.front().carry_yd == 0.0) return "the carry of single clubs";
  return fmt::format("the {} {}", clubs.front().carry_yd > 0.0 ? "longer" : "shorter",
                     escape_control(clubs.front().club));
}

}  // namespace

Subject change_subject(const Change& change, Units units) {
  Phrases phrases;
  add_carries(change, units, phrases);
  add_spread(change, ChangeStep::carry_spread, change.carry_sd_share, "of carry", phrases);
  add_spread(change, ChangeStep::direction_spread, change.direction_sd_share, "of direction", phrases);
  add_turn(change, phrases);
  add_poor_strikes(change, phrases);
  if (change.short_game_share != 0.0) phrases.push_back({percent_words(change.short_game_share, "in the short game")});
  if (change.putting_share != 0.0) phrases.push_back({percent_words(change.putting_share, "in putting")});
  if (phrases.size() == 1) return {phrases.front().text, phrases.front().singular};
  std::string text;
  for (std::size_t i = 0; i < phrases.size(); ++i) {
    const bool is_last = i + 1 == phrases.size();
    const bool after_comma = text.ends_with(",");
    text += i == 0 ? "" : is_last ? " and " : after_comma ? " " : ", ";
    text += phrases[i].text;
  }
  return {text, false};
}

std::string step_source(const Change& change, ChangeStep step) {
  const auto length = [](double carry_yd) { return carry_yd > 0.0 ? "longer" : "shorter"; };
  switch (step) {
    case ChangeStep::driver_carry:
      return fmt::format("the {} tee shot", length(change.driver_carry_yd));
    case ChangeStep::irons_carry:
      return fmt::format("the {} irons", length(change.irons_carry_yd));
    case ChangeStep::club_carry:
      return club_source(change);
    case ChangeStep::carry_spread:
      return spread_source(change.carry_sd_share, "of carry");
    case ChangeStep::direction_spread:
      return spread_source(change.direction_sd_share, "of direction");
    case ChangeStep::mean_direction:
      return "the mean direction";
    case ChangeStep::poor_strikes:
      return change.poor_strike < 0.0   ? "fewer poor strikes"
             : change.poor_strike > 0.0 ? "more poor strikes"
                                        : "the poor strikes";
    case ChangeStep::short_game:
      return "the short game";
    case ChangeStep::putting:
      return "putting";
  }
  return "";
}

std::vector<std::string> wider_change_words(const GainResult& result) {
  if (is_carry_alone(result.change)) return {};
  std::vector<std::string> words = {
      "The change is taken step by step, in the order of the table, each step with those before it."};
  const auto asks = [&](ChangeStep step) {
    const std::vector<ChangeStep> steps = steps_asked(result.change);
    return std::find(steps.begin(), steps.end(), step) != steps.end();
  };
  if (asks(ChangeStep::mean_direction)) {
    words.emplace_back("A mean direction that the best plan allows for already, it allows for as it becomes.");
  }
  if (asks(ChangeStep::short_game) || asks(ChangeStep::putting)) {
    words.emplace_back(
        "Short game and putting: the baseline near the green changes by as much as the golfer's own, typical of the "
        "Handicap Index, does where its spreads change.");
  }
  return words;
}

}  // namespace yardworth::report
