#include "cli/said_delivery.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "core/number_text.hpp"
#include "core/spelling.hpp"

namespace yardworth::cli {

void assume_rest(const TypicalClub& club, const Delivery& delivery, const std::array<bool, said_numbers.size()>& said,
                 std::vector<std::string>& assumed) {
  std::string typical;
  for (std::size_t i = 0; i < said_numbers.size(); ++i) {
    const SaidNumber& number = said_numbers[i];
    if (said[i]) continue;
    typical += fmt::format("{}{} {:.1f} {}", typical.empty() ? "" : ", ", number.words,
                           number.said(delivery.*number.member), number.unit);
  }
  if (!typical.empty()) assumed.push_back(fmt::format("Assumed, as is typical of a {}: {}.", club.name, typical));
}

std::string key_of(const std::string& said) {
  std::string key = said.substr(0, said.find('='));
  std::replace(key.begin(), key.end(), '_', '-');
  return key;
}

std::string change_delivery(const std::string& option, const std::string& said, Delivery& delivery) {
  const std::size_t equals = said.find('=');
  const std::string key = key_of(said);
  std::vector<std::string> keys;
  for (const SaidNumber& number : said_numbers) keys.emplace_back(number.name);
  const auto known = std::find(keys.begin(), keys.end(), key);
  if (equals == std::string::npos && known != keys.end()) {
    return fmt::format("{}: found \"{}\", expected \"=\" and a number after it: {}=NUMBER", option, said, key);
  }
  if (known == keys.end()) {
    return fmt::format("{}: found \"{}\", expected KEY=VALUE with a key {}", option, said, one_of(key, keys));
  }
  const SaidNumber& number = said_numbers[static_cast<std::size_t>(known - keys.begin())];
  const ParsedNumber value = parse_number(said.substr(equals + 1));
  if (value.fault != NumberFault::none || value.value < number.limits.low || value.value > number.limits.high) {
    return fmt::format("{}: found \"{}\", expected a number from {} to {}", option, said, number.limits.low,
                       number.limits.high);
  }
  delivery.*number.member = number.inside(value.value);
  return "";
}

// No option says the spin loft: it comes of the others.
std::string faults_of_delivery(const Delivery& delivery, const std::string& option) {
  const std::string before_name = option.empty() ? "--" : option + " ";
  const std::string before_all = option.empty() ? "" : option + ": ";
  std::string faults;
  for (const Diagnostic& finding : validate(delivery)) {
    if (finding.path == "spin_loft_deg") {
      const bool straight = delivery.path_rad == delivery.face_rad;
      faults += fmt::format("yardworth: {}{}: a spin loft of {} degrees, expected {}\n", before_all,
                            straight ? "dynamic loft and attack angle" : "dynamic loft, attack angle, path and face",
                            finding.found, finding.expected);
      continue;
    }
    faults += fmt::format("yardworth: {}{}: found {}, expected {}\n", before_name, key_of(finding.path), finding.found,
                          finding.expected);
  }
  return faults;
}

}  // namespace yardworth::cli
