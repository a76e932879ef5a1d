#pragma once

#include "gain/hole_models.hpp"
#include "gain/solve_hole.hpp"

namespace yardworth {

// What the best policy of a solved hole plays from any place, before a change and after it: at places that weigh what
// looking ahead from there picks (LookAhead), elsewhere what the nearest state plays; where planning was of no use, the
// habit, or the policy before, followed from that very place. What they are made of must outlive them.
ActionFrom best_before_from(const HoleModels& models, const SolvedBest& best);
ActionFrom best_after_from(const HoleModels& models, const SolvedBest& best);

}  // namespace yardworth
