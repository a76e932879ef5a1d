#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "yardworth/gain.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// The change of Handicap Index when every differential moves with the mean of the scores: score differential =
// 113 / slope x (score - rating), Handicap Index = average of the best 8 of the last 20 (Rules of Handicapping, World
// Handicap System).
double handicap_index_change(double strokes_saved, double slope);

// How many places apart two distributions over the same places are, quantile by quantile (the earth mover's distance).
double places_apart(const BagPlaces& a, const BagPlaces& b);
double mean_place(const BagPlaces& places);

// The first place that half of all come to or before.
std::size_t middle_place(const BagPlaces& places);

// The places of a bag, and where in it a club is, by its index in Player::clubs.
class BagOrder {
 public:
  explicit BagOrder(const Player& player);

  static constexpr std::size_t lay_up = 0;
  std::size_t place_of(std::size_t club) const { return place_[club]; }
  bool is_club(std::size_t place) const { return place != lay_up && place < short_game(); }
  std::size_t short_game() const { return names_.size() - 2; }
  std::size_t putter() const { return names_.size() - 1; }
  // A club's name, "lay-up", "short game" or "putter".
  const std::string& name_of(std::size_t place) const { return names_[place]; }
  BagPlaces none() const { return BagPlaces(names_.size(), 0.0); }

 private:
  std::vector<std::size_t> place_;  // by club
  std::vector<std::string> names_;  // by place
};

// What a change does to the second shots of the holes of a policy. The golfers before and after.
SecondShotChange second_shot_change(const std::vector<HoleGain>& holes, const Player& before, const Player& after);

// Adds the second shots of par 4s up and makes them sum to 1; empty without par 4s.
BagPlaces second_shots_of_par_4s(const std::vector<HoleGain>& holes, TeeShotResult HoleGain::*tee_shot);

}  // namespace yardworth
