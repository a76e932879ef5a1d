#pragma once

#include <vector>

#include "yardworth/baseline.hpp"
#include "yardworth/course.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// Every fault of a course, a player or a table that was made or changed in memory, all at once; empty where there is
// none. The limits are those of files (limits.hpp): what a reader gives has no faults. A finding's file is "course",
// "player" or "baseline", and its path is that of the key in a file, as in "holes[3].hazards[1].from".
//
// One thing is allowed that no file may have: any number of holes from 1 to 18, for questions about some of them.

std::vector<Diagnostic> validate(const Course& course);
std::vector<Diagnostic> validate(const Player& player);
std::vector<Diagnostic> validate(const BaselineTable& table);

}  // namespace yardworth
