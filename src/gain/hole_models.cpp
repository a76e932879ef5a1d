#include "gain/hole_models.hpp"

#include <vector>

#include "strategy/habit.hpp"

namespace yardworth {

namespace {

// Where the habit of either golfer changes abruptly.
std::vector<double> edges_of(const HoleModels::Grids& grids, const HoleMap& map, Point tee, const Golfers& golfers,
                             const Baseline& baseline, KeptShots* kept_shots) {
  DiscretisationOptions few_states = grids.search.options();
  few_states.ring_yd = few_states.arc_yd = numerics::habit_edge_grid_yd;
  std::vector<double> edges;
  for (const Player* player : {&golfers.before, &golfers.after()}) {
    const std::vector<double> of_player =
        habit_edges_yd({map, tee, *player, baseline, grids.search.with(few_states), kept_shots});
    edges.insert(edges.end(), of_player.begin(), of_player.end());
  }
  return edges;
}

// The grids of states with rings there.
HoleModels::Grids with_edges(const HoleModels::Grids& grids, const std::vector<double>& edges_yd) {
  const auto with = [&](const Discretisation& wanted) {
    DiscretisationOptions options = wanted.options();
    options.edges_yd.insert(options.edges_yd.end(), edges_yd.begin(), edges_yd.end());
    return wanted.with(options);
  };
  return {with(grids.search), with(grids.held_out)};
}

}  // namespace

HoleModels::HoleModels(const HoleMap& map, Point tee, const Golfers& of, const Baseline& baseline, const Grids& wanted,
                       KeptShots* kept_shots)
    : golfers(of),
      grids(with_edges(wanted, edges_of(wanted, map, tee, golfers, baseline, kept_shots))),
      search_before(map, tee, golfers.before, baseline, grids.search, kept_shots),
      search_after(search_before.for_golfer(golfers.after(), golfers.finish_after_all(baseline))),
      before(map, tee, golfers.before, baseline, grids.held_out, kept_shots) {
  add_steps(baseline);
}

HoleModels::HoleModels(const HoleModels& same_hole, const Golfers& other, const Baseline& baseline)
    : golfers(other),
      grids(same_hole.grids),
      search_before(same_hole.search_before),
      search_after(search_before.for_golfer(golfers.after(), golfers.finish_after_all(baseline))),
      before(same_hole.before),
      start_is_enough(same_hole.start_is_enough) {
  add_steps(baseline);
}

HoleModels HoleModels::with_change(const Golfers& other, const Baseline& baseline) const {
  return HoleModels(*this, other, baseline);
}

void HoleModels::add_steps(const Baseline& baseline) {
  steps.reserve(golfers.steps.size());
  for (std::size_t i = 0; i < golfers.steps.size(); ++i) {
    steps.push_back(before.for_golfer(golfers.steps[i].player, golfers.finish_after(i, baseline)));
  }
}

}  // namespace yardworth
