#pragma once

#include <array>
#include <cstddef>

#include "core/numerics.hpp"
#include "player/lies_in_play.hpp"
#include "yardworth/units.hpp"

namespace yardworth {

// The places that the strokes of a finish are told apart by: each lie at some distances. They are numbered, the lies in
// play first, then the green.
inline constexpr int finish_places =
    static_cast<int>(lies_in_play.size() * numerics::finish_yards.size() + numerics::finish_feet.size());

// A ball between two of them: the upper one counts by the share.
struct FinishPlace {
  int lower = 0;
  double share = 0.0;
};

// The lie and the distance of such a place.
struct PlaceOfFinish {
  Lie lie = Lie::green;
  int distance = 0;  // yards, on the green feet
};
inline PlaceOfFinish place_of_finish(int place) {
  constexpr auto yards = numerics::finish_yards.size();
  const auto index = static_cast<std::size_t>(place);
  if (index >= lies_in_play.size() * yards) {
    return {Lie::green, numerics::finish_feet[index - lies_in_play.size() * yards]};
  }
  return {lies_in_play[index / yards], numerics::finish_yards[index % yards]};
}

// Where a ball at rest counts; further off than the last distance it counts as there.
FinishPlace finish_place(Lie lie, double distance_yd);

}  // namespace yardworth
