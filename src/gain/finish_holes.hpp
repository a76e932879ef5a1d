#pragma once

#include <cstddef>
#include <functional>
#include <vector>

#include "gain/hole_models.hpp"
#include "yardworth/course.hpp"

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

}  // namespace yardworth
