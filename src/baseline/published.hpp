#pragma once

#include <vector>

#include "yardworth/baseline.hpp"

namespace yardworth {

// The published table of tour professionals, with its source.
BaselineTable tour_table();

// The hole lengths of a course of 6,300 yards and par 71, with four par 3s, eleven par 4s and three par 5s (common
// practice, no source), in rising order: what "over the holes of a standard course" means here and in the tests. Twenty
// yards more do not bring a tour drive to the green of its shortest par 4: that would be another question.
std::vector<double> standard_hole_lengths_yd();

// The yardage rating of course rating for 18 holes (USGA Course Rating System manual): strokes = length /
// yards_per_stroke + constant, of the better half of a golfer's scores. Only for Band::scratch and Band::bogey; throws
// std::invalid_argument for others.
struct YardageRating {
  double yards_per_stroke = 0.0;
  double constant = 0.0;

  double strokes(double length_yd) const { return length_yd / yards_per_stroke + constant; }
};
YardageRating yardage_rating(Band band, Gender gender);

}  // namespace yardworth
