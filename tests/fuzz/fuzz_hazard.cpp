// What --move-hazard and --add-hazard are given: lines, those that begin with "+" additions, all others moves.

#include <cstddef>
#include <cstdint>
#include <sstream>
#include <string>

#include "cli/hazard_text.hpp"
#include "promise.hpp"
#include "yardworth/read.hpp"
#include "yardworth/scenario.hpp"

namespace yardworth::fuzz {
namespace {

cli::HazardTexts changes_in(const std::string& text) {
  cli::HazardTexts changes;
  std::istringstream lines(text);
  for (std::string line; std::getline(lines, line);) {
    if (!line.empty() && line.front() == '+') {
      changes.additions.push_back(line.substr(1));
    } else {
      changes.moves.push_back(line);
    }
  }
  return changes;
}

void change(const std::string& text) {
  static const Course course = *read_course(scenario_course_yaml(), "course").value;
  const Reading<ChangedCourse> changed = cli::change_hazards(course, changes_in(text));
  promise(changed.ok() != has_fault(changed.findings), "a course or a fault, never both, never neither");
  for (const Diagnostic& finding : changed.findings) {
    promise(to_line(finding).find('\n') == std::string::npos, "a finding is one line");
  }
}

}  // namespace
}  // namespace yardworth::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  yardworth::fuzz::change(std::string(reinterpret_cast<const char*>(data), size));
  return 0;
}
