#pragma once

#include <array>
#include <optional>
#include <vector>

#include "strategy/policy.hpp"
#include "strategy/ring_grid.hpp"

namespace yardworth {

// What one step of look-ahead plays from the places where tee shots finish, given what places are worth under a policy:
// of the clubs that the policy takes at the states around and those beside them in the bag, played to the hole where
// they reach it and else in full, the one with the fewest expected strokes. Strokes are worked out at vertices on rings
// as close as those of the held-out grid, where enough tee shots finish, and read off straight lines between: so from
// yard to yard the club changes where the other becomes better. docs/model.md, "Second shots by look-ahead".
class LookAhead {
 public:
  // The policy, with a tee shot, and the values are by state of the model, which must outlive this.
  LookAhead(const HoleModel& model, const Policy& policy, const std::vector<double>& value);

  // Nothing where few tee shots finish around, or the policy says nothing there.
  std::optional<Action> action(Lie lie, Point from) const;

 private:
  // A club that may be played from a vertex.
  struct Weighed {
    int swing = 0;
    bool full = false;  // even where that goes beyond the hole
    int aim = 0;
    double strokes = 0.0;
  };
  // None where few tee shots finish.
  using Clubs = std::vector<Weighed>;
  // What the policy plays at a state around a vertex.
  struct Around {
    Action action;
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

  std::size_t index_of(Lie lie, int vertex) const;
  std::vector<double> finishes(const Action& tee_shot) const;
  Clubs weigh_clubs(const Looked& at, const Policy& policy) const;
  Weighed weigh(const Looked& at, const Around& played, int swing) const;
  double strokes_of(const Looked& at, const Action& action) const;
  std::vector<Around> policy_around(Lie lie, Point from, const Policy& policy) const;
  Action action_of(Lie lie, Point from, int swing, bool full) const;
  std::array<Known, 4> known_around(Lie lie, Point from) const;

  const HoleModel& model_;
  RingGrid grid_;
  std::size_t vertices_;
  std::vector<Clubs> clubs_;  // by lie in play, by vertex
};

}  // namespace yardworth
