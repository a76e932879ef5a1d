#include "report/opening.hpp"

#include <fmt/format.h>

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

std::vector<std::string> strike_change_words(const StrikeChange& change, bool irons_said, Units units) {
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
  std::vector<std::string> words = {
      fmt::format("The driver's strike: {}. Carry {:.1f} -> {:.1f} {} in still air, {:+.1f}.",
                  numbers.empty() ? "as before" : numbers, carry(change.before), carry(change.after), name(units),
                  from_yards(change.driver_carry_yd(), units))};
  if (!irons_said) {
    words.push_back(fmt::format(
        "Assumed of the irons, of which nothing is said: {:.0f} {} for every {:.0f} of the driver, here "
        "{:+.1f} (common practice, no source).",
        default_irons_change, name(units), default_driver_change, from_yards(change.irons_carry_yd(), units)));
  }
  return words;
}

}  // namespace yardworth::report
