#include "strategy/state_values.hpp"

#include <algorithm>

#include "core/numerics.hpp"
#include "player/lies_in_play.hpp"

namespace yardworth {

namespace {

// At least the stroke that it takes.
double assumed(double baseline, double above) { return std::max(1.0, baseline + above); }

// visit(StateId, Lie, double baseline) for every state, lie by lie: a state need not be asked for either.
template <class Visit>
void for_each_state(const HoleModel& model, Visit visit) {
  for (const Lie lie : lies_in_play) {
    const StateId first = model.first_state(lie);
    for (int place = 0; place < model.place_count(); ++place) visit(first + place, lie, model.baseline_at(lie, place));
  }
  visit(model.tee_state(), Lie::tee, model.baseline_at(model.tee_state()));
}

}  // namespace

AboveBaseline mean_above_baseline(const HoleModel& model, const std::vector<double>& known) {
  AboveBaseline above{};
  std::array<int, all_lies.size()> count{};
  for_each_state(model, [&](StateId state, Lie of, double baseline) {
    const double value = known[static_cast<std::size_t>(state)];
    if (std::isnan(value)) return;
    const auto lie = static_cast<std::size_t>(of);
    above[lie] += value - baseline;
    ++count[lie];
  });
  for (std::size_t lie = 0; lie < above.size(); ++lie) above[lie] /= std::max(1, count[lie]);
  return above;
}

double assumed_value(const HoleModel& model, const AboveBaseline& above, StateId state) {
  return assumed(model.baseline_at(state), above[static_cast<std::size_t>(model.lie_of(state))]);
}

std::vector<double> filled_values(const HoleModel& model, const std::vector<double>& known) {
  const AboveBaseline above = mean_above_baseline(model, known);
  std::vector<double> values = known;
  for_each_state(model, [&](StateId state, Lie lie, double baseline) {
    double& value = values[static_cast<std::size_t>(state)];
    if (std::isnan(value)) value = assumed(baseline, above[static_cast<std::size_t>(lie)]);
  });
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
