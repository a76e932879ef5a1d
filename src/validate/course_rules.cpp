#include "validate/course_rules.hpp"

#include <fmt/format.h>

#include <set>

#include "core/full_round.hpp"
#include "core/message_text.hpp"

namespace yardworth {

const Limits& rating_limits(std::size_t holes) {
  if (holes == half_round_holes) return limits::rating_of_9_holes;
  return holes == full_round_holes ? limits::rating_of_18_holes : limits::rating_of_any_holes;
}

void check_tees_differ(const std::vector<Tee>& tees, const TellOf& tell_of) {
  std::set<std::string> seen;
  for (std::size_t i = 0; i < tees.size(); ++i) {
    const bool repeated = !tees[i].name.empty() && !seen.insert(tees[i].name).second;
    if (repeated) tell_of(i)("", fmt::format("the tee {} again", quoted(tees[i].name)), "each tee once");
  }
}

void check_longest_first(const std::vector<std::string>& tees, const std::vector<std::optional<double>>& totals_yd,
                         Units units, const TellOf& tell_of) {
  for (std::size_t tee = 1; tee < totals_yd.size(); ++tee) {
    const auto& before = totals_yd[tee - 1];
    const auto& here = totals_yd[tee];
    const bool in_order = !here || !before || *here <= *before;
    if (in_order) continue;
    tell_of(tee)("",
                 fmt::format("{} from {} after {} from {}", spoken(*here, units), quoted(tees[tee]),
                             spoken(*before, units), quoted(tees[tee - 1])),
                 "tees longest first");
  }
}

}  // namespace yardworth
