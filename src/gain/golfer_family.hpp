#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <tuple>
#include <vector>

#include "yardworth/player.hpp"

namespace yardworth {

// Golfers of whom nothing is known but Handicap Index, gender and driver carry are a family of two numbers for each
// gender. Where they play the same clubs from the tee, what a hole takes is smooth in both, so that a golfer is a
// mixture of those at the corners of a cell around him. docs/model.md, "Members".

struct FamilyGolfer {
  Gender gender = Gender::men;
  double handicap_index = 0.0;  // no further out than the golfers that skills are known of
  double driver_carry_yd = 0.0;

  friend bool operator==(const FamilyGolfer&, const FamilyGolfer&) = default;
  friend bool operator<(const FamilyGolfer& a, const FamilyGolfer& b) {
    return std::tie(a.gender, a.handicap_index, a.driver_carry_yd) <
           std::tie(b.gender, b.handicap_index, b.driver_carry_yd);
  }
};

FamilyGolfer family_golfer(const Member& member);
// With a standard bag; the label is that of nobody.
Player player_of(const FamilyGolfer& golfer);

inline constexpr std::size_t family_corners = 4;
using CornerWeights = std::array<double, family_corners>;

// The cell of the grid that a golfer lies in: the corners, of the lower index first and of the shorter drive first, and
// how far along either side of it the golfer lies, 0 to 1.
struct FamilyCell {
  std::array<FamilyGolfer, family_corners> corners;
  double along_index = 0.0;
  double along_carry = 0.0;
};
FamilyCell cell_of(const FamilyGolfer& golfer);

// The weights of the corners of a golfer at that place of a cell; they sum to 1, and none is negative. Corners that are
// not alike count nothing: of three alike, their triangle has to hold the golfer, or there are no weights.
std::optional<CornerWeights> weights_of_corners(const FamilyCell& cell, const std::array<bool, family_corners>& alike);

// Who is worked out, so that it is as few as may be.
struct FamilyPlan {
  std::vector<FamilyGolfer> corners;  // rising, once each
  std::vector<bool> between;          // by golfer: whether he is a mixture of corners, or worked out himself
};
FamilyPlan plan_family(const std::vector<FamilyGolfer>& golfers);

}  // namespace yardworth
