#include "strategy/expected_visits.hpp"

#include <doctest/doctest.h>

#include <Eigen/LU>
#include <algorithm>
#include <cmath>
#include <cstdio>

#include "input/derived_table.hpp"
#include "support/small_holes.hpp"

namespace yardworth {
namespace {

// The visits by linear algebra: (I - P^T) v = one on the tee, dense over all states of the hole, by Eigen's LU
// factorisation with full pivoting. A replay is a ball that comes back to its own state.
Eigen::VectorXd visits_by_factors(const HoleModel& model, const std::vector<Row>& rows) {
  const auto size = static_cast<Eigen::Index>(model.state_count());
  Eigen::MatrixXd system = Eigen::MatrixXd::Identity(size, size);
  for (Eigen::Index from = 0; from < size; ++from) {
    const Row& row = rows[static_cast<std::size_t>(from)];
    if (!row) continue;
    system(from, from) -= row->replay;
    for (const auto& [to, share] : row->to()) system(to, from) -= share;
  }
  Eigen::VectorXd one_ball = Eigen::VectorXd::Zero(size);
  one_ball[model.tee_state()] = 1.0;
  return system.fullPivLu().solve(one_ball);
}

}  // namespace

// What expected_visits() leaves out are the balls that are still in play when it ends, fewer than
// numerics::visits_left; each may come to a state a few times more.
TEST_CASE("expected visits solve (I - P^T) v = one ball on the tee, as Eigen's dense solver finds them") {
  const Player player = test::golfer_of_few_clubs();
  const Baseline baseline(derived_table(Band::bogey, Gender::men));
  const test::Mesh mesh(test::coarse_discretisation());
  for (const Hole& hole : test::small_holes()) {
    const test::PreparedHole here(hole, Firmness::normal, 0, player, baseline, mesh);
    const HoleModel& model = here.model;
    const PolicyEvaluation habit = test::habit_value(model);
    const Visits visits = expected_visits(model, habit.rows);
    const Eigen::VectorXd exact = visits_by_factors(model, habit.rows);
    double largest = 0.0;
    double in_all = 0.0;
    for (StateId state = 0; state < model.state_count(); ++state) {
      largest = std::max(largest, std::abs(visits[static_cast<std::size_t>(state)] - exact[state]));
      in_all += exact[state];
    }
    std::printf("hole %d: %.4f strokes outside the short game, visits differ by %.1e at most\n", hole.number, in_all,
                largest);
    CAPTURE(hole.number);
    CHECK(in_all > 1.0);
    CHECK(largest < 10.0 * numerics::visits_left);
  }
}

// The same of the value: strokes are visits times what a stroke costs where it is struck.
TEST_CASE("the strokes of a hole are the visits to each state times the cost of its row") {
  const Player player = test::golfer_of_few_clubs();
  const Baseline baseline(derived_table(Band::bogey, Gender::men));
  const test::Mesh mesh(test::coarse_discretisation());
  for (const Hole& hole : test::small_holes()) {
    const test::PreparedHole here(hole, Firmness::normal, 0, player, baseline, mesh);
    const PolicyEvaluation habit = test::habit_value(here.model);
    const Eigen::VectorXd visits = visits_by_factors(here.model, habit.rows);
    double strokes = 0.0;
    for (StateId state = 0; state < here.model.state_count(); ++state) {
      const Row& row = habit.rows[static_cast<std::size_t>(state)];
      if (row) strokes += visits[state] * row->cost;
    }
    CAPTURE(hole.number);
    CHECK(strokes == doctest::Approx(habit.at_tee).epsilon(1e-10));
  }
}

}  // namespace yardworth
