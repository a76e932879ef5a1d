#pragma once

#include <array>
#include <vector>

#include "core/numerics.hpp"
#include "strategy/hole_model.hpp"

namespace yardworth {

// What no state and no option can beat. Nearer states are improved first, so that the least value of any state is known
// by distance up to the state in hand; further out it is taken to stay as it is.
class Bounds {
 public:
  // Knows the short game only: ball on the green or the fairway.
  explicit Bounds(const HoleModel& model);

  // A state so far from the hole is worth so many strokes.
  void note(double distance_yd, double strokes);

  // The fewest expected strokes that a swing can come to from so far: straight at the hole, free of trouble, and then
  // from the best place at each distance. An estimate from a few strikes, not a proof: find_best_policy uses it to look
  // at promising options first, and a complete search does without.
  double least_strokes(double distance_yd, const Swing& swing);

 private:
  // Strikes of each kind that stand for all: the middles of equal shares.
  static constexpr std::size_t strikes = numerics::bound_nodes;

  double least_after(double left_yd, const Swing& swing) const;

  std::array<double, strikes> solid_deviates_;
  std::array<double, strikes> poor_carry_shares_;
  std::vector<double> least_;          // by whole yards from the hole: of all states noted there
  std::vector<double> least_from_on_;  // the same or further out, where it is known: empty after a note
};

}  // namespace yardworth
