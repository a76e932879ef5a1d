#pragma once

#include <string>

#include "yardworth/change.hpp"
#include "yardworth/diagnostics.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// What changes from one golfer's clubs to another's, club by club: carries, rolls, spreads, mean directions and poor
// strikes. Numbers that are typical of either golfer stay as they are, and so does all that clubs do not say: the short
// game, putting, what lies do. Faults, of a file of this name, where the bags do not have the same clubs.
Reading<Change> change_between(const Player& before, const Player& after, const std::string& after_file);

}  // namespace yardworth
