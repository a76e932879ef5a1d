#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "report/bag_parts.hpp"
#include "report/picture/charts.hpp"
#include "report/text.hpp"
#include "yardworth/report.hpp"

namespace yardworth::report {
namespace {

Interval row_of(const ClubMeasure& club, const std::string& name, bool before, Units units) {
  const auto shown = [units](double yards) { return from_yards(yards, units); };
  const std::string gap = club.gap_yd ? ", gap " + length_text(club.gap_yd->value, units) : "";
  return {name,
          shown(club.carry_yd.value),
          shown(club.carry_yd.low),
          shown(club.carry_yd.high),
          length_text(club.carry_yd.value, units) + gap,
          before};
}

// Clubs that one log alone has.
void add_rows_of(const BagResult& result, const std::vector<std::string>& clubs, bool before,
                 std::vector<Interval>& rows) {
  for (const ClubMeasure& club : result.clubs) {
    if (std::find(clubs.begin(), clubs.end(), club.club) == clubs.end()) continue;
    rows.push_back(row_of(club, club.club, before, result.units));
  }
}

// Those that are sure; the others are in the text.
void add_real_changes(Sheet& sheet, const BagComparison& comparison, Units units) {
  bool any = false;
  for (const ClubChange& change : comparison.changes) {
    if (change.verdict != ClubChange::Verdict::real) continue;
    sheet.paragraph(change_sentence(change, units));
    any = true;
  }
  if (!any) sheet.paragraph("Of no club can it be told yet that its carry changed.");
}

void add_unknown_key(Sheet& sheet, const std::vector<Interval>& rows) {
  const bool any_unknown = std::any_of(rows.begin(), rows.end(), [](const Interval& row) {
    return !std::isfinite(row.low) || !std::isfinite(row.high);
  });
  if (any_unknown) sheet.paragraph("Across the whole chart: too few shots to give an interval.");
}

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
  for (const ClubMeasure& club : result.clubs) rows.push_back(row_of(club, club.club, false, units));
  add_intervals(sheet, rows);
  add_unknown_key(sheet, rows);
  for (const std::string& caution : bag_cautions()) sheet.paragraph(caution);
  return sheet.panel();
}

Panel changes_panel(const BagComparison& comparison, Units units) {
  Sheet sheet;
  sheet.heading("What the clubs carry, before and now");
  add_real_changes(sheet, comparison, units);
  sheet.paragraph(fmt::format(
      "Typical carry in {}, with the interval that holds it 90 times in 100: hollow and dashed before, solid now; "
      "behind it the gap to the next club. Before: {}. Now: {}.",
      name(units), comparison.before, comparison.after));
  std::vector<Interval> rows;
  for (const ClubChange& change : comparison.changes) {
    rows.push_back(row_of(change.before, change.club, true, units));
    rows.push_back(row_of(change.after, fmt::format("now: {}", verdict_words(change.verdict)), false, units));
  }
  add_rows_of(comparison.measured_before, comparison.only_before, true, rows);
  add_rows_of(comparison.measured_after, comparison.only_after, false, rows);
  add_intervals(sheet, rows);
  add_unknown_key(sheet, rows);
  for (const std::string& caution : bag_cautions()) sheet.paragraph(caution);
  return sheet.panel();
}

}  // namespace
}  // namespace yardworth::report

namespace yardworth {

std::string bag_svg(const BagReport& report) {
  if (report.comparison && !report.comparison->changes.empty()) {
    return report::svg_file({report::changes_panel(*report.comparison, report.result.units)},
                            "What the clubs carry, before and now",
                            fmt::format("Before: {}. Now: {}.", report.comparison->before, report.comparison->after));
  }
  return report::svg_file({report::carries_panel(report.result)}, "What the clubs carry", bag_sentence(report.result));
}

}  // namespace yardworth
