#pragma once

#include <cstddef>
#include <vector>

namespace yardworth {

// The published length of a course for a golfer's driver distance (carry and roll): USGA / PGA of America tee
// guideline, recommended 18-hole lengths. Between its rows straight lines, beyond its ends the last row; 9 holes half.
struct RecommendedLength {
  double low_yd = 0.0;
  double high_yd = 0.0;
  bool beyond_table = false;  // the driver distance lies outside the rows of the guideline
};
RecommendedLength recommended_length(double driver_distance_yd, std::size_t holes);

// Of several total lengths (not empty) the index of the one that suits a recommendation: inside it, or else the least
// outside; of equals the nearest to its middle, then the first.
std::size_t tee_by_length(const RecommendedLength& recommended, const std::vector<double>& total_length_yd);

}  // namespace yardworth
