#pragma once

#include <vector>

#include "bag/fit_club.hpp"
#include "yardworth/bag.hpp"

namespace yardworth {

// A log as it is measured, and what is known of every single shot.
struct FittedBag {
  BagResult result;
  std::vector<std::vector<const Shot*>> shots;  // by the log's clubs; the log must outlive them
  std::vector<std::vector<double>> solid;       // how likely each of those is a solid strike
};

// Throws InvalidRequest where the golfer has faults.
FittedBag fit_bag(const ShotLog& log, const BagRequest& request);

}  // namespace yardworth
