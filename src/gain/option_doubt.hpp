#pragma once

#include "yardworth/options.hpp"

namespace yardworth {

// How sure the change of an option is: as it says, or as is assumed; 0 where nothing changes, and where measured shots
// say so themselves.
double doubt_of(const Option& option);

// A change that turns out so many standard deviations more or less than is said. The doubt is half the width of an
// interval of weigh_level, as a share of the change. Shares and poor strikes are held within the limits of a change.
Change changed_by(const Change& said, double doubt, double deviations);

}  // namespace yardworth
