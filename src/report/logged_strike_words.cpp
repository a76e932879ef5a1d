#include "report/logged_strike_words.hpp"

#include <fmt/format.h>

#include "core/message_text.hpp"
#include "report/text.hpp"
#include "yardworth/units.hpp"

namespace yardworth::report {

std::vector<std::string> logged_strike_words(const std::string& club, const LoggedStrike& strike,
                                             const std::optional<UnevenLoft>& uneven) {
  std::string numbers;
  for (std::size_t i = 0; i < delivery_fields.size(); ++i) {
    if (!strike.medians[i]) continue;
    const DeliveryField& field = delivery_fields[i];
    numbers += fmt::format("{}{} {} {}", numbers.empty() ? "" : ", ", field.words,
                           fixed(field.said(*strike.medians[i]), 1), field.unit);
  }
  std::vector<std::string> words = {fmt::format("From the log, the median of {} {} with {}: {}.", strike.shots,
                                                strike.shots == 1 ? "strike" : "strikes", shortened(club), numbers)};
  if (uneven) {
    words.push_back(
        fmt::format("The dynamic loft differs by {} degrees from strike to strike (standard deviation of solid "
                    "strikes): that alone "
                    "spreads the carry by {} yards.",
                    fixed(degrees(uneven->loft_sd_rad), 1), fixed(to_yards(uneven->carry_sd_m, Units::metres), 1)));
  }
  return words;
}

}  // namespace yardworth::report
