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

}  // namespace

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
