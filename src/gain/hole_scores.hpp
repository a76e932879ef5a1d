#pragma once

#include "core/numerics.hpp"
#include "shot/finish_strokes.hpp"
#include "strategy/policy_evaluation.hpp"

namespace yardworth {

// How often a hole takes how many strokes under a policy that was evaluated. Its mean is PolicyEvaluation::at_tee.
// docs/model.md, "The whole distribution of the score".
StrokeCounts hole_scores(const HoleModel& model, const PolicyEvaluation& planned, const FinishStrokes& finish);

// How far scores are followed: until fewer balls are left, of one from the tee, and from a state with the same strokes
// taken only where more come.
struct ScoresFollowedTo {
  double left = numerics::score_visits_left;
  double followed = numerics::score_visits_followed;
};

// The same before its mean is put right: a ball between states counts as one at them. What that is off by, summed from
// the states, is hundredths of a stroke.
StrokeCounts scores_at_states(const HoleModel& model, const PolicyEvaluation& planned, const FinishStrokes& finish,
                              const ScoresFollowedTo& followed_to = {});

}  // namespace yardworth
