#pragma once

#include <optional>
#include <vector>

namespace yardworth {

// How often a hole or a round takes how many strokes, and what follows from it: marks broken, points, and what the
// Rules of Handicapping make of it. Everything is an exact sum; nothing is drawn. docs/model.md, "The whole
// distribution of the score" and "Scores and handicaps".

// Probabilities of whole numbers, strokes or points, from `lowest` on; they sum to 1.
struct ScoreDistribution {
  int lowest = 0;
  std::vector<double> probability;

  double mean() const;
  double variance() const;
  double at_most(int score) const;  // the probability of this number or less, 0 to 1
};

// The sum of two that do not depend on one another: holes make a round.
ScoreDistribution convolve(const ScoreDistribution& a, const ScoreDistribution& b);

// A mark is broken by any score below it: 90 by 89.
struct BrokenMark {
  int mark = 0;
  double probability = 0.0;
};

// Holes of a round, expected; they sum to the holes of the round.
struct HolesByPar {
  double birdies_or_better = 0.0;
  double pars = 0.0;
  double bogeys = 0.0;
  double doubles_or_worse = 0.0;
};

// What is wanting for everything that has to do with handicaps.
enum class HandicapNeed {
  whole_round,       // all holes of a course of 18
  handicap_index,    // of the player
  course_rating,     // of the tees
  slope,             // likewise
  rated_for_gender,  // the tees are rated for the other gender
  stroke_indexes,    // of all holes
};

// What a round is played under. Rules of Handicapping (R&A and USGA, World Handicap System), rule 6.1: Course Handicap
// = Handicap Index x slope / 113 + (course rating - par), rounded to whole strokes; plus handicaps are negative.
struct HandicapTerms {
  double handicap_index = 0.0;
  double course_rating = 0.0;
  double slope = 0.0;
  int par = 0;
  int course_handicap = 0;

  // Rule 5.1: (113 / slope) x (adjusted gross score - course rating), to the nearest tenth.
  double differential(int adjusted_score) const;
};

// What those make of the scores of a round, under the Course Handicap of today's index before a change and after it.
struct HandicapScores {
  double net = 0.0;              // expected gross score less the Course Handicap
  ScoreDistribution stableford;  // points of a round: Rules of Golf, rule 32.1b, no hole below 0
  // The gross score with no hole above net double bogey (rule 3.1): what a score differential is made of.
  ScoreDistribution adjusted;
  double handicap_index = 0.0;  // expected of 20 such rounds: the average of the 8 lowest differentials (rule 5.2)
};

// The scores of a round.
struct RoundScores {
  ScoreDistribution gross;
  std::vector<BrokenMark> breaks;  // by mark
  HolesByPar holes;
  std::optional<HandicapScores> handicap;  // where nothing is wanting
};

// Before a change and after it.
struct PolicyScores {
  RoundScores before, after;
  // What the change does to the expected index in the long run, never more upwards than the soft cap and the hard cap
  // let through (rule 5.8); negative for better. Where nothing is wanting.
  std::optional<double> handicap_index_change;
};

}  // namespace yardworth
