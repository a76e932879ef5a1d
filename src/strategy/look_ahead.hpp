#pragma once

#include <optional>
#include <vector>

#include "strategy/policy_evaluation.hpp"
#include "strategy/ring_grid.hpp"
#include "strategy/searched_shots.hpp"

namespace yardworth {

// How many balls come to rest around each vertex of a grid, by lie: each is counted for the four around it by how near
// they are.
class BallsAround {
 public:
  // From the edge of the short game to behind the tee; how far apart vertices are is as the options say.
  BallsAround(const HoleModel& model, const DiscretisationOptions& vertices);

  // Balls on the green, or in the short game, are not counted: no club is chosen there.
  void add(Lie lie, Point at, double weight);

  const RingGrid& grid() const { return grid_; }
  std::size_t vertices() const { return vertices_; }
  std::size_t index_of(Lie lie, int vertex) const;
  double at(std::size_t index) const { return weight_[index]; }  // by lie in play, by vertex

 private:
  Point pin_;
  RingGrid grid_;
  std::size_t vertices_;
  std::vector<double> weight_;
};

// A place that is looked ahead from, and how manieth equal-weight strikes count.
struct LookedAt {
  const HoleModel& model;
  Lie lie;
  Point from;
  int stride = 1;
};

// Strokes of an action from there and then the values given, by state. Struck at the same carries everywhere, so that
// what an error favours changes slowly from place to place.
double strokes_ahead(const LookedAt& at, const Action& action, const std::vector<double>& value);

// The club that one step of look-ahead plays, given what places are worth under a policy: of those that the search that
// found the policy has weighed and that came near its best, the one with the fewest expected strokes. Strokes are
// worked out at vertices closer than the states of the search, where enough balls come to, and read off straight lines
// between: so from yard to yard the club changes where the other becomes better. docs/model.md, "Clubs by look-ahead".
class LookAhead {
 public:
  // The values are by state of the model, which is for the golfer of the search. `around`: where balls come to, of one
  // from the tee.
  LookAhead(const Searched& searched, const HoleModel& model, const std::vector<double>& value, BallsAround around);

  // Index of its swing; nothing where few balls come to, or the search says nothing there.
  std::optional<int> swing(Lie lie, Point from) const;

 private:
  struct Club {
    int swing = 0;
    double strokes = 0.0;
  };
  // The first is the one that the search has as the best; none where few balls come to.
  using Clubs = std::vector<Club>;

  static double strokes_with(const Clubs& clubs, int swing);

  Point pin_;
  BallsAround around_;
  std::vector<Clubs> clubs_;  // by lie in play, by vertex
};

// What is played with the club that looking ahead has for a place; nothing where none is known.
std::optional<Action> action_ahead(const Searched& searched, const LookAhead& ahead, Lie lie, Point from);

// Where the balls of an evaluated policy come to rest, around vertices closer than the states that it was looked for
// at.
BallsAround balls_around(const EvaluatedPolicy& evaluated, const DiscretisationOptions& searched);

}  // namespace yardworth
