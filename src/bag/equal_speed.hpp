#pragma once

#include <optional>
#include <vector>

#include "yardworth/bag.hpp"
#include "yardworth/shot_log.hpp"

namespace yardworth {

// Shots of a club with how likely each is a solid strike, and by what factor the variance of their mean carry is larger
// since nobody knows which strikes were poor.
struct WeighedShots {
  const std::vector<const Shot*>& shots;
  const std::vector<double>& solid;
  double variance_factor = 1.0;
};

// The change of carry at equal club head speed: both logs have one slope of carry over speed, and spreads of their own.
// Nothing where too few shots have a speed, or the speeds of the two lie too far apart. docs/model.md, "What changed".
std::optional<Estimate> change_at_equal_speed(const WeighedShots& before, const WeighedShots& after);

}  // namespace yardworth
