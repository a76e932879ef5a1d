#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

#include "gain/finishes_of_change.hpp"
#include "gain/hole_models.hpp"
#include "yardworth/course.hpp"
#include "yardworth/diagnostics.hpp"

namespace yardworth {

// Holes that one golfer plays from one tee, with and without a change. Holds references.
struct HolesAsked {
  std::vector<const Hole*> holes;
  Firmness firmness;
  Units units;  // that the golfer is spoken to in
  std::size_t tee = 0;
  const Golfers& golfers;
  const Baseline& baseline;
  int threads = 0;
};

// Does work on each of the holes, in parallel: on the search grid, or, where it throws CannotFinish there, again with
// more strikes or on a closer grid. `hole` is an index into the holes asked for. Throws CannotFinish, which names all
// holes that cannot be finished, once all have been tried.
using HoleWork = std::function<void(std::size_t hole, const HoleModels& models)>;
void finish_holes(const HolesAsked& asked, const HoleWork& work);

// The same for one hole, whose map and search grid are there already, and whose shots, if they are, are taken from
// those kept; how often it takes how many strokes is worked out where it is known how the golfer finishes. Nothing
// where the work is done; else what is wanting.
struct HoleAsked {
  const Hole& hole;
  const HoleMap& map;
  std::size_t tee = 0;
  const Golfers& golfers;
  const Baseline& baseline;
  const Discretisation& search;
  KeptShots* kept_shots = nullptr;
  const FinishesOfChange* finish = nullptr;
};
std::optional<UnfinishedHole> finish_hole(const HoleAsked& asked, const std::function<void(const HoleModels&)>& work);

}  // namespace yardworth
