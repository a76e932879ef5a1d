#include "core/number_text.hpp"

#include <charconv>
#include <cmath>
#include <string>

#ifdef YARDWORTH_FAST_FLOAT
#include <fast_float/fast_float.h>
#endif

#include "core/spelling.hpp"

namespace yardworth {
namespace {

bool says_not_finite(std::string_view text) {
  std::string word = small_letters(std::string(text));
  if (!word.empty() && (word.front() == '+' || word.front() == '-')) word.erase(0, 1);
  if (!word.empty() && word.front() == '.') word.erase(0, 1);
  return word == "nan" || word == "inf" || word == "infinity";
}

// What std::from_chars does, also where the standard library has it for whole numbers alone.
#ifdef YARDWORTH_FAST_FLOAT
bool has_digit_but_zero(std::string_view text) {
  return text.substr(0, text.find_first_of("eE")).find_first_of("123456789") != std::string_view::npos;
}

std::from_chars_result double_from_chars(const char* first, const char* last, double& value) {
  const auto [stop, error] = fast_float::from_chars(first, last, value);
  // It reads what is too small for a double as zero, and what is too large as infinite.
  const bool too_small =
      value == 0.0 && has_digit_but_zero(std::string_view(first, static_cast<std::size_t>(stop - first)));
  const bool in_range = error != std::errc() || (!too_small && std::isfinite(value));
  return {stop, in_range ? error : std::errc::result_out_of_range};
}
#else
std::from_chars_result double_from_chars(const char* first, const char* last, double& value) {
  return std::from_chars(first, last, value);
}
#endif

}  // namespace

ParsedNumber parse_number(std::string_view text) {
  if (says_not_finite(text)) return {0.0, NumberFault::not_finite};
  const bool plus = text.size() > 1 && text[0] == '+' && text[1] != '-';
  if (plus) text.remove_prefix(1);
  double value = 0.0;
  const auto [stop, error] = double_from_chars(text.data(), text.data() + text.size(), value);
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
