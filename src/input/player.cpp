#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <utility>

#include "core/message_text.hpp"
#include "core/spelling.hpp"
#include "input/formats.hpp"
#include "player/skill.hpp"

namespace yardworth::input {
namespace {

// Limits of what is taken for golf, in yards and degrees.
constexpr Range carry_range{5.0, 420.0};
constexpr Range roll_range{0.0, 150.0};
constexpr Range carry_sd_range{0.1, 100.0};
constexpr Range direction_sd_range{0.1, 30.0, "degrees"};
constexpr Range poor_strike_range{0.0, 0.9};
constexpr Range handicap_range{-10.0, 54.0};  // 54 is the highest Handicap Index, Rules of Handicapping (from memory)
constexpr double widest_gap_yd = 25.0;
constexpr double narrowest_gap_yd = 3.0;
constexpr std::size_t most_clubs = 30;
constexpr std::size_t allowed_clubs = 13;  // 14 with the putter, Rules of Golf, Rule 4.1b (from memory)

std::string spoken(double yards, Units units) {
  return fmt::format("{:.4g} {}", from_yards(yards, units), name(units));
}

struct ClubReading {
  Value value;
  ClubEntry entry;
  bool complete = false;  // the name and the carry are known
};

ClubReading club_from(const Value& value, Units units, Findings& findings) {
  Fields fields(value, {"club", "carry", "roll", "carry_sd", "direction_sd", "poor_strike"}, findings);
  ClubReading reading;
  reading.value = value;
  const auto club = fields.words("club", Need::required);
  const auto carry = fields.length("carry", carry_range, units, Need::required);
  reading.complete = club && carry;
  reading.entry.name = club.value_or("");
  reading.entry.carry_yd = carry.value_or(0.0);
  reading.entry.roll_yd = fields.length("roll", roll_range, units);
  reading.entry.carry_sd_yd = fields.length("carry_sd", carry_sd_range, units);
  const auto direction = fields.number("direction_sd", direction_sd_range);
  if (direction) reading.entry.direction_sd_rad = radians(*direction);
  reading.entry.poor_strike = fields.number("poor_strike", poor_strike_range);
  const bool too_wide = carry && reading.entry.carry_sd_yd && *reading.entry.carry_sd_yd > *carry / 2.0;
  if (too_wide) {
    findings.fault(*fields.get("carry_sd", Need::required), spoken(*reading.entry.carry_sd_yd, units),
                   "at most half the carry, " + spoken(*carry / 2.0, units));
  }
  return reading;
}

// One club of a name, one driver, no putter.
void check_names(const std::vector<ClubReading>& clubs, Findings& findings) {
  std::map<std::string, int> seen;
  int drivers = 0;
  for (const ClubReading& club : clubs) {
    const std::string& name = club.entry.name;
    const bool repeated = !name.empty() && ++seen[small_letters(name)] > 1;
    const bool driver = parse_club_name(name).kind == ClubKind::driver;
    if (repeated) {
      findings.fault(club.value, fmt::format("the club \"{}\" again", shortened(name)), "each club once");
    } else if (driver && ++drivers > 1) {
      findings.fault(club.value, fmt::format("a second driver, \"{}\"", shortened(name)), "one driver at most");
    }
    if (small_letters(name) == "putter") {
      findings.fault(club.value, "a putter", "clubs with a carry; putting comes from the baseline");
    }
  }
}

// Longest first; wide gaps and near twins are worth a word.
void check_gaps(const std::vector<ClubReading>& clubs, Units units, Findings& findings) {
  for (std::size_t i = 1; i < clubs.size(); ++i) {
    const ClubReading& longer = clubs[i - 1];
    const ClubReading& shorter = clubs[i];
    if (!longer.complete || !shorter.complete) continue;
    const double gap = longer.entry.carry_yd - shorter.entry.carry_yd;
    const std::string pair = fmt::format("{} and {}", shortened(longer.entry.name), shortened(shorter.entry.name));
    if (gap < 0.0) {
      findings.fault(shorter.value,
                     fmt::format("a carry of {} after {}", spoken(shorter.entry.carry_yd, units),
                                 spoken(longer.entry.carry_yd, units)),
                     "clubs longest first");
    } else if (gap > widest_gap_yd) {
      findings.advice(shorter.value, fmt::format("a gap of {} between {}", spoken(gap, units), pair),
                      "at most " + spoken(widest_gap_yd, units));
    } else if (gap < narrowest_gap_yd) {
      findings.advice(shorter.value, fmt::format("only {} between {}", spoken(gap, units), pair),
                      "at least " + spoken(narrowest_gap_yd, units));
    }
  }
}

std::optional<double> handicap_from(Fields& fields, Findings& findings) {
  const auto value = fields.get("handicap_index", Need::optional);
  if (!value) return std::nullopt;
  const auto index = read_number(*value, handicap_range, findings);
  // Golfers write a plus handicap with a plus sign, a number means the opposite by it: ask rather than guess.
  const bool ambiguous = index && *index != 0.0 && value->node->text.front() == '+';
  if (ambiguous) {
    const std::string figure = shortened(value->node->text.substr(1));
    findings.fault(*value, shortened(value->node->text),
                   fmt::format("-{} for a plus handicap, {} for any other", figure, figure));
  }
  return index;
}

void read_golfer(Fields& fields, Player& player, Findings& findings) {
  std::vector<std::string> bands;
  for (const Band band : all_bands) bands.emplace_back(name(band));
  player.label = fields.words("label", Need::required).value_or("");
  player.gender = fields.choice<Gender>("gender", {"men", "women"}, gender_named).value_or(Gender::men);
  player.units = read_units(fields);
  player.handicap_index = handicap_from(fields, findings);
  const auto band = fields.choice<Band>("band", bands, band_named);
  if (!fields.has("band") && !fields.has("handicap_index")) {
    fields.get("handicap_index", Need::required, "a Handicap Index, or a band");
  }
  if (player.handicap_index) player.band = band_of(*player.handicap_index);
  if (band) player.band = *band;
  player.skill =
      player.handicap_index ? skill_of(*player.handicap_index, player.gender) : skill_of(player.band, player.gender);
}

}  // namespace

Player player_from(const Value& root, Findings& findings) {
  Fields fields(root, {"format", "label", "handicap_index", "band", "gender", "units", "clubs"}, findings);
  Player player;
  read_golfer(fields, player, findings);
  std::vector<ClubReading> clubs;
  const auto values = fields.list("clubs", 1, most_clubs, "clubs", Need::required);
  for (const Value& value : values) clubs.push_back(club_from(value, player.units, findings));
  check_names(clubs, findings);
  check_gaps(clubs, player.units, findings);
  if (clubs.size() > allowed_clubs) {
    findings.advice(*fields.get("clubs", Need::required), fmt::format("{} clubs", clubs.size()),
                    fmt::format("at most {} beside the putter in a round", allowed_clubs));
  }
  if (findings.has_fault()) return player;
  for (const ClubReading& club : clubs) {
    player.clubs.push_back(complete_club(club.entry, clubs.front().entry.carry_yd, player.skill));
  }
  return player;
}

}  // namespace yardworth::input
