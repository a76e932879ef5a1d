#include "strategy/state_values.hpp"

#include <algorithm>

#include "core/numerics.hpp"

namespace yardworth {

AboveBaseline mean_above_baseline(const HoleModel& model, const std::vector<double>& known) {
  AboveBaseline above{};
  std::array<int, all_lies.size()> count{};
  for (StateId state = 0; state < model.state_count(); ++state) {
    const double value = known[static_cast<std::size_t>(state)];
    if (std::isnan(value)) continue;
    const auto lie = static_cast<std::size_t>(model.lie_of(state));
    above[lie] += value - model.baseline_at(state);
    ++count[lie];
  }
  for (std::size_t lie = 0; lie < above.size(); ++lie) above[lie] /= std::max(1, count[lie]);
  return above;
}

double assumed_value(const HoleModel& model, const AboveBaseline& above, StateId state) {
  return std::max(1.0, model.baseline_at(state) + above[static_cast<std::size_t>(model.lie_of(state))]);
}

std::vector<double> filled_values(const HoleModel& model, const std::vector<double>& known) {
  const AboveBaseline above = mean_above_baseline(model, known);
  std::vector<double> values = known;
  for (StateId state = 0; state < model.state_count(); ++state) {
    double& value = values[static_cast<std::size_t>(state)];
    if (std::isnan(value)) value = assumed_value(model, above, state);
  }
  return values;
}

std::vector<double> guessed_values(const HoleModel& model, const std::vector<double>& known) {
  std::vector<double> values = filled_values(model, known);
  for (std::size_t state = 0; state < values.size(); ++state) {
    if (std::isnan(known[state])) values[state] -= numerics::optimism;
  }
  return values;
}

}  // namespace yardworth
