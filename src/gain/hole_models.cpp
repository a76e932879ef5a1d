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
  for (const Player* player : {&golfers.before, &golfers.all_longer}) {
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
      search_after(search_before.for_player(golfers.all_longer)),
      before(map, tee, golfers.before, baseline, grids.held_out, kept_shots),
      driver_longer(before.for_player(golfers.driver_longer)),
      after(before.for_player(golfers.all_longer)) {}

}  // namespace yardworth
