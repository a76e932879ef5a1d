#include "cli/said_delivery.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "core/number_text.hpp"
#include "core/spelling.hpp"
#include "yardworth/diagnostics.hpp"

namespace yardworth::cli {
namespace {

std::string with_dashes(std::string_view text) {
  std::string dashed(text);
  std::replace(dashed.begin(), dashed.end(), '_', '-');
  return dashed;
}

// Says one number as KEY=VALUE does; what is wrong with it, if anything.
std::string say_number(const std::string& said, SaidStrike& strike) {
  const std::size_t equals = said.find('=');
  const std::string key = key_of(said);
  std::vector<std::string> keys;
  for (const DeliveryField& field : delivery_fields) keys.push_back(option_of(field));
  const auto known = std::find(keys.begin(), keys.end(), key);
  if (known == keys.end()) {
    // It may have been any of them.
    for (std::size_t i = 0; i < delivery_fields.size(); ++i) strike.unknown[i] = strike.unknown[i] || !strike.said[i];
    return fmt::format("found \"{}\", expected KEY=VALUE with a key {}", said, one_of(key, keys));
  }
  const auto field = static_cast<std::size_t>(known - keys.begin());
  const Limits& limits = delivery_fields[field].limits;
  if (equals == std::string::npos) {
    say(strike, field, std::nullopt);
    return fmt::format("found \"{}\", expected \"=\" and a number after it: {}=NUMBER", said, key);
  }
  const ParsedNumber value = parse_number(said.substr(equals + 1));
  const bool fits = value.fault == NumberFault::none && value.value >= limits.low && value.value <= limits.high;
  say(strike, field, fits ? std::optional(value.value) : std::nullopt);
  if (fits) return "";
  return fmt::format("found \"{}\", expected a number from {} to {}", said, limits.low, limits.high);
}

}  // namespace

std::string option_of(const DeliveryField& field) { return with_dashes(field.key); }

std::string key_of(const std::string& said) { return with_dashes(said.substr(0, said.find('='))); }

SaidStrike read_strike(const std::string& option, const std::vector<std::string>& all, const SaidStrike& before,
                       std::string& complaints) {
  SaidStrike strike = on_top_of(before);
  for (const std::string& said : all) {
    const std::string wrong = say_number(said, strike);
    if (!wrong.empty()) complaints += escape_control(fmt::format("yardworth: {}: {}", option, wrong)) + "\n";
  }
  complaints += faults_together(strike, before, option);
  return strike;
}

std::string faults_together(const SaidStrike& strike, const SaidStrike& before, const std::string& option) {
  const std::string before_name = option.empty() ? "--" : option + " ";
  const std::string before_all = option.empty() ? "" : option + ": ";
  std::string faults;
  check_together(strike, before, [&](std::string_view key, const std::string& found, const std::string& expected) {
    const bool straight = strike.delivery.path_rad == strike.delivery.face_rad;
    const char* angles = straight ? "dynamic loft and attack angle" : "dynamic loft, attack angle, path and face";
    // No option says the spin loft: it comes of the others.
    faults += key.empty() ? fmt::format("yardworth: {}{}: {}, expected {}\n", before_all, angles, found, expected)
                          : fmt::format("yardworth: {}{}: found {}, expected {}\n", before_name, with_dashes(key),
                                        found, expected);
  });
  return faults;
}

}  // namespace yardworth::cli
