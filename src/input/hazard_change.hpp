#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "yardworth/bands.hpp"
#include "yardworth/course.hpp"
#include "yardworth/diagnostics.hpp"

namespace yardworth {

// Hazards moved and added without touching the course's file, as a command is asked to. Lengths are in the course's
// units and keys are those of a hazard in the file.
struct HazardChanges {
  std::vector<std::string> moves;      // "4:2:from=230,to=245": hole, number of the hazard from 1 in the file's order
  std::vector<std::string> additions;  // "4:kind=bunker,side=left,from=230,to=245"
};

// The course with its hazards changed: first all moves, then all additions. What a move does not say stays, but for the
// width of a hazard that comes to lie beside the hole or across it. A finding's file is the option with its value.
Reading<ChangedCourse> change_hazards(const Course& course, const HazardChanges& changes);

}  // namespace yardworth
