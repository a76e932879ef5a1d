#include "gain/handicap.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <boost/random/discrete_distribution.hpp>
#include <cmath>
#include <cstdio>
#include <numeric>
#include <vector>

#include "gain/round_scores.hpp"
#include "shot/sample.hpp"
#include "support/sanitized.hpp"
#include "support/scenario.hpp"

namespace yardworth {
namespace {

double total(const ScoreDistribution& scores) {
  return std::accumulate(scores.probability.begin(), scores.probability.end(), 0.0);
}

// Par 4 holes of one distribution, with stroke indexes from 1 to 18.
Course eighteen_par_fours() {
  Course course;
  course.tees = {{"only", 70.0, 120.0, {}}};
  for (int number = 1; number <= 18; ++number) {
    Hole hole;
    hole.number = number;
    hole.stroke_index = number;
    hole.length_yd = {380.0};
    course.holes.push_back(hole);
  }
  return course;
}

PolicyGain round_of(const Course& course, const ScoreDistribution& before, const ScoreDistribution& after) {
  PolicyGain policy;
  for (const Hole& hole : course.holes) {
    HoleGain gain;
    gain.number = hole.number;
    gain.par = hole.par;
    gain.scores_before = before;
    gain.scores_after = after;
    policy.holes.push_back(gain);
  }
  return policy;
}

double rounded_to_tenth(double value) { return std::floor(10.0 * value + 0.5) / 10.0; }

}  // namespace

// Worked by hand: docs/model.md, "Hand-worked cases".
TEST_CASE("two holes make a round by hand") {
  Course course = eighteen_par_fours();
  PolicyGain policy = round_of(course, {}, {});
  policy.holes.resize(2);
  policy.holes[0].par = 3;
  policy.holes[0].scores_before = policy.holes[0].scores_after = ScoreDistribution{3, {0.25, 0.5, 0.25}};
  policy.holes[1].scores_before = policy.holes[1].scores_after = ScoreDistribution{4, {0.5, 0.5}};
  const auto scores = scores_of(policy, course, {9}, std::nullopt);
  REQUIRE(scores);
  CHECK(scores->before.gross.lowest == 7);
  CHECK(scores->before.gross.probability == std::vector<double>{0.125, 0.375, 0.375, 0.125});
  CHECK(scores->before.gross.mean() == 8.5);
  CHECK(scores->before.gross.variance() == 0.75);
  CHECK(scores->before.breaks[0].probability == 0.5);
  CHECK(scores->before.holes.birdies_or_better == 0.0);
  CHECK(scores->before.holes.pars == 0.75);
  CHECK(scores->before.holes.bogeys == 1.0);
  CHECK(scores->before.holes.doubles_or_worse == 0.25);
  CHECK_FALSE(scores->before.handicap);
}

// The second road: every pair of scores.
TEST_CASE("the convolution is the sum over all pairs") {
  const ScoreDistribution a{2, {0.1, 0.2, 0.3, 0.15, 0.25}};
  const ScoreDistribution b{3, {0.05, 0.0, 0.6, 0.35}};
  const ScoreDistribution sum = convolve(a, b);
  CHECK(sum.lowest == 5);
  for (int score = 0; score < 20; ++score) {
    double pairs = 0.0;
    for (std::size_t i = 0; i < a.probability.size(); ++i) {
      for (std::size_t j = 0; j < b.probability.size(); ++j) {
        if (2 + static_cast<int>(i) + 3 + static_cast<int>(j) <= score) pairs += a.probability[i] * b.probability[j];
      }
    }
    CHECK(sum.at_most(score) == doctest::Approx(pairs).epsilon(1e-14));
  }
  CHECK(sum.mean() == doctest::Approx(a.mean() + b.mean()).epsilon(1e-14));
  CHECK(sum.variance() == doctest::Approx(a.variance() + b.variance()).epsilon(1e-14));
}

// Rules of Handicapping, rule 6.1 (from memory): worked by hand from the formula.
TEST_CASE("a course handicap is the index on these tees") {
  CHECK(course_handicap(16.2, 124.0, 69.3, 72) == doctest::Approx(16.2 * 124.0 / 113.0 - 2.7).epsilon(1e-14));
  Course course = eighteen_par_fours();
  Player player;
  player.handicap_index = 16.2;
  const HandicapTerms terms = handicap_terms(course, 0, player);
  CHECK(terms.par == 72);
  CHECK(terms.course_handicap == 15);                      // 17.20 - 2
  CHECK(terms.differential(90) == doctest::Approx(18.8));  // 113 / 120 x 20 = 18.83
  CHECK(terms.differential(66) == doctest::Approx(-3.8));  // -3.77
}

// Rules of Handicapping, rule 6.1 and appendix E (from memory): by stroke index, and a plus handicap from 18 down.
TEST_CASE("strokes are received by stroke index") {
  CHECK(strokes_received(0, 1) == 0);
  CHECK(strokes_received(5, 5) == 1);
  CHECK(strokes_received(5, 6) == 0);
  CHECK(strokes_received(18, 18) == 1);
  CHECK(strokes_received(20, 2) == 2);
  CHECK(strokes_received(20, 3) == 1);
  CHECK(strokes_received(-2, 18) == -1);
  CHECK(strokes_received(-2, 17) == -1);
  CHECK(strokes_received(-2, 16) == 0);
  for (int handicap = -10; handicap <= 60; ++handicap) {
    int sum = 0;
    for (int index = 1; index <= 18; ++index) sum += strokes_received(handicap, index);
    CHECK(sum == handicap);
  }
}

// One card worked by hand by Rules of Golf, rule 32.1b (from memory): par 4 throughout, Course Handicap 20, so two
// strokes on stroke indexes 1 and 2 and one on all others. Points: 2 + 4 + strokes - score, none below 0.
TEST_CASE("the points of one card by hand") {
  const std::array<int, 18> score = {6, 5, 5, 4, 7, 8, 5, 6, 4, 3, 5, 6, 9, 5, 4, 6, 5, 7};
  const std::array<int, 18> points = {2, 3, 2, 3, 0, 0, 2, 1, 3, 4, 2, 1, 0, 2, 3, 1, 2, 0};
  // By the same strokes, net double bogey is 8 on the first two and 7 elsewhere.
  const std::array<int, 18> adjusted = {6, 5, 5, 4, 7, 7, 5, 6, 4, 3, 5, 6, 7, 5, 4, 6, 5, 7};
  for (std::size_t i = 0; i < score.size(); ++i) {
    CAPTURE(i);
    const int received = strokes_received(20, static_cast<int>(i) + 1);
    const int by_rule = stableford_points(score[i], 4, received);
    CHECK(by_rule == points[i]);
    CHECK(std::min(score[i], net_double_bogey(4, received)) == adjusted[i]);
    const ScoreDistribution sure{score[i], {1.0}};
    CHECK(stableford_of(sure, 4, received).mean() == points[i]);
    CHECK(adjusted_of(sure, 4, received).mean() == adjusted[i]);
  }
  CHECK(std::accumulate(points.begin(), points.end(), 0) == 31);
}

TEST_CASE("points and adjusted scores lose no probability") {
  const ScoreDistribution hole{2, {0.05, 0.1, 0.3, 0.25, 0.15, 0.1, 0.03, 0.02}};
  for (int received = -1; received <= 3; ++received) {
    const ScoreDistribution points = stableford_of(hole, 4, received);
    const ScoreDistribution adjusted = adjusted_of(hole, 4, received);
    CHECK(total(points) == doctest::Approx(1.0).epsilon(1e-14));
    CHECK(total(adjusted) == doctest::Approx(1.0).epsilon(1e-14));
    CHECK(adjusted.lowest + static_cast<int>(adjusted.probability.size()) - 1 <= net_double_bogey(4, received));
    CHECK(adjusted.mean() <= hole.mean());
  }
}

// The closed form for the lowest of n uniform draws on 1 to m: P(lowest > x) = (1 - x / m)^n (elementary).
TEST_CASE("the lowest of several draws is as order statistics have it") {
  const std::vector<double> values = {1, 2, 3, 4};
  const std::vector<double> even(4, 0.25);
  CHECK(expected_best(values, even, 1, 3) == doctest::Approx(1.0 + 27.0 / 64 + 8.0 / 64 + 1.0 / 64).epsilon(1e-12));
  CHECK(expected_best(values, even, 3, 3) == doctest::Approx(2.5).epsilon(1e-12));
  CHECK(expected_best({7.0}, {1.0}, 8, 20) == doctest::Approx(7.0).epsilon(1e-14));
}

// The second road: rounds drawn hole by hole, differentials to the tenth (rule 5.1), the mean of the 8 lowest of 20 to
// the tenth (rule 5.2, table 5.2a; Rules of Handicapping, from memory).
TEST_CASE("a handicap index of scores drawn is the one expected") {
  const Course course = eighteen_par_fours();
  const ScoreDistribution before{3, {0.15, 0.35, 0.27, 0.13, 0.06, 0.03, 0.01}};
  const ScoreDistribution after{3, {0.18, 0.37, 0.26, 0.11, 0.05, 0.02, 0.01}};
  Player player;
  player.handicap_index = 12.0;
  const HandicapTerms terms = handicap_terms(course, 0, player);
  const auto scores = scores_of(round_of(course, before, after), course, {}, terms);
  REQUIRE(scores);
  RandomEngine engine(3);
  boost::random::discrete_distribution<int> draw(before.probability.begin(), before.probability.end());
  const int indexes = test::repeats(4000);
  double sum = 0.0;
  for (int i = 0; i < indexes; ++i) {
    std::array<double, 20> differentials{};
    for (double& differential : differentials) {
      int adjusted = 0;
      for (const Hole& hole : course.holes) {
        const int most = hole.par + 2 + strokes_received(terms.course_handicap, *hole.stroke_index);
        adjusted += std::min(before.lowest + draw(engine), most);
      }
      differential = rounded_to_tenth(113.0 / terms.slope * (adjusted - terms.course_rating));
    }
    std::sort(differentials.begin(), differentials.end());
    sum += rounded_to_tenth(std::accumulate(differentials.begin(), differentials.begin() + 8, 0.0) / 8.0);
  }
  const double expected = scores->before.handicap->handicap_index;
  std::printf("handicap index: expected %.3f, drawn %.3f\n", expected, sum / indexes);
  CHECK(std::abs(sum / indexes - expected) < (test::sanitized ? 0.3 : 0.1));
  CHECK(*scores->handicap_index_change ==
        doctest::Approx(scores->after.handicap->handicap_index - expected).epsilon(1e-14));
  CHECK(*scores->handicap_index_change < 0.0);
  // The better half of differentials, so well below their mean.
  CHECK(expected < terms.differential(static_cast<int>(scores->before.handicap->adjusted.mean())) - 1.0);
}

// Rules of Handicapping, rule 5.8 (from memory).
TEST_CASE("a rise of the index is capped, a fall is not") {
  CHECK(capped_change(-7.0) == -7.0);
  CHECK(capped_change(3.0) == 3.0);
  CHECK(capped_change(4.0) == 3.5);
  CHECK(capped_change(7.0) == 5.0);
  CHECK(capped_change(12.0) == 5.0);
}

TEST_CASE("what is wanting for a handicap is said, all of it") {
  Course course = eighteen_par_fours();
  Player player;
  player.handicap_index = 10.0;
  CHECK(handicap_needs(course, 0, player, 18).empty());
  player.gender = Gender::women;
  CHECK(handicap_needs(course, 0, player, 18) == std::vector{HandicapNeed::rated_for_gender});
  player.gender = Gender::men;
  player.handicap_index.reset();
  course.tees[0].course_rating.reset();
  course.tees[0].slope.reset();
  course.holes[4].stroke_index.reset();
  CHECK(handicap_needs(course, 0, player, 3) == std::vector{HandicapNeed::whole_round, HandicapNeed::handicap_index,
                                                            HandicapNeed::course_rating, HandicapNeed::slope,
                                                            HandicapNeed::stroke_indexes});
}

TEST_CASE("the mark is the golfer's own or the ten nearest to the mean") {
  CHECK(mark_of(18, std::nullopt, 94.9) == 90);
  CHECK(mark_of(18, std::nullopt, 95.1) == 100);
  CHECK(mark_of(18, 85, 95.1) == 85);
  CHECK(mark_of(9, std::nullopt, 46.0) == 45);
  CHECK_FALSE(mark_of(3, std::nullopt, 14.0));
  CHECK(mark_of(3, 13, 14.0) == 13);
  CHECK(marks_of(18, 85) == std::vector<int>{80, 85, 90, 100});
  CHECK(marks_of(9, 45) == std::vector<int>{40, 45, 50});
  CHECK(marks_of(4, 20) == std::vector<int>{20});
}

// The whole of it on the scenario: the library's own numbers hold together.
TEST_CASE("a gain tells how often marks are broken, under each plan") {
  const Course course = test::scenario_course();
  const Player player = test::scenario_member("weekend-16-man");
  GainRequest request;
  request.tee = test::middle_tee;
  request.change = {20.0, 6.0};
  request.mark = 88;
  const GainResult result = compute_gain(course, player, request);
  REQUIRE(result.handicap);
  CHECK(result.mark == 88);
  for (const auto* policy : {&result.habit, &result.best}) {
    REQUIRE((*policy)->scores);
    const PolicyScores& scores = *(*policy)->scores;
    CHECK(scores.before.gross.mean() == doctest::Approx((*policy)->round.before).epsilon(1e-11));
    CHECK(scores.after.gross.mean() == doctest::Approx((*policy)->round.replanned).epsilon(1e-11));
    CHECK(total(scores.before.gross) == doctest::Approx(1.0).epsilon(1e-12));
    double variance = 0.0;
    for (const HoleGain& hole : (*policy)->holes) variance += *hole.strokes_variance;
    CHECK(scores.before.gross.variance() == doctest::Approx(variance).epsilon(1e-10));
    const HolesByPar& holes = scores.before.holes;
    CHECK(holes.birdies_or_better + holes.pars + holes.bogeys + holes.doubles_or_worse == doctest::Approx(18.0));
    CHECK(scores.before.breaks.size() == 4);
    CHECK(scores.after.breaks[1].probability > scores.before.breaks[1].probability);
    CHECK(*scores.handicap_index_change < 0.0);
    // Nobody's adjusted score is above the gross one.
    CHECK(scores.before.handicap->adjusted.mean() < scores.before.gross.mean());
  }
  request.threads = 1;
  const GainResult again = compute_gain(course, player, request);
  CHECK(again.best->scores->before.gross.probability == result.best->scores->before.gross.probability);
}

}  // namespace yardworth
