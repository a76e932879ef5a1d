#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "yardworth/bag.hpp"
#include "yardworth/change.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// What measured shots say of the clubs of a golfer's bag. docs/model.md, "A change that was measured".
struct MeasuredClub {
  std::string club;  // of the bag
  ClubChange change;
};

struct MeasuredChange {
  std::vector<MeasuredClub> clubs;      // enough shots before and after
  std::vector<std::string> few_shots;   // too few to say anything of, clubs of the bag
  std::vector<std::string> not_in_bag;  // measured, and no club of the bag
};

MeasuredChange measured_change(const BagComparison& comparison, const Player& player);

// The change as it was estimated.
Change estimated_change(const MeasuredChange& measured, const Player& player);

// What it may be as well, so many times, each number drawn from what the shots leave open of it. The same seed draws
// the same.
std::vector<Change> drawn_changes(const MeasuredChange& measured, const Player& player, int draws, std::uint64_t seed);

}  // namespace yardworth
