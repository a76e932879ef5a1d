#include "gain/handicap.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/full_round.hpp"
#include "yardworth/limits.hpp"

namespace yardworth {

namespace {

constexpr double standard_slope = 113.0;
constexpr int rounds_kept = 20;
constexpr int rounds_counted = 8;
constexpr double soft_cap = 3.0;
constexpr double soft_cap_share = 0.5;
constexpr double hard_cap = 5.0;

int par_of(const Course& course) {
  return std::accumulate(course.holes.begin(), course.holes.end(), 0,
                         [](int sum, const Hole& hole) { return sum + hole.par; });
}

// Rounded to the nearest whole number, halves upwards.
int nearest(double value) { return static_cast<int>(std::floor(value + 0.5)); }

// What becomes of each score of a hole.
template <class Turn>
ScoreDistribution turned(const ScoreDistribution& hole, int lowest, int highest, Turn turn) {
  ScoreDistribution result{lowest, std::vector<double>(static_cast<std::size_t>(highest - lowest) + 1, 0.0)};
  for (std::size_t i = 0; i < hole.probability.size(); ++i) {
    const int to = turn(hole.lowest + static_cast<int>(i));
    result.probability[static_cast<std::size_t>(to - lowest)] += hole.probability[i];
  }
  return result;
}

// That at least one, two, ... of so many draws come, each with this probability.
std::vector<double> ranks_reached(double probability, int most, int of) {
  std::vector<double> reached;
  double fewer = 0.0;
  double ways = 1.0;
  for (int draws = 0; draws < most; ++draws) {
    fewer += ways * std::pow(probability, draws) * std::pow(1.0 - probability, of - draws);
    reached.push_back(1.0 - fewer);
    ways *= static_cast<double>(of - draws) / (draws + 1);
  }
  return reached;
}

}  // namespace

std::vector<HandicapNeed> handicap_needs(const Course& course, std::size_t tee, const Player& player,
                                         std::size_t holes) {
  std::vector<HandicapNeed> needs;
  const Tee& from = course.tees[tee];
  if (course.holes.size() != full_round_holes || holes != full_round_holes) needs.push_back(HandicapNeed::whole_round);
  if (!player.handicap_index) needs.push_back(HandicapNeed::handicap_index);
  if (!from.course_rating) needs.push_back(HandicapNeed::course_rating);
  if (!from.slope) needs.push_back(HandicapNeed::slope);
  if ((from.course_rating || from.slope) && from.rated_for.value_or(Gender::men) != player.gender) {
    needs.push_back(HandicapNeed::rated_for_gender);
  }
  const auto without = [](const Hole& hole) { return !hole.stroke_index; };
  if (std::any_of(course.holes.begin(), course.holes.end(), without)) needs.push_back(HandicapNeed::stroke_indexes);
  return needs;
}

HandicapTerms handicap_terms(const Course& course, std::size_t tee, const Player& player) {
  HandicapTerms terms;
  terms.handicap_index = *player.handicap_index;
  terms.course_rating = *course.tees[tee].course_rating;
  terms.slope = *course.tees[tee].slope;
  terms.par = par_of(course);
  terms.course_handicap = nearest(course_handicap(terms.handicap_index, terms.slope, terms.course_rating, terms.par));
  return terms;
}

double HandicapTerms::differential(int adjusted_score) const {
  return std::floor(10.0 * (standard_slope / slope) * (adjusted_score - course_rating) + 0.5) / 10.0;
}

double course_handicap(double handicap_index, double slope, double course_rating, int par) {
  return handicap_index * slope / standard_slope + (course_rating - par);
}

int strokes_received(int course_handicap, int stroke_index) {
  constexpr int holes = full_round_holes;
  const int each = static_cast<int>(std::floor(static_cast<double>(course_handicap) / holes));
  return each + (stroke_index <= course_handicap - each * holes ? 1 : 0);
}

int stableford_points(int score, int par, int strokes_received) {
  return std::max(0, 2 + par + strokes_received - score);
}

int net_double_bogey(int par, int strokes_received) { return par + 2 + strokes_received; }

ScoreDistribution stableford_of(const ScoreDistribution& hole, int par, int strokes_received) {
  const auto points = [&](int score) { return stableford_points(score, par, strokes_received); };
  return turned(hole, 0, points(hole.lowest), points);
}

ScoreDistribution adjusted_of(const ScoreDistribution& hole, int par, int strokes_received) {
  const int most = net_double_bogey(par, strokes_received);
  const int highest = std::min(most, hole.lowest + static_cast<int>(hole.probability.size()) - 1);
  return turned(hole, std::min(hole.lowest, highest), highest, [&](int score) { return std::min(score, most); });
}

double expected_best(const std::vector<double>& rising, const std::vector<double>& probability, int best, int of) {
  double sum = 0.0;
  double at_most = 0.0;
  std::vector<double> before(static_cast<std::size_t>(best), 0.0);  // by rank: that it is at most the value before
  for (std::size_t i = 0; i < rising.size(); ++i) {
    at_most = i + 1 == rising.size() ? 1.0 : std::min(1.0, at_most + probability[i]);
    const std::vector<double> now = ranks_reached(at_most, best, of);
    for (std::size_t rank = 0; rank < before.size(); ++rank) sum += rising[i] * (now[rank] - before[rank]);
    before = now;
  }
  return sum / best;
}

double expected_index(const ScoreDistribution& adjusted, const HandicapTerms& terms) {
  std::vector<double> differentials;
  for (std::size_t i = 0; i < adjusted.probability.size(); ++i) {
    differentials.push_back(terms.differential(adjusted.lowest + static_cast<int>(i)));
  }
  return std::min(limits::handicap_index.high,
                  expected_best(differentials, adjusted.probability, rounds_counted, rounds_kept));
}

double capped_change(double change) {
  if (change <= soft_cap) return change;
  return std::min(hard_cap, soft_cap + soft_cap_share * (change - soft_cap));
}

}  // namespace yardworth
