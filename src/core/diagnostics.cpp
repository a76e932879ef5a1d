#include "yardworth/diagnostics.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <boost/locale/utf.hpp>
#include <utility>

namespace yardworth {
namespace {

std::string in_lines(const std::vector<Diagnostic>& findings) {
  std::string lines;
  for (const Diagnostic& finding : findings) lines += (lines.empty() ? "" : "\n") + to_line(finding);
  return lines;
}

}  // namespace

InvalidRequest::InvalidRequest(std::vector<Diagnostic> findings)
    : std::invalid_argument(in_lines(findings)), findings_(std::move(findings)) {}

bool has_fault(const std::vector<Diagnostic>& findings) {
  return std::any_of(findings.begin(), findings.end(),
                     [](const Diagnostic& finding) { return finding.severity == Severity::fault; });
}

Diagnostic file_fault(const std::string& file, const std::string& found, const std::string& expected) {
  Diagnostic finding;
  finding.file = file;
  finding.found = found;
  finding.expected = expected;
  return finding;
}

namespace {

bool is_control(boost::locale::utf::code_point point) { return point < 0x20 || (point >= 0x7f && point < 0xa0); }

// Marks that let text run the other way, so that what is shown is not what is there (Unicode Standard Annex 9).
bool is_direction_mark(boost::locale::utf::code_point point) {
  return point == 0x200e || point == 0x200f || (point >= 0x202a && point <= 0x202e) ||
         (point >= 0x2066 && point <= 0x2069);
}

std::string place_of(const Diagnostic& finding) {
  if (finding.line == 0) return finding.file;
  return fmt::format("{}:{}:{}", finding.file, finding.line, finding.column);
}

}  // namespace

std::string to_line(const Diagnostic& finding) {
  std::string line = place_of(finding);
  line += finding.severity == Severity::fault ? ": fault: " : ": advice: ";
  if (!finding.path.empty()) line += finding.path + ": ";
  line += "found " + finding.found;
  if (!finding.expected.empty()) line += ", expected " + finding.expected;
  return escape_control(line);
}

std::string escape_control(const std::string& text) {
  using Utf8 = boost::locale::utf::utf_traits<char>;
  std::string safe;
  safe.reserve(text.size());
  for (auto at = text.begin(); at != text.end();) {
    auto next = at;
    const auto point = Utf8::decode(next, text.end());
    if (!boost::locale::utf::is_valid_codepoint(point)) {
      // Only the first byte is given up, so that what follows a broken sequence is still read.
      safe += fmt::format("\\x{:02X}", static_cast<unsigned char>(*at));
      ++at;
      continue;
    }
    if (is_control(point) || is_direction_mark(point)) {
      safe += fmt::format("\\x{:02X}", point);
    } else {
      safe.append(at, next);
    }
    at = next;
  }
  return safe;
}

}  // namespace yardworth
