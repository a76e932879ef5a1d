#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "course/hole_map.hpp"
#include "gain/finishes_of_change.hpp"
#include "gain/golfers.hpp"
#include "strategy/discretisation.hpp"
#include "yardworth/baseline.hpp"
#include "yardworth/course.hpp"
#include "yardworth/gain.hpp"

namespace yardworth {

// Golfers who play the holes of a course from several tees: what questions about many members are put together from.

// A course and what is asked of everybody on it. Holds a reference.
struct CourseOnTees {
  CourseOnTees(const Course& of, std::vector<std::size_t> from, DistanceChange asked, PolicyChoice plan);

  const Course& course;
  std::vector<std::size_t> tees;  // indices into Course::tees
  DistanceChange change;
  PolicyChoice policy;
  std::vector<HoleMap> maps;
  Discretisation search;      // its lattices serve all holes
  Discretisation few_states;  // for what is asked of tees alone
};

struct GolferOnTees {
  Player player;
  Baseline baseline;
  Golfers golfers;
  std::optional<FinishesOfChange> finish;  // nothing: whole scores are not worked out
};
GolferOnTees golfer_on_tees(const Player& player, const Baseline& baseline, const DistanceChange& change);
// From then on whole scores are worked out.
void know_finish(GolferOnTees& golfer);

// Whether a change leaves every club a carry.
bool keeps_carries(const Player& player, const DistanceChange& change);

// What a hole comes to from one tee. Places are those of the standard bag, the same for all golfers.
struct HoleOutcome {
  StepValues strokes;
  ScoreDistribution scores_before, scores_after;  // where whole scores are worked out
  BagPlaces next_before, next_after;              // of the shot after the tee shot
};

// One of the two, or neither where the tee was not asked for.
struct HoleFromTee {
  std::optional<HoleOutcome> outcome;
  std::optional<UnfinishedHole> unfinished;
};

// By tee, of those wanted. `hole`: an index.
std::vector<HoleFromTee> play_hole(const CourseOnTees& course, const GolferOnTees& golfer, std::size_t hole,
                                   const std::vector<bool>& wanted);

// What the habit plays from each tee: the place of the club in the bag, or at_the_hole, where the club changes without
// a jump.
inline constexpr int at_the_hole = -1;
std::vector<int> habit_tee_shots(const CourseOnTees& course, const GolferOnTees& golfer, std::size_t hole);

// The outcome of a mixture of golfers.
struct WeightedOutcome {
  const HoleOutcome* outcome = nullptr;
  double weight = 0.0;
};
HoleOutcome mix(const std::vector<WeightedOutcome>& parts);

}  // namespace yardworth
