#pragma once

#include <vector>

#include "strategy/hole_model.hpp"

namespace yardworth {

// A swing that may be played from a place, at its reference direction, with the range of aims to search: every aim from
// first_aim to last_aim, in steps of (direction spread / aims_per_sd).
struct Candidate {
  Action action;
  int first_aim = 0;
  int last_aim = 0;

  std::size_t aims() const { return static_cast<std::size_t>(last_aim - first_aim + 1); }
};

// All of them: every full swing, and each that can be played to the hole unless another spreads less in every respect.
// Aims go aim_reach_sd direction spreads beyond the hole and the reference direction.
std::vector<Candidate> candidates_at(const HoleModel& model, Lie lie, Point from, int aim_reach_sd);

}  // namespace yardworth
