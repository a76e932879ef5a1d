#pragma once

#include <array>
#include <vector>

#include "player/lies_in_play.hpp"
#include "shot/putting.hpp"
#include "shot/sample.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// Strokes to hole out from near the green: each plays at the hole, the ball comes to rest around it, and is putted or
// chipped from there. docs/model.md, "Short game".
//
//   solid stroke   goes d + s z, s = spread_floor_yd + spread_share d, z normal cut at +-4, and ends s / 2 z' beside
//   poor stroke    half of them stay short: 0.1 to 0.7 of d, in the same kind of lie; half go past: 1.3 to 1.9 of d
//
// The green is round, of 13 to 15 yards from the hole to its edge; off it the ball lies on fairway, in rough or in sand
// in the shares below. All numbers: common practice, no source.
inline constexpr double green_edge_near_yd = 13.0;
inline constexpr double green_edge_far_yd = 15.0;
inline constexpr double fairway_beside_green = 0.25;
inline constexpr double sand_beside_green = 0.15;  // the rest is rough

class ShortGame {
 public:
  static constexpr double longest_yd = 60.0;

  // `putting` must outlive it.
  ShortGame(const ShortGameSkill& skill, const Putting& putting);

  // Expected strokes from a lie that is not the green (the tee counts as fairway), 0 to longest_yd from the hole.
  double strokes(Lie lie, double distance_yd) const;
  // Strokes taken, drawn one by one: the second road to strokes(). From the green: putts.
  struct Drawn {
    int strokes = 0;  // putts among them
    int putts = 0;
  };
  Drawn draw(Lie lie, double distance_yd, RandomEngine& engine) const;
  int draw_strokes(Lie lie, double distance_yd, RandomEngine& engine) const {
    return draw(lie, distance_yd, engine).strokes;
  }

  // How often how many strokes are taken from a lie and so many whole yards: their mean is strokes().
  const StrokeCounts& counts(Lie lie, int yards) const;

 private:
  // What comes of a stroke: how often it leaves the ball at each tabled place, off the green and on it.
  struct Ends {
    std::vector<double> short_game;  // by place_index
    std::vector<double> putts;       // by Putting::distances_ft
  };
  static std::size_t place_index(Lie lie, std::size_t yards);
  void add_at(Lie lie, double distance_yd, double weight, Ends& ends) const;
  void add_rest(double distance_yd, double weight, Ends& ends) const;
  Ends stroke(Lie lie, double distance_yd) const;
  void solve_strokes(const std::vector<Ends>& ends);
  void solve_counts(const std::vector<Ends>& ends);

  ShortGameSkill skill_;
  const Putting* putting_;
  std::vector<double> strokes_;       // by place_index
  std::vector<StrokeCounts> counts_;  // likewise
};

}  // namespace yardworth
