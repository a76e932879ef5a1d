#include <doctest/doctest.h>
#include <glpk.h>

#include <cstdio>
#include <map>

#include "input/derived_table.hpp"
#include "strategy/candidates.hpp"
#include "support/every_state.hpp"
#include "support/sanitized.hpp"
#include "support/small_holes.hpp"

namespace yardworth {
namespace {

// The linear programme of the Markov decision process, in the form with one variable for each action of each state: how
// often it is played when a ball starts once from every state. The least cost is the sum of the optimal values, and the
// dual value of a state's row is its optimal value (M. L. Puterman, Markov Decision Processes, Wiley, 1994, ch. 7).
class LinearProgramme {
 public:
  LinearProgramme(const HoleModel& model, const std::vector<StateId>& states)
      : programme_(glp_create_prob()), states_(states) {
    glp_set_obj_dir(programme_, GLP_MIN);
    glp_add_rows(programme_, static_cast<int>(states.size()));
    for (std::size_t i = 0; i < states.size(); ++i) {
      row_of_[states[i]] = static_cast<int>(i) + 1;
      glp_set_row_bnds(programme_, static_cast<int>(i) + 1, GLP_FX, 1.0, 1.0);
    }
    TransitionBuilder builder(model);
    for (const StateId state : states) {
      const Lie lie = model.lie_of(state);
      for (const Candidate& candidate :
           candidates_at(model, lie, model.place_of(state), PolicyIterationOptions{}.aim_reach_sd)) {
        Action action = candidate.action;
        for (action.aim = candidate.first_aim; action.aim <= candidate.last_aim; ++action.aim) {
          add_action(state, *builder.build(state, action));
        }
      }
    }
  }
  ~LinearProgramme() { glp_delete_prob(programme_); }
  LinearProgramme(const LinearProgramme&) = delete;
  LinearProgramme& operator=(const LinearProgramme&) = delete;

  bool solve() {
    glp_smcp parameters;
    glp_init_smcp(&parameters);
    parameters.msg_lev = GLP_MSG_OFF;
    parameters.tol_bnd = 1e-9;
    parameters.tol_dj = 1e-9;
    return glp_simplex(programme_, &parameters) == 0 && glp_get_status(programme_) == GLP_OPT;
  }
  double value(StateId state) const { return glp_get_row_dual(programme_, row_of_.at(state)); }
  double sum_of_values() const { return glp_get_obj_val(programme_); }
  int actions() const { return glp_get_num_cols(programme_); }

 private:
  void add_action(StateId state, const Transition& row) {
    std::map<int, double> entries = {{row_of_.at(state), 1.0 - row.replay}};
    for (const auto& [to, weight] : row.to()) entries[row_of_.at(to)] -= weight;
    std::vector<int> index = {0};
    std::vector<double> entry = {0.0};
    for (const auto& [at, value] : entries) {
      index.push_back(at);
      entry.push_back(value);
    }
    const int column = glp_add_cols(programme_, 1);
    glp_set_col_bnds(programme_, column, GLP_LO, 0.0, 0.0);
    glp_set_obj_coef(programme_, column, row.cost);
    glp_set_mat_col(programme_, column, static_cast<int>(entries.size()), index.data(), entry.data());
  }

  glp_prob* programme_;
  std::vector<StateId> states_;
  std::map<StateId, int> row_of_;
};

}  // namespace

// The search begins with a value for every state that any action leads to, so that it guesses none: the programme and
// the search then solve the same process.
TEST_CASE("the best plan of a small hole is the optimum of its linear programme") {
  const Player player = test::golfer_of_few_clubs();
  const Baseline baseline(derived_table(Band::bogey, Gender::men));
  const test::Mesh mesh(test::coarse_discretisation());
  DiscretisationOptions closest = test::coarse_discretisation();
  closest.sampling_density = every_node;
  const test::Mesh every_strike(closest);
  for (const Hole& hole : test::small_holes()) {
    CAPTURE(hole.number);
    const test::PreparedHole here(hole, Firmness::normal, 0, player, baseline, mesh);
    const std::vector<StateId> states = test::states_of_all_plans(here.model, PolicyIterationOptions{}.aim_reach_sd);
    LinearProgramme programme(here.model, states);
    REQUIRE(programme.solve());
    const BestPolicy best = test::best_policy_of_all(here.model, states);
    double largest = 0.0;
    double sum = 0.0;
    for (const StateId state : states) {
      const double found = best.exact.value[static_cast<std::size_t>(state)];
      sum += found;
      largest = std::max(largest, std::abs(found - programme.value(state)));
    }
    std::printf("small hole %d, %d states, %d actions: programme %.9f, search %.9f; largest difference %.1e\n",
                hole.number, static_cast<int>(states.size()), programme.actions(),
                programme.value(here.model.tee_state()), best.exact.at_tee, largest);
    CHECK(std::abs(best.exact.at_tee - programme.value(here.model.tee_state())) < 1e-6);
    CHECK(largest < 1e-6);
    CHECK(std::abs(sum - programme.sum_of_values()) < 1e-6 * static_cast<double>(states.size()));
    // The optimum is one that the habit, struck as closely, does not find by itself: otherwise nothing has been shown.
    const test::PreparedHole closely(hole, Firmness::normal, 0, player, baseline, every_strike);
    CHECK(best.exact.at_tee < test::habit_value(closely.model).at_tee - 1e-3);
  }
}

TEST_CASE("plain value iteration comes to the same optimum") {
  const Player player = test::golfer_of_few_clubs();
  const Baseline baseline(derived_table(Band::bogey, Gender::men));
  const test::Mesh mesh(test::coarse_discretisation());
  for (const Hole& hole : test::small_holes()) {
    CAPTURE(hole.number);
    const test::PreparedHole here(hole, Firmness::normal, 0, player, baseline, mesh);
    const std::vector<StateId> states = test::states_of_all_plans(here.model, PolicyIterationOptions{}.aim_reach_sd);
    const test::DenseValues dense =
        test::iterate_dense(here.model, states, PolicyIterationOptions{}.aim_reach_sd, 1e-8);
    const BestPolicy best = test::best_policy_of_all(here.model, states);
    CHECK(std::abs(dense.value[static_cast<std::size_t>(here.model.tee_state())] - best.exact.at_tee) < 1e-6);
    if (test::sanitized) break;
  }
}

}  // namespace yardworth
