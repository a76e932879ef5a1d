#include "report/reach_words.hpp"

#include <fmt/format.h>

#include "report/hole_words.hpp"
#include "report/text.hpp"

namespace yardworth::report {

std::vector<std::string> into_reach_words(const std::vector<CurvePoint>& curve, Units units) {
  std::vector<std::string> words;
  for (const CurvePoint& point : curve) {
    if (point.into_reach.empty()) continue;
    std::string hazards;
    for (const HazardInReach& reached : point.into_reach) {
      hazards +=
          fmt::format("{}hole {}, {}", hazards.empty() ? "" : "; ", reached.hole, hazard_words(reached.hazard, units));
    }
    words.push_back(fmt::format("at {}: {}", plain_number(from_yards(point.change.driver_carry_yd, units)), hazards));
  }
  return words;
}

}  // namespace yardworth::report
