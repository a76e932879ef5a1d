#pragma once

#include <cstddef>
#include <functional>
#include <string>
#include <vector>

#include "strategy/policy_iteration.hpp"
#include "yardworth/course.hpp"
#include "yardworth/gain.hpp"

namespace yardworth {

// What the questions about a change share: golfers with longer clubs, policies taken from one golfer to another, and
// policies that are looked for on one set of strikes and evaluated on another.

// Throws std::invalid_argument when a change has left a club without a carry.
void require_carries(const Player& player);

// The three golfers of a change.
struct Golfers {
  Player before;
  Player driver_longer;
  Player all_longer;

  // Whether a part of the change leaves every club as it was: it then saves exactly nothing.
  bool no_driver() const;
  bool no_irons() const;
};

// Throws std::invalid_argument when the change leaves a club without a carry.
Golfers lengthen_all(const Player& player, const DistanceChange& change);

// The policy before, followed with other clubs. Models and policy must outlive it.
ActionOf followed(const HoleModel& model, const HoleModel& planned, const Policy& policy);

// What a policy plays from any place. Model and policy must outlive it.
ActionFrom near_policy(const HoleModel& model, const Policy& policy);

// One hole for the golfers of a change, with rings where the habit of either changes abruptly. Policies are
// looked for on one grid and set of strikes and evaluated on others that the search has not seen (held_out_grid()): of
// many actions weighed with small errors the best-looking owes some of its looks to them. Holds references to all that
// it is made of.
struct HoleModels {
  HoleModels(const HoleMap& map, Point tee, const Golfers& golfers, const Baseline& baseline,
             const Discretisation& discretisation);

  Discretisation discretisation;  // of the search
  HoleModel search_before, search_after;
  HoleModel before, driver_longer, after;  // held out
};

// A policy made before a change, evaluated as it is followed with a longer driver, and with longer irons too
// (evaluate_followed). `row_source` may have rows for the last.
struct FollowedPolicy {
  PolicyEvaluation driver_longer;
  PolicyEvaluation all_longer;
};
using Following = std::function<ActionOf(const HoleModel& model)>;
FollowedPolicy follow_policy(const Golfers& golfers, const HoleModels& models, const PolicyEvaluation& before,
                             const Following& follow, const PolicyEvaluation* row_source = nullptr);

// What a search may begin from: the same policy on both grids, and what it is worth on the held-out one.
struct PolicyStart {
  ActionOf on_search, on_held_out;
  PolicyEvaluation held_out;
};

// A policy and what it is worth where the search has not looked.
struct FoundPolicy {
  PolicyEvaluation held_out;  // the better, by held-out values, of the start and the one found
  Policy kept;                // the same on the grid of the search
  BestPolicy searched;        // what the search found, and what it says of that itself
};

// The best policy found from a start. Throws CannotFinish like evaluate_policy.
FoundPolicy better_policy(const HoleModel& search, const HoleModel& held_out_model, PolicyStart start,
                          const PolicyIterationOptions& options = {});

// The best policy before the change, from the habit, whose held-out value is known; and after it, from the policy
// before.
FoundPolicy policy_before(const HoleModels& models, PolicyEvaluation held_out_habit,
                          const PolicyIterationOptions& options = {});
FoundPolicy policy_after(const HoleModels& models, const FoundPolicy& before, PolicyEvaluation held_out_followed,
                         const PolicyIterationOptions& options = {});

// Does work on a hole on the search grid, or with more strikes or on a closer grid where it throws CannotFinish there.
// What it returns is empty, or says why the hole cannot be finished.
std::string finish_or_say_why(const Discretisation& search, const HoleMap& map, Point tee, int number,
                              const std::function<void(const Discretisation&)>& work);

// Throws CannotFinish when a hole (not empty: finish_or_say_why) cannot be finished.
void throw_unfinished(const std::vector<std::string>& failures);

std::vector<std::string> common_cautions();

// What every result of these questions says of what was asked.
template <class Result>
void say_what_was_asked(Result& result, const Course& course, std::size_t tee, const Player& player,
                        const Baseline& baseline) {
  result.course = course.name;
  result.tee = course.tees[tee].name;
  result.player = player.label;
  result.band = player.band;
  result.units = course.units;
  result.baseline_name = baseline.name();
  result.baseline_source = baseline.source();
  result.cautions = common_cautions();
}

}  // namespace yardworth
