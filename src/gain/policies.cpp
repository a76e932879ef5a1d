#include "gain/policies.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <stdexcept>
#include <utility>

#include "strategy/follow.hpp"
#include "strategy/habit.hpp"
#include "strategy/needed_carry.hpp"

namespace yardworth {

void require_carries(const Player& player) {
  for (const Club& club : player.clubs) {
    if (!(club.carry_yd >= 1.0)) {
      throw std::invalid_argument(fmt::format("the change leaves the {} with a carry of {:.0f} yards, which is none",
                                              club.name, club.carry_yd));
    }
  }
}

namespace {

bool same_carries(const Player& a, const Player& b) {
  return std::equal(a.clubs.begin(), a.clubs.end(), b.clubs.begin(), b.clubs.end(),
                    [](const Club& x, const Club& y) { return x.carry_yd == y.carry_yd; });
}

}  // namespace

bool Golfers::no_driver() const { return same_carries(before, driver_longer); }
bool Golfers::no_irons() const { return same_carries(driver_longer, all_longer); }

Golfers lengthen_all(const Player& player, const DistanceChange& change) {
  Golfers golfers{player, lengthen(player, change.driver_carry_yd, 0.0),
                  lengthen(player, change.driver_carry_yd, change.irons_carry_yd)};
  require_carries(golfers.all_longer);
  return golfers;
}

ActionOf followed(const HoleModel& model, const HoleModel& planned, const Policy& policy) {
  return [&](StateId state) {
    const Action& action = policy[static_cast<std::size_t>(state)];
    const Lie lie = model.lie_of(state);
    const Point place = model.place_of(state);
    return action.swing >= 0 ? follow_action(model, planned, lie, place, action) : habit_action(model, lie, place);
  };
}

ActionFrom near_policy(const HoleModel& model, const Policy& policy) {
  return [&](Lie lie, Point from) { return action_near(model, policy, lie, from); };
}

namespace {

// One grid of states for a golfer before and after, with rings where the habit of either changes abruptly.
Discretisation with_edges(const Discretisation& wanted, const HoleMap& map, Point tee, const Player& before,
                          const Player& after, const Baseline& baseline) {
  DiscretisationOptions options = wanted.options();
  DiscretisationOptions few_states = options;
  few_states.ring_yd = few_states.arc_yd = numerics::habit_edge_grid_yd;
  for (const Player* player : {&before, &after}) {
    const std::vector<double> edges = habit_edges_yd({map, tee, *player, baseline, wanted.with(few_states)});
    options.edges_yd.insert(options.edges_yd.end(), edges.begin(), edges.end());
  }
  return wanted.with(options);
}

}  // namespace

HoleModels::HoleModels(const HoleMap& map, Point tee, const Golfers& golfers, const Baseline& baseline,
                       const Discretisation& wanted)
    : discretisation(with_edges(wanted, map, tee, golfers.before, golfers.all_longer, baseline)),
      search_before(map, tee, golfers.before, baseline, discretisation),
      search_after(search_before.for_player(golfers.all_longer)),
      before(map, tee, golfers.before, baseline, held_out_grid(discretisation)),
      driver_longer(before.for_player(golfers.driver_longer)),
      after(before.for_player(golfers.all_longer)) {}

FollowedPolicy follow_policy(const Golfers& golfers, const HoleModels& models, const PolicyEvaluation& before,
                             const Following& follow, const PolicyEvaluation* row_source) {
  const EvaluatedPolicy was{models.before, before};
  FollowedPolicy policy;
  policy.driver_longer =
      golfers.no_driver() ? before : evaluate_followed(models.driver_longer, follow(models.driver_longer), was, was);
  const EvaluatedPolicy driver{models.driver_longer, policy.driver_longer};
  policy.all_longer =
      golfers.no_irons()
          ? policy.driver_longer
          : evaluate_followed(models.after, follow(models.after), driver,
                              row_source != nullptr ? EvaluatedPolicy{models.after, *row_source} : driver);
  return policy;
}

namespace {

// A policy taken from one grid to another may leave some place of that only for itself: it is then no better than any.
std::optional<PolicyEvaluation> evaluate_if_finished(const HoleModel& model, const ActionOf& play,
                                                     const PolicyEvaluation& row_source) {
  try {
    return evaluate_policy(model, play, {model, row_source});
  } catch (const CannotFinish&) {
    return std::nullopt;
  }
}

}  // namespace

FoundPolicy better_policy(const HoleModel& search, const HoleModel& held_out_model, PolicyStart start,
                          const PolicyIterationOptions& options) {
  PolicyEvaluation warm_start = evaluate_policy(search, start.on_search);
  FoundPolicy policy;
  policy.searched = find_best_policy(search, start.on_search, warm_start, options);
  const Policy& found = policy.searched.exact.policy;
  const ActionOf play = [&](StateId state) {
    const Lie lie = held_out_model.lie_of(state);
    const Point place = held_out_model.place_of(state);
    const auto near = static_cast<std::size_t>(search.nearest_state(lie, place));
    const bool left_alone = found[near].swing < 0 || found[near] == warm_start.policy[near];
    if (!left_alone) return action_near(search, found, lie, place);
    const Action& started_with = start.held_out.policy[static_cast<std::size_t>(state)];
    return started_with.swing >= 0 ? started_with : start.on_held_out(state);
  };
  std::optional<PolicyEvaluation> held_out = evaluate_if_finished(held_out_model, play, start.held_out);
  if (held_out && held_out->at_tee < start.held_out.at_tee) {
    policy.held_out = std::move(*held_out);
    policy.kept = found;
  } else {
    policy.held_out = std::move(start.held_out);
    policy.kept = std::move(warm_start.policy);
  }
  return policy;
}

FoundPolicy policy_before(const HoleModels& models, PolicyEvaluation held_out_habit,
                          const PolicyIterationOptions& options) {
  return better_policy(models.search_before, models.before,
                       {habit_of(models.search_before), habit_of(models.before), std::move(held_out_habit)}, options);
}

FoundPolicy policy_after(const HoleModels& models, const FoundPolicy& before, PolicyEvaluation held_out_followed,
                         const PolicyIterationOptions& options) {
  const ActionOf follow = followed(models.after, models.before, before.held_out.policy);
  if (held_out_followed.at_tee > before.held_out.at_tee) {
    // Who planned with shorter clubs can still play every shot as it was.
    const ActionOf as_before = [&](StateId state) {
      const Action& action = before.held_out.policy[static_cast<std::size_t>(state)];
      if (action.swing < 0) return follow(state);
      return same_shot(models.after, models.before, models.after.lie_of(state), action).value_or(follow(state));
    };
    PolicyEvaluation stays = evaluate_policy(models.after, as_before, {models.after, held_out_followed});
    if (stays.at_tee < held_out_followed.at_tee) held_out_followed = std::move(stays);
  }
  return better_policy(
      models.search_after, models.after,
      {followed(models.search_after, models.search_before, before.kept), follow, std::move(held_out_followed)},
      options);
}

std::string finish_or_say_why(const Discretisation& search, const HoleMap& map, Point tee, int number,
                              const std::function<void(const Discretisation&)>& work) {
  // Of few strikes from a place none may get away, though of more some do; and of states far apart some may lie where a
  // golfer never plays from and cannot play on.
  DiscretisationOptions more_strikes = search.options();
  more_strikes.equal_weight_rows = false;
  DiscretisationOptions closer = more_strikes;
  closer.arc_yd = held_out_options(closer).arc_yd;
  for (const DiscretisationOptions& options : {search.options(), more_strikes, closer}) {
    try {
      work(search.with(options));
      return "";
    } catch (const CannotFinish&) {
      continue;
    }
  }
  const double carry = needed_carry_yd(map, tee);
  return carry > 0.0 ? fmt::format("hole {} needs a carry of {:.0f} yards", number, carry)
                     : fmt::format("hole {} leads nowhere with this plan", number);
}

void throw_unfinished(const std::vector<std::string>& failures) {
  std::string all;
  for (const std::string& failure : failures) {
    if (!failure.empty()) all += (all.empty() ? "" : "; ") + failure;
  }
  if (!all.empty()) throw CannotFinish("cannot be finished with these clubs: " + all);
}

std::vector<std::string> common_cautions() {
  return {
      "Swing changes and speed work load the back, the wrists and the elbows: make them with a qualified coach, and "
      "ask a medical professional about any pain.",
      "Course ratings and handicaps are for the authorised golf association; nothing here stands in for them."};
}

}  // namespace yardworth
