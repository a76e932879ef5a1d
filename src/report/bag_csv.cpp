#include <cmath>

#include "report/bag_parts.hpp"
#include "report/csv_parts.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using report::Cells;
using report::number;

std::string finite_cell(double value) { return std::isfinite(value) ? number(value) : ""; }

void add_headings(const report::BagNumber& one, Units units, Cells& headings) {
  for (const char* end : {"", "_low", "_high"}) {
    if (one.length) {
      headings.push_back(report::length_heading(std::string(one.key) + end, units));
    } else {
      // The unit, or that it is a probability, stays at the end.
      const std::size_t unit = one.key == "smash_factor" ? one.key.size() : one.key.rfind('_');
      headings.push_back(std::string(one.key.substr(0, unit)) + end + std::string(one.key.substr(unit)));
    }
  }
}

void add_cells(const ClubMeasure& club, const report::BagNumber& one, Units units, Cells& cells) {
  const auto estimate = one.of(club);
  const double factor = one.length ? from_yards(1.0, units) : one.factor;
  for (double Estimate::*part : {&Estimate::value, &Estimate::low, &Estimate::high}) {
    cells.push_back(estimate ? finite_cell(factor * (*estimate).*part) : "");
  }
}

// Of what changed.
struct ChangeColumn {
  std::string name;
  std::string end;  // unit, or that it is a probability
  double factor = 1.0;
  std::optional<Estimate> (*of)(const ClubChange&) = nullptr;
};

std::vector<ChangeColumn> change_columns(Units units) {
  const std::string length = units == Units::yards ? "_yd" : "_m";
  const double factor = from_yards(1.0, units);
  return {
      {"carry", length, factor, [](const ClubChange& change) { return std::optional(change.carry_yd); }},
      {"at_equal_club_speed", length, factor, [](const ClubChange& change) { return change.at_equal_club_speed_yd; }},
      {"club_speed", "_mph", to_mph(1.0), [](const ClubChange& change) { return change.club_speed_mps; }},
      {"poor_strike_change", "_probability", 1.0, [](const ClubChange& change) { return change.poor_strike; }},
      {"carry_sd_ratio", "", 1.0, [](const ClubChange& change) { return change.carry_sd_ratio; }},
      {"direction_sd_ratio", "", 1.0, [](const ClubChange& change) { return change.direction_sd_ratio; }}};
}

}  // namespace

std::string bag_changes_csv(const BagReport& report) {
  if (!report.comparison) return bag_csv(report);
  const std::vector<ChangeColumn> columns = change_columns(report.result.units);
  Cells headings = {"club", "shots_before", "shots_after"};
  for (const ChangeColumn& column : columns) {
    for (const char* part : {"", "_low", "_high"}) headings.push_back(column.name + part + column.end);
  }
  headings.insert(headings.end(), {"verdict", "more_shots"});
  std::string csv = csv_row(headings);
  for (const ClubChange& change : report.comparison->changes) {
    Cells cells = {report::text(change.club), number(static_cast<double>(change.before.shots)),
                   number(static_cast<double>(change.after.shots))};
    for (const ChangeColumn& column : columns) {
      const auto estimate = column.of(change);
      for (double Estimate::*part : {&Estimate::value, &Estimate::low, &Estimate::high}) {
        cells.push_back(estimate ? finite_cell(column.factor * (*estimate).*part) : "");
      }
    }
    cells.emplace_back(report::verdict_words(change.verdict));
    cells.push_back(change.more_shots ? number(static_cast<double>(*change.more_shots)) : "");
    csv += csv_row(cells);
  }
  return csv;
}

std::string bag_csv(const BagReport& report) {
  const BagResult& result = report.result;
  const std::vector<report::BagNumber> numbers = report::bag_numbers();
  Cells headings = {"club", "shots"};
  for (const report::BagNumber& one : numbers) add_headings(one, result.units, headings);
  headings.insert(headings.end(), {"carry_borrowed_share", "borrowed_share"});
  std::string csv = csv_row(headings);
  for (const ClubMeasure& club : result.clubs) {
    Cells cells = {report::text(club.club), number(static_cast<double>(club.shots))};
    for (const report::BagNumber& one : numbers) add_cells(club, one, result.units, cells);
    cells.push_back(number(club.carry_borrowed_share));
    cells.push_back(number(club.borrowed_share));
    csv += csv_row(cells);
  }
  return csv;
}

}  // namespace yardworth
