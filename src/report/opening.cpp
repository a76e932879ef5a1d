#include "report/opening.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "report/delivery_parts.hpp"
#include "yardworth/change.hpp"

namespace yardworth::report {

std::vector<std::string> opening_of(const StoodIn& stood_in) {
  std::vector<std::string> parts;
  if (stood_in.course) parts.push_back("built-in course " + *stood_in.course);
  if (stood_in.player) parts.push_back("built-in player " + *stood_in.player);
  if (stood_in.tee) parts.push_back(*stood_in.tee + " tees");
  if (stood_in.driver) {
    parts.push_back(fmt::format("{:.0f} {} more with the driver", *stood_in.driver, name(stood_in.units)));
  }
  if (parts.empty()) return {};
  return {fmt::format("Assumed: {}.", fmt::join(parts, ", "))};
}

std::string default_change_words(std::string_view unsaid, Units units) {
  return fmt::format("Assumed, with {}: {} {} more with the driver, {} with the irons.", unsaid, default_driver_change,
                     name(units), default_irons_change);
}

std::vector<std::string> typical_words(const TypicalClub& club, const Delivery& delivery, const SaidFields& said) {
  std::vector<std::string> typical;
  for (std::size_t i = 0; i < delivery_fields.size(); ++i) {
    const DeliveryField& field = delivery_fields[i];
    if (!said[i]) typical.push_back(fmt::format("{} {:.1f} {}", field.words, field.of(delivery), field.unit));
  }
  if (typical.empty()) return {};
  return {fmt::format("Assumed, as is typical of a {}: {}.", club.name, fmt::join(typical, ", "))};
}

namespace {

std::string speed_words(double mph, Units units) {
  return units == Units::yards ? fmt::format("{:.1f} mph", mph) : fmt::format("{:.1f} m/s", from_mph(mph));
}

std::string struck_carry(const StruckClub& struck, const Club& club, Units units) {
  const auto length = [units](double yards) { return from_yards(yards, units); };
  std::string words = struck.club;
  std::vector<std::string> typical;
  for (const StruckClub::Number& number : struck.numbers) {
    const auto known = field_of_key(number.key);
    if (!known) continue;
    const DeliveryField& field = delivery_fields[*known];
    if (field.member == &Delivery::club_speed_mps) words += " at " + speed_words(number.value, units);
    if (number.typical) typical.push_back(fmt::format("{} {:.1f}", field.words, number.value));
  }
  words += fmt::format(", carry {:.1f} and roll {:.1f}, {:.1f} {} in all", length(club.carry_yd), length(club.roll_yd),
                       length(club.carry_yd + club.roll_yd), name(units));
  if (!typical.empty()) words += fmt::format(" (typical: {}, in degrees)", fmt::join(typical, ", "));
  return words;
}

}  // namespace

std::vector<std::string> struck_carries(const Player& player) {
  std::vector<std::string> all;
  for (const StruckClub& struck : player.strikes) {
    const auto club = std::find_if(player.clubs.begin(), player.clubs.end(),
                                   [&](const Club& one) { return one.name == struck.club; });
    if (club != player.clubs.end()) all.push_back(struck_carry(struck, *club, player.units));
  }
  return all;
}

std::vector<std::string> struck_words(const Player& player) {
  const std::vector<std::string> carries = struck_carries(player);
  if (carries.empty()) return {};
  std::vector<std::string> words = {
      "Carries worked out from strikes, in still air at sea level; differences are surer than the carries, which may "
      "be 5% off."};
  for (const std::string& carry : carries) words.push_back("Of the strike: " + carry + ".");
  return words;
}

std::vector<std::string> opening_of_strikes(const TypicalClub& driver, const SaidFields& said,
                                            const StrikeChange& change, bool irons_said, Units units) {
  std::string numbers;
  for (const DeliveryNumber& number : delivery_numbers()) {
    const double before = number.of(change.before);
    const double after = number.of(change.after);
    if (before == after) continue;
    const std::size_t comma = number.words.find(", ");  // "attack angle, degrees"
    const std::string_view unit = comma == std::string_view::npos ? "" : number.words.substr(comma + 1);
    numbers += fmt::format("{}{} {:.{}f} -> {:.{}f}{}", numbers.empty() ? "" : ", ", number.words.substr(0, comma),
                           before, number.decimals, after, number.decimals, unit);
  }
  const auto carry = [&](const DeliveryFlight& flown) { return from_yards(yards_of(flown.flight.carry_m), units); };
  std::vector<std::string> words = typical_words(driver, change.before.delivery, said);
  words.push_back(fmt::format("The driver's strike: {}. Carry {:.1f} -> {:.1f} {} in still air, {:+.1f}.",
                              numbers.empty() ? "as before" : numbers, carry(change.before), carry(change.after),
                              name(units), from_yards(change.driver_carry_yd(), units)));
  if (!irons_said) {
    words.push_back(fmt::format(
        "Assumed of the irons, of which nothing is said: {:.0f} {} for every {:.0f} of the driver, here "
        "{:+.1f} (common practice, no source).",
        default_irons_change, name(units), default_driver_change, from_yards(change.irons_carry_yd(), units)));
  }
  return words;
}

}  // namespace yardworth::report
