#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "core/message_text.hpp"
#include "input/formats.hpp"
#include "input/said_carry.hpp"
#include "input/units_doubt.hpp"
#include "player/skill.hpp"
#include "validate/player_rules.hpp"

namespace yardworth::input {
namespace {

constexpr double widest_gap_yd = 25.0;
constexpr double narrowest_gap_yd = 3.0;
constexpr std::size_t allowed_clubs = 13;  // 14 with the putter, Rules of Golf, Rule 4.1b (from memory)

struct ClubReading {
  Value value;
  ClubEntry entry;
  std::optional<StruckClub> strike;  // that the carry follows from
  bool complete = false;             // the name and the carry are known
};

ClubReading club_from(const Value& value, Units units, Findings& findings) {
  std::vector<std::string> keys = {"club",         "carry",          "roll",       "carry_sd",
                                   "direction_sd", "direction_mean", "poor_strike"};
  for (const std::string& key : strike_keys()) keys.push_back(key);
  Fields fields(value, std::move(keys), findings);
  ClubReading reading;
  reading.value = value;
  const auto club = fields.words("club", Need::required);
  SaidCarry said = read_carry(fields, club.value_or(""), units, findings);
  const std::optional<double> carry = said.carry_yd;
  reading.strike = std::move(said.strike);
  reading.complete = club && carry;
  reading.entry.name = club.value_or("");
  reading.entry.carry_yd = carry.value_or(0.0);
  reading.entry.roll_yd = fields.length("roll", limits::roll, units);
  reading.entry.carry_sd_yd = fields.length("carry_sd", limits::carry_sd, units);
  const auto direction = fields.number("direction_sd", limits::direction_sd);
  if (direction) reading.entry.direction_sd_rad = radians(*direction);
  const auto mean = fields.number("direction_mean", limits::direction_mean);
  if (mean) reading.entry.direction_mean_rad = radians(*mean);
  reading.entry.poor_strike = fields.number("poor_strike", limits::poor_strike);
  if (carry && reading.entry.carry_sd_yd) {
    check_carry_sd(*reading.entry.carry_sd_yd, *carry, units, at_keys(fields, value, findings));
  }
  return reading;
}

std::vector<NamedClub> names_of(const std::vector<ClubReading>& clubs) {
  std::vector<NamedClub> names;
  for (const ClubReading& club : clubs) names.push_back({club.entry.name, parse_club_name(club.entry.name).kind});
  return names;
}

// Longest first; wide gaps and near twins are worth a word.
void check_gaps(const std::vector<ClubReading>& clubs, Units units, Findings& findings) {
  for (std::size_t i = 1; i < clubs.size(); ++i) {
    const ClubReading& longer = clubs[i - 1];
    const ClubReading& shorter = clubs[i];
    if (!longer.complete || !shorter.complete) continue;
    const double gap = longer.entry.carry_yd - shorter.entry.carry_yd;
    const std::string pair = fmt::format("{} and {}", shortened(longer.entry.name), shortened(shorter.entry.name));
    if (!check_longer_before_shorter(longer.entry.carry_yd, shorter.entry.carry_yd, units,
                                     at_value(shorter.value, findings))) {
      continue;
    }
    if (gap > widest_gap_yd) {
      findings.advice(shorter.value, fmt::format("a gap of {} between {}", spoken(gap, units), pair),
                      "at most " + spoken(widest_gap_yd, units));
    } else if (gap < narrowest_gap_yd) {
      findings.advice(shorter.value, fmt::format("only {} between {}", spoken(gap, units), pair),
                      "at least " + spoken(narrowest_gap_yd, units));
    }
  }
}

// A slip of the pen, or metres that are called yards, rather than such a golfer.
void check_driver(const std::vector<ClubReading>& clubs, const Player& player, Findings& findings) {
  for (const ClubReading& club : clubs) {
    if (!club.complete || parse_club_name(club.entry.name).kind != ClubKind::driver) continue;
    const double typical_yd = player.skill.driver_carry_yd;
    const double share = club.entry.carry_yd / typical_yd;
    if (share >= limits::carry_of_typical.low && share <= limits::carry_of_typical.high) continue;
    findings.advice(club.value, fmt::format("a driver that carries {}", spoken(club.entry.carry_yd, player.units)),
                    fmt::format("about the {} of such golfers, or a reason", spoken(typical_yd, player.units)));
  }
}

std::optional<double> handicap_from(Fields& fields, Findings& findings) {
  const auto value = fields.get("handicap_index", Need::optional);
  if (!value) return std::nullopt;
  const auto index = read_number(*value, limits::handicap_index, findings);
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
  const auto mean = fields.number("direction_mean", limits::direction_mean);
  if (mean) player.skill.direction_mean_rad = radians(*mean);
}

}  // namespace

Player player_from(const Value& root, Findings& findings) {
  Fields fields(root, {"format", "label", "handicap_index", "band", "gender", "units", "direction_mean", "clubs"},
                findings);
  Player player;
  read_golfer(fields, player, findings);
  std::vector<ClubReading> clubs;
  const auto values = fields.list("clubs", 1, limits::most_clubs, "clubs", Need::required);
  for (const Value& value : values) clubs.push_back(club_from(value, player.units, findings));
  check_club_names(names_of(clubs), at_values(values, findings));
  check_gaps(clubs, player.units, findings);
  check_driver(clubs, player, findings);
  if (clubs.size() > allowed_clubs) {
    findings.advice(*fields.get("clubs", Need::required), fmt::format("{} clubs", clubs.size()),
                    fmt::format("at most {} beside the putter in a round", allowed_clubs));
  }
  if (findings.has_fault()) return player;
  for (const ClubReading& club : clubs) {
    player.clubs.push_back(complete_club(club.entry, clubs.front().entry.carry_yd, player.skill));
    if (club.strike) player.strikes.push_back(*club.strike);
  }
  if (const auto doubt = doubt_about_units(player)) {
    findings.advice(*fields.get(fields.has("units") ? "units" : "clubs", Need::optional), doubt->found,
                    doubt->expected);
  }
  return player;
}

}  // namespace yardworth::input
