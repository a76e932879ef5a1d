#pragma once

#include <optional>
#include <vector>

#include "bag/mixture.hpp"
#include "yardworth/bag.hpp"
#include "yardworth/shot_log.hpp"

namespace yardworth {

// One club's shots, fitted.

// What is typical of the golfer that is borrowed from.
struct TypicalOfClub {
  std::optional<double> carry_yd;
  Mixture mixture;
};

struct FittedClub {
  ClubMeasure measure;
  std::vector<double> solid;  // of each shot, how likely it is a solid strike
  std::vector<OutlyingShot> outliers;
  bool all_the_same = false;
};

// Where the ball landed, off the target line as seen from where it was struck.
double direction_of(const Shot& shot);

// shots: of one club, at least one. Without anything typical a club of too few shots has a carry alone.
FittedClub fit_club(const std::string& club, const std::vector<const Shot*>& shots,
                    const std::optional<TypicalOfClub>& typical);

}  // namespace yardworth
