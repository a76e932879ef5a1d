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

// One hole, played once.
struct HoleScore {
  int strokes = 0;
  int putts = 0;
  bool fairway = false;
};

// One hole, round after round.
struct HoleScores {
  int par = 0;
  std::vector<HoleScore> rounds;
};

HoleScores play_rounds(const Player& golfer, const Baseline& near, const Discretisation& discretisation,
                       double length_yd, const ShortGame& short_game, std::size_t rounds, std::uint64_t seed) {
  const Hole hole = reference_hole(length_yd, set_up_of(golfer.band));
  const HoleMap map(hole, Firmness::normal);
  const HoleModel model(map, map.tee(length_yd), golfer, near, discretisation);
  const ActionOf habit = habit_of(model);
  PolicyIterationOptions closely;
  closely.thin_tails = false;
  const BestPolicy best = find_best_policy(model, habit, evaluate_policy(model, habit), closely);
  const ActionAt play = policy_at(model, best.exact.policy);
  RandomEngine engine(seed);
  HoleScores scores{hole.par, std::vector<HoleScore>(rounds)};
  for (HoleScore& round : scores.rounds) {
    const FinishFrom finish_from = [&](Lie lie, double distance_yd, RandomEngine& random) {
      const ShortGame::Drawn drawn = short_game.draw(lie, distance_yd, random);
      round.putts = drawn.putts;
      return drawn.strokes;
    };
    round.strokes = play_hole(model, play, finish_from, engine, [&](int strokes_before, const Rest& rest) {
      if (strokes_before > 0 || rest.replay || rest.penalty_strokes > 0) return;
      round.fairway = rest.lie == Lie::fairway || rest.lie == Lie::green;
    });
  }
  return scores;
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

// How the rounds were played, a round each.
void count_play(const std::vector<HoleScores>& holes, ScoreSummary& summary) {
  double longer_holes = 0.0;
  for (const HoleScores& hole : holes) {
    if (hole.par > 3) longer_holes += 1.0;
    const double one = 1.0 / static_cast<double>(hole.rounds.size());
    for (const HoleScore& round : hole.rounds) {
      if (round.strokes - round.putts <= hole.par - 2) summary.greens += one;
      if (hole.par > 3 && round.fairway) summary.fairway_share += one;
      summary.putts += one * round.putts;
    }
  }
  if (longer_holes > 0.0) summary.fairway_share /= longer_holes;
}

}  // namespace

ScoreSummary simulate_scores(const Player& golfer, const BaselineTable& near, const std::vector<double>& lengths_yd,
                             int twenties, std::uint64_t seed) {
  const Putting putting(golfer.skill.putting);
  const ShortGame short_game(golfer.skill.short_game, putting);
  const Baseline baseline(near);
  const Discretisation discretisation;
  const std::size_t rounds = static_cast<std::size_t>(twenties) * rounds_kept;
  std::vector<HoleScores> holes(lengths_yd.size());
  work_in_parallel(0, lengths_yd, [&](std::size_t i) {
    holes[i] = play_rounds(golfer, baseline, discretisation, lengths_yd[i], short_game, rounds, seed + i);
  });
  std::vector<double> scores(rounds, 0.0);
  for (const HoleScores& hole : holes) {
    for (std::size_t round = 0; round < rounds; ++round) scores[round] += hole.rounds[round].strokes;
  }
  ScoreSummary summary = summarise(scores);
  count_play(holes, summary);
  return summary;
}

std::vector<double> standard_lengths_yd(double total_yd) {
  std::vector<double> lengths = standard_hole_lengths_yd();
  const double factor = total_yd / std::accumulate(lengths.begin(), lengths.end(), 0.0);
  for (double& length : lengths) length *= factor;
  return lengths;
}

}  // namespace yardworth
