#pragma once

#include <cmath>
#include <utility>
#include <vector>

#include "strategy/hole_model.hpp"

namespace yardworth {

// Values of all states, the baseline where none is known (NaN).
std::vector<double> filled_values(const HoleModel& model, const std::vector<double>& known);

// Values of all states, and a guess where none is known: the baseline, what states of the same lie are worth more than
// that on average, and a little in the state's favour, so that an action which looks good because of it is tried and
// the state then considered.
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
