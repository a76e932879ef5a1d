#pragma once

#include <optional>

#include "gain/better_policy.hpp"
#include "gain/hole_models.hpp"
#include "yardworth/change.hpp"

namespace yardworth {

// What is to be found out about a hole.
struct SolveOptions {
  bool habit = false;  // what the habit is worth before and after
  bool best = false;   // the best policy before and after
  PolicyIterationOptions search;
};

// The habit before a change, and as it is followed after it. All values are held out.
struct SolvedHabit {
  PolicyEvaluation before, after;
  StepValues strokes;
};

// The best policy before a change, as it is followed after it, and planned afresh. All values are held out.
struct SolvedBest {
  FoundPolicy before;
  Action kept_tee_shot;              // of the policy before, followed with the clubs after
  std::optional<FoundPolicy> after;  // nothing where the change moves no club: the policy stays
  StepValues strokes;

  const FoundPolicy& planned_after() const { return after ? *after : before; }
};

struct SolvedHole {
  std::optional<SolvedHabit> habit;
  std::optional<SolvedBest> best;
};

// The habit before the change cannot finish the hole, or hardly can (require_finished): then no policy is told of,
// since all begin from it. No other grid to search on changes that.
class HabitCannotFinish : public CannotFinish {
 public:
  using CannotFinish::CannotFinish;
};

// The habit before a change, and followed after it. The first throws HabitCannotFinish.
PolicyEvaluation habit_before(const HoleModels& models);
SolvedHabit follow_habit(const HoleModels& models, PolicyEvaluation habit);

// The best policy before a change, from the habit; and followed and planned afresh after it. habit_after, where it is
// known, may have rows for the policy as it is followed.
FoundPolicy policy_before(const HoleModels& models, PolicyEvaluation habit, const PolicyIterationOptions& options);
SolvedBest follow_best(const HoleModels& models, FoundPolicy before, const PolicyEvaluation* habit_after,
                       const PolicyIterationOptions& options);

// Takes a hole through: the habit before and followed after, then from there the best policy before, followed, and
// planned afresh. Throws CannotFinish like evaluate_policy and require_finished.
SolvedHole solve_hole(const HoleModels& models, const SolveOptions& options);

}  // namespace yardworth
