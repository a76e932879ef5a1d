#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace yardworth {

enum class NumberFault { none, not_a_number, not_finite };

struct ParsedNumber {
  double value = 0.0;  // of use only without a fault
  NumberFault fault = NumberFault::none;
};

// A decimal number that is the whole of the text, in any locale: "240", "-18", "+20", "12.5", "1e3". Words for what is
// not finite ("nan", "-inf", ".inf") and numbers beyond a double are not finite; everything else, spaces and
// hexadecimal numbers among it, is not a number.
ParsedNumber parse_number(std::string_view text);

// A number with a percent sign behind it, "-10%": the number.
ParsedNumber parse_percent(std::string_view text);

// What a number that is written with a decimal comma ("12,5") should be ("12.5"); nothing for anything else.
std::optional<std::string> with_decimal_point(std::string_view text);

// A whole number written with digits, and perhaps a minus, only; nothing for anything else.
std::optional<int> parse_whole_number(std::string_view text);

}  // namespace yardworth
