#pragma once

#include <functional>
#include <vector>

#include "yardworth/gain.hpp"

namespace yardworth {

// What may be of a change that was measured, in strokes. docs/model.md, "Strokes saved and how sure".

// Called now and then from any thread, with how many of how many pieces of the work are done.
using Told = std::function<void(int done, int of)>;

// Strokes saved by each of several changes of one golfer on the holes of a request, under its policy: habit, or best
// where that alone is asked for. The golfer before is solved once, on the grids of the request's own change. A hole
// that cannot be finished after a change costs numerics::most_strokes_of_hole. Throws like compute_gain.
std::vector<double> compute_saved_draws(const Course& course, const Player& player, const Baseline& baseline,
                                        const GainRequest& request, const std::vector<Change>& draws,
                                        const Told& told = {});

// The interval that so many draws give; two at least.
SavedInterval interval_of(std::vector<double> saved, double level, PolicyChoice policy);

// The policy that the draws are solved under.
inline PolicyChoice policy_of_draws(const GainRequest& request) {
  const bool best = request.policy == PolicyChoice::best && request.method == Method::play;
  return best ? PolicyChoice::best : PolicyChoice::habit;
}

}  // namespace yardworth
