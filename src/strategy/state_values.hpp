#pragma once

#include <array>
#include <cmath>
#include <utility>
#include <vector>

#include "strategy/hole_model.hpp"

namespace yardworth {

// By lie, how much more states are worth than the baseline on average, of those whose value is known (not NaN).
using AboveBaseline = std::array<double, all_lies.size()>;
AboveBaseline mean_above_baseline(const HoleModel& model, const std::vector<double>& known);

// What a state is taken to be worth where evaluation stops: the baseline and that, but no less than the stroke that it
// takes.
double assumed_value(const HoleModel& model, const AboveBaseline& above, StateId state);

// Values of all states, what they are assumed to be worth where none is known (NaN).
std::vector<double> filled_values(const HoleModel& model, const std::vector<double>& known);

// The same with a little in the favour of states of which none is known, so that an action which looks good because of
// it is tried and the state then considered.
std::vector<double> guessed_values(const HoleModel& model, const std::vector<double>& known);

// Values by state that are improved one after the other, and how far each has moved in all.
class StateValues {
 public:
  explicit StateValues(std::vector<double> values)
      : value_(std::move(values)), accumulated_change_(value_.size(), 0.0) {}

  double operator[](StateId state) const { return value_[static_cast<std::size_t>(state)]; }
  const std::vector<double>& all() const { return value_; }
  void move(StateId state, double value) {
    const auto index = static_cast<std::size_t>(state);
    accumulated_change_[index] += std::abs(value - value_[index]);
    value_[index] = value;
  }
  // The sum of the sizes of all moves so far.
  double accumulated_change(StateId state) const { return accumulated_change_[static_cast<std::size_t>(state)]; }

 private:
  std::vector<double> value_;
  std::vector<double> accumulated_change_;
};

}  // namespace yardworth
