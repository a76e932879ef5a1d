#include "strategy/state_values.hpp"

#include "core/numerics.hpp"

namespace yardworth {

namespace {

double baseline_at(const HoleModel& model, StateId state) {
  return model.short_game().strokes(model.lie_of(state), distance_yd(model.place_of(state), model.pin()));
}

}  // namespace

std::vector<double> filled_values(const HoleModel& model, const std::vector<double>& known) {
  std::vector<double> values = known;
  for (StateId state = 0; state < model.state_count(); ++state) {
    double& value = values[static_cast<std::size_t>(state)];
    if (std::isnan(value)) value = baseline_at(model, state);
  }
  return values;
}

std::vector<double> guessed_values(const HoleModel& model, const std::vector<double>& known) {
  std::array<double, all_lies.size()> above_baseline{};
  std::array<int, all_lies.size()> count{};
  for (StateId state = 0; state < model.state_count(); ++state) {
    const double value = known[static_cast<std::size_t>(state)];
    const auto lie = static_cast<std::size_t>(model.lie_of(state));
    if (std::isnan(value)) continue;
    above_baseline[lie] += value - baseline_at(model, state);
    ++count[lie];
  }
  std::vector<double> values = known;
  for (StateId state = 0; state < model.state_count(); ++state) {
    double& value = values[static_cast<std::size_t>(state)];
    const auto lie = static_cast<std::size_t>(model.lie_of(state));
    if (!std::isnan(value)) continue;
    value = baseline_at(model, state) + (count[lie] > 0 ? above_baseline[lie] / count[lie] : 0.0) - numerics::optimism;
  }
  return values;
}

}  // namespace yardworth
