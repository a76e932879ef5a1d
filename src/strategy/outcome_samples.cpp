#include "strategy/outcome_samples.hpp"

#include <Eigen/Core>
#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "core/numerics.hpp"
#include "strategy/strikes.hpp"

namespace yardworth {

namespace {

// How the nodes of a stratum lie to the aims of a candidate. Where the stride is longer than the step between aims, not
// every aim has nodes of its own: between those that have, its sums are read off a straight line.
struct AimNodes {
  AimNodes(const Candidate& candidate, const Stratum& stratum)
      : aims(candidate.aims()),
        apart(static_cast<std::size_t>(std::max(1, stratum.stride / stratum.steps_per_aim))),
        nodes(static_cast<std::size_t>(std::max(1, stratum.steps_per_aim / stratum.stride))) {}

  // Aims that have nodes of their own: the first, and on to the last or beyond it.
  std::size_t struck() const { return (aims + apart - 2) / apart + 1; }

  std::size_t aims;
  std::size_t apart;  // aims from one that has nodes to the next
  std::size_t nodes;  // from the first node of one such aim to that of the next
};

// The strata of the swing that a candidate asks for: solid, poor.
std::array<Stratum, 2> strata_of_candidate(const HoleModel& model, StateId state, const Candidate& candidate,
                                           int stride) {
  return strata_of(model, state, model.swing_of(model.lie_of(state), candidate.action), stride);
}

Continuations sample_stratum(const HoleModel& model, StateId state, const Candidate& candidate, const Swing& swing,
                             const Stratum& stratum, bool thin_tails, Continuations outcomes) {
  if (stratum.share <= 0.0) return {};
  const AimNodes aims(candidate, stratum);
  outcomes.resize(stratum.weights().size() + (aims.struck() - 1) * aims.nodes, boost::container::default_init);
  const int first = candidate.first_aim * stratum.steps_per_aim - stratum.lattice->half_width();
  const int thin = thin_tails ? thin_nodes(stratum) : 0;
  strike_thinly(model, model.place_of(state), swing, stratum, HoleModel::struck_reference_of(swing, candidate.action),
                first, static_cast<int>(outcomes.size()), thin, [&](int i, int n, const Rest& rest) {
                  Continuation* const outcome = outcomes.data() + i;
                  model.write_continuation(rest, *outcome);
                  std::fill(outcome + 1, outcome + n, *outcome);
                });
  return outcomes;
}

// Adds to the sums of every aim what a stratum's nodes are worth.
void add_nodes(const AimNodes& aims, const Stratum& stratum, const std::vector<double>& worth_by_node,
               std::vector<double>& sums) {
  using Vector = Eigen::Map<const Eigen::VectorXd>;
  const auto size = static_cast<Eigen::Index>(stratum.weights().size());
  const Vector weight(stratum.weights().data(), size);
  const auto struck = [&](std::size_t aim) {
    return stratum.share * weight.dot(Vector(worth_by_node.data() + aim * aims.nodes, size));
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

// Adds to the sums of every aim the strokes that follow a stratum's outcomes, and how often they are replays.
void add_outcomes(const AimNodes& aims, const Stratum& stratum, const Continuations& outcomes,
                  const std::vector<double>& value, std::vector<double>& worth_by_node, std::vector<double>& strokes,
                  std::vector<double>& replay) {
  if (outcomes.empty()) return;
  worth_by_node.resize(outcomes.size());
  bool any_replay = false;
  for (std::size_t i = 0; i < outcomes.size(); ++i) {
    worth_by_node[i] = outcomes[i].worth(value);
    any_replay |= outcomes[i].kind == Continuation::Kind::replay;
  }
  add_nodes(aims, stratum, worth_by_node, strokes);
  if (!any_replay) return;
  for (std::size_t i = 0; i < outcomes.size(); ++i) {
    worth_by_node[i] = outcomes[i].kind == Continuation::Kind::replay ? 1.0 : 0.0;
  }
  add_nodes(aims, stratum, worth_by_node, replay);
}

}  // namespace

OutcomeSamples sample_outcomes(const HoleModel& model, StateId state, const Candidate& candidate, int stride,
                               bool thin_tails, OutcomeSamples used) {
  const Swing swing = model.swing_of(model.lie_of(state), candidate.action);
  const auto [solid, poor] = strata_of(model, state, swing, stride);
  return {stride, sample_stratum(model, state, candidate, swing, solid, thin_tails, std::move(used.solid)),
          sample_stratum(model, state, candidate, swing, poor, thin_tails, std::move(used.poor))};
}

AimSums sums_by_aim(const HoleModel& model, StateId state, const Candidate& candidate, const OutcomeSamples& samples,
                    const std::vector<double>& value, std::vector<double>& worth_by_node) {
  AimSums sums = {std::vector<double>(candidate.aims(), 1.0), {}};
  std::vector<double> replay(candidate.aims(), 0.0);
  const auto [solid, poor] = strata_of_candidate(model, state, candidate, samples.stride);
  add_outcomes({candidate, poor}, poor, samples.poor, value, worth_by_node, sums.strokes, replay);
  add_outcomes({candidate, solid}, solid, samples.solid, value, worth_by_node, sums.strokes, replay);
  for (std::size_t aim = 0; aim < candidate.aims(); ++aim) {
    const double leaves = 1.0 - replay[aim];
    sums.strokes[aim] =
        leaves > numerics::never_leaves ? sums.strokes[aim] / leaves : std::numeric_limits<double>::infinity();
    replay[aim] = leaves;
  }
  sums.leaving = std::move(replay);
  return sums;
}

Row row_of_samples(const HoleModel& model, StateId state, const Candidate& candidate, const OutcomeSamples& samples,
                   int aim, TransitionBuilder& builder) {
  builder.begin(samples.stride);
  const auto steps = static_cast<std::size_t>(aim - candidate.first_aim);
  const auto add_struck = [&](const Stratum& stratum, const Continuation* outcomes, double share) {
    for (const double weight : stratum.weights()) builder.add(*outcomes++, share * weight);
  };
  const auto add = [&](const Stratum& stratum, const Continuations& outcomes) {
    if (outcomes.empty()) return;
    const AimNodes aims(candidate, stratum);
    const Continuation* first = outcomes.data() + steps / aims.apart * aims.nodes;
    const double further = static_cast<double>(steps % aims.apart) / static_cast<double>(aims.apart);
    add_struck(stratum, first, stratum.share * (1.0 - further));
    if (further > 0.0) add_struck(stratum, first + aims.nodes, stratum.share * further);
  };
  const auto [solid, poor] = strata_of_candidate(model, state, candidate, samples.stride);
  add(poor, samples.poor);
  add(solid, samples.solid);
  return builder.finish();
}

void add_likelihoods(const HoleModel& model, StateId state, const Candidate& candidate, const OutcomeSamples& samples,
                     Likelihoods& likelihoods) {
  const auto add = [&](const Stratum& stratum, const Continuations& outcomes) {
    // Under some aim or other a node may be the heaviest.
    const double most = stratum.share * *std::max_element(stratum.weights().begin(), stratum.weights().end());
    for (const Continuation& outcome : outcomes) {
      if (outcome.kind != Continuation::Kind::between_states) continue;
      const std::array<double, 4> shares = outcome.weights();
      for (std::size_t i = 0; i < 4; ++i) likelihoods.add(static_cast<StateId>(outcome.state[i]), most * shares[i]);
    }
  };
  const auto [solid, poor] = strata_of_candidate(model, state, candidate, samples.stride);
  add(solid, samples.solid);
  add(poor, samples.poor);
}

std::vector<double> aim_values(const HoleModel& model, StateId state, const Candidate& candidate,
                               const std::vector<double>& value) {
  std::vector<double> worth_by_node;
  const OutcomeSamples samples = sample_outcomes(model, state, candidate, 1, false);
  return sums_by_aim(model, state, candidate, samples, value, worth_by_node).strokes;
}

}  // namespace yardworth
