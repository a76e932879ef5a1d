#include "strategy/policy_iteration.hpp"

#include <Eigen/Core>
#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "strategy/strikes.hpp"

namespace yardworth {

namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

// Strokes that an unconsidered state is guessed better than its like, so that a policy which looks good because of it
// is tried, and the state then considered.
constexpr double optimism = 0.05;

// A search that tries everything leaves no more than this open.
constexpr double complete_tolerance = 2e-7;

// A shot that is replayed all but this often costs ten thousand strokes: it need not be watched for becoming the best,
// and rounding would look like movement through it.
constexpr double hardly_leaves = 1e-4;

// Values of states, and a guess for those that have none (NaN): the baseline at their place, and what states of the
// same lie are worth more than the baseline on average.
std::vector<double> with_guesses(const HoleModel& model, const std::vector<double>& known) {
  const auto baseline_at = [&](StateId state) {
    return model.short_game().strokes(model.lie_of(state), distance_yd(model.place_of(state), model.pin()));
  };
  std::array<double, all_lies.size()> extra{};
  std::array<int, all_lies.size()> count{};
  for (StateId state = 0; state < model.state_count(); ++state) {
    const double value = known[static_cast<std::size_t>(state)];
    const auto lie = static_cast<std::size_t>(model.lie_of(state));
    if (std::isnan(value)) continue;
    extra[lie] += value - baseline_at(state);
    ++count[lie];
  }
  std::vector<double> values = known;
  for (StateId state = 0; state < model.state_count(); ++state) {
    double& value = values[static_cast<std::size_t>(state)];
    const auto lie = static_cast<std::size_t>(model.lie_of(state));
    if (std::isnan(value)) value = baseline_at(state) + (count[lie] > 0 ? extra[lie] / count[lie] : 0.0) - optimism;
  }
  return values;
}

// Values by state (a guess where the state has not been considered), and how far each has moved in all: a state need
// not be tried again while nothing it may lead to has moved.
class Values {
 public:
  explicit Values(std::vector<double> values) : value_(std::move(values)), accumulated_change_(value_.size(), 0.0) {}
  double operator[](StateId state) const { return value_[static_cast<std::size_t>(state)]; }
  const std::vector<double>& all() const { return value_; }
  void move(StateId state, double value) {
    const auto index = static_cast<std::size_t>(state);
    accumulated_change_[index] += std::abs(value - value_[index]);
    value_[index] = value;
  }
  double accumulated_change(StateId state) const { return accumulated_change_[static_cast<std::size_t>(state)]; }

 private:
  std::vector<double> value_;
  std::vector<double> accumulated_change_;
};

// The outcomes of a swing from a state at every node that its range of aims needs. They do not depend on any value, so
// they are struck once.
struct OutcomeSamples {
  int stride = 1;
  std::vector<Continuation> solid, poor;
};

// How the nodes of a stratum lie to the aims of a candidate. Where the stride is longer than the step between aims, not
// every aim has nodes of its own: between those that have, its sums are read off a straight line.
struct AimNodes {
  AimNodes(const Candidate& candidate, const Stratum& stratum)
      : aims(static_cast<std::size_t>(candidate.last_aim - candidate.first_aim + 1)),
        apart(static_cast<std::size_t>(std::max(1, stratum.stride / stratum.steps_per_aim))),
        nodes(static_cast<std::size_t>(std::max(1, stratum.steps_per_aim / stratum.stride))) {}

  // Aims that have nodes of their own: the first, and on to the last or beyond it.
  std::size_t struck() const { return (aims + apart - 2) / apart + 1; }

  std::size_t aims;
  std::size_t apart;  // aims from one that has nodes to the next
  std::size_t nodes;  // from the first node of one such aim to that of the next
};

std::vector<Continuation> strike(const HoleModel& model, StateId state, const Candidate& candidate, const Swing& swing,
                                 const Stratum& stratum, bool thin_tails, std::vector<Continuation> outcomes) {
  if (stratum.share <= 0.0) return {};
  const AimNodes aims(candidate, stratum);
  outcomes.resize(stratum.weights().size() + (aims.struck() - 1) * aims.nodes);
  const int first = candidate.first_aim * stratum.steps_per_aim - stratum.lattice->half_width();
  const int thin = thin_tails ? thin_nodes(stratum) : 0;
  strike_thinly(model, model.place_of(state), swing, stratum, candidate.action.reference_heading_rad, first,
                static_cast<int>(outcomes.size()), thin, [&](int i, int n, const Rest& rest) {
                  Continuation* const outcome = outcomes.data() + i;
                  model.write_continuation(rest, *outcome);
                  std::fill(outcome + 1, outcome + n, *outcome);
                });
  return outcomes;
}

// Expected strokes and the probability of a replay at each aim.
struct AimSums {
  std::vector<double> strokes, replay;
};

// Adds to the sums of every aim what a stratum's nodes are worth.
void add_nodes(const AimNodes& aims, const Stratum& stratum, const std::vector<double>& nodes,
               std::vector<double>& sums) {
  using Vector = Eigen::Map<const Eigen::VectorXd>;
  const auto size = static_cast<Eigen::Index>(stratum.weights().size());
  const Vector weight(stratum.weights().data(), size);
  const auto struck = [&](std::size_t aim) {
    return stratum.share * weight.dot(Vector(nodes.data() + aim * aims.nodes, size));
  };
  double here = struck(0);
  for (std::size_t aim = 0; aim < aims.aims; aim += aims.apart) {
    sums[aim] += here;
    if (aim + 1 == aims.aims) return;
    const double next = struck(aim / aims.apart + 1);
    for (std::size_t off = 1; off < aims.apart && aim + off < aims.aims; ++off) {
      sums[aim + off] += std::lerp(here, next, static_cast<double>(off) / static_cast<double>(aims.apart));
    }
    here = next;
  }
}

void add_outcomes(const AimNodes& aims, const Stratum& stratum, const std::vector<Continuation>& outcomes,
                  const std::vector<double>& value, AimSums& sums) {
  if (outcomes.empty()) return;
  thread_local std::vector<double> nodes;
  nodes.resize(outcomes.size());
  bool any_replay = false;
  for (std::size_t i = 0; i < outcomes.size(); ++i) {
    nodes[i] = outcomes[i].worth(value);
    any_replay |= outcomes[i].kind == Continuation::Kind::replay;
  }
  add_nodes(aims, stratum, nodes, sums.strokes);
  if (!any_replay) return;
  for (std::size_t i = 0; i < outcomes.size(); ++i) {
    nodes[i] = outcomes[i].kind == Continuation::Kind::replay ? 1.0 : 0.0;
  }
  add_nodes(aims, stratum, nodes, sums.replay);
}

// Expected strokes of a candidate at every aim, with every replay played until it is none, and the least probability of
// all aims that a shot is not replayed: by one over that, what follows counts more.
struct AimStrokes {
  std::vector<double> strokes;
  double least_leaving = 1.0;
};

AimStrokes strokes_by_aim(const HoleModel& model, StateId state, const Candidate& candidate,
                          const OutcomeSamples& samples, const std::vector<double>& value) {
  const auto aims = static_cast<std::size_t>(candidate.last_aim - candidate.first_aim + 1);
  AimSums sums = {std::vector<double>(aims, 1.0), std::vector<double>(aims, 0.0)};
  const Swing swing = model.swing_of(model.lie_of(state), candidate.action);
  const auto [solid, poor] = strata_of(model, state, swing, samples.stride);
  add_outcomes({candidate, poor}, poor, samples.poor, value, sums);
  add_outcomes({candidate, solid}, solid, samples.solid, value, sums);
  double least_leaving = 1.0;
  for (std::size_t aim = 0; aim < aims; ++aim) {
    const double leaves = 1.0 - sums.replay[aim];
    sums.strokes[aim] = leaves > 1e-9 ? sums.strokes[aim] / leaves : infinity;
    if (leaves > hardly_leaves) least_leaving = std::min(least_leaving, leaves);
  }
  return {std::move(sums.strokes), least_leaving};
}

// `used` is a outcome samples no longer wanted, whose memory will do.
OutcomeSamples sample_outcomes(const HoleModel& model, StateId state, const Candidate& candidate, int stride,
                               bool thin_tails, OutcomeSamples used = {}) {
  const Swing swing = model.swing_of(model.lie_of(state), candidate.action);
  const auto [solid, poor] = strata_of(model, state, swing, stride);
  return {stride, strike(model, state, candidate, swing, solid, thin_tails, std::move(used.solid)),
          strike(model, state, candidate, swing, poor, thin_tails, std::move(used.poor))};
}

// How closely an option has been looked at: not at all; on few strikes; as closely as the state deserves, but with
// values that have moved since; with the values of now.
enum class Refinement { bounded, screened, stale, weighed };

// One thing that may be played from a state, and the strokes it cannot be better than; weighed, the strokes it comes
// to.
struct Option {
  Candidate candidate;
  Refinement refinement = Refinement::bounded;
  double strokes = 0.0;
  int aim = 0;             // its best, once it has been looked at
  OutcomeSamples samples;  // of the last look; none for the start, whose row is known
};

// A state that a outcome samples may lead to.
struct Dependency {
  StateId state;
  double accumulated_change;  // how far it had moved when the outcome samples was last weighed
  double likelihood;          // at most, under any aim of any option
};

struct StateRecord {
  std::vector<Option> options;           // the first is the start
  std::vector<Dependency> dependencies;  // states that its outcome samples lead to
  double least_leaving = 1.0;  // probability that a shot is not replayed, of all aims of all options looked at
  std::size_t taken = 0;       // index of the option that the policy takes
  int stride = 0;              // that its options were struck at
  Row start_row;               // of the start
  Row row;                     // of the option that the policy takes
};

// The least that any state at a distance can be worth, by whole yards: what hazards and lies cannot take away. Nearer
// states are solved first, so that it is known up to the state in hand; further out it is taken to stay as it is.
class LeastByDistance {
 public:
  explicit LeastByDistance(const HoleModel& model) {
    for (double yard = 0.0; yard <= short_game_radius_yd; yard += 1.0) {
      const double green = model.short_game().strokes(Lie::green, yard);
      least_.push_back(std::min(green, model.short_game().strokes(Lie::fairway, yard)));
    }
  }
  void note(double distance_yd, double strokes) {
    const auto yard = static_cast<std::size_t>(distance_yd);
    if (yard >= least_.size()) least_.resize(yard + 1, infinity);
    least_[yard] = std::min(least_[yard], strokes);
    closed_.clear();
  }
  // The best that a swing at the hole, straight and free of trouble, could come to.
  double bound(double distance_yd, const Swing& swing) {
    if (closed_.empty()) close();
    constexpr int nodes = 8;
    double solid = 0.0;
    double poor = 0.0;
    for (int i = 0; i < nodes; ++i) {
      const double u = (i + 0.5) / nodes;
      solid += at(distance_yd - swing.carry_yd * (1.0 + swing.carry_sd_share * deviates_[static_cast<std::size_t>(i)]),
                  swing);
      poor += at(distance_yd - swing.carry_yd * std::lerp(poor_carry_low, poor_carry_high, u), swing);
    }
    return 1.0 + std::lerp(solid, poor, swing.poor_strike) / nodes;
  }

 private:
  // Any roll may help: the nearest place between landing and the longest roll.
  double at(double left_yd, const Swing& swing) const {
    const double roll = swing.carry_yd * swing.roll_share * 1.4;
    const double nearest = left_yd > 0.0 ? std::max(0.0, left_yd - roll) : -left_yd;
    return closed_[std::min(static_cast<std::size_t>(nearest), closed_.size() - 1)];
  }
  // A place no further out is never worth more: the least from each distance on.
  void close() {
    closed_ = least_;
    for (std::size_t i = closed_.size() - 1; i-- > 0;) closed_[i] = std::min(closed_[i], closed_[i + 1]);
  }
  static std::vector<double> deviates() {
    std::vector<double> all;
    for (int i = 0; i < 8; ++i) all.push_back(cut_normal_quantile((i + 0.5) / 8));
    return all;
  }

  std::vector<double> least_;
  std::vector<double> closed_;
  std::vector<double> deviates_ = deviates();
};

class Search {
 public:
  Search(const HoleModel& model, const ActionOf& start, const PolicyEvaluation& warm_start,
         const PolicyIterationOptions& options)
      : model_(&model),
        start_(&start),
        options_(options),
        tolerance_(options.complete ? std::min(options.tolerance, complete_tolerance) : options.tolerance),
        warm_start_(&warm_start),
        policy_(warm_start.policy),
        values_(with_guesses(model, warm_start.value)),
        records_(static_cast<std::size_t>(model.state_count())),
        considered_(records_.size(), false),
        stride_(records_.size(), 0),
        likelihood_(records_.size(), 0.0),
        least_(model),
        equal_weight_(model.has_equal_weight_rows() && !options.complete),
        builder_(model, equal_weight_) {
    std::vector<StateId> reached;
    for (StateId state = 0; state < model.state_count(); ++state) {
      if (!std::isnan(warm_start.value[static_cast<std::size_t>(state)])) consider(state, reached);
    }
  }

  BestPolicy run() {
    // Sweeps alone may come slowly nearer where the same ground is played over again and again; after this many the
    // policy so far is evaluated exactly, which is as good for going on.
    constexpr int most_sweeps = 30;
    BestPolicy best;
    const RowOf row_of = [this](StateId state, double) { return row(state); };
    bool changed = true;
    const auto evaluate = [&] {
      best.exact = evaluate_rows(*model_, row_of, states_);
      for (const StateId state : states_) values_.move(state, best.exact.value[static_cast<std::size_t>(state)]);
    };
    for (int evaluations = 0; choose_worthwhile() || changed; ++evaluations) {
      if (evaluations == options_.most_evaluations) break;
      for (int sweeps = 0; sweeps < most_sweeps && sweep(); ++sweeps) ++best.sweeps;
      evaluate();
      changed = sweep();
    }
    if (changed) evaluate();
    best.exact.policy = policy_;
    best.value = values_.all();
    best.exact.at_tee = values_[model_->tee_state()];
    best.considered = static_cast<int>(states_.size());
    best.sampled_swings = sampled_swings_;
    return best;
  }

 private:
  StateRecord& record(StateId state) { return records_[static_cast<std::size_t>(state)]; }
  Action& planned(StateId state) { return policy_[static_cast<std::size_t>(state)]; }

  // Improves every state that may need it, nearest first, and takes up the states that the policy newly reaches;
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
        for (const auto& edge : record(state).row->to) consider(edge.first, reached);
      }
      todo = std::move(reached);
    }
    return moved;
  }

  // A state that is hardly ever come to is left as the start plays it, and one that seldom is is struck coarsely;
  // whether there is a state to be looked at, or more closely than before. How often each is come to is told by passing
  // the balls on, furthest states first: exact but for balls that go backwards.
  bool choose_worthwhile() {
    bool chosen = false;
    std::vector<StateId> furthest_first = states_;
    std::stable_sort(furthest_first.begin(), furthest_first.end(),
                     [this](StateId a, StateId b) { return values_[a] > values_[b]; });
    std::vector<double> visits(records_.size(), 0.0);
    visits[static_cast<std::size_t>(model_->tee_state())] = 1.0;
    for (const StateId state : furthest_first) {
      const double visits_here = visits[static_cast<std::size_t>(state)];
      int& stride = stride_[static_cast<std::size_t>(state)];
      if (const int wanted = wanted_stride(state, visits_here); wanted > 0 && (stride == 0 || wanted < stride)) {
        stride = wanted;
        chosen = true;
      }
      const Transition& on = *row(state);
      for (const auto& [to, share] : on.to)
        visits[static_cast<std::size_t>(to)] += visits_here * share / (1.0 - on.replay);
    }
    return chosen;
  }

  // 0: leave the state to the start.
  int wanted_stride(StateId state, double visits_here) const {
    if (options_.complete || options_.least_visits <= 0.0) return 1;
    return visits_here >= options_.least_visits / model_->sampling_density() ? model_->stride_for(state, visits_here)
                                                                             : 0;
  }

  void consider(StateId state, std::vector<StateId>& reached) {
    if (considered_[static_cast<std::size_t>(state)]) return;
    considered_[static_cast<std::size_t>(state)] = true;
    states_.push_back(state);
    reached.push_back(state);
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
    const int stride = stride_[index] > 0 ? stride_[index] : model_->stride_for(state, 0.0);
    known.options.clear();
    known.dependencies.clear();
    known.stride = stride_[index];
    add_option(state, {start, start.aim, start.aim}, 0.0);
    known.taken = 0;
    known.least_leaving = 1.0;
    const bool close_enough = evaluated && warm_start_->rows[index] && warm_start_->rows[index]->stride <= stride &&
                              equal_weight_ == model_->has_equal_weight_rows();
    known.start_row = close_enough ? warm_start_->rows[index] : builder_.build(state, start, stride);
    known.row = known.start_row;
    const Transition& row = *known.row;
    if (1.0 - row.replay > hardly_leaves) known.least_leaving = 1.0 - row.replay;
    for (const auto& [to, share] : row.to) known.dependencies.push_back({to, values_.accumulated_change(to), share});
  }

  void add_option(StateId state, const Candidate& candidate, double strokes) {
    record(state).options.push_back({candidate, Refinement::bounded, strokes, candidate.first_aim, {}});
  }

  // Takes the best that can be played from a state, by the values so far; whether it had to be looked for.
  bool improve(StateId state) {
    StateRecord& known = record(state);
    if (known.options.empty() || known.stride != stride_[static_cast<std::size_t>(state)]) begin(state);
    if (known.stride == 0) {
      const double strokes = action_value(*known.row, values_.all());
      const double moved = std::abs(strokes - values_[state]);
      if (moved <= tolerance_) return false;
      values_.move(state, strokes);
      return true;
    }
    if (known.options.size() == 1) {
      add_all(state);
    } else {
      const double staleness = staleness_bound(known);
      if (staleness <= tolerance_) return false;
      loosen(known, staleness);
    }
    take_best(state);
    for (Dependency& dependency : known.dependencies)
      dependency.accumulated_change = values_.accumulated_change(dependency.state);
    const double best = known.options[known.taken].strokes;
    values_.move(state, best);
    least_.note(distance_yd(model_->place_of(state), model_->pin()), best);
    return true;
  }

  // How much any option of a state may have changed since it was last weighed.
  double staleness_bound(const StateRecord& known) const {
    double largest = 0.0;
    double sum = 0.0;
    for (const Dependency& dependency : known.dependencies) {
      const double moved = values_.accumulated_change(dependency.state) - dependency.accumulated_change;
      largest = std::max(largest, moved);
      sum += moved * dependency.likelihood;
    }
    return std::min(largest, sum) / known.least_leaving;
  }

  // Everything that may be played, with a bound on what it is worth.
  void add_all(StateId state) {
    const Lie lie = model_->lie_of(state);
    const Point from = model_->place_of(state);
    const double distance = distance_yd(from, model_->pin());
    for (const Candidate& candidate : candidates_at(*model_, lie, from, options_.aim_reach_sd)) {
      const double bound = options_.complete ? 0.0 : least_.bound(distance, model_->swing_of(lie, candidate.action));
      add_option(state, candidate, bound);
    }
  }

  // No value has moved by more than drift since the options were weighed.
  static void loosen(StateRecord& known, double staleness) {
    for (Option& option : known.options) {
      option.strokes -= staleness;
      if (option.refinement == Refinement::weighed) option.refinement = Refinement::stale;
    }
  }

  // Looks more closely at the most promising option until that is one that has been weighed, and takes it.
  void take_best(StateId state) {
    std::vector<Option>& options = record(state).options;
    options.front().strokes = action_value(*record(state).start_row, values_.all());
    options.front().refinement = Refinement::weighed;
    const auto by_strokes = [](const Option& a, const Option& b) { return a.strokes < b.strokes; };
    auto best = std::min_element(options.begin(), options.end(), by_strokes);
    while (best->refinement != Refinement::weighed) {
      refine(state, *best);
      best = std::min_element(options.begin(), options.end(), by_strokes);
    }
    take(state, static_cast<std::size_t>(best - options.begin()));
  }

  void refine(StateId state, Option& option) {
    const int stride = record(state).stride;
    // Where all strikes count a screen of a sixth of them errs by more than its margin; but the tee shot has many.
    const int screen_stride = model_->fitting_stride(
        state, state == model_->tee_state() ? largest_lattice_stride : std::min(largest_lattice_stride, 3 * stride));
    if (option.refinement == Refinement::bounded && !options_.complete && screen_stride != stride) {
      option.samples =
          sample_outcomes(*model_, state, option.candidate, screen_stride, options_.thin_tails, std::move(screen_));
      narrow(option.candidate, weigh(state, option));
      screen_ = std::exchange(option.samples, {});
      option.strokes -= options_.screen_margin;
      option.refinement = Refinement::screened;
      return;
    }
    if (option.refinement != Refinement::stale) {
      option.samples =
          sample_outcomes(*model_, state, option.candidate, stride, options_.thin_tails && !options_.complete);
      note_dependencies(state, option.candidate, option.samples);
      ++sampled_swings_;
    }
    weigh(state, option);
    option.refinement = Refinement::weighed;
  }

  // What an option is worth at every aim by the values so far and the strikes of its last look.
  std::vector<double> weigh(StateId state, Option& option) {
    auto [strokes, least_leaving] = strokes_by_aim(*model_, state, option.candidate, option.samples, values_.all());
    const auto least = std::min_element(strokes.begin(), strokes.end());
    option.strokes = *least;
    double& leaving = record(state).least_leaving;
    leaving = std::min(leaving, least_leaving);
    option.aim = option.candidate.first_aim + static_cast<int>(least - strokes.begin());
    return strokes;
  }

  // Leaves of a candidate the aims that looked nearly as good as the best of them and a few on both sides.
  void narrow(Candidate& candidate, const std::vector<double>& strokes) const {
    const double limit = *std::min_element(strokes.begin(), strokes.end()) + 0.5 * options_.screen_margin;
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
    known.row = index == 0 ? known.start_row : row_of_samples(state, option.candidate, option.samples, action);
  }

  Row row_of_samples(StateId state, const Candidate& candidate, const OutcomeSamples& samples, const Action& action) {
    builder_.begin(samples.stride);
    const Swing swing = model_->swing_of(model_->lie_of(state), action);
    const auto aim = static_cast<std::size_t>(action.aim - candidate.first_aim);
    const auto add_struck = [&](const Stratum& stratum, const Continuation* outcomes, double share) {
      for (const double weight : stratum.weights()) builder_.add(*outcomes++, share * weight);
    };
    const auto add = [&](const Stratum& stratum, const std::vector<Continuation>& outcomes) {
      if (outcomes.empty()) return;
      const AimNodes aims(candidate, stratum);
      const Continuation* first = outcomes.data() + aim / aims.apart * aims.nodes;
      const double further = static_cast<double>(aim % aims.apart) / static_cast<double>(aims.apart);
      add_struck(stratum, first, stratum.share * (1.0 - further));
      if (further > 0.0) add_struck(stratum, first + aims.nodes, stratum.share * further);
    };
    const auto [solid, poor] = strata_of(*model_, state, swing, samples.stride);
    add(poor, samples.poor);
    add(solid, samples.solid);
    return builder_.finish();
  }

  void note_dependencies(StateId state, const Candidate& candidate, const OutcomeSamples& samples) {
    StateRecord& known = record(state);
    const Swing swing = model_->swing_of(model_->lie_of(state), candidate.action);
    const auto [solid, poor] = strata_of(*model_, state, swing, samples.stride);
    touched_.clear();
    const auto note = [&](const Stratum& stratum, const std::vector<Continuation>& outcomes) {
      const double most = stratum.share * *std::max_element(stratum.weights().begin(), stratum.weights().end());
      for (const Continuation& outcome : outcomes) {
        if (outcome.kind != Continuation::Kind::between_states) continue;
        const std::array<double, 4> shares = outcome.weights();
        for (std::size_t i = 0; i < 4; ++i) {
          double& likelihood = likelihood_[outcome.state[i]];
          if (likelihood == 0.0) touched_.push_back(static_cast<StateId>(outcome.state[i]));
          likelihood += most * shares[i];
        }
      }
    };
    note(solid, samples.solid);
    note(poor, samples.poor);
    for (Dependency& dependency : known.dependencies) {
      double& likelihood = likelihood_[static_cast<std::size_t>(dependency.state)];
      dependency.likelihood = std::max(dependency.likelihood, std::min(1.0, likelihood));
      likelihood = 0.0;
    }
    for (const StateId seen : touched_) {
      double& likelihood = likelihood_[static_cast<std::size_t>(seen)];
      if (likelihood > 0.0)
        known.dependencies.push_back({seen, values_.accumulated_change(seen), std::min(1.0, likelihood)});
      likelihood = 0.0;
    }
  }

  const HoleModel* model_;
  const ActionOf* start_;
  PolicyIterationOptions options_;
  double tolerance_;
  const PolicyEvaluation* warm_start_;
  Policy policy_;
  Values values_;
  std::vector<StateRecord> records_;
  std::vector<bool> considered_;
  std::vector<int> stride_;  // by state: how closely it is looked at; 0 leaves it to the start
  std::vector<StateId> states_;
  std::vector<double> likelihood_;  // scratch, by state; zero between uses
  std::vector<StateId> touched_;
  OutcomeSamples screen_;  // the last one, for its memory
  LeastByDistance least_;
  bool equal_weight_;  // a complete search weighs the start on the same strikes as all else
  TransitionBuilder builder_;
  std::int64_t sampled_swings_ = 0;
};

}  // namespace

std::vector<Candidate> candidates_at(const HoleModel& model, Lie lie, Point from, int aim_reach_sd) {
  std::vector<Candidate> candidates;
  const auto add = [&](const Action& action) {
    const Swing swing = model.swing_of(lie, action);
    const double aim_step = swing.direction_scale_rad / aims_per_sd;
    const double off = std::remainder(heading_rad(from, model.pin()) - action.reference_heading_rad, 2.0 * pi);
    const int to_pin = static_cast<int>(std::lround(std::clamp(off / aim_step, -60.0, 60.0)));
    const int reach = aim_reach_sd * aims_per_sd;
    candidates.push_back({action, std::max(-largest_aim, std::min(0, to_pin) - reach),
                          std::min(largest_aim, std::max(0, to_pin) + reach)});
  };
  const std::vector<Swing>& swings = model.swings(lie);
  const double distance = distance_yd(from, model.pin());
  const double green = roll_factor(Ground::green, model.map().firmness());
  std::vector<Swing> to_hole;
  for (std::size_t i = swings.size(); i-- > 0;) {
    if (swings[i].total_yd(green) < distance) continue;
    const Swing swing = played_down(swings[i], swings[i].carry_for(distance, green));
    const bool beaten =
        std::any_of(to_hole.begin(), to_hole.end(), [&](const Swing& other) { return spreads_no_more(other, swing); });
    if (beaten) continue;
    to_hole.push_back(swing);
    add({static_cast<int>(i), swing.carry_yd, heading_rad(from, model.pin()), 0});
  }
  for (std::size_t i = 0; i < swings.size(); ++i) {
    const Action action{static_cast<int>(i), swings[i].carry_yd, reference_heading(model, from, swings[i]), 0};
    if (candidates.empty() || !(candidates.front().action == action)) add(action);
  }
  return candidates;
}

std::vector<double> aim_values(const HoleModel& model, StateId state, const Candidate& candidate,
                               const std::vector<double>& value) {
  return strokes_by_aim(model, state, candidate, sample_outcomes(model, state, candidate, 1, false), value).strokes;
}

BestPolicy find_best_policy(const HoleModel& model, const ActionOf& start, const PolicyEvaluation& warm_start,
                            const PolicyIterationOptions& options) {
  return Search(model, start, warm_start, options).run();
}

double largest_bellman_residual(const HoleModel& model, const BestPolicy& best, const PolicyIterationOptions& options) {
  double largest = 0.0;
  for (StateId state = 0; state < model.state_count(); ++state) {
    if (std::isnan(best.exact.value[static_cast<std::size_t>(state)])) continue;
    double least = infinity;
    for (const Candidate& candidate :
         candidates_at(model, model.lie_of(state), model.place_of(state), options.aim_reach_sd)) {
      for (const double strokes : aim_values(model, state, candidate, best.value)) least = std::min(least, strokes);
    }
    largest = std::max(largest, best.value[static_cast<std::size_t>(state)] - least);
  }
  return largest;
}

}  // namespace yardworth
