#pragma once

#include <array>
#include <optional>
#include <vector>

#include "strategy/policy.hpp"
#include "strategy/ring_grid.hpp"

namespace yardworth {

// How many balls come to rest around each vertex of a grid, by lie: each is counted for the four around it by how near
// they are.
class BallsAround {
 public:
  // From the edge of the short game to behind the tee; how far apart vertices are is as the options say.
  BallsAround(const HoleModel& model, const DiscretisationOptions& vertices);

  // Balls on the green, or in the short game, are no second shots and not counted.
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

// What one step of look-ahead plays from the places where tee shots finish, given what places are worth under a policy:
// of the clubs that the policy takes at the states around, played as it plays them, and those beside them in the bag,
// to the hole where they reach it and else in full, the one with the fewest expected strokes. Strokes are worked out at
// vertices on rings closer than those of the search, where enough tee shots finish, and read off straight lines
// between: so from yard to yard the club changes where the other becomes better. docs/model.md, "Second shots by
// look-ahead".
class LookAhead {
 public:
  // From where its tee shot finishes. The policy and the values are by state of the model, which must outlive this.
  LookAhead(const HoleModel& model, const Policy& policy, const std::vector<double>& value);
  // From where enough of these balls are, of one.
  LookAhead(const HoleModel& model, const Policy& policy, const std::vector<double>& value, BallsAround around);

  // Nothing where few balls are around, or the policy says nothing there.
  std::optional<Action> action(Lie lie, Point from) const;

 private:
  // How far a club is played: to the hole where it reaches it and else in full; in full even where that goes beyond the
  // hole; or to a carry that the policy names, as one who stays with a shot of shorter clubs does.
  enum class Length { to_hole, full, named };
  struct Played {
    int swing = 0;
    Length length = Length::to_hole;
    double named_carry_yd = 0.0;
  };
  // A club that may be played from a vertex.
  struct Weighed {
    Played played;
    int aim = 0;
    double strokes = 0.0;
  };
  // None where few balls are.
  using Clubs = std::vector<Weighed>;
  // What the policy plays at a state around a vertex.
  struct Around {
    Played played;
    double off_hole_rad = 0.0;  // where it is aimed, to the right of the hole
  };

  // A place whose clubs are weighed, and how closely.
  struct Looked {
    Lie lie;
    Point from;
    int stride;
    const std::vector<double>& value;
  };
  // The vertices around a place where something is known, each with its weight.
  struct Known {
    const Clubs* clubs = nullptr;
    double share = 0.0;
  };

  Clubs weigh_clubs(const Looked& at, const Policy& policy) const;
  Weighed weigh(const Looked& at, const Around& near, int swing) const;
  double strokes_of(const Looked& at, const Action& action) const;
  std::vector<Around> policy_around(Lie lie, Point from, const Policy& policy) const;
  Played played_by(Lie lie, Point from, const Action& action) const;
  Action action_of(Lie lie, Point from, const Played& played) const;
  std::array<Known, 4> known_around(Lie lie, Point from) const;

  const HoleModel& model_;
  BallsAround around_;
  std::vector<Clubs> clubs_;  // by lie in play, by vertex
};

}  // namespace yardworth
