#pragma once

#include <optional>

#include "shot/stroke_counts.hpp"
#include "yardworth/course.hpp"
#include "yardworth/gain.hpp"

namespace yardworth {

// Counts from the least number that occurs to the largest.
ScoreDistribution distribution_of(const StrokeCounts& counts);

// The marks that a player asks after, rising: the tens around the scores of most golfers, of 9 holes the fives, and the
// one of his own. Nothing of a round of other holes but the last.
std::vector<int> marks_of(std::size_t holes, const std::optional<int>& own);

// Which of them a sentence is about: the own one, or else the nearest ten (of 9 holes, five) to the mean; nothing of a
// round of other holes.
std::optional<int> mark_of(std::size_t holes, const std::optional<int>& own, double mean);

// What the holes of a policy make of a round; nothing where they have no scores. `terms`, where nothing is wanting for
// them, goes with the stroke indexes of the course.
std::optional<PolicyScores> scores_of(const PolicyGain& policy, const Course& course, const std::vector<int>& marks,
                                      const std::optional<HandicapTerms>& terms);

}  // namespace yardworth
