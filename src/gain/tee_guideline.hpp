#pragma once

#include <cstddef>
#include <vector>

#include "yardworth/bands.hpp"

namespace yardworth {

RecommendedLength recommended_length(double driver_distance_yd, std::size_t holes);

// Of several total lengths (not empty) the index of the one that suits a recommendation: inside it, or else the least
// outside; of equals the nearest to its middle, then the first.
std::size_t tee_by_length(const RecommendedLength& recommended, const std::vector<double>& total_length_yd);

}  // namespace yardworth
