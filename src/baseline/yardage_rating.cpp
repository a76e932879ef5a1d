#include <stdexcept>

#include "baseline/published.hpp"
#include "yardworth/baseline.hpp"

namespace yardworth {

std::vector<double> standard_hole_lengths_yd() {
  return {140, 160, 175, 195, 320, 330, 340, 350, 360, 370, 380, 390, 405, 415, 425, 490, 515, 540};
}

YardageRating yardage_rating(Band band, Gender gender) {
  // Men: quoted (scratch) and from memory (bogey); women: from memory.
  const bool is_men = gender == Gender::men;
  if (band == Band::scratch) return {is_men ? 220.0 : 180.0, is_men ? 40.9 : 40.1};
  if (band == Band::bogey) return {is_men ? 160.0 : 120.0, is_men ? 50.7 : 51.3};
  throw std::invalid_argument("yardage ratings are published for scratch and bogey golfers only");
}

}  // namespace yardworth
