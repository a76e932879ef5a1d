#include "strategy/policy_iteration.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "core/numerics.hpp"
#include "strategy/bounds.hpp"
#include "strategy/dependencies.hpp"
#include "strategy/expected_visits.hpp"
#include "strategy/outcome_samples.hpp"
#include "strategy/shot_at_hole.hpp"
#include "strategy/state_values.hpp"

namespace yardworth {

namespace {

// How closely an option has been weighed: bounded only; on few strikes; as closely as the state deserves, but with
// values that have moved since; with the values of now.
enum class Refinement { bounded, screened, stale, weighed };

// One thing that may be played from a state, and the strokes it cannot be better than; weighed, the strokes it comes
// to.
struct Option {
  Candidate candidate;
  Refinement refinement = Refinement::bounded;
  double strokes = 0.0;
  int aim = 0;             // its best, once it has been weighed on any strikes
  OutcomeSamples samples;  // that it was weighed on; none for the start, whose row is known
};

struct StateRecord {
  std::vector<Option> options;  // the first is the start
  Dependencies dependencies;    // of all options
  std::size_t taken = 0;        // index of the option that the policy takes
  int stride = 0;               // that its options were struck at
  Row start_row;                // of the start
  Row row;                      // of the option that the policy takes
};

class PolicyIteration {
 public:
  PolicyIteration(const HoleModel& model, const ActionOf& start, const PolicyEvaluation& warm_start,
                  const PolicyIterationOptions& options)
      : model_(&model),
        start_(&start),
        options_(options),
        tolerance_(options.complete ? std::min(options.tolerance, numerics::complete_tolerance) : options.tolerance),
        warm_start_(&warm_start),
        policy_(warm_start.policy),
        values_(guessed_values(model, warm_start.value)),
        records_(static_cast<std::size_t>(model.state_count())),
        considered_(records_.size(), false),
        stride_(records_.size(), 0),
        bounds_(model),
        equal_weight_(model.has_equal_weight_rows() && !options.complete),
        builder_(model, equal_weight_),
        likelihoods_(model.state_count()) {
    std::vector<StateId> reached;
    for (StateId state = 0; state < model.state_count(); ++state) {
      if (!std::isnan(warm_start.value[static_cast<std::size_t>(state)])) consider(state, reached);
    }
  }

  BestPolicy run() {
    BestPolicy best;
    bool changed = true;
    for (int evaluations = 0; choose_strides() || changed; ++evaluations) {
      if (evaluations == options_.most_evaluations) break;
      for (int sweeps = 0; sweeps < numerics::sweeps_before_evaluation && sweep(); ++sweeps) ++best.sweeps;
      best.exact = evaluate();
      changed = sweep();
    }
    if (changed) best.exact = evaluate();
    best.exact.policy = policy_;
    best.value = values_.all();
    best.exact.at_tee = values_[model_->tee_state()];
    best.considered = static_cast<int>(states_.size());
    best.sampled_swings = sampled_swings_;
    best.shots.resize(records_.size());
    for (const StateId state : states_) best.shots[static_cast<std::size_t>(state)] = searched_shots(state);
    return best;
  }

 private:
  StateRecord& record(StateId state) { return records_[static_cast<std::size_t>(state)]; }
  Action& planned(StateId state) { return policy_[static_cast<std::size_t>(state)]; }
  int& stride(StateId state) { return stride_[static_cast<std::size_t>(state)]; }

  // Evaluates the policy so far exactly and takes the values over.
  PolicyEvaluation evaluate() {
    const RowOf row_of = [this](StateId state, double) { return row(state); };
    PolicyEvaluation exact = evaluate_rows(*model_, row_of, states_, evaluation_workspace_);
    for (const StateId state : states_) values_.move(state, exact.value[static_cast<std::size_t>(state)]);
    return exact;
  }

  // Improves every state that may need it, nearest first, and considers the states that the policy newly reaches;
  // whether any value moved.
  bool sweep() {
    bool moved = false;
    std::vector<StateId> todo = states_;
    while (!todo.empty()) {
      std::stable_sort(todo.begin(), todo.end(), [this](StateId a, StateId b) { return values_[a] < values_[b]; });
      std::vector<StateId> reached;
      for (const StateId state : todo) {
        if (!improve(state)) continue;
        moved = true;
        for (const auto& edge : record(state).row->to()) consider(edge.first, reached);
      }
      todo = std::move(reached);
    }
    return moved;
  }

  // A state that is hardly ever come to is left as the start plays it, and one that seldom is is struck coarsely;
  // whether some state is to be improved that was not, or struck more closely than before.
  bool choose_strides() {
    bool chosen = false;
    std::vector<StateId> furthest_first = states_;
    std::stable_sort(furthest_first.begin(), furthest_first.end(),
                     [this](StateId a, StateId b) { return values_[a] > values_[b]; });
    Visits visits = one_on_tee(*model_);
    for (const StateId state : furthest_first) {
      const double visits_here = visits[static_cast<std::size_t>(state)];
      if (const int wanted = wanted_stride(state, visits_here);
          wanted > 0 && (stride(state) == 0 || wanted < stride(state))) {
        stride(state) = wanted;
        chosen = true;
      }
      pass_on_walking(*row(state), state, visits_here, Replays::played,
                      [&](StateId to, double more) { visits[static_cast<std::size_t>(to)] += more; });
    }
    return chosen;
  }

  // 0: leave the state to the start. Among trees what is best changes from place to place, where each is seldom come
  // to.
  int wanted_stride(StateId state, double visits_here) const {
    if (options_.complete || options_.least_visits <= 0.0) return 1;
    if (model_->lie_of(state) == Lie::recovery) visits_here *= numerics::recovery_density;
    const bool seldom = visits_here < options_.least_visits / model_->sampling_density();
    return seldom ? 0 : model_->stride_for(state, visits_here);
  }

  void consider(StateId state, std::vector<StateId>& reached) {
    if (considered_[static_cast<std::size_t>(state)]) return;
    considered_[static_cast<std::size_t>(state)] = true;
    states_.push_back(state);
    reached.push_back(state);
  }

  // What was weighed at a state, on few strikes or as many as it deserves.
  std::vector<SearchedShot> searched_shots(StateId state) {
    const StateRecord& known = record(state);
    std::vector<SearchedShot> shots;
    if (known.stride == 0 || state == model_->tee_state()) return shots;
    const Point place = model_->place_of(state);
    for (const Option& option : known.options) {
      if (option.refinement == Refinement::bounded) continue;
      Action action = option.candidate.action;
      action.aim = option.aim;
      const Lie lie = model_->lie_of(state);
      const Swing swing = model_->swing_of(lie, action);
      const bool to_hole = ends_at_hole(*model_, place, swing);
      // A start may have a carry of its own, which is of that place alone, and not allow for the mean direction.
      const bool in_full = swing.carry_yd >= model_->swings(lie)[static_cast<std::size_t>(action.swing)].carry_yd;
      if (!(to_hole || in_full) || action.allows_for_mean != model_->has_direction_mean()) continue;
      const double off = HoleModel::heading_of(swing, action) - reference_heading(*model_, place, swing);
      const double taken_off = option.refinement == Refinement::screened ? options_.screen_margin : 0.0;
      shots.push_back({action.swing, to_hole, std::remainder(off, 2.0 * pi), option.strokes + taken_off});
    }
    return shots;
  }

  const Row& row(StateId state) {
    if (record(state).options.empty()) begin(state);
    return record(state).row;
  }

  // A state's first option is what the start plays there.
  void begin(StateId state) {
    StateRecord& known = record(state);
    const auto index = static_cast<std::size_t>(state);
    const bool evaluated = warm_start_->policy[index].swing >= 0;
    const Action start = planned(state) = evaluated ? warm_start_->policy[index] : (*start_)(state);
    known.stride = stride(state);
    const int row_stride = known.stride > 0 ? known.stride : model_->stride_for(state, 0.0);
    const bool close_enough = evaluated && warm_start_->rows[index] && warm_start_->rows[index]->stride <= row_stride &&
                              equal_weight_ == model_->has_equal_weight_rows();
    known.start_row = close_enough ? warm_start_->rows[index] : builder_.build(state, start, row_stride);
    if (is_never_left(*known.start_row, state)) known.start_row = builder_.build(state, start, 1);
    known.row = known.start_row;
    known.dependencies = dependencies_of(*known.row, values_);
    known.options.clear();
    add_option(state, {start, start.aim, start.aim}, 0.0);
    known.taken = 0;
  }

  void add_option(StateId state, const Candidate& candidate, double strokes) {
    record(state).options.push_back({candidate, Refinement::bounded, strokes, candidate.first_aim, {}});
  }

  // Takes the best that can be played from a state, by the values so far; whether it had to be looked for.
  bool improve(StateId state) {
    StateRecord& known = record(state);
    if (known.options.empty() || known.stride != stride(state)) begin(state);
    if (known.stride == 0) return keep_start(state);
    if (known.options.size() == 1) {
      add_all(state);
    } else {
      const double staleness = staleness_bound(known.dependencies, values_);
      if (staleness <= tolerance_) return false;
      loosen(known, staleness);
    }
    take_best(state);
    mark_weighed(known.dependencies, values_);
    const double best = known.options[known.taken].strokes;
    values_.move(state, best);
    bounds_.note(distance_yd(model_->place_of(state), model_->pin()), best);
    return true;
  }

  // Values a state that is left as the start plays it; whether that moved it.
  bool keep_start(StateId state) {
    const double strokes = action_value(*record(state).row, values_.all());
    if (std::abs(strokes - values_[state]) <= tolerance_) return false;
    values_.move(state, strokes);
    return true;
  }

  // Everything that may be played, with a bound on what it is worth.
  void add_all(StateId state) {
    const Lie lie = model_->lie_of(state);
    const Point from = model_->place_of(state);
    const double distance = distance_yd(from, model_->pin());
    for (const Candidate& candidate : candidates_at(*model_, lie, from, options_.aim_reach_sd)) {
      const Swing swing = model_->swing_of(lie, candidate.action);
      add_option(state, candidate, options_.complete ? 0.0 : bounds_.least_strokes(distance, swing));
    }
  }

  // No option has changed by more than the staleness since it was weighed.
  static void loosen(StateRecord& known, double staleness) {
    for (Option& option : known.options) {
      option.strokes -= staleness;
      if (option.refinement == Refinement::weighed) option.refinement = Refinement::stale;
    }
  }

  // Refines the most promising option until that is one that has been weighed, and takes it.
  void take_best(StateId state) {
    std::vector<Option>& options = record(state).options;
    options.front().strokes = action_value(*record(state).start_row, values_.all());
    options.front().refinement = Refinement::weighed;
    const auto by_strokes = [](const Option& a, const Option& b) {
      return a.strokes < b.strokes - numerics::as_good_strokes;
    };
    auto best = std::min_element(options.begin(), options.end(), by_strokes);
    while (best->refinement != Refinement::weighed) {
      refine(state, *best);
      best = std::min_element(options.begin(), options.end(), by_strokes);
    }
    take(state, static_cast<std::size_t>(best - options.begin()));
  }

  // Weighs an option as closely as comes next.
  void refine(StateId state, Option& option) {
    const int stride = record(state).stride;
    const int screen_stride = screen_stride_of(state, stride);
    if (option.refinement == Refinement::bounded && !options_.complete && screen_stride != stride) {
      screen(state, option, screen_stride);
      return;
    }
    if (option.refinement != Refinement::stale) {
      option.samples =
          sample_outcomes(*model_, state, option.candidate, stride, options_.thin_tails && !options_.complete);
      add_likelihoods(*model_, state, option.candidate, option.samples, likelihoods_);
      likelihoods_.move_into(record(state).dependencies, values_);
      ++sampled_swings_;
    }
    weigh(state, option);
    option.refinement = Refinement::weighed;
  }

  // Where all strikes count a screen of a sixth of them errs by more than its margin; but the tee shot has many.
  int screen_stride_of(StateId state, int stride) const {
    const int widest = state == model_->tee_state() ? largest_lattice_stride : numerics::screen_stride * stride;
    return model_->fitting_stride(state, std::min(largest_lattice_stride, widest));
  }

  // Weighs an option on few strikes, and leaves it a margin for that.
  void screen(StateId state, Option& option, int stride) {
    option.samples =
        sample_outcomes(*model_, state, option.candidate, stride, options_.thin_tails, std::move(screen_samples_));
    narrow(option.candidate, weigh(state, option));
    screen_samples_ = std::exchange(option.samples, {});
    option.strokes -= options_.screen_margin;
    option.refinement = Refinement::screened;
  }

  // What an option is worth at every aim by the values so far and its samples; it becomes worth its best.
  std::vector<double> weigh(StateId state, Option& option) {
    AimSums sums = sums_by_aim(*model_, state, option.candidate, option.samples, values_.all(), worth_by_node_);
    for (const double leaving : sums.leaving) note_leaving(record(state).dependencies, leaving);
    option.strokes = *std::min_element(sums.strokes.begin(), sums.strokes.end());
    const double as_good = option.strokes + numerics::as_good_strokes;
    const auto first = std::find_if(sums.strokes.begin(), sums.strokes.end(),
                                    [as_good](double strokes) { return strokes <= as_good; });
    option.aim = option.candidate.first_aim + static_cast<int>(first - sums.strokes.begin());
    return std::move(sums.strokes);
  }

  // Leaves of a candidate the aims that looked nearly as good as the best of them and a few on both sides.
  void narrow(Candidate& candidate, const std::vector<double>& strokes) const {
    const double limit =
        *std::min_element(strokes.begin(), strokes.end()) + numerics::narrow_share * options_.screen_margin;
    const auto promising = [limit](double value) { return value <= limit; };
    const auto lowest = std::find_if(strokes.begin(), strokes.end(), promising) - strokes.begin();
    const auto highest = strokes.rend() - std::find_if(strokes.rbegin(), strokes.rend(), promising) - 1;
    const Candidate all = candidate;
    candidate.first_aim = std::max(all.first_aim, all.first_aim + static_cast<int>(lowest) - options_.fine_aims);
    candidate.last_aim = std::min(all.last_aim, all.first_aim + static_cast<int>(highest) + options_.fine_aims);
  }

  void take(StateId state, std::size_t index) {
    StateRecord& known = record(state);
    const Option& option = known.options[index];
    Action action = option.candidate.action;
    action.aim = option.aim;
    if (known.taken == index && planned(state) == action) return;
    planned(state) = action;
    known.taken = index;
    known.row = index == 0 ? known.start_row
                           : row_of_samples(*model_, state, option.candidate, option.samples, option.aim, builder_);
  }

  const HoleModel* model_;
  const ActionOf* start_;
  PolicyIterationOptions options_;
  double tolerance_;
  const PolicyEvaluation* warm_start_;
  Policy policy_;
  StateValues values_;
  std::vector<StateRecord> records_;  // by state
  std::vector<bool> considered_;      // by state
  std::vector<int> stride_;           // by state: how closely it is to be struck; 0 leaves it to the start
  std::vector<StateId> states_;       // considered
  Bounds bounds_;
  bool equal_weight_;  // a complete search weighs the start on the same strikes as all else
  TransitionBuilder builder_;
  std::int64_t sampled_swings_ = 0;
  // Memory that serves one state after the other.
  Likelihoods likelihoods_;
  OutcomeSamples screen_samples_;
  std::vector<double> worth_by_node_;
  EvaluationWorkspace evaluation_workspace_;
};

}  // namespace

BestPolicy find_best_policy(const HoleModel& model, const ActionOf& start, const PolicyEvaluation& warm_start,
                            const PolicyIterationOptions& options) {
  return PolicyIteration(model, start, warm_start, options).run();
}

double largest_bellman_residual(const HoleModel& model, const BestPolicy& best, const PolicyIterationOptions& options) {
  double largest = 0.0;
  for (StateId state = 0; state < model.state_count(); ++state) {
    if (std::isnan(best.exact.value[static_cast<std::size_t>(state)])) continue;
    double least = std::numeric_limits<double>::infinity();
    for (const Candidate& candidate :
         candidates_at(model, model.lie_of(state), model.place_of(state), options.aim_reach_sd)) {
      for (const double strokes : aim_values(model, state, candidate, best.value)) least = std::min(least, strokes);
    }
    largest = std::max(largest, best.value[static_cast<std::size_t>(state)] - least);
  }
  return largest;
}

}  // namespace yardworth
