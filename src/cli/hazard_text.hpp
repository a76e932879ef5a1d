#pragma once

#include <optional>
#include <string>
#include <vector>

#include "yardworth/change.hpp"

namespace yardworth::cli {

// Hazards moved and added as the command line has them, each the value of one option. Keys are those of a hazard in a
// file, lengths in the course's units.
struct HazardTexts {
  std::vector<std::string> moves;      // "4:2:from=230,to=245": hole, number of the hazard from 1 in the file's order
  std::vector<std::string> additions;  // "4:kind=bunker,side=left,from=230,to=245"

  bool empty() const { return moves.empty() && additions.empty(); }
};

// The course with its hazards changed: first all moves, then all additions. A finding's file is the option with its
// value.
Reading<ChangedCourse> change_hazards(const Course& course, const HazardTexts& texts);

}  // namespace yardworth::cli
