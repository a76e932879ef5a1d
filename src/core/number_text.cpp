#include "core/number_text.hpp"

#include <charconv>
#include <cmath>
#include <string>

#include "core/spelling.hpp"

namespace yardworth {
namespace {

bool says_not_finite(std::string_view text) {
  std::string word = small_letters(std::string(text));
  if (!word.empty() && (word.front() == '+' || word.front() == '-')) word.erase(0, 1);
  if (!word.empty() && word.front() == '.') word.erase(0, 1);
  return word == "nan" || word == "inf" || word == "infinity";
}

}  // namespace

ParsedNumber parse_number(std::string_view text) {
  if (says_not_finite(text)) return {0.0, NumberFault::not_finite};
  const bool plus = text.size() > 1 && text[0] == '+' && text[1] != '-';
  if (plus) text.remove_prefix(1);
  double value = 0.0;
  const auto [stop, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  const bool whole_text = stop == text.data() + text.size() && error != std::errc::invalid_argument;
  if (!whole_text) return {0.0, NumberFault::not_a_number};
  const bool finite = error != std::errc::result_out_of_range && std::isfinite(value);
  return finite ? ParsedNumber{value, NumberFault::none} : ParsedNumber{0.0, NumberFault::not_finite};
}

ParsedNumber parse_percent(std::string_view text) {
  if (!text.ends_with('%')) return {0.0, NumberFault::not_a_number};
  return parse_number(text.substr(0, text.size() - 1));
}

std::optional<std::string> with_decimal_point(std::string_view text) {
  std::string point(text);
  const std::size_t comma = point.find(',');
  if (comma == std::string::npos) return std::nullopt;
  point[comma] = '.';
  return parse_number(point).fault == NumberFault::none ? std::optional(point) : std::nullopt;
}

std::optional<int> parse_whole_number(std::string_view text) {
  int number = 0;
  const auto [stop, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  const bool whole_text = error == std::errc() && stop == text.data() + text.size();
  return whole_text ? std::optional<int>(number) : std::nullopt;
}

}  // namespace yardworth
