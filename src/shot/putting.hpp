#pragma once

#include <array>
#include <vector>

#include "shot/sample.hpp"
#include "shot/stroke_counts.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// Putts on a level green, from a golfer's two errors and the physics of the hole. docs/model.md, "Putting".
//
// A ball that would roll x feet past the hole crosses it at v = sqrt(2 a x), a the deceleration of the green. It falls
// in when it passes within hole_radius_ft * sqrt(1 - v / v_max) of the middle (A. R. Penner, "The physics of putting",
// Can. J. Phys. 80, 83, 2002, and B. W. Holmes, "Putting: How a golf ball and hole interact", Am. J. Phys. 59, 129,
// 1991; both from memory).
inline constexpr double hole_radius_ft = 4.25 / 24.0;  // Rules of Golf, Definitions: 4 1/4 inches wide; from memory
inline constexpr double green_deceleration_ftps2 = 1.8;
inline constexpr double fastest_capture_ftps = 5.35;

// How far off the middle of the hole a ball may pass and fall, when it would roll past_ft (>= 0) past it; 0 where it is
// too fast to fall at all.
double capture_half_width_ft(double past_ft);

class Putting {
 public:
  static constexpr double longest_ft = 150.0;

  explicit Putting(const PuttingSkill& skill);

  // Expected putts from a distance, 0 to longest_ft; beyond it what that is worth.
  double putts(double distance_ft) const;
  // The probability that the first putt is holed.
  double one_putt(double distance_ft) const;
  // Putts taken from a distance, drawn stroke by stroke: the second road to putts().
  int draw_putts(double distance_ft, RandomEngine& engine) const;

  // The distances that putts are tabled at, feet, from 0 on; between them everything is a straight line.
  const std::vector<double>& distances_ft() const { return distance_ft_; }
  const std::vector<double>& putts_by_distance() const { return putts_; }
  // Adds to shares by these distances that of a ball at a distance.
  void add_at(double distance_ft, double weight, std::vector<double>& by_distance) const;
  // How often how many putts are taken from each of these distances: their mean is putts().
  std::vector<StrokeCounts> counts() const;

 private:
  // What comes of a putt: how often it falls, and how often it is left at each tabled distance.
  struct Stroke {
    double holed = 0.0;
    std::vector<double> left;
    double putts(const std::vector<double>& by_distance) const;  // expected, this one included
  };
  Stroke stroke(double distance_ft, double past_ft) const;
  double past_at(double distance_ft) const;

  PuttingSkill skill_;
  std::vector<double> distance_ft_, putts_, past_ft_;  // past_ft_: how far past the hole it is best aimed to roll
  std::vector<Stroke> strokes_;                        // at that pace, by distance but the first
};

}  // namespace yardworth
