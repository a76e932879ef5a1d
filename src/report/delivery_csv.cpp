#include "report/csv_parts.hpp"
#include "report/delivery_parts.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

using report::Cells;
using report::number;
using report::yards_of;

std::vector<report::DeliveryNumber> all_numbers() {
  std::vector<report::DeliveryNumber> all = report::delivery_numbers();
  for (const report::DeliveryNumber& of_flight : report::flight_numbers()) all.push_back(of_flight);
  return all;
}

std::string row(const DeliveryResult& result, const char* which, const DeliveryFlight& flown) {
  Cells cells = {report::text(std::string(result.club.name)), which};
  for (const report::DeliveryNumber& one : all_numbers()) cells.push_back(number(one.of(flown)));
  return csv_row(cells);
}

}  // namespace

std::string delivery_csv(const DeliveryReport& report) {
  const DeliveryResult& result = report.result;
  Cells headings = {"club", "which"};
  for (const report::DeliveryNumber& one : all_numbers()) headings.emplace_back(one.key);
  std::string csv = csv_row(headings) + row(result, "now", result.own);
  if (result.after) csv += row(result, "after", *result.after);
  return csv + row(result, "best", result.best);
}

std::string delivery_board_csv(const DeliveryReport& report) {
  std::string csv = csv_row({"club", "club_speed_mph", "attack_deg", "dynamic_loft_deg", "carry_yd", "total_yd"});
  for (const auto& cells : report.result.board) {
    for (const BoardCell& cell : cells) {
      csv += csv_row({report::text(std::string(report.result.club.name)), number(to_mph(cell.club_speed_mps)),
                      number(degrees(cell.attack_rad)), number(degrees(cell.dynamic_loft_rad)),
                      number(yards_of(cell.carry_m)), number(yards_of(cell.total_m))});
    }
  }
  return csv;
}

}  // namespace yardworth
