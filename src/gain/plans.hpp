#pragma once

#include <fmt/format.h>
#include <tbb/info.h>
#include <tbb/task_arena.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <string>
#include <vector>

#include "yardworth/gain/tee_shot.hpp"

namespace yardworth {

// What the questions about a change share: golfers with longer clubs, and plans taken from one golfer to another.

// The size of a task arena for so many threads, 0 for as many as there are cores; more than that oneTBB complains
// about.
inline int arena_size(int threads) {
  return threads > 0 ? std::min(threads, tbb::info::default_concurrency()) : tbb::task_arena::automatic;
}

// Throws std::invalid_argument when a change has left a club without a carry.
inline void require_carries(const Player& player) {
  for (const Club& club : player.clubs) {
    if (!(club.carry_yd >= 1.0)) {
      throw std::invalid_argument(fmt::format("the change leaves the {} with a carry of {:.0f} yards, which is none",
                                              club.name, club.carry_yd));
    }
  }
}

// The plan before, followed with other clubs.
inline ActionOf followed(const HoleModel& model, const HoleModel& planned, const Plan& plan) {
  return [&](StateId state) {
    const Action& action = plan[static_cast<std::size_t>(state)];
    const Lie lie = model.lie_of(state);
    const Point place = model.place_of(state);
    return action.swing >= 0 ? follow_action(model, planned, lie, place, action) : habit_action(model, lie, place);
  };
}

inline ActionFrom near_plan(const HoleModel& model, const Plan& plan) {
  return [&](Lie lie, Point from) { return action_near(model, plan, lie, from); };
}

// One grid of states for a golfer before and after, with rings where the habit of either changes abruptly.
inline Resolution with_edges(Resolution resolution, const HoleModel& before, const HoleModel& after) {
  resolution.edges_yd = habit_edges_yd(before);
  const std::vector<double> more = habit_edges_yd(after);
  resolution.edges_yd.insert(resolution.edges_yd.end(), more.begin(), more.end());
  return resolution;
}

// Values of all states, the baseline where the plan knows none.
inline std::vector<double> filled_values(const HoleModel& model, const std::vector<double>& known) {
  std::vector<double> value = known;
  for (StateId state = 0; state < model.state_count(); ++state) {
    double& here = value[static_cast<std::size_t>(state)];
    if (!std::isnan(here)) continue;
    here = model.short_game().strokes(model.lie_of(state), distance_yd(model.place_of(state), model.pin()));
  }
  return value;
}

// Why a hole cannot be finished.
inline std::string unfinished_words(const HoleMap& map, Point tee, int number) {
  const double carry = needed_carry_yd(map, tee);
  return carry > 0.0 ? fmt::format("hole {} needs a carry of {:.0f} yards", number, carry)
                     : fmt::format("hole {} leads nowhere with this plan", number);
}

// Throws CannotFinish when a hole (not empty: unfinished_words) cannot be finished.
inline void throw_unfinished(const std::vector<std::string>& failures) {
  std::string all;
  for (const std::string& failure : failures) {
    if (!failure.empty()) all += (all.empty() ? "" : "; ") + failure;
  }
  if (!all.empty()) throw CannotFinish("cannot be finished with these clubs: " + all);
}

inline std::vector<std::string> common_cautions() {
  return {
      "Swing changes and speed work load the back, the wrists and the elbows: make them with a qualified coach, and "
      "ask a medical professional about any pain.",
      "Course ratings and handicaps are for the authorised golf association; nothing here stands in for them."};
}

}  // namespace yardworth
