#include "core/number_text.hpp"

#include <doctest/doctest.h>

namespace yardworth {

TEST_CASE("a number is the whole of its text") {
  struct Read {
    const char* text;
    double value;
  };
  for (const Read& read : {Read{"+20", 20.0}, {"-20", -20.0}, {"7.5", 7.5}, {"0", 0.0}, {"1e3", 1000.0}}) {
    CAPTURE(read.text);
    const ParsedNumber parsed = parse_number(read.text);
    CHECK(parsed.fault == NumberFault::none);
    CHECK(parsed.value == read.value);
  }
  for (const char* text : {"", "+", "-", "+-5", "-+5", "++5", "5 ", " 5", "5yd", "0x10", "1,5", "1e999x"}) {
    CAPTURE(text);
    CHECK(parse_number(text).fault == NumberFault::not_a_number);
  }
  for (const char* text : {"nan", "inf", "-inf", "+Infinity", ".NaN", "-.inf", "1e999", "-1e999"}) {
    CAPTURE(text);
    CHECK(parse_number(text).fault == NumberFault::not_finite);
  }
}

TEST_CASE("a whole number is digits only") {
  CHECK(parse_whole_number("17") == 17);
  CHECK(parse_whole_number("-3") == -3);
  for (const char* text : {"", "+4", "4.0", "4 ", "x", "99999999999"}) {
    CAPTURE(text);
    CHECK_FALSE(parse_whole_number(text).has_value());
  }
}

}  // namespace yardworth
