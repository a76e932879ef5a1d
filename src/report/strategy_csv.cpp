#include "report/csv_parts.hpp"
#include "report/hole_words.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using report::length;
using report::length_heading;
using report::number;
using report::text;

std::string row(const StrategyResult& result, const HoleStrategy& hole, const char* when, std::size_t option,
                const TeeOption& shot) {
  const Units units = result.units;
  return csv_row({std::to_string(hole.number), std::to_string(hole.par), length(hole.length_yd, units), when,
                  std::to_string(option), text(shot.club), text(report::aim_words(shot.aim, units)),
                  length(shot.aim.right_yd, units), length(shot.carry_yd, units), number(shot.strokes),
                  number(shot.costs), text(result.course), text(result.tee), text(result.player)});
}

std::string rows(const StrategyResult& result, const HoleStrategy& hole, const char* when, const TeePlay& policy) {
  std::string csv = row(result, hole, when, 0, policy.tee_shot);
  for (std::size_t i = 0; i < policy.alternatives.size(); ++i) {
    csv += row(result, hole, when, i + 1, policy.alternatives[i]);
  }
  return csv;
}

}  // namespace

std::string strategy_csv(const StrategyReport& report) {
  const StrategyResult& result = report.result;
  const Units units = result.units;
  std::string csv = csv_row({"hole", "par", length_heading("length", units), "when", "option", "tee_club", "aim_words",
                             length_heading("aim_right", units), length_heading("carry", units), "strokes", "costs",
                             "course", "tee", "player"});
  for (const HoleStrategy& hole : result.holes) {
    csv += rows(result, hole, "before", hole.before);
    if (hole.after) csv += rows(result, hole, "after", *hole.after);
  }
  return csv;
}

}  // namespace yardworth
