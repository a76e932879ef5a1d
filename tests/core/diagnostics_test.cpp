#include "yardworth/diagnostics.hpp"

#include <doctest/doctest.h>

namespace yardworth {
namespace {

TEST_CASE("a finding as a line") {
  CHECK(to_line({Severity::fault, "a.yaml", 3, 7, "holes[3].par", "9", "3 to 6"}) ==
        "a.yaml:3:7: fault: holes[3].par: found 9, expected 3 to 6");
  CHECK(to_line({Severity::advice, "a.yaml", 0, 0, "", "a thing", ""}) == "a.yaml: advice: found a thing");
  CHECK(to_line({Severity::fault, "a\nb", 1, 1, "k\x1B", "x\r", "y\t"}) ==
        "a\\x0Ab:1:1: fault: k\\x1B: found x\\x0D, expected y\\x09");
}

TEST_CASE("a fault among findings") {
  Diagnostic finding;
  finding.severity = Severity::advice;
  CHECK_FALSE(has_fault({}));
  CHECK_FALSE(has_fault({finding}));
  CHECK(has_fault({finding, Diagnostic{}}));
}

TEST_CASE("control characters and broken UTF-8 are escaped, all else stays") {
  CHECK(escape_control("Gr\xC3\xBC\xC3\x9F \xE2\x82\xAC \xF0\x9F\x8F\x8C") ==
        "Gr\xC3\xBC\xC3\x9F \xE2\x82\xAC \xF0\x9F\x8F\x8C");
  CHECK(escape_control(std::string("a\0b\x7F", 4)) == "a\\x00b\\x7F");
  CHECK(escape_control("\x1B]0;title\x07") == "\\x1B]0;title\\x07");
  CHECK(escape_control("\xC2\x9B"
                       "31m") == "\\x9B31m");  // C1: another way to say ESC [
  CHECK(escape_control("\xFF"
                       "a\xC3") == "\\xFFa\\xC3");         // stray and cut off
  CHECK(escape_control("\xE2\x28\xA1") == "\\xE2(\\xA1");  // broken in the middle
  CHECK(escape_control("a\xE2\x80\xAE"
                       "b\xE2\x81\xA6\xE2\x80\x8F") == "a\\x202Eb\\x2066\\x200F");  // text turned round
  CHECK(escape_control("\xE2\x80\x93") == "\xE2\x80\x93");                          // a dash near those marks
  CHECK(escape_control("\xC0\x8A") == "\\xC0\\x8A");                                // a line feed written too long
}

}  // namespace
}  // namespace yardworth
