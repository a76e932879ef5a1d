#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "yardworth/core/diagnostics.hpp"
#include "yardworth/course/course.hpp"

namespace yardworth {

// Hazards moved and added without touching the course's file, as a command is asked to. Lengths are in the course's
// units and keys are those of a hazard in the file.
struct HazardChanges {
  std::vector<std::string> moves;      // "4:2:from=230,to=245": hole, number of the hazard from 1 in the file's order
  std::vector<std::string> additions;  // "4:kind=bunker,side=left,from=230,to=245"
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

// The course with its hazards changed: first all moves, then all additions. What a move does not say stays, but for the
// width of a hazard that comes to lie beside the hole or across it. A finding's file is the option with its value.
Reading<ChangedCourse> change_hazards(const Course& course, const HazardChanges& changes);

}  // namespace yardworth
