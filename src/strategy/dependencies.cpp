#include "strategy/dependencies.hpp"

#include <algorithm>

#include "core/numerics.hpp"

namespace yardworth {

Dependencies dependencies_of(const Transition& row, const StateValues& values) {
  Dependencies dependencies;
  note_leaving(dependencies, 1.0 - row.replay);
  for (const auto& [to, share] : row.to()) {
    dependencies.states.push_back({to, values.accumulated_change(to), share});
  }
  return dependencies;
}

void note_leaving(Dependencies& dependencies, double probability) {
  if (probability > numerics::hardly_leaves)
    dependencies.least_leaving = std::min(dependencies.least_leaving, probability);
}

double staleness_bound(const Dependencies& dependencies, const StateValues& values) {
  double largest = 0.0;
  double sum = 0.0;
  for (const Dependency& dependency : dependencies.states) {
    const double moved = values.accumulated_change(dependency.state) - dependency.accumulated_change;
    largest = std::max(largest, moved);
    sum += moved * dependency.likelihood;
  }
  return std::min(largest, sum) / dependencies.least_leaving;
}

void mark_weighed(Dependencies& dependencies, const StateValues& values) {
  for (Dependency& dependency : dependencies.states) {
    dependency.accumulated_change = values.accumulated_change(dependency.state);
  }
}

void Likelihoods::move_into(Dependencies& dependencies, const StateValues& values) {
  for (Dependency& dependency : dependencies.states) {
    double& likelihood = likelihood_[static_cast<std::size_t>(dependency.state)];
    dependency.likelihood = std::max(dependency.likelihood, std::min(1.0, likelihood));
    likelihood = 0.0;
  }
  for (const StateId state : touched_) {
    double& likelihood = likelihood_[static_cast<std::size_t>(state)];
    if (likelihood > 0.0) {
      dependencies.states.push_back({state, values.accumulated_change(state), std::min(1.0, likelihood)});
    }
    likelihood = 0.0;
  }
  touched_.clear();
}

}  // namespace yardworth
