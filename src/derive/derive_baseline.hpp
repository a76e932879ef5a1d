#pragma once

#include <optional>
#include <vector>

#include "yardworth/baseline.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// A golfer's baseline from the golfer's own shots: putts from Putting, strokes near the green from ShortGame, the rest
// from the best policy on the reference holes. docs/model.md, "Baselines".

struct DeriveOptions {
  // Where values are interpolated as differences to a table: a table near to the answer makes the answer exact. Without
  // one the derivation makes its own in a first pass.
  std::optional<BaselineTable> near;
  int held_out_offsets = 3;  // sets of strikes that the policy is evaluated on, averaged
  // Distances of the columns beyond the short game, yards, rising.
  std::vector<double> distances_yd;
  std::vector<double> tee_lengths_yd;
};
DeriveOptions all_distances();

// The table of a golfer: standard_player of a band, say. Name and source are the caller's.
BaselineTable derive_baseline(const Player& golfer, const DeriveOptions& options);

// The habit's shot at the hole from the fairway of a reference hole.
struct ApproachResult {
  double green_hit = 0.0;        // probability that it ends on the green
  double median_leave_ft = 0.0;  // distance to the hole that half of them end within
};
ApproachResult approach_from(const Player& golfer, double distance_yd);

}  // namespace yardworth
