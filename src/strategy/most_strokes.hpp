#pragma once

#include "strategy/hole_model.hpp"

namespace yardworth {

// A hole can hardly be finished if it takes more strokes: more than a golfer plays on for, and more than three times
// what its length alone asks of this one. Such a hole is told of as one that cannot be finished, whatever the policy.
// docs/model.md, "Value and policies".
double most_strokes_of(const HoleModel& model);

// Throws CannotFinish beyond it.
void require_finished(const HoleModel& model, double strokes);

}  // namespace yardworth
