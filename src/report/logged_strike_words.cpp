#include "report/logged_strike_words.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "bag/mixture.hpp"
#include "core/message_text.hpp"
#include "core/telling.hpp"
#include "report/sentence_words.hpp"
#include "report/text.hpp"
#include "yardworth/bag.hpp"
#include "yardworth/units.hpp"

namespace yardworth::report {
namespace {

std::string median_words(const LoggedDelivery& logged, const LoggedStrike& strike) {
  std::vector<std::string> numbers;
  for (std::size_t i = 0; i < delivery_fields.size(); ++i) {
    if (!strike.medians[i] || logged.given[i]) continue;
    const DeliveryField& field = delivery_fields[i];
    numbers.push_back(fmt::format("{} {} {}", field.words, fixed(field.said(*strike.medians[i]), 1), field.unit));
  }
  if (numbers.empty()) return "Every number of the strike that the log has was given otherwise.";
  return fmt::format("From the log, the median of {} {} with {}: {}.", strike.shots,
                     strike.shots == 1 ? "strike" : "strikes", shortened(logged.club), fmt::join(numbers, ", "));
}

// Nothing where all shots are of one session.
std::string session_words(const ShotLog& shots) {
  std::set<std::size_t> sessions;
  for (const Shot& shot : shots.shots) sessions.insert(shot.session);
  if (sessions.size() < 2) return "";
  std::vector<std::string> names;
  for (const std::size_t session : sessions) names.push_back(shots.sessions[session]);
  return fmt::format("The strikes of {} sessions are taken together: {}.", names.size(), session_names(names));
}

// Of the numbers from the first on, those that nobody measured or gave.
std::vector<std::string> assumed_from(std::size_t first, const SaidFields& known) {
  std::vector<std::string> words;
  for (std::size_t i = first; i < known.size(); ++i) {
    if (!known[i]) words.emplace_back(delivery_fields[i].words);
  }
  return words;
}

// What the log says of the carry beside what the strike gives; nothing where they agree, or where the user gave another
// strike than the log's.
std::string carry_words(const LoggedDelivery& logged, const LoggedStrike& strike) {
  for (std::size_t i = 0; i < delivery_fields.size(); ++i) {
    if (strike.medians[i] && logged.given[i]) return "";
  }
  std::vector<double> carries;
  for (const Shot& shot : logged.shots.shots) carries.push_back(shot.carry_yd);
  const double own_yd = median(std::move(carries));
  const double struck_yd = to_yards(logged.carry_m, Units::metres);
  if (std::abs(struck_yd - own_yd) <= telling::carry_apart * own_yd) return "";
  const std::vector<std::string> assumed = assumed_from(0, logged.known);
  const std::string not_measured =
      assumed.empty() ? "" : fmt::format("what was assumed and not measured ({}), ", fmt::join(assumed, ", "));
  return fmt::format(
      "The log's own carry is {} yards (median of its shots); this strike gives {}. The reason may be {}range balls, "
      "the wind and weather of the day, or strikes off the middle of the face.",
      fixed(own_yd, 0), fixed(struck_yd, 0), not_measured);
}

std::string assumption_words(const SaidFields& known) {
  const std::vector<std::string> assumed = assumed_from(1, known);
  if (assumed.empty()) return "";
  return fmt::format("Not in the log: {}. A recommendation about {} is about what was assumed, not about the player.",
                     fmt::join(assumed, ", "), assumed.size() == 1 ? "it" : "them");
}

std::string uneven_words(const UnevenLoft& uneven) {
  return fmt::format(
      "The dynamic loft differs by {} degrees from strike to strike (standard deviation of solid strikes): that alone "
      "spreads the carry by {} yards.",
      fixed(degrees(uneven.loft_sd_rad), 1), fixed(to_yards(uneven.carry_sd_m, Units::metres), 1));
}

}  // namespace

std::vector<std::string> logged_strike_words(const LoggedDelivery& logged) {
  const LoggedStrike strike = logged_strike(logged.shots);
  std::vector<std::string> words = {median_words(logged, strike)};
  if (strike.shots < fewest_own_shots) {
    words.push_back("So few strikes tell little: one odd strike among them moves the median.");
  }
  words.push_back(session_words(logged.shots));
  words.push_back(carry_words(logged, strike));
  words.push_back(assumption_words(logged.known));
  if (logged.uneven) words.push_back(uneven_words(*logged.uneven));
  std::erase(words, "");
  return words;
}

}  // namespace yardworth::report
