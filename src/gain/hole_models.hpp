#pragma once

#include <vector>

#include "gain/golfers.hpp"
#include "strategy/hole_model.hpp"

namespace yardworth {

// One hole for the golfers of a change, with rings where the habit before and after changes abruptly. Policies are
// looked for on one grid and set of strikes and evaluated on others that the search has not seen (held_out_grid()): of
// many actions weighed with small errors the best-looking owes some of its looks to them. Holds references to all that
// it is made of.
struct HoleModels {
  struct Grids {
    Discretisation search, held_out;

    // With its own held-out grid.
    static Grids of(const Discretisation& search) { return {search, held_out_grid(search)}; }
  };

  HoleModels(const HoleMap& map, Point tee, const Golfers& golfers, const Baseline& baseline, const Grids& grids,
             KeptShots* kept_shots = nullptr);

  // The same hole, states and strikes for another change of the same golfer.
  HoleModels with_change(const Golfers& other, const Baseline& baseline) const;

  const Golfers& golfers;
  Grids grids;
  HoleModel search_before, search_after;
  HoleModel before;              // held out, like those after each step of the change
  std::vector<HoleModel> steps;  // by Golfers::steps
  bool start_is_enough = false;  // PolicyStart::enough: when no grid is left to search on

  const HoleModel& after() const { return steps.empty() ? before : steps.back(); }

 private:
  HoleModels(const HoleModels& same_hole, const Golfers& other, const Baseline& baseline);
  void add_steps(const Baseline& baseline);
};

}  // namespace yardworth
