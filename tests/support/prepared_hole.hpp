#pragma once

#include "strategy/habit.hpp"
#include "strategy/policy_iteration.hpp"

namespace yardworth::test {

// A discretisation that all holes share.
struct Mesh {
  explicit Mesh(const DiscretisationOptions& wanted = {}) : discretisation(wanted) {}

  Discretisation discretisation;
  // Whether there are rings where the habit changes abruptly, as the program has them. Holes that are compared with
  // each other state by state need the same grid, and do without.
  bool edges = true;
};

// As the program searches a hole of this number.
inline Discretisation search_grid_for(const Hole& hole) {
  static const Discretisation grid = search_grid();
  return grid.with(options_for_hole(grid.options(), hole.number));
}

// A hole ready to be played by a golfer. The baseline and the mesh have to outlive it.
struct PreparedHole {
  PreparedHole(const Hole& hole, Firmness firmness, std::size_t tee, const Player& player, const Baseline& baseline,
               const Mesh& mesh)
      : map(hole, firmness),
        model(map, map.tee(hole.length_yd[tee]), player, baseline,
              with_edges(map, map.tee(hole.length_yd[tee]), player, baseline, mesh)) {}
  PreparedHole(const PreparedHole&) = delete;
  PreparedHole& operator=(const PreparedHole&) = delete;

  HoleMap map;
  HoleModel model;

 private:
  // With rings where the habit changes abruptly, as the program itself has them.
  static Discretisation with_edges(const HoleMap& map, Point tee, const Player& player, const Baseline& baseline,
                                   const Mesh& mesh) {
    if (!mesh.edges) return mesh.discretisation;
    DiscretisationOptions options = mesh.discretisation.options();
    options.edges_yd = habit_edges_yd({map, tee, player, baseline, mesh.discretisation});
    return mesh.discretisation.with(options);
  }
};

inline PolicyEvaluation habit_value(const HoleModel& model) { return evaluate_policy(model, habit_of(model)); }

inline BestPolicy best_policy(const HoleModel& model, const PolicyIterationOptions& options = {}) {
  return find_best_policy(model, habit_of(model), habit_value(model), options);
}

// A policy where it says something, the habit elsewhere. Model and policy must outlive it.
inline ActionOf policy_or_habit(const HoleModel& model, const Policy& policy) {
  return [&model, &policy](StateId state) {
    const Action& action = policy[static_cast<std::size_t>(state)];
    return action.swing >= 0 ? action : habit_action(model, model.lie_of(state), model.place_of(state));
  };
}

inline PolicyIterationOptions complete_search() {
  PolicyIterationOptions options;
  options.complete = true;
  return options;
}

}  // namespace yardworth::test
