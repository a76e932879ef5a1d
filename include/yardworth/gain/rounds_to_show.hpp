#pragma once

#include <optional>

#include "yardworth/gain/gain.hpp"

namespace yardworth {

// How many rounds before a change, and as many after it, are needed before a difference of two means is likely to be
// seen: of equal samples from two spreads of standard deviation sd, each needs
//
//   n = 2 (z_0.975 + z_0.8)^2 sd^2 / difference^2
//
// for a two-sided test at the 5% level that finds the difference 80 times in 100 (D. C. Montgomery, Design and Analysis
// of Experiments, Wiley, chapter on simple comparative experiments; from memory). The spread is taken as known. At
// least 1, not rounded up; nothing for a difference of 0. sd >= 0.
std::optional<double> rounds_per_side(double difference, double sd);

struct RoundsToShow {
  double score_sd = 0.0;                    // of a round's score, before the change
  std::optional<double> rounds_for_scores;  // before, and as many after; nothing where no strokes are saved
  // The same for what the tee shots of the holes longer than a par 3 leave, which shows sooner.
  double left_sd_yd = 0.0;      // of a round's mean distance left, before the change
  double left_change_yd = 0.0;  // of the mean distance left; negative: shorter
  std::optional<double> rounds_for_left;
  int holes = 0;  // of a round that are longer than a par 3; 0: there is nothing to measure
};

// Method play only: with method table the strokes of a round have no spread, and there is no answer.
std::optional<RoundsToShow> rounds_to_show(const GainResult& result);

}  // namespace yardworth
