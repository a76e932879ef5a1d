#pragma once

#include <cstdint>
#include <vector>

#include "yardworth/baseline.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// Scores of whole rounds on reference holes, played shot by shot with the best policy, putts and all.
struct ScoreSummary {
  double mean = 0.0;
  double spread = 0.0;        // standard deviation from round to round
  double better_half = 0.0;   // mean of the lower ten of each twenty: what a course rating is about
  double best_8_of_20 = 0.0;  // mean of the lowest eight of each twenty: what a Handicap Index is made of
  // Of a round.
  double greens = 0.0;         // in regulation: on the green after at most par - 2 strokes
  double fairway_share = 0.0;  // tee shots of holes longer than a par 3 that end on fairway or green
  double putts = 0.0;
};

// `twenties` sets of twenty rounds over 18 holes of these lengths. Same seed, same result, whatever the threads.
ScoreSummary simulate_scores(const Player& golfer, const BaselineTable& near, const std::vector<double>& lengths_yd,
                             int twenties, std::uint64_t seed);

// The standard hole lengths scaled to a total.
std::vector<double> standard_lengths_yd(double total_yd);

}  // namespace yardworth
