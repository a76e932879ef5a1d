#include <fmt/format.h>

#include "report/delivery_parts.hpp"
#include "report/picture/delivery_chart.hpp"
#include "report/text.hpp"
#include "yardworth/report.hpp"

namespace yardworth::report {
namespace {

std::string yards_words(double yards) { return fmt::format("{} yards", fixed(yards, 1)); }

std::string degrees_words(const Loss& loss) {
  return fmt::format("{} {} to {}", words_of(loss.of), fixed(degrees(loss.own_rad), 1),
                     fixed(degrees(loss.best_rad), 1));
}

}  // namespace

void add_losses_chart(Sheet& sheet, const DeliveryResult& result) {
  const double own = yards_of(result.losses.own.flight.carry_m);
  std::vector<Bar> bars;
  double sum = 0.0;
  for (const Loss& loss : result.losses.losses) {
    const double gained = yards_of(loss.in_turn_m);
    bars.push_back({std::string(words_of(loss.of)), sum, sum + gained, yards_words(gained)});
    sum += gained;
  }
  bars.push_back({"all together", 0.0, sum, yards_words(sum), true});
  add_bars(sheet, bars, Joined::yes, "losses");
  sheet.paragraph(fmt::format("Of carry, from {} to {}, at the same club head speed. In degrees, now and at its best:",
                              yards_words(own), yards_words(own + sum)));
  for (const Loss& loss : result.losses.losses) sheet.paragraph(degrees_words(loss));
}

namespace {

Panel losses_panel(const DeliveryResult& result) {
  Sheet sheet;
  sheet.heading("What the strike gives away");
  sheet.paragraph(delivery_sentence(result));
  add_losses_chart(sheet, result);
  for (const std::string& caution : delivery_cautions()) sheet.paragraph(caution);
  return sheet.panel();
}

}  // namespace
}  // namespace yardworth::report

namespace yardworth {

std::string delivery_svg(const DeliveryReport& report) {
  return report::svg_file({report::losses_panel(report.result)}, "What the strike gives away",
                          delivery_sentence(report.result));
}

}  // namespace yardworth
