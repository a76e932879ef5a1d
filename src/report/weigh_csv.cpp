#include "report/csv_parts.hpp"
#include "yardworth/report.hpp"

namespace yardworth {

std::string weigh_csv(const WeighReport& report) {
  using report::number;
  std::string csv = csv_row({"option", "strokes_saved", "strokes_saved_low", "strokes_saved_high", "money", "hours",
                             "money_per_stroke", "hours_per_stroke", "best_probability", "break_even_rounds",
                             "equal_driver_carry_yd", "equal_direction_sd_share", "equal_putting_share"});
  for (const WeighedOption& weighed : report.result.options) {
    const Equivalents& equal = weighed.equivalents;
    csv += csv_row({report::text(weighed.option.name), number(weighed.saved.value), number(weighed.saved.low),
                    number(weighed.saved.high), number(weighed.option.money), number(weighed.option.hours),
                    number(weighed.money_per_stroke), number(weighed.hours_per_stroke),
                    number(weighed.best_probability), number(weighed.break_even_rounds), number(equal.driver_carry_yd),
                    number(equal.direction_share), number(equal.putting_share)});
  }
  return csv;
}

}  // namespace yardworth
