#include "gain/golfers.hpp"

#include <algorithm>

namespace yardworth {

namespace {

bool same_carries(const Player& a, const Player& b) {
  return std::equal(a.clubs.begin(), a.clubs.end(), b.clubs.begin(), b.clubs.end(),
                    [](const Club& x, const Club& y) { return x.carry_yd == y.carry_yd; });
}

}  // namespace

bool Golfers::no_driver() const { return same_carries(before, driver_longer); }
bool Golfers::no_irons() const { return same_carries(driver_longer, all_longer); }

Golfers lengthen_all(const Player& player, const DistanceChange& change) {
  return {player, lengthen(player, change.driver_carry_yd, 0.0),
          lengthen(player, change.driver_carry_yd, change.irons_carry_yd)};
}

}  // namespace yardworth
