#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "report/bag_parts.hpp"
#include "report/picture/charts.hpp"
#include "report/text.hpp"
#include "yardworth/report.hpp"

namespace yardworth::report {
namespace {

Panel carries_panel(const BagResult& result) {
  const Units units = result.units;
  Sheet sheet;
  sheet.heading("What the clubs carry");
  sheet.paragraph(bag_sentence(result));
  sheet.paragraph(
      fmt::format("Typical carry in {}, with the interval that holds it 90 times in 100; behind it the gap to "
                  "the next club.",
                  name(units)));
  std::vector<Interval> rows;
  for (const ClubMeasure& club : result.clubs) {
    const std::string gap = club.gap_yd ? ", gap " + length_text(club.gap_yd->value, units) : "";
    rows.push_back({club.club, from_yards(club.carry_yd.value, units), from_yards(club.carry_yd.low, units),
                    from_yards(club.carry_yd.high, units), length_text(club.carry_yd.value, units) + gap});
  }
  add_intervals(sheet, rows);
  const bool any_unknown = std::any_of(rows.begin(), rows.end(), [](const Interval& row) {
    return !std::isfinite(row.low) || !std::isfinite(row.high);
  });
  if (any_unknown) sheet.paragraph("Across the whole chart: too few shots to give an interval.");
  for (const std::string& caution : bag_cautions()) sheet.paragraph(caution);
  return sheet.panel();
}

}  // namespace
}  // namespace yardworth::report

namespace yardworth {

std::string bag_svg(const BagReport& report) {
  return report::svg_file({report::carries_panel(report.result)}, "What the clubs carry", bag_sentence(report.result));
}

}  // namespace yardworth
