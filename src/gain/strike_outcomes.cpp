#include "gain/strike_outcomes.hpp"

#include "strategy/strikes.hpp"

namespace yardworth {

StrikeOutcomes::StrikeOutcomes(const HoleModel& model, const PolicyEvaluation& planned,
                               std::vector<StrikeOutcome>& store)
    : model_(model), planned_(planned), store_(store), places_(static_cast<std::size_t>(model.state_count())) {
  store_.clear();
}

std::span<const StrikeOutcome> StrikeOutcomes::of(StateId state) {
  auto& [first, count] = places_[static_cast<std::size_t>(state)];
  if (count == 0) {
    first = store_.size();
    const auto index = static_cast<std::size_t>(state);
    for_each_strike(model_, state, planned_.policy[index], planned_.rows[index]->stride,
                    [&](const Rest& rest, double weight) {
                      store_.push_back({rest, model_.continuation(rest), weight});
                    });
    count = store_.size() - first;
  }
  return {store_.data() + first, count};
}

}  // namespace yardworth
