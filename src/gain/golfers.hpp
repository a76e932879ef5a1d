#pragma once

#include "yardworth/change.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// The three golfers of a change.
struct Golfers {
  Player before;
  Player driver_longer;
  Player all_longer;

  // Whether a part of the change leaves every club as it was: it then saves exactly nothing.
  bool no_driver() const;
  bool no_irons() const;
};

// The change has to leave every club a carry (require_valid).
Golfers lengthen_all(const Player& player, const DistanceChange& change);

}  // namespace yardworth
