#include "input/said_carry.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "core/message_text.hpp"
#include "core/spelling.hpp"
#include "flight/delivery_fields.hpp"
#include "player/skill.hpp"

namespace yardworth::input {
namespace {

// Of all numbers of a delivery the speed alone is called without its unit, like a length: it has the file's.
constexpr const char* speed_key = "club_speed";

std::string key_in_file(const DeliveryField& field) {
  return field.member == &Delivery::club_speed_mps ? speed_key : std::string(field.key);
}

std::vector<std::string> angle_keys() {
  std::vector<std::string> keys = strike_keys();
  keys.erase(keys.begin());
  return keys;
}

Limits limits_in_file(const DeliveryField& field, Units units) {
  if (key_in_file(field) != speed_key || units == Units::yards) return field.limits;
  return {field.inside(field.limits.low), field.inside(field.limits.high), "m/s"};
}

// Where the file says what is wrong with the numbers together: there is one, since what is typical of a club goes
// together.
void report_together(std::string key, std::string found, std::string expected, const TypicalClub& typical,
                     Fields& fields, Findings& findings) {
  if (const auto known = field_of_key(key)) {
    const DeliveryField& field = delivery_fields[*known];
    found = fmt::format("a {} of {} {}", field.words, found, field.unit);
  }
  if (!fields.has(key)) {
    if (!key.empty()) found += fmt::format(", typical of a {}", typical.name);
    const std::vector<std::string> angles = angle_keys();
    key = *std::find_if(angles.begin(), angles.end(), [&](const std::string& angle) { return fields.has(angle); });
  }
  findings.fault(*fields.get(key, Need::optional), std::move(found), std::move(expected));
}

// The strike as the file says it, on top of what is typical of the club; nothing where a number is at fault.
std::optional<SaidStrike> read_strike(Fields& fields, const TypicalClub& typical, Units units, Findings& findings) {
  const SaidStrike usual = usual_strike(typical);
  SaidStrike strike = on_top_of(usual);
  for (std::size_t i = 0; i < delivery_fields.size(); ++i) {
    const DeliveryField& field = delivery_fields[i];
    const std::string key = key_in_file(field);
    if (!fields.has(key)) continue;
    std::optional<double> number = fields.number(key, limits_in_file(field, units));
    if (number && key == speed_key && units == Units::metres) number = to_mph(*number);
    say(strike, i, number);
  }
  bool fits = strike.is_known();
  check_together(strike, usual, [&](std::string_view key, std::string found, std::string expected) {
    fits = false;
    report_together(std::string(key), std::move(found), std::move(expected), typical, fields, findings);
  });
  return fits ? std::optional(strike) : std::nullopt;
}

StruckClub struck_club(const std::string& club, const SaidStrike& strike) {
  StruckClub struck{club, {}};
  for (std::size_t i = 0; i < delivery_fields.size(); ++i) {
    const DeliveryField& field = delivery_fields[i];
    struck.numbers.push_back({std::string(field.key), field.of(strike.delivery), !strike.said[i]});
  }
  return struck;
}

// What says a strike without its speed, whose place a carry may have taken.
void report_without_speed(Fields& fields, Units units, Findings& findings) {
  if (!fields.has("carry")) {
    fields.get(speed_key, Need::required, "a number " + bounds(limits_in_file(delivery_fields.front(), units)));
    return;
  }
  for (const std::string& key : angle_keys()) {
    const auto value = fields.get(key, Need::optional);
    if (value) findings.fault(*value, key + " beside a carry", fmt::format("{} in place of the carry", speed_key));
  }
}

// Numbers of a strike whose club is not known are read for their own faults.
void read_numbers(Fields& fields, Units units) {
  for (const DeliveryField& field : delivery_fields) {
    fields.number(key_in_file(field), limits_in_file(field, units));
  }
}

// How far the strike carries; nothing where no golfer has such a carry.
std::optional<double> carry_of(const Delivery& delivery, const TypicalClub& typical, Units units, const Value& speed,
                               Findings& findings) {
  const double carry_yd = to_yards(fly(delivery, typical.head).carry_m, Units::metres);
  if (carry_yd >= limits::carry.low && carry_yd <= limits::carry.high) return carry_yd;
  findings.fault(speed, fmt::format("a strike that carries {}", spoken(carry_yd, units)),
                 "one that carries " + bounds(in_units(limits::carry, units)));
  return std::nullopt;
}

}  // namespace

std::optional<TypicalClub> club_with_flight(const std::string& club) {
  const ClubName meant = parse_club_name(club);
  for (const TypicalClub& typical : typical_clubs()) {
    const ClubName known = parse_club_name(typical.name);
    const bool wedge = known.kind == ClubKind::wedge;
    const bool same_wedge = small_letters(club) == typical.name || small_letters(club) == "pw";
    if (known.kind == meant.kind && known.number == meant.number && (!wedge || same_wedge)) return typical;
  }
  return std::nullopt;
}

std::vector<std::string> names_with_flight() {
  std::vector<std::string> names;
  for (const TypicalClub& typical : typical_clubs()) names.emplace_back(typical.name);
  return names;
}

std::vector<std::string> strike_keys() {
  std::vector<std::string> keys;
  for (const DeliveryField& field : delivery_fields) keys.push_back(key_in_file(field));
  return keys;
}

SaidCarry read_carry(Fields& fields, const std::string& club, Units units, Findings& findings) {
  SaidCarry said;
  const std::vector<std::string> angles = angle_keys();
  const bool angle = std::any_of(angles.begin(), angles.end(), [&](const auto& key) { return fields.has(key); });
  const bool struck = angle || fields.is_meant(speed_key);
  const auto carry = fields.get("carry", struck ? Need::optional : Need::required,
                                fmt::format("a number of {}, or a {} in its place", name(units), speed_key));
  if (carry) said.carry_yd = read_length(*carry, limits::carry, units, findings);
  const auto speed = fields.get(speed_key, Need::optional);
  if (angle && !speed) report_without_speed(fields, units, findings);
  if (carry && speed) {
    findings.fault(*carry, fmt::format("a carry beside a {}", speed_key), "one of them, from which the other follows");
  }
  const auto typical = club_with_flight(club);
  if (speed && !club.empty() && !typical) {
    findings.fault(*speed, fmt::format("the speed of a {}", shortened(club)),
                   fmt::format("a carry; the flight is known of {} alone", fmt::join(names_with_flight(), ", ")));
  }
  if (!speed || !typical) {
    read_numbers(fields, units);
    return said;
  }
  const auto strike = read_strike(fields, *typical, units, findings);
  if (!strike || carry) return said;
  said.carry_yd = carry_of(strike->delivery, *typical, units, *speed, findings);
  said.strike = struck_club(club, *strike);
  return said;
}

}  // namespace yardworth::input
