#include "validate/player_rules.hpp"

#include <fmt/format.h>

#include <map>

#include "core/message_text.hpp"
#include "core/spelling.hpp"

namespace yardworth {

void check_club_names(const std::vector<NamedClub>& clubs, const TellOf& tell_of) {
  std::map<std::string, int> seen;
  int drivers = 0;
  for (std::size_t i = 0; i < clubs.size(); ++i) {
    const std::string& name = clubs[i].name;
    const bool repeated = !name.empty() && ++seen[small_letters(name)] > 1;
    if (repeated) {
      tell_of(i)("", fmt::format("the club {} again", quoted(name)), "each club once");
    } else if (clubs[i].kind == ClubKind::driver && ++drivers > 1) {
      tell_of(i)("", fmt::format("a second driver, {}", quoted(name)), "one driver at most");
    }
    if (small_letters(name) == "putter") {
      tell_of(i)("", "a putter", "clubs with a carry; putting comes from the baseline");
    }
  }
}

bool check_longer_before_shorter(double longer_yd, double shorter_yd, Units units, const Tell& tell) {
  if (shorter_yd <= longer_yd) return true;
  tell("", fmt::format("a carry of {} after {}", spoken(shorter_yd, units), spoken(longer_yd, units)),
       "clubs longest first");
  return false;
}

void check_carry_sd(double carry_sd_yd, double carry_yd, Units units, const Tell& tell) {
  const double most_yd = limits::largest_carry_sd_share * carry_yd;
  if (carry_sd_yd > most_yd) {
    tell("carry_sd", spoken(carry_sd_yd, units), "at most half the carry, " + spoken(most_yd, units));
  }
}

}  // namespace yardworth
