#pragma once

#include <cstddef>
#include <functional>
#include <string>
#include <vector>

#include "yardworth/course/course.hpp"
#include "yardworth/gain/gain.hpp"
#include "yardworth/gain/hole_play.hpp"
#include "yardworth/strategy/best.hpp"

namespace yardworth {

// What the questions about a change share: golfers with longer clubs, plans taken from one golfer to another, and plans
// that are looked for on one set of strikes and judged on another.

// Does work(i) for every piece i of so many sizes, on so many threads (0: as many as there are cores). The largest
// piece is taken up first, and whoever is done takes the next, so that at the end nobody waits long for another. What a
// piece does must not depend on others.
void work_in_parallel(int threads, const std::vector<double>& sizes, const std::function<void(std::size_t)>& work);

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

// The plan before, followed with other clubs. Models and plan must outlive it.
ActionOf followed(const HoleModel& model, const HoleModel& planned, const Plan& plan);

// What a plan plays from any place. Model and plan must outlive it.
ActionFrom near_plan(const HoleModel& model, const Plan& plan);

// One hole for the golfers of a change, with rings where the habit of either changes abruptly. Plans are
// looked for on one grid and set of strikes and judged on others that the search has not seen (judging()): of many
// actions weighed with small errors the best-looking owes some of its looks to them. Holds references to all that it is
// made of.
struct HoleModels {
  HoleModels(const HoleMap& map, Point tee, const Golfers& golfers, const Baseline& baseline,
             const StrikeLattices& lattices, const Resolution& resolution);

  Resolution resolution;  // of the search
  HoleModel search_before, search_after;
  HoleModel before, driver_longer, after;  // to judge on
};

// A plan made before a change, evaluated as it is followed with a longer driver, and with longer irons too
// (evaluate_followed). `like` may have rows for the last.
struct FollowedPlan {
  PlanValue driver_longer;
  PlanValue all_longer;
};
using Following = std::function<ActionOf(const HoleModel& model)>;
FollowedPlan follow_plan(const Golfers& golfers, const HoleModels& models, const PlanValue& before,
                         const Following& follow, const PlanValue* like = nullptr);

// What a search may begin from: the same plan on both grids, and what it is worth on that to judge on.
struct PlanStart {
  ActionOf search, judge;
  PlanValue judged;
};

// A plan and what it is worth where the search has not looked.
struct JudgedPlan {
  PlanValue judged;   // the better, by judged values, of the plan begun with and the one found
  Plan kept;          // the same on the grid of the search
  BestPlan searched;  // what the search found, and what it says of that itself
};

// The best plan found from a start. Throws CannotFinish like evaluate_plan.
JudgedPlan better_plan(const HoleModel& search, const HoleModel& judge, PlanStart start,
                       const SearchOptions& options = {});

// The best plan before the change, from the habit, whose judged value is known; and after it, from the plan before.
JudgedPlan plan_before(const HoleModels& models, PlanValue judged_habit, const SearchOptions& options = {});
JudgedPlan plan_after(const HoleModels& models, const JudgedPlan& before, PlanValue judged_followed,
                      const SearchOptions& options = {});

// Does work on a hole at the resolution to search at, or with more strikes or closer where it throws CannotFinish
// there. What it returns is empty, or says why the hole cannot be finished.
std::string finish_or_say_why(const HoleMap& map, Point tee, int number,
                              const std::function<void(const Resolution&)>& work);

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
