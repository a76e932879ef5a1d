#pragma once

#include <optional>

#include "strategy/policy_evaluation.hpp"

namespace yardworth {

// A policy made with other clubs (`planned`), followed with these: a swing that goes as far as before with the same
// club, as it is; a shot at the hole, or a full swing that came nearly there, is one at the hole, with the club that
// now fits; the longest club at full length stays at full length; both keep their angle to the reference direction. Any
// other shot keeps its carry and its direction, with the club that now fits.
Action follow_action(const HoleModel& model, const HoleModel& planned, Lie lie, Point from, const Action& action);

// A shot of a policy made with other clubs (`planned`) as these clubs play it: the same club to the same total in the
// same direction. None where the club is gone or no longer has the carry.
std::optional<Action> same_shot(const HoleModel& model, const HoleModel& planned, Lie lie, const Action& action);

// What a shot that longer clubs bring is beside the earlier one: none that could do worse, being the same shot, or to
// the same place and surer in every respect; the same club, going further; or other, by the club or because it now
// comes into the short game.
enum class Difference { none, further, other };
Difference difference_of(const HoleModel& model, Lie lie, Point from, const Action& now, const Action& earlier);

// Evaluates a policy made before the clubs changed as it is followed with these. Where a shot that is not what it was
// (difference_of) does worse, by the values of the policy before, than the shot played before, the golfer stays with
// that (same_shot): by policy improvement the policy is then never worse than it was. Two exceptions, both of a shot
// that only goes further: it is played where it finds more trouble than before, to see which is what planning afresh is
// for; and from places that hardly a ball comes to. Rows are taken over as by evaluate_policy, and it throws likewise.
PolicyEvaluation evaluate_followed(const HoleModel& model, const ActionOf& followed, const EvaluatedPolicy& before,
                                   const EvaluatedPolicy& row_source);

}  // namespace yardworth
