#pragma once

#include "yardworth/change.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// Throws std::invalid_argument when a change has left a club without a carry.
void require_carries(const Player& player);

// The three golfers of a change.
struct Golfers {
  Player before;
  Player driver_longer;
  Player all_longer;

  // Whether a part of the change leaves every club as it was: it then saves exactly nothing.
  bool no_driver() const;
  bool no_irons() const;
};

// Throws std::invalid_argument when the change leaves a club without a carry.
Golfers lengthen_all(const Player& player, const DistanceChange& change);

}  // namespace yardworth
