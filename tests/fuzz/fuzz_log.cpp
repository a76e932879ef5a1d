// The reader of shot logs: any bytes are a log or faults, each finding with its place; what can be read can be
// measured, and compared with itself.

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <string_view>

#include "promise.hpp"
#include "yardworth/bag.hpp"
#include "yardworth/report.hpp"
#include "yardworth/shot_log.hpp"

namespace yardworth::fuzz {
namespace {

void read(std::string_view text, BadRows bad_rows) {
  const Reading<ShotLog> reading = read_shot_log(text, "f", bad_rows);
  promise(reading.ok() != has_fault(reading.findings), "a log or a fault, never both, never neither");
  for (const Diagnostic& finding : reading.findings) {
    promise(finding.line > 0 && finding.column > 0, "every finding has its place");
    promise(to_line(finding).find('\n') == std::string::npos, "a finding is one line");
  }
  if (!reading.ok()) return;
  BagRequest request;
  if (text.size() % 2 == 1) request.golfer = golfer_of_index(16.2, Gender::men);
  BagReport report;
  report.comparison = compare_bags(*reading.value, *reading.value, request);
  report.result = report.comparison->measured_after;
  for (const ClubMeasure& club : report.result.clubs) {
    promise(std::isfinite(club.carry_yd.value), "a club has a carry");
    promise(club.carry_yd.low <= club.carry_yd.value && club.carry_yd.value <= club.carry_yd.high,
            "inside its interval");
  }
  promise(!bag_text(report).empty() && !bag_json(report).empty() && !bag_changes_csv(report).empty(), "it can be told");
}

}  // namespace
}  // namespace yardworth::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  yardworth::fuzz::read(text, yardworth::BadRows::refused);
  yardworth::fuzz::read(text, yardworth::BadRows::skipped);
  return 0;
}
