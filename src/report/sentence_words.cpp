#include "report/sentence_words.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <cmath>

#include "core/distance_words.hpp"
#include "core/message_text.hpp"
#include "core/telling.hpp"
#include "report/text.hpp"
#include "yardworth/diagnostics.hpp"

namespace yardworth::report {

Subject carry_subject(const DistanceChange& change, Units units) {
  const auto number = [&](double yards) { return plain_number(std::abs(from_yards(yards, units))); };
  const auto more = [](double yards) { return yards < 0.0 ? "fewer" : "more"; };
  const std::string irons = number(change.irons_carry_yd);
  if (change.driver_carry_yd == 0.0) {
    return {fmt::format("{} {} {} in the irons", irons, more(change.irons_carry_yd), unit_after(irons, units)),
            irons == "1"};
  }
  const std::string driver = number(change.driver_carry_yd);
  std::string words =
      fmt::format("{} {} {} of driver carry", driver, more(change.driver_carry_yd), unit_after(driver, units));
  if (change.irons_carry_yd != 0.0) {
    words += fmt::format(", with {} {} in the irons,", irons, more(change.irons_carry_yd));
  }
  return {words, driver == "1"};
}

std::string shown_name(const std::string& text) {
  constexpr std::size_t name_width = 40;
  return shorten(escape_control(text), name_width);
}

std::string session_names(const std::vector<std::string>& sessions) {
  std::vector<std::string> names;
  for (const std::string& name : sessions) {
    if (names.size() == telling::most_sessions_named) break;
    names.push_back(name.empty() ? "one without a name" : shortened(name));
  }
  const std::size_t more = sessions.size() - names.size();
  return fmt::format("{}{}", fmt::join(names, ", "), more == 0 ? "" : fmt::format(" and {} more", more));
}

}  // namespace yardworth::report
