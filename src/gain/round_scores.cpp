#include "gain/round_scores.hpp"

#include <algorithm>
#include <cmath>

#include "core/full_round.hpp"
#include "core/numerics.hpp"
#include "gain/handicap.hpp"

namespace yardworth {

namespace {

using Scores = std::optional<ScoreDistribution> HoleGain::*;

// The lone score of a round without holes.
ScoreDistribution nothing_yet() { return {0, {1.0}}; }

void count_by_par(const ScoreDistribution& hole, int par, HolesByPar& holes) {
  const double under = hole.at_most(par - 1);
  const double par_or_under = hole.at_most(par);
  const double bogey_or_under = hole.at_most(par + 1);
  holes.birdies_or_better += under;
  holes.pars += par_or_under - under;
  holes.bogeys += bogey_or_under - par_or_under;
  holes.doubles_or_worse += 1.0 - bogey_or_under;
}

int stroke_index_of(const Course& course, int number) {
  for (const Hole& hole : course.holes) {
    if (hole.number == number) return *hole.stroke_index;
  }
  return 0;
}

// Leaves out what hardly ever occurs at the upper end, so that rounds stay small.
void leave_out_tail(ScoreDistribution& scores) {
  double tail = 0.0;
  while (scores.probability.size() > 1 && tail + scores.probability.back() < numerics::score_tail) {
    tail += scores.probability.back();
    scores.probability.pop_back();
  }
  scores.probability.back() += tail;
}

HandicapScores handicap_scores(const PolicyGain& policy, Scores scores, const Course& course,
                               const HandicapTerms& terms) {
  HandicapScores result;
  result.stableford = result.adjusted = nothing_yet();
  for (const HoleGain& hole : policy.holes) {
    const int received = strokes_received(terms.course_handicap, stroke_index_of(course, hole.number));
    result.stableford = convolve(result.stableford, stableford_of(*(hole.*scores), hole.par, received));
    result.adjusted = convolve(result.adjusted, adjusted_of(*(hole.*scores), hole.par, received));
  }
  result.handicap_index = expected_index(result.adjusted, terms);
  return result;
}

RoundScores round_scores(const PolicyGain& policy, Scores scores, const Course& course, const std::vector<int>& marks,
                         const std::optional<HandicapTerms>& terms) {
  RoundScores round;
  round.gross = nothing_yet();
  for (const HoleGain& hole : policy.holes) {
    round.gross = convolve(round.gross, *(hole.*scores));
    leave_out_tail(round.gross);
    count_by_par(*(hole.*scores), hole.par, round.holes);
  }
  for (const int mark : marks) round.breaks.push_back({mark, round.gross.at_most(mark - 1)});
  if (!terms) return round;
  round.handicap = handicap_scores(policy, scores, course, *terms);
  round.handicap->net = round.gross.mean() - terms->course_handicap;
  return round;
}

}  // namespace

double ScoreDistribution::mean() const {
  double sum = 0.0;
  for (std::size_t i = 0; i < probability.size(); ++i) sum += (lowest + static_cast<double>(i)) * probability[i];
  return sum;
}

double ScoreDistribution::variance() const {
  const double middle = mean();
  double sum = 0.0;
  for (std::size_t i = 0; i < probability.size(); ++i) {
    const double off = lowest + static_cast<double>(i) - middle;
    sum += off * off * probability[i];
  }
  return sum;
}

double ScoreDistribution::at_most(int score) const {
  double sum = 0.0;
  for (std::size_t i = 0; i < probability.size() && lowest + static_cast<int>(i) <= score; ++i) sum += probability[i];
  return std::min(1.0, sum);
}

ScoreDistribution convolve(const ScoreDistribution& a, const ScoreDistribution& b) {
  return {a.lowest + b.lowest, convolve(StrokeCounts(a.probability), StrokeCounts(b.probability))};
}

ScoreDistribution distribution_of(const StrokeCounts& counts) {
  const auto occurs = [](double share) { return share >= numerics::score_tail; };
  const auto first = std::find_if(counts.begin(), counts.end(), occurs);
  ScoreDistribution scores{static_cast<int>(first - counts.begin()), std::vector<double>(first, counts.end())};
  while (!scores.probability.empty() && scores.probability.back() <= 0.0) scores.probability.pop_back();
  leave_out_tail(scores);
  return scores;
}

std::vector<int> marks_of(std::size_t holes, const std::optional<int>& own) {
  std::vector<int> marks;
  if (holes == full_round_holes) marks = {80, 90, 100};
  if (holes == half_round_holes) marks = {40, 45, 50};
  if (own && std::find(marks.begin(), marks.end(), *own) == marks.end()) marks.push_back(*own);
  std::sort(marks.begin(), marks.end());
  return marks;
}

std::optional<int> mark_of(std::size_t holes, const std::optional<int>& own, double mean) {
  if (own) return own;
  if (holes != full_round_holes && holes != half_round_holes) return std::nullopt;
  const int step = holes == full_round_holes ? 10 : 5;
  return step * static_cast<int>(std::lround(mean / step));
}

std::optional<PolicyScores> scores_of(const PolicyGain& policy, const Course& course, const std::vector<int>& marks,
                                      const std::optional<HandicapTerms>& terms) {
  for (const HoleGain& hole : policy.holes) {
    if (!hole.scores_before || !hole.scores_after) return std::nullopt;
  }
  PolicyScores scores;
  scores.before = round_scores(policy, &HoleGain::scores_before, course, marks, terms);
  scores.after = round_scores(policy, &HoleGain::scores_after, course, marks, terms);
  if (terms) {
    scores.handicap_index_change =
        capped_change(scores.after.handicap->handicap_index - scores.before.handicap->handicap_index);
  }
  return scores;
}

}  // namespace yardworth
