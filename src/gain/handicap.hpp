#pragma once

#include <vector>

#include "yardworth/course.hpp"
#include "yardworth/player.hpp"
#include "yardworth/score.hpp"

namespace yardworth {

// The Rules of Handicapping (R&A and USGA, World Handicap System, 2024; from memory) and what of them is expected of
// scores whose distribution is known. docs/model.md, "Scores and handicaps".

// What is wanting for a player's handicap on these holes of a course from a tee; empty: nothing.
std::vector<HandicapNeed> handicap_needs(const Course& course, std::size_t tee, const Player& player,
                                         std::size_t holes);

// The terms of a round; nothing may be wanting.
HandicapTerms handicap_terms(const Course& course, std::size_t tee, const Player& player);

// Rule 6.1, before it is rounded.
double course_handicap(double handicap_index, double slope, double course_rating, int par);

// Strokes that a player receives on the hole of a stroke index, of 18; negative where a plus handicap gives them back,
// which it does from the highest stroke index down.
int strokes_received(int course_handicap, int stroke_index);

// Points of a score on a hole (Rules of Golf, rule 32.1b): 2 for par less strokes received, none from two over it on.
int stableford_points(int score, int par, int strokes_received);

// Rule 3.1: the most that counts on a hole.
int net_double_bogey(int par, int strokes_received);

// The distributions of what a hole's score is turned into.
ScoreDistribution stableford_of(const ScoreDistribution& hole, int par, int strokes_received);
ScoreDistribution adjusted_of(const ScoreDistribution& hole, int par, int strokes_received);

// What is expected of the average of the `best` lowest of `of` independent draws of values that rise, with their
// probabilities. The i-th lowest is at most x where at least i of the draws are (order statistics: H. A. David and H.
// N. Nagaraja, Order Statistics, Wiley, 2003, ch. 2).
double expected_best(const std::vector<double>& rising, const std::vector<double>& probability, int best, int of);

// Rule 5.2, of 20 rounds whose adjusted scores are these; at most 54.
double expected_index(const ScoreDistribution& adjusted, const HandicapTerms& terms);

// Rule 5.8: what is let through of a rise above the low Handicap Index: all of 3 strokes, half of what is beyond, and
// no more than 5. A fall is let through.
double capped_change(double change);

}  // namespace yardworth
