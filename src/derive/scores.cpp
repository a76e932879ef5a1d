#include "derive/scores.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "baseline/published.hpp"
#include "core/parallel.hpp"
#include "derive/reference_hole.hpp"
#include "shot/short_game.hpp"
#include "strategy/habit.hpp"
#include "strategy/policy_iteration.hpp"
#include "strategy/simulate.hpp"

namespace yardworth {

namespace {

constexpr std::size_t rounds_kept = 20;

// Strokes on one hole, round after round.
std::vector<int> play_rounds(const Player& golfer, const Baseline& near, const Discretisation& discretisation,
                             double length_yd, const FinishFrom& finish_from, std::size_t rounds, std::uint64_t seed) {
  const HoleMap map(reference_hole(length_yd, set_up_of(golfer.band)), Firmness::normal);
  const HoleModel model(map, map.tee(length_yd), golfer, near, discretisation);
  const ActionOf habit = habit_of(model);
  PolicyIterationOptions closely;
  closely.thin_tails = false;
  const BestPolicy best = find_best_policy(model, habit, evaluate_policy(model, habit), closely);
  const ActionAt play = policy_at(model, best.exact.policy);
  RandomEngine engine(seed);
  std::vector<int> strokes(rounds);
  for (int& round : strokes) round = play_hole(model, play, finish_from, engine);
  return strokes;
}

double mean_of_lowest(const std::vector<double>& scores, std::size_t count) {
  std::vector<double> sorted = scores;
  std::sort(sorted.begin(), sorted.end());
  return std::accumulate(sorted.begin(), sorted.begin() + static_cast<std::ptrdiff_t>(count), 0.0) /
         static_cast<double>(count);
}

ScoreSummary summarise(const std::vector<double>& scores) {
  ScoreSummary summary;
  double squares = 0.0;
  const auto rounds = static_cast<double>(scores.size());
  for (const double score : scores) {
    summary.mean += score / rounds;
    squares += score * score / rounds;
  }
  summary.spread = std::sqrt(std::max(0.0, squares - summary.mean * summary.mean));
  const double sets = rounds / static_cast<double>(rounds_kept);
  for (std::size_t first = 0; first < scores.size(); first += rounds_kept) {
    const auto begin = scores.begin() + static_cast<std::ptrdiff_t>(first);
    const std::vector<double> twenty(begin, begin + static_cast<std::ptrdiff_t>(rounds_kept));
    summary.better_half += mean_of_lowest(twenty, 10) / sets;
    summary.best_8_of_20 += mean_of_lowest(twenty, 8) / sets;
  }
  return summary;
}

}  // namespace

ScoreSummary simulate_scores(const Player& golfer, const BaselineTable& near, const std::vector<double>& lengths_yd,
                             int twenties, std::uint64_t seed) {
  const Putting putting(golfer.skill.putting);
  const ShortGame short_game(golfer.skill.short_game, putting);
  const FinishFrom finish_from = [&](Lie lie, double distance_yd, RandomEngine& engine) {
    return short_game.draw_strokes(lie, distance_yd, engine);
  };
  const Baseline baseline(near);
  const Discretisation discretisation;
  const std::size_t rounds = static_cast<std::size_t>(twenties) * rounds_kept;
  std::vector<std::vector<int>> holes(lengths_yd.size());
  work_in_parallel(0, lengths_yd, [&](std::size_t i) {
    holes[i] = play_rounds(golfer, baseline, discretisation, lengths_yd[i], finish_from, rounds, seed + i);
  });
  std::vector<double> scores(rounds, 0.0);
  for (const std::vector<int>& hole : holes) {
    for (std::size_t round = 0; round < rounds; ++round) scores[round] += hole[round];
  }
  return summarise(scores);
}

std::vector<double> standard_lengths_yd(double total_yd) {
  std::vector<double> lengths = standard_hole_lengths_yd();
  const double factor = total_yd / std::accumulate(lengths.begin(), lengths.end(), 0.0);
  for (double& length : lengths) length *= factor;
  return lengths;
}

}  // namespace yardworth
