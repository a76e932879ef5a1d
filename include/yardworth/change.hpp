#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "yardworth/course.hpp"
#include "yardworth/diagnostics.hpp"

namespace yardworth {

// Added carry, in yards; a loss is negative.
struct DistanceChange {
  double driver_carry_yd = 0.0;
  double irons_carry_yd = 0.0;  // of the reference iron; the other clubs in proportion to their carry
};

// What is asked about where nothing is said, in the course's units.
inline constexpr double default_driver_change = 20.0;
inline constexpr double default_irons_change = 6.0;  // of gain; bands leave the irons as they are
inline constexpr double default_curve_step = 5.0;

// What changes of one club by itself, on top of what changes of all.
struct OwnChange {
  std::string club;                 // a club of the bag; capitals, blanks and dashes aside
  double carry_yd = 0.0;            // added
  double roll_yd = 0.0;             // added
  double carry_sd_share = 0.0;      // of the spread of carry: -0.1 is a tenth less
  double direction_sd_share = 0.0;  // of the spread of direction
  double direction_mean_rad = 0.0;  // added; right positive
  double poor_strike = 0.0;         // added to the probability
};

// The change that is asked about: of carry, and of whatever else of a golfer. A loss is negative, and so is a spread
// that becomes narrower. docs/model.md, "A change in steps".
struct Change {
  double driver_carry_yd = 0.0;
  double irons_carry_yd = 0.0;        // as in DistanceChange
  std::vector<OwnChange> clubs = {};  // each once
  double carry_sd_share = 0.0;        // of every club's spread of carry: -0.1 is a tenth less
  double direction_sd_share = 0.0;    // of every club's spread of direction
  double direction_mean_rad = 0.0;    // added to the mean direction of every club; right positive
  double poor_strike = 0.0;           // added to every club's probability, which falls to 0 at most
  double short_game_share = 0.0;      // of the spreads of strokes played in the short game
  double putting_share = 0.0;         // of the spreads of putts

  // Of carry alone.
  static Change of(const DistanceChange& carry) { return {carry.driver_carry_yd, carry.irons_carry_yd}; }
  DistanceChange carry() const { return {driver_carry_yd, irons_carry_yd}; }
};

// The steps that a change is taken in, always in this order. Each is made on top of those before it.
enum class ChangeStep {
  driver_carry,
  irons_carry,
  club_carry,  // carry and roll of single clubs
  carry_spread,
  direction_spread,
  mean_direction,
  poor_strikes,
  short_game,
  putting,
};
inline constexpr std::array<ChangeStep, 9> all_change_steps = {
    ChangeStep::driver_carry, ChangeStep::irons_carry,      ChangeStep::club_carry,
    ChangeStep::carry_spread, ChangeStep::direction_spread, ChangeStep::mean_direction,
    ChangeStep::poor_strikes, ChangeStep::short_game,       ChangeStep::putting};
// "driver carry", "irons carry", "club carry", "carry spread", "direction spread", "mean direction", "poor strikes",
// "short game", "putting".
std::string_view name(ChangeStep step);

// What is asked for, whether or not it moves anything of a golfer.
std::vector<ChangeStep> steps_asked(const Change& change);
inline bool is_nothing(const Change& change) { return steps_asked(change).empty(); }
// Whether driver and irons are all that is asked for.
bool is_carry_alone(const Change& change);

// Expected strokes with everything up to a step, under the policy before.
struct StepValue {
  ChangeStep step = ChangeStep::driver_carry;
  double strokes = 0.0;
};

// Expected strokes before a change, after each step of it under the policy before, and planned afresh with all of it.
// What a step saves is what the strokes fall by; the whole is the sum of them. docs/model.md, "A change in steps".
struct StepValues {
  double before = 0.0;
  std::vector<StepValue> steps = {};  // those that move something, in order
  double replanned = 0.0;

  // With all the steps up to this one.
  double after_step(ChangeStep step) const;
  // What the step saves; 0 where it moves nothing.
  double from(ChangeStep step) const;
  // With the whole change, under the policy before.
  double followed() const { return steps.empty() ? before : steps.back().strokes; }

  double from_tee() const { return from(ChangeStep::driver_carry); }
  double from_irons() const { return from(ChangeStep::irons_carry); }
  double from_replanning() const { return followed() - replanned; }
  double strokes_saved() const { return before - replanned; }

  // Adds those of a hole to those of a round, whose golfer takes the same steps.
  void add(const StepValues& hole, double weight = 1.0);
};

// A hazard that is moved, or one more, without touching the course's file. Lengths are yards along the line from the
// longest tee and outwards from it, as in Hazard.
struct HazardChange {
  int hole = 0;               // its number
  std::optional<int> hazard;  // which one lies elsewhere, from 1 in the order of the hole; nothing: one is added
  std::optional<HazardKind> kind;
  std::optional<Side> side;
  std::optional<double> from_yd, to_yd, near_yd, far_yd;
  // Of one that is there, in place of all these but kind: so much further along the line and to its right, in its
  // shape.
  std::optional<double> along_yd, right_yd;
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
// polygon becomes a strip of its kind when side, from and to are all said. One that is moved as a whole keeps its
// shape: a strip that comes over the line becomes a polygon, and one that comes to lie beyond it is on the other side.
// Of an added hazard kind, side, from and to have to be said. Limits and defaults are those of a file, and so are the
// faults.
Reading<ChangedCourse> change_hazards(const Course& course, const std::vector<HazardChange>& changes);

}  // namespace yardworth
