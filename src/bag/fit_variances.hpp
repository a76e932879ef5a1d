#pragma once

#include <vector>

#include "bag/mixture.hpp"

namespace yardworth {

// How sure a fit is of its numbers: its variances by the information in its shots, less what is lost since nobody knows
// which strike was poor. The fit has its mixture, its shares and their sums. docs/model.md, "Intervals".
void tell_variances(const std::vector<StruckShot>& shots, const MixturePrior& prior, MixtureFit& fit);

}  // namespace yardworth
