#pragma once

namespace yardworth {

// The change that is asked about, in yards of carry; a loss is negative.
struct DistanceChange {
  double driver_carry_yd = 0.0;
  double irons_carry_yd = 0.0;  // of the reference iron; the other clubs in proportion to their carry
};

// Expected strokes under the four states of the question, and their differences.
struct FourValues {
  double before = 0.0;         // V0: clubs and policy before
  double driver_longer = 0.0;  // V1: driver longer, policy before
  double all_longer = 0.0;     // V2: driver and irons longer, policy before
  double replanned = 0.0;      // V3: the same clubs, planned afresh

  double from_tee() const { return before - driver_longer; }
  double from_irons() const { return driver_longer - all_longer; }
  double from_replanning() const { return all_longer - replanned; }
  double strokes_saved() const { return before - replanned; }
};

}  // namespace yardworth
