#pragma once

#include "yardworth/strategy/best.hpp"

namespace yardworth::test {

// A resolution with its lattices, which all holes share.
struct Mesh {
  explicit Mesh(const Resolution& wanted = {}) : resolution(wanted), lattices(wanted) {}

  Resolution resolution;
  StrikeLattices lattices;
  // Whether there are rings where the habit changes abruptly, as the program has them. Holes that are compared with
  // each other state by state need the same grid, and do without.
  bool edges = true;
};

// A hole ready to be played by a golfer. The baseline and the mesh have to outlive it.
struct PreparedHole {
  PreparedHole(const Hole& hole, Firmness firmness, std::size_t tee, const Player& player, const Baseline& baseline,
               const Mesh& mesh)
      : map(hole, firmness),
        model(map, map.tee(hole.length_yd[tee]), player, baseline, mesh.lattices,
              with_edges(map, map.tee(hole.length_yd[tee]), player, baseline, mesh)) {}
  PreparedHole(const PreparedHole&) = delete;
  PreparedHole& operator=(const PreparedHole&) = delete;

  HoleMap map;
  HoleModel model;

 private:
  // With rings where the habit changes abruptly, as the program itself has them.
  static Resolution with_edges(const HoleMap& map, Point tee, const Player& player, const Baseline& baseline,
                               const Mesh& mesh) {
    Resolution resolution = mesh.resolution;
    if (mesh.edges) resolution.edges_yd = habit_edges_yd({map, tee, player, baseline, mesh.lattices, mesh.resolution});
    return resolution;
  }
};

inline PlanValue habit_value(const HoleModel& model) { return evaluate_plan(model, habit_of(model)); }

inline BestPlan best_plan(const HoleModel& model, const SearchOptions& options = {}) {
  return find_best_plan(model, habit_of(model), habit_value(model), options);
}

// A plan where it says something, the habit elsewhere. Model and plan must outlive it.
inline ActionOf plan_or_habit(const HoleModel& model, const Plan& plan) {
  return [&model, &plan](StateId state) {
    const Action& action = plan[static_cast<std::size_t>(state)];
    return action.swing >= 0 ? action : habit_action(model, model.lie_of(state), model.place_of(state));
  };
}

inline SearchOptions complete_search() {
  SearchOptions options;
  options.complete = true;
  return options;
}

}  // namespace yardworth::test
