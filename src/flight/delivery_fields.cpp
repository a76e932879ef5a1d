#include "flight/delivery_fields.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace yardworth {

std::optional<std::size_t> field_of_key(std::string_view key) {
  for (std::size_t i = 0; i < delivery_fields.size(); ++i) {
    if (delivery_fields[i].key == key) return i;
  }
  return std::nullopt;
}

bool SaidStrike::is_known() const {
  return std::none_of(unknown.begin(), unknown.end(), [](bool field) { return field; });
}

SaidStrike usual_strike(const TypicalClub& club) {
  return {typical_delivery(club, from_mph(usual_driver_speed_mph)), {}, {}};
}

SaidFields either(const SaidFields& one, const SaidFields& other) {
  SaidFields said{};
  for (std::size_t i = 0; i < said.size(); ++i) said[i] = one[i] || other[i];
  return said;
}

SaidStrike on_top_of(const SaidStrike& before) { return {before.delivery, {}, before.unknown}; }

void say(SaidStrike& strike, std::size_t field, std::optional<double> number) {
  strike.said[field] = true;
  strike.unknown[field] = !number;
  if (number) strike.delivery.*delivery_fields[field].member = delivery_fields[field].inside(*number);
}

void check_together(const SaidStrike& strike, const SaidStrike& before, const Tell& tell) {
  if (!strike.is_known()) return;
  const std::vector<Diagnostic> told = before.is_known() ? validate(before.delivery) : std::vector<Diagnostic>();
  for (const Diagnostic& finding : validate(strike.delivery)) {
    const bool again = std::any_of(told.begin(), told.end(), [&](const Diagnostic& other) {
      return other.path == finding.path && other.found == finding.found && other.expected == finding.expected;
    });
    if (again) continue;
    if (finding.path == spin_loft_key) {
      tell("", fmt::format("a spin loft of {} degrees", finding.found), finding.expected);
    } else {
      tell(finding.path, finding.found, finding.expected);
    }
  }
}

}  // namespace yardworth
