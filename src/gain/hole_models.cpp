#include "gain/hole_models.hpp"

#include <vector>

#include "strategy/habit.hpp"

namespace yardworth {

namespace {

// One grid of states for a golfer before and after, with rings where the habit of either changes abruptly.
Discretisation with_edges(const Discretisation& wanted, const HoleMap& map, Point tee, const Player& before,
                          const Player& after, const Baseline& baseline, KeptShots* kept_shots) {
  DiscretisationOptions options = wanted.options();
  DiscretisationOptions few_states = options;
  few_states.ring_yd = few_states.arc_yd = numerics::habit_edge_grid_yd;
  for (const Player* player : {&before, &after}) {
    const std::vector<double> edges =
        habit_edges_yd({map, tee, *player, baseline, wanted.with(few_states), kept_shots});
    options.edges_yd.insert(options.edges_yd.end(), edges.begin(), edges.end());
  }
  return wanted.with(options);
}

}  // namespace

HoleModels::HoleModels(const HoleMap& map, Point tee, const Golfers& of, const Baseline& baseline,
                       const Discretisation& wanted, KeptShots* kept_shots)
    : golfers(of),
      discretisation(with_edges(wanted, map, tee, golfers.before, golfers.all_longer, baseline, kept_shots)),
      search_before(map, tee, golfers.before, baseline, discretisation, kept_shots),
      search_after(search_before.for_player(golfers.all_longer)),
      before(map, tee, golfers.before, baseline, held_out_grid(discretisation), kept_shots),
      driver_longer(before.for_player(golfers.driver_longer)),
      after(before.for_player(golfers.all_longer)) {}

}  // namespace yardworth
