#include "validate/tell.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/distance_words.hpp"
#include "core/message_text.hpp"

namespace yardworth {

Tell tell_into(std::vector<Diagnostic>& findings, std::string name) {
  return [&findings, name = std::move(name)](std::string_view key, std::string found, std::string expected) {
    findings.push_back({Severity::fault, name, 0, 0, std::string(key), std::move(found), std::move(expected)});
  };
}

Tell below(Tell tell, std::string path) {
  return
      [tell = std::move(tell), path = std::move(path)](std::string_view key, std::string found, std::string expected) {
        const char* dot = key.empty() || path.empty() ? "" : ".";
        tell(fmt::format("{}{}{}", path, dot, key), std::move(found), std::move(expected));
      };
}

Tell below(Tell tell, std::string_view list, std::size_t index) {
  return below(std::move(tell), fmt::format("{}[{}]", list, index));
}

std::string spoken(double yards, Units units) {
  const std::string number = fmt::format("{:.4g}", from_yards(yards, units));
  return number + " " + unit_after(number, units);
}

namespace {

// Nobody reads 2e+04 as 20000.
std::string bound(double number) {
  constexpr double five_digits = 9999.5;
  return std::abs(number) >= five_digits ? fmt::format("{:.0f}", number) : fmt::format("{:.4g}", number);
}

}  // namespace

std::string bounds(const Limits& limits) {
  return fmt::format("from {} to {}{}{}", bound(limits.low), bound(limits.high), limits.unit.empty() ? "" : " ",
                     limits.unit);
}

std::string percent_words(const Limits& limits) {
  return fmt::format("a percentage from {}% to {}%, such as {}10%", limits.low, limits.high,
                     limits.low < 0.0 ? "-" : "");
}

Limits in_units(const Limits& yards, Units units) {
  return {from_yards(yards.low, units), from_yards(yards.high, units), name(units)};
}

bool check_number(double value, const Limits& limits, std::string_view key, const Tell& tell) {
  const double slack = 1e-9 * std::max(std::abs(limits.low), std::abs(limits.high));
  if (value >= limits.low - slack && value <= limits.high + slack) return true;
  const char* not_finite = std::isfinite(value) ? "" : ", which is not a finite number";
  tell(key, fmt::format("{:.10g}{}", value, not_finite), "a number " + bounds(limits));
  return false;
}

bool check_whole(int value, int low, int high, std::string_view key, const Tell& tell) {
  if (value >= low && value <= high) return true;
  tell(key, fmt::format("{}", value), fmt::format("a whole number from {} to {}", low, high));
  return false;
}

bool check_length(double yards, const Limits& limits_yd, Units units, std::string_view key, const Tell& tell) {
  return check_number(from_yards(yards, units), in_units(limits_yd, units), key, tell);
}

bool check_count(std::size_t count, std::size_t least, std::size_t most, std::string_view of_what, std::string_view key,
                 const Tell& tell) {
  if (count >= least && count <= most) return true;
  tell(key, fmt::format("a list of {}", count), fmt::format("from {} to {} {}", least, most, of_what));
  return false;
}

bool check_text(const std::string& text, std::string_view key, const Tell& tell) {
  const bool blank = text.find_first_not_of(" \t\n") == std::string::npos;
  const bool fits = !blank && text.size() <= limits::longest_text;
  if (!fits) tell(key, quoted(text), blank ? "text" : fmt::format("text of at most {} bytes", limits::longest_text));
  return fits;
}

}  // namespace yardworth
