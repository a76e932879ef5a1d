#pragma once

#include "yardworth/bands.hpp"

namespace yardworth {

// The change of Handicap Index when every differential moves with the mean of the scores: score differential =
// 113 / slope x (score - rating), Handicap Index = average of the best 8 of the last 20 (Rules of Handicapping, World
// Handicap System).
double handicap_index_change(double strokes_saved, double slope);

// How many places apart two distributions over the same places are, quantile by quantile (the earth mover's distance).
double places_apart(const BagPlaces& a, const BagPlaces& b);
double mean_place(const BagPlaces& places);

}  // namespace yardworth
