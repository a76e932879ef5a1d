#include "yardworth/strategy.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <tuple>
#include <utility>

#include "core/telling.hpp"
#include "gain/finish_holes.hpp"
#include "gain/hazards_met.hpp"
#include "gain/played_from.hpp"
#include "gain/played_hole.hpp"
#include "gain/policy_change.hpp"
#include "gain/request_rules.hpp"
#include "gain/round_gain.hpp"
#include "gain/solve_hole.hpp"
#include "gain/tee_shot.hpp"
#include "gain/tee_shot_spread.hpp"
#include "gain/tee_view.hpp"
#include "gain/what_was_asked.hpp"
#include "strategy/dot.hpp"
#include "strategy/habit.hpp"
#include "strategy/outcome_samples.hpp"
#include "strategy/policy_iteration.hpp"
#include "strategy/state_values.hpp"
#include "strategy/strikes.hpp"
#include "yardworth/read.hpp"

namespace yardworth {

namespace {

using telling::most_alternatives;
using telling::other_aim_yd;
using telling::too_dear;
using telling::worth_thirds;

struct Setting {
  const Course& course;
  const Baseline& baseline;
  const StrategyRequest& request;
  std::size_t tee;
  const Golfers& golfers;  // all the same where no change was asked about
};

// One golfer on one hole, with the best policy: the values are those judged, as the gain gives them.
struct Planned : PlayedHole {
  const HoleModel& search;
  const FoundPolicy& best;

  double strokes() const { return best.held_out.at_tee; }
};

PolicyIterationOptions iteration_options(const StrategyRequest& request) {
  PolicyIterationOptions options;
  options.complete = request.prove;
  return options;
}

// Expected strokes of every tee shot that may be played, each with the best play behind it.
struct WeighedTeeShot {
  Candidate candidate;
  std::vector<double> strokes;  // by aim, from candidate.first_aim

  double least() const { return *std::min_element(strokes.begin(), strokes.end()); }
  double at(int aim) const { return strokes[static_cast<std::size_t>(aim - candidate.first_aim)]; }
};

std::vector<WeighedTeeShot> weigh(const HoleModel& model, const std::vector<Candidate>& candidates,
                                  const std::vector<double>& value) {
  std::vector<WeighedTeeShot> weighed;
  for (const Candidate& candidate : candidates) {
    weighed.push_back({candidate, aim_values(model, model.tee_state(), candidate, value)});
  }
  return weighed;
}

// The states that tee shots lead to at any aim.
std::vector<StateId> states_behind(const HoleModel& model, const std::vector<Candidate>& candidates) {
  std::set<StateId> states = {model.tee_state()};
  for (const Candidate& candidate : candidates) {
    for (int aim = candidate.first_aim; aim <= candidate.last_aim; aim += aims_per_sd) {
      Action action = candidate.action;
      action.aim = aim;
      for_each_strike(model, model.tee_state(), action, 1, [&](const Rest& rest, double) {
        const Continuation continuation = model.continuation(rest);
        if (continuation.kind != Continuation::Kind::between_states) return;
        for (const auto state : continuation.state) states.insert(static_cast<StateId>(state));
      });
    }
  }
  return {states.begin(), states.end()};
}

// The policy says nothing of places that its own tee shot never comes to. The best play from there is found too, so
// that no other tee shot is judged by what is only guessed.
std::vector<double> values_behind(const Planned& planned, const std::vector<Candidate>& candidates) {
  const HoleModel& model = planned.search;
  const PolicyEvaluation warm_start =
      evaluate_from(model, states_behind(model, candidates), planned.best.searched.exact.policy);
  PolicyIterationOptions everywhere;
  everywhere.least_visits = 0.0;
  return filled_values(model, find_best_policy(model, habit_of(model), warm_start, everywhere).exact.value);
}

bool can_be_finished_behind(const Planned& planned, const Candidate& candidate) {
  try {
    values_behind(planned, {candidate});
    return true;
  } catch (const CannotFinish&) {
    return false;
  }
}

// Of tee shots those worth weighing. One that may come to a place which no shot gets the ball away from is none that
// could be played instead, and no reason to refuse a hole that the policy itself finishes.
std::vector<WeighedTeeShot> weigh_with_play_behind(const Planned& planned, std::vector<Candidate> candidates) {
  const HoleModel& model = planned.search;
  try {
    return weigh(model, candidates, values_behind(planned, candidates));
  } catch (const CannotFinish&) {
    candidates.erase(
        std::remove_if(candidates.begin(), candidates.end(),
                       [&](const Candidate& candidate) { return !can_be_finished_behind(planned, candidate); }),
        candidates.end());
  }
  try {
    return weigh(model, candidates, values_behind(planned, candidates));
  } catch (const CannotFinish&) {
    return {};
  }
}

std::vector<WeighedTeeShot> weigh_tee_shots(const Planned& planned) {
  const HoleModel& model = planned.search;
  const PolicyEvaluation& searched = planned.best.searched.exact;
  const std::vector<Candidate> all = candidates_at(model, Lie::tee, model.tee(), PolicyIterationOptions().aim_reach_sd);
  std::vector<Candidate> fair;
  for (const WeighedTeeShot& shot : weigh(model, all, filled_values(model, searched.value))) {
    if (shot.least() <= searched.at_tee + too_dear) fair.push_back(shot.candidate);
  }
  return weigh_with_play_behind(planned, std::move(fair));
}

// What the search takes for better than a policy that was judged the best is as good as that, no better.
TeeOption option_of(const Planned& planned, const Action& action, double weighed) {
  const HoleModel& model = planned.model;
  const Swing swing = model.swing_of(Lie::tee, action);
  const Aim aim = aim_of(model.map(), model.tee(), swing, HoleModel::aimed_heading_of(swing, action));
  const double strokes = std::max(weighed, planned.strokes());
  return {planned.player.clubs[swing.club].name, swing.carry_yd, aim, strokes, strokes - planned.strokes()};
}

Action with_aim(Action action, int aim) {
  action.aim = aim;
  return action;
}

// The policy's own club down the middle; or, where the policy goes there, aimed beside it on the better side.
std::optional<TeeOption> same_club_elsewhere(const Planned& planned, const TeeOption& own, const WeighedTeeShot& shot,
                                             double correction) {
  std::optional<TeeOption> left, right;
  for (int aim = shot.candidate.first_aim; aim <= shot.candidate.last_aim; ++aim) {
    const TeeOption option = option_of(planned, with_aim(shot.candidate.action, aim), shot.at(aim) + correction);
    if (aim == 0 && std::abs(own.aim.right_yd - option.aim.right_yd) >= other_aim_yd) return option;
    const double off = option.aim.right_yd - own.aim.right_yd;
    // Aims come from the left: the last one on the left and the first on the right are the nearest.
    if (off <= -other_aim_yd) left = option;
    if (off >= other_aim_yd && !right) right = option;
  }
  if (left && right) return left->strokes <= right->strokes ? left : right;
  return left ? left : right;
}

bool cheaper(const TeeOption& a, const TeeOption& b) { return a.strokes < b.strokes; }

// Of every other club its best aim, and the policy's own club aimed elsewhere; the cheapest few.
std::vector<TeeOption> alternatives_to(const Planned& planned, const TeeOption& own) {
  const Action& action = planned.tee_shot();
  const std::vector<WeighedTeeShot> shots = weigh_tee_shots(planned);
  const auto own_shot = std::find_if(shots.begin(), shots.end(), [&](const WeighedTeeShot& shot) {
    return with_aim(shot.candidate.action, 0) == with_aim(action, 0);
  });
  const bool known = own_shot != shots.end() && action.aim >= own_shot->candidate.first_aim &&
                     action.aim <= own_shot->candidate.last_aim;
  // The policy's own tee shot is worth what the policy is judged to be; what the search weighs moves with it, all
  // alike.
  const double correction = planned.strokes() - (known ? own_shot->at(action.aim) : planned.best.searched.exact.at_tee);
  std::vector<TeeOption> options;
  for (const WeighedTeeShot& shot : shots) {
    const auto least = std::min_element(shot.strokes.begin(), shot.strokes.end());
    const int aim = shot.candidate.first_aim + static_cast<int>(least - shot.strokes.begin());
    const TeeOption option = option_of(planned, with_aim(shot.candidate.action, aim), *least + correction);
    if (option.club == own.club) continue;
    const auto same =
        std::find_if(options.begin(), options.end(), [&](const TeeOption& other) { return other.club == option.club; });
    if (same == options.end()) {
      options.push_back(option);
    } else if (cheaper(option, *same)) {
      *same = option;
    }
  }
  std::stable_sort(options.begin(), options.end(), cheaper);
  std::optional<TeeOption> elsewhere;
  if (known) elsewhere = same_club_elsewhere(planned, own, *own_shot, correction);
  options.resize(std::min(options.size(), most_alternatives - (elsewhere ? 1 : 0)));
  if (elsewhere) options.insert(std::upper_bound(options.begin(), options.end(), *elsewhere, cheaper), *elsewhere);
  return options;
}

Ground finish_of(const Rest& rest) {
  const bool no_place_to_drop = rest.replay && penalty_on(rest.found) == Penalty::drop;
  return no_place_to_drop ? Ground::out_of_bounds : rest.found;
}

// What costs most is told last.
struct InOrderOfCost {
  bool operator()(Ground a, Ground b) const {
    const auto cost = [](Ground ground) { return std::tuple(penalty_on(ground), facts_of(ground).trouble, ground); };
    return cost(a) < cost(b);
  }
};

struct Landed {
  double weight = 0.0;
  double left_yd = 0.0;
  const std::string* next_club = nullptr;
};

// The club that most of these balls are followed by.
const std::string& commonest(const ClubShares& clubs) {
  return std::max_element(clubs.begin(), clubs.end(), [](const auto& a, const auto& b) { return a.second < b.second; })
      ->first;
}

// What follows a stretch, in shares of its weight, of balls sorted from the furthest left to the nearest.
NextShot stretch_of(Ground finish, const char* third, const std::vector<Landed>& landed, double from, double to) {
  NextShot next{finish, third, 0.0, 0.0, {}};
  double total = 0.0;
  for (const Landed& ball : landed) total += ball.weight;
  double passed = 0.0;
  for (const Landed& ball : landed) {
    const double weight = std::max(0.0, std::min(passed + ball.weight, to * total) - std::max(passed, from * total));
    passed += ball.weight;
    if (weight <= 0.0) continue;
    next.probability += weight;
    next.left_yd += weight * ball.left_yd;
    next.clubs[*ball.next_club] += weight;
  }
  if (next.probability <= 0.0) return next;
  next.left_yd /= next.probability;
  for (auto& [club, share] : next.clubs) share /= next.probability;
  return next;
}

std::vector<NextShot> next_shots(const Planned& planned) {
  const HoleModel& model = planned.model;
  std::map<Ground, std::vector<Landed>, InOrderOfCost> by_finish;
  for (const TeeShotNode& node : planned.tee_nodes) {
    const Point from = node.rest.replay ? model.tee() : node.rest.at;
    by_finish[finish_of(node.rest)].push_back({node.weight, distance_yd(from, model.pin()), &node.next_club});
  }
  std::vector<NextShot> shots;
  for (auto& [finish, landed] : by_finish) {
    std::stable_sort(landed.begin(), landed.end(),
                     [](const Landed& a, const Landed& b) { return a.left_yd > b.left_yd; });
    const NextShot all = stretch_of(finish, "", landed, 0.0, 1.0);
    if (all.probability <= 0.0) continue;
    shots.push_back(all);
    if (all.probability < worth_thirds) continue;
    const NextShot thirds[] = {stretch_of(finish, "short", landed, 0.0, 1.0 / 3.0),
                               stretch_of(finish, "middle", landed, 1.0 / 3.0, 2.0 / 3.0),
                               stretch_of(finish, "long", landed, 2.0 / 3.0, 1.0)};
    if (commonest(thirds[0].clubs) == commonest(thirds[2].clubs)) continue;
    shots.insert(shots.end(), std::begin(thirds), std::end(thirds));
  }
  return shots;
}

TeePlay tee_play(const Planned& planned, const StrategyRequest& request) {
  TeePlay policy;
  policy.tee_shot = option_of(planned, planned.tee_shot(), planned.strokes());
  if (request.alternatives) policy.alternatives = alternatives_to(planned, policy.tee_shot);
  policy.next = next_shots(planned);
  return policy;
}

std::vector<HazardChance> hazards_found(const Planned& before, const Planned* after) {
  const std::vector<HazardView> hazards = hazards_from(before.model.map(), before.model.tee());
  const auto met = [&](const Planned& planned) { return hazards_met(planned.model, hazards, planned.tee_nodes); };
  const std::vector<HazardMet> met_before = met(before);
  std::vector<HazardMet> met_after;
  if (after != nullptr) met_after = met(*after);
  std::vector<HazardChance> chances;
  for (std::size_t i = 0; i < hazards.size(); ++i) {
    HazardChance chance{hazards[i], met_before[i].found, {}};
    if (after != nullptr) chance.after = met_after[i].found;
    chances.push_back(chance);
  }
  return chances;
}

OptimalityProof prove(const Planned& planned, const PolicyIterationOptions& options) {
  return {largest_bellman_residual(planned.search, planned.best.searched, options), planned.best.searched.considered,
          planned.best.held_out.baseline_bound};
}

// The policy with something to play, and a value, from every place: balls come to some too rarely for it to say.
PolicyEvaluation complete(const HoleModel& model, PolicyEvaluation planned) {
  const ActionOf habit = habit_of(model);
  for (StateId state = 0; state < model.state_count(); ++state) {
    Action& action = planned.policy[static_cast<std::size_t>(state)];
    if (action.swing < 0) action = habit(state);
  }
  planned.value = filled_values(model, planned.value);
  return planned;
}

std::string graph_of(const Setting& setting, const Planned& planned, int number) {
  const std::string title = fmt::format("{}, {} tees, hole {}: the best plan of {}", setting.course.name,
                                        setting.course.tees[setting.tee].name, number, planned.player.label);
  return policy_graph_dot(planned.model, planned.player, complete(planned.model, planned.best.held_out), title);
}

DrawnTeeShot drawn(const Planned& planned) {
  const HoleModel& model = planned.model;
  DrawnTeeShot shot;
  shot.aim = aimed_at(model, planned.tee_shot());
  shot.regions = finish_regions(model, planned.tee_shot(), {telling::inner_share, telling::outer_share});
  shot.result = summarise_tee_shot(model, planned.player, planned.tee_shot(), planned.tee_nodes);
  shot.hazards = hazards_met(model, hazards_from(model.map(), model.tee()), planned.tee_nodes);
  return shot;
}

HoleDrawing drawing_of(const Hole& hole, const Planned& before, const Planned* after) {
  HoleDrawing drawing{plan_view(hole), before.model.tee(), drawn(before), {}};
  if (after) drawing.after = drawn(*after);
  return drawing;
}

HoleStrategy strategy_on(const Setting& setting, const Hole& hole, const HoleModels& models) {
  SolveOptions wanted;
  wanted.best = true;
  wanted.search = iteration_options(setting.request);
  const SolvedHole solved = solve_hole(models, wanted);
  const SolvedBest& best = *solved.best;
  const Golfers& golfers = models.golfers;
  const Planned before{played_hole(models.before, golfers.before, best.before.held_out, best_before_from(models, best)),
                       models.search_before, best.before};
  // Where the change moves no club, the golfer and the policy stay as they are.
  const Planned with_change =
      best.after
          ? Planned{played_hole(models.after(), golfers.after(), best.after->held_out, best_after_from(models, best)),
                    models.search_after, *best.after}
          : before;
  const Planned* after = setting.request.change ? &with_change : nullptr;
  HoleStrategy strategy;
  strategy.number = hole.number;
  strategy.par = hole.par;
  strategy.length_yd = hole.length_yd[setting.tee];
  strategy.before = tee_play(before, setting.request);
  if (after) {
    strategy.after = tee_play(*after, setting.request);
    strategy.policy_change =
        explain_policy_change({models.before, golfers.before, before.tee_shot(), &before.tee_nodes},
                              {models.after(), golfers.after(), best.kept_tee_shot},
                              {models.after(), golfers.after(), after->tee_shot(), &after->tee_nodes});
  }
  strategy.hazards = hazards_found(before, after);
  if (setting.request.prove) {
    const PolicyIterationOptions options = iteration_options(setting.request);
    strategy.proof_before = prove(before, options);
    if (after) strategy.proof_after = prove(*after, options);
  }
  if (setting.request.graph) strategy.graph = graph_of(setting, after ? *after : before, hole.number);
  if (setting.request.drawing) strategy.drawing = drawing_of(hole, before, after);
  return strategy;
}

// Holes are worked in parallel, but put together in their order.
std::vector<HoleStrategy> strategies_on(const Setting& setting, const std::vector<const Hole*>& holes) {
  const StrategyRequest& request = setting.request;
  std::vector<HoleStrategy> strategies(holes.size());
  const Course& course = setting.course;
  const HolesAsked asked{holes,           course.firmness,  course.units,   setting.tee,
                         setting.golfers, setting.baseline, request.threads};
  finish_holes(
      asked, [&](std::size_t i, const HoleModels& models) { strategies[i] = strategy_on(setting, *holes[i], models); });
  return strategies;
}

}  // namespace

StrategyResult compute_strategy(const Course& course, const Player& player, const StrategyRequest& request) {
  require_valid(course, player, request);
  return compute_strategy(course, player, default_baseline(player), request);
}

StrategyResult put_together(const Course& course, const Player& player, const Baseline& baseline,
                            const StrategyRequest& request, std::vector<HoleStrategy> holes) {
  StrategyResult result;
  say_what_was_asked(result, course, tee_of(course, player, request.tee), player, baseline);
  result.change = request.change;
  result.holes = std::move(holes);
  double most = 0.0;
  for (const HoleStrategy& hole : result.holes) most = std::max(most, hole.before.tee_shot.strokes);
  add_note_of_misses(player, result.notes);
  add_caution_of_many_strokes(most, result.cautions);
  return result;
}

StrategyResult compute_strategy(const Course& course, const Player& player, const Baseline& baseline,
                                const StrategyRequest& request) {
  require_valid(course, player, request);
  const Golfers golfers = golfers_of(player, baseline, request.change.value_or(Change{}));
  const Setting setting{course, baseline, request, tee_of(course, player, request.tee), golfers};
  return put_together(course, player, baseline, request, strategies_on(setting, holes_wanted(course, request.holes)));
}

}  // namespace yardworth
