#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "strategy/hole_model.hpp"
#include "yardworth/errors.hpp"

namespace yardworth {

// A policy by state: what is played from it. Entries with swing -1 have not been asked for yet.
using Policy = std::vector<Action>;

// What is played from a state.
using ActionOf = std::function<Action(StateId)>;

// The habit of most club golfers, at any place: the club that reaches the hole, the shortest one, played to the
// distance; where none reaches, the longest whose straight shot down the middle ends in no trouble, or the longest of
// all. Of clubs that reach, one that spreads more in every respect than another is never taken.
Action habit_action(const HoleModel& model, Lie lie, Point from);

// The habit at every state. `model` must outlive it.
ActionOf habit_of(const HoleModel& model);

// The distances from the hole at which the habit changes its club abruptly, because the longest one begins or ceases to
// end in trouble: found along the middle of the line, from fairway and rough.
std::vector<double> habit_edges_yd(const HoleModel& model);

// Where aims are reckoned from: the hole for a swing that reaches it, otherwise the middle of the line of play at the
// swing's distance.
double reference_heading(const HoleModel& model, Point from, const Swing& swing);

// The swing played to the hole by the shortest club that reaches it, if any does.
std::optional<Action> action_to_hole(const HoleModel& model, Lie lie, Point from);

// A full swing whose total comes this near to the hole, as a share of the distance left, is one at the hole.
inline constexpr double nearly_at_hole = 0.12;

// A policy made with other clubs (`planned`), followed with these: a swing that is the same, as it is; a shot at the
// hole, or a full swing that came nearly there, is one at the hole, with the club that now fits; the longest club at
// full length stays at full length; both keep their angle to the reference direction. Any other shot keeps its carry
// and its direction, with the club that now fits.
Action follow_action(const HoleModel& model, const HoleModel& planned, Lie lie, Point from, const Action& action);

// A shot of a policy made with other clubs (`planned`) as these clubs play it: the same club to the same total in the
// same direction. None where the club is gone or no longer has the carry.
std::optional<Action> same_shot(const HoleModel& model, const HoleModel& planned, Lie lie, const Action& action);

// What a shot that longer clubs bring is beside the earlier one: none that could do worse, being the same shot, or to
// the same place and surer in every respect; the same club, going further; or other, by the club or because it now
// comes into the short game.
enum class Difference { none, further, other };
Difference difference_of(const HoleModel& model, Lie lie, Point from, const Action& now, const Action& earlier);

// What a policy by state says of any place: the action of the nearest state (HoleModel::nearest_state), turned and
// fitted to the place. Habit where the policy is silent.
Action action_near(const HoleModel& model, const Policy& policy, Lie lie, Point from);

// The least carry that some shot of the hole must have: the widest gap, over ground where no ball can be played from,
// on the easiest way from the tee to the green. 0 where a ball could be rolled all the way.
double needed_carry_yd(const HoleMap& map, Point tee);

// One row of the transition matrix: from a state under an action.
struct Transition {
  double cost = 1.0;    // the stroke, penalties, and what ends in the short game or on the green
  double replay = 0.0;  // probability that the same shot is played again
  std::vector<std::pair<StateId, double>> to;
  int stride = 1;  // of the nodes that it was summed over (HoleModel::stride_for)
};
// Policies that play the same from a state share its row: rows are most of what a policy keeps in memory.
using Row = std::shared_ptr<const Transition>;

// Sums the outcomes of an action over the strike lattices.
class TransitionBuilder {
 public:
  // Over equal-weight strikes or not: as the model says, unless told.
  explicit TransitionBuilder(const HoleModel& model) : TransitionBuilder(model, model.has_equal_weight_rows()) {}
  TransitionBuilder(const HoleModel& model, bool equal_weight);
  // The row of an action, over every stride-th node.
  Row build(StateId state, const Action& action, int stride = 1);
  // The same from outcomes already known: begin, add each with its weight (they sum to 1), finish.
  void begin(int stride);
  void add(const Continuation& continuation, double weight);
  Row finish();

 private:
  const HoleModel* model_;
  bool equal_weight_;
  Transition row_;
  std::vector<double> weight_;
  std::vector<StateId> touched_;
};

// Expected strokes by state under a policy; NaN for states that are not reached, or hardly ever.
struct PolicyEvaluation {
  std::vector<double> value;
  Policy policy;          // with an action for every reached state
  std::vector<Row> rows;  // by state; null for states that are not reached
  double at_tee = 0.0;
  int states = 0;             // reached
  int components = 0;         // strong components of the graph of reached states
  int largest_component = 0;  // states in the largest of them
};

// Evaluates a policy exactly: the strong components of the graph of states reached from the roots, in reverse
// topological order, and a sparse linear solve inside each (P. Dai, Mausam, D. Weld, J. Goldsmith, "Topological Value
// Iteration Algorithms", JAIR 42, 2011). Throws CannotFinish when the policy never holes out from a state.
PolicyEvaluation evaluate_policy(const HoleModel& model, const ActionOf& action_of);

// A policy evaluated, and the golfer on the hole that it was evaluated for.
struct EvaluatedPolicy {
  const HoleModel& model;
  const PolicyEvaluation& policy;
};

// The same for a policy and clubs that are mostly those of a policy evaluated before, on the same map from the same
// tee: rows are taken over where the action, its swing and the stride are the same, so that the result is what it is
// without.
PolicyEvaluation evaluate_policy(const HoleModel& model, const ActionOf& action_of, const EvaluatedPolicy& row_source);

// The same for a policy made before the clubs changed, as it is followed with these. Where a shot that is not what it
// was (difference_of) does worse, by the values of the policy before, than the shot played before, the golfer stays
// with that (same_shot): by policy improvement the policy is then never worse than it was. Two exceptions, both of a
// shot that only goes further: it is played where it finds more trouble than before, to see which is what planning
// afresh is for; and from places that hardly a ball comes to.
PolicyEvaluation evaluate_followed(const HoleModel& model, const ActionOf& followed, const EvaluatedPolicy& before,
                                   const EvaluatedPolicy& row_source);

// Values of all states, the baseline where the policy knows none (NaN).
std::vector<double> filled_values(const HoleModel& model, const std::vector<double>& known);

// The same from any roots, with the row given of each state and of how many balls, of one from each root, come to it;
// the result has no policy.
using RowOf = std::function<Row(StateId, double visits_here)>;
// States that fewer than least_balls come to, of one ball from each root, are taken to be worth the baseline.
PolicyEvaluation evaluate_rows(const HoleModel& model, const RowOf& row_of, const std::vector<StateId>& roots,
                               double least_visits = 0.0);

// The same for a policy from any roots, which the habit fills in where it is silent and balls come.
PolicyEvaluation evaluate_from(const HoleModel& model, const std::vector<StateId>& roots, Policy policy);

// Expected strokes of one shot and then the values given. What can only be replayed for ever is infinite.
double action_value(const Transition& row, const std::vector<double>& value);

}  // namespace yardworth
