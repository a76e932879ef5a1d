#pragma once

#include <vector>

#include "strategy/state_values.hpp"
#include "strategy/transition.hpp"

namespace yardworth {

// A state that some option of another may lead to.
struct Dependency {
  StateId state;
  double accumulated_change;  // of the state's value when the options were last weighed
  double likelihood;          // of coming to the state, at most, under any aim of any option
};

// All that the options of a state depend on: while none of it moves, no option does.
struct Dependencies {
  std::vector<Dependency> states;
  // The least probability, of all aims of all options, that a shot is not replayed: what follows counts one over that
  // as much.
  double least_leaving = 1.0;
};

// What one row depends on.
Dependencies dependencies_of(const Transition& row, const StateValues& values);

// An option leaves its state with this probability.
void note_leaving(Dependencies& dependencies, double probability);

// How much, in strokes, any option may have changed at most since the options were last weighed.
double staleness_bound(const Dependencies& dependencies, const StateValues& values);

// The options have been weighed with these values.
void mark_weighed(Dependencies& dependencies, const StateValues& values);

// Adds up how likely the outcomes of one option make each state, and then notes them in the dependencies of the state
// that the option is played from. Serves one option after the other.
class Likelihoods {
 public:
  explicit Likelihoods(int states) : likelihood_(static_cast<std::size_t>(states), 0.0) {}

  void add(StateId state, double likelihood) {
    double& sum = likelihood_[static_cast<std::size_t>(state)];
    if (sum == 0.0) touched_.push_back(state);
    sum += likelihood;
  }
  void move_into(Dependencies& dependencies, const StateValues& values);

 private:
  std::vector<double> likelihood_;  // by state; zero between uses
  std::vector<StateId> touched_;
};

}  // namespace yardworth
