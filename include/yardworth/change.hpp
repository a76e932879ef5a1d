#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "yardworth/course.hpp"
#include "yardworth/diagnostics.hpp"

namespace yardworth {

// The change that is asked about, in yards of carry; a loss is negative.
struct DistanceChange {
  double driver_carry_yd = 0.0;
  double irons_carry_yd = 0.0;  // of the reference iron; the other clubs in proportion to their carry
};

// What is asked about where nothing is said, in the course's units.
inline constexpr double default_driver_change = 20.0;
inline constexpr double default_irons_change = 6.0;  // of gain; bands leave the irons as they are
inline constexpr double default_curve_step = 5.0;

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

// A hazard that is moved, or one more, without touching the course's file. Lengths are yards along the line from the
// longest tee and outwards from it, as in Hazard.
struct HazardChange {
  int hole = 0;               // its number
  std::optional<int> hazard;  // which one lies elsewhere, from 1 in the order of the hole; nothing: one is added
  std::optional<HazardKind> kind;
  std::optional<Side> side;
  std::optional<double> from_yd, to_yd, near_yd, far_yd;
  std::string name;  // what findings call the change, in the place of a file; empty: "change of hole 4"
};

struct ChangedHazard {
  int hole = 0;            // its number
  std::size_t hazard = 0;  // index into the hazards of the hole, after the change
  bool added = false;      // otherwise it was there, elsewhere
};

struct ChangedCourse {
  Course course;
  std::vector<ChangedHazard> hazards;  // each once, in the order of the changes
};

// The course with its hazards changed, one change after the other; the value is there only when no change has a fault.
// What a move does not say stays, but for the width of a hazard that comes to lie beside the hole or across it; a
// polygon becomes a strip of its kind when side, from and to are all said. Of an added hazard kind, side, from and to
// have to be said. Limits and defaults are those of a file, and so are the faults.
Reading<ChangedCourse> change_hazards(const Course& course, const std::vector<HazardChange>& changes);

}  // namespace yardworth
