#pragma once

#include <array>
#include <cstddef>
#include <map>
#include <span>
#include <unordered_map>
#include <vector>

#include "strategy/hole_model.hpp"

namespace yardworth {

// A shot from a place that is no tee, with everything that says where its strikes are aimed and how they are spread.
struct PlacedShot {
  Point from;
  Swing swing;
  double reference_heading_rad = 0.0;
  int aim = 0;
  int lattice_offset = 0;
  int stride = 1;
  bool equal_weight = false;

  friend bool operator==(const PlacedShot&, const PlacedShot&) = default;
};

// One of its strikes.
struct Struck {
  Rest rest;
  double weight = 0.0;
};

// The shots of one hole that were struck already, and what the habit plays from its places: neither depends on the tee,
// so whoever plays the hole from several tees strikes them once. Serves models of one map and of one set of lattices,
// one at a time. What it does not hold any more is struck again: answers are the same with and without it.
class KeptShots {
 public:
  using Bag = std::array<std::vector<Swing>, all_lies.size()>;

  // Which of the bags met so far this one is: golfers with the same swings play the same.
  std::size_t number_of(const Bag& bag);

  // The strikes of a shot, in their order; strike(push) has to push them where they are not known. Valid until the
  // next.
  template <class Strike>
  std::span<const Struck> strikes_of(const PlacedShot& shot, Strike strike) {
    if (strikes_.size() >= most_strikes) forget_strikes();
    auto [known, is_new] = shots_.try_emplace(shot);
    if (is_new) {
      known->second.first = strikes_.size();
      strike([this](const Rest& rest, double weight) { strikes_.push_back({rest, weight}); });
      known->second.count = strikes_.size() - known->second.first;
      ++shots_struck_;
    }
    return {strikes_.data() + known->second.first, known->second.count};
  }

  // What the habit of a bag plays from a lie at a place; choose() says so where it is not known.
  template <class Choose>
  Action habit_of(std::size_t bag, Lie lie, Point from, Choose choose) {
    if (habits_.size() >= most_habits) habits_.clear();
    auto [known, is_new] = habits_.try_emplace({from, lie, bag});
    if (is_new) known->second = choose();
    return known->second;
  }

  // Where that habit changes abruptly (habit_edges_yd); find() says so where it is not known.
  template <class Find>
  const std::vector<double>& habit_edges_of(std::size_t bag, Find find) {
    auto [known, is_new] = habit_edges_.try_emplace(bag);
    if (is_new) known->second = find();
    return known->second;
  }

  // How many shots had to be struck so far.
  std::size_t shots_struck() const { return shots_struck_; }

 private:
  static constexpr std::size_t most_strikes = numerics::most_kept_strikes;
  static constexpr std::size_t most_habits = numerics::most_kept_habits;
  struct Stretch {
    std::size_t first = 0;
    std::size_t count = 0;
  };
  struct Place {
    Point at;
    Lie lie = Lie::rough;
    std::size_t bag = 0;

    friend bool operator==(const Place&, const Place&) = default;
  };
  struct Hash {
    std::size_t operator()(const PlacedShot& shot) const;
    std::size_t operator()(const Place& place) const;
  };

  void forget_strikes();

  std::vector<Bag> bags_;
  std::unordered_map<PlacedShot, Stretch, Hash> shots_;
  std::vector<Struck> strikes_;
  std::unordered_map<Place, Action, Hash> habits_;
  std::map<std::size_t, std::vector<double>> habit_edges_;  // by bag
  std::size_t shots_struck_ = 0;
};

}  // namespace yardworth
