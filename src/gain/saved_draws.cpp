#include "gain/saved_draws.hpp"

#include <algorithm>
#include <atomic>
#include <cmath>

#include "core/numerics.hpp"
#include "gain/finish_holes.hpp"
#include "gain/golfers.hpp"
#include "gain/request_rules.hpp"
#include "gain/solve_hole.hpp"
#include "gain/table_method.hpp"
#include "gain/what_was_asked.hpp"

namespace yardworth {

namespace {

// Of a draw only the whole is asked for. The table method leaves out steps that it knows nothing of, and needs each.
Golfers in_one_step(Golfers golfers, Method method) {
  if (method == Method::play && golfers.steps.size() > 1)
    golfers.steps.erase(golfers.steps.begin(), golfers.steps.end() - 1);
  return golfers;
}

// The golfer before on one hole, solved once for all draws.
struct SolvedBefore {
  PolicyEvaluation habit;
  std::optional<FoundPolicy> best;
};

SolvedBefore solve_before(const HoleModels& models, PolicyChoice plan) {
  SolvedBefore before{habit_before(models), {}};
  if (plan == PolicyChoice::best) before.best = policy_before(models, before.habit, {});
  return before;
}

// before: nothing with method table.
StepValues values_of(const HoleModels& models, const Baseline& baseline, const std::optional<SolvedBefore>& before) {
  if (!before) return answer_by_table(models, baseline).strokes;
  if (!before->best) return follow_habit(models, before->habit).strokes;
  return follow_best(models, *before->best, nullptr, {}).strokes;
}

double saved_by(const HoleModels& models, const Baseline& baseline, const std::optional<SolvedBefore>& before) {
  try {
    return values_of(models, baseline, before).strokes_saved();
  } catch (const CannotFinish&) {
    return -numerics::most_strokes_of_hole;
  }
}

}  // namespace

std::vector<double> compute_saved_draws(const Course& course, const Player& player, const Baseline& baseline,
                                        const GainRequest& request, const std::vector<Change>& draws,
                                        const Told& told) {
  require_valid(course, player, request);
  const std::size_t tee = tee_of(course, player, request.tee);
  const PolicyChoice plan = policy_of_draws(request);
  const Golfers golfers = golfers_of(player, baseline, request.change);
  std::vector<Golfers> drawn;
  for (const Change& draw : draws) drawn.push_back(in_one_step(golfers_of(player, baseline, draw), request.method));
  const HolesAsked asked{
      holes_wanted(course, request.holes), course.firmness, course.units, tee, golfers, baseline, request.threads};
  std::vector<std::vector<double>> saved(asked.holes.size(), std::vector<double>(draws.size(), 0.0));
  std::atomic<int> done = 0;
  finish_holes(asked, [&](std::size_t hole, const HoleModels& models) {
    const std::optional<SolvedBefore> before =
        request.method == Method::play ? std::optional(solve_before(models, plan)) : std::nullopt;
    for (std::size_t i = 0; i < drawn.size(); ++i) {
      saved[hole][i] = saved_by(models.with_change(drawn[i], baseline), baseline, before);
    }
    if (told) told(++done, static_cast<int>(asked.holes.size()));
  });
  // Holes are worked in parallel, but put together in their order.
  std::vector<double> of_round(draws.size(), 0.0);
  for (const std::vector<double>& of_hole : saved) {
    for (std::size_t i = 0; i < of_round.size(); ++i) of_round[i] += of_hole[i];
  }
  return of_round;
}

SavedInterval interval_of(std::vector<double> saved, double level, PolicyChoice policy) {
  std::sort(saved.begin(), saved.end());
  // Between the draws on straight lines.
  const auto quantile = [&](double share) {
    const double at = share * static_cast<double>(saved.size() - 1);
    const auto below = std::min(static_cast<std::size_t>(at), saved.size() - 2);
    return std::lerp(saved[below], saved[below + 1], at - static_cast<double>(below));
  };
  const double tail = 0.5 * (1.0 - level);
  return {level, quantile(tail), quantile(1.0 - tail), static_cast<int>(saved.size()), policy};
}

}  // namespace yardworth
