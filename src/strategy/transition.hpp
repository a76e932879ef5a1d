#pragma once

#include <array>
#include <memory>
#include <span>
#include <utility>
#include <vector>

#include "shot/finish_places.hpp"
#include "strategy/hole_model.hpp"

namespace yardworth {

// Where balls go, a state or a finish place, and the share of them that do.
using Share = std::pair<int, double>;

// One row of the transition matrix: from a state under an action.
struct Transition {
  double cost = 1.0;    // the stroke, penalties, and what ends in the short game or on the green
  double replay = 0.0;  // probability that the same shot is played again
  int stride = 1;       // of the nodes that it was summed over (HoleModel::stride_for)
  // One after the other, so that a row takes one piece of memory: there are a hundred thousand.
  std::vector<Share> shares;
  std::size_t to_end = 0, dropped_end = 0;

  std::span<const Share> to() const { return {shares.data(), to_end}; }
  // For those who count whole strokes, where the row was built from strikes (TransitionBuilder::build): what of to() is
  // played from after a penalty stroke, and what is left to the short game, by finish place (shot/finish_places.hpp),
  // `finish_places` further on after a penalty stroke.
  std::span<const Share> dropped() const { return {shares.data() + to_end, dropped_end - to_end}; }
  std::span<const Share> finished() const { return {shares.data() + dropped_end, shares.size() - dropped_end}; }
};
// Policies that play the same from a state share its row: rows are most of what a policy keeps in memory.
using Row = std::shared_ptr<const Transition>;

// Whether a row only ever leads back to its state. Of few strikes none may get away where of more some do.
bool is_never_left(const Transition& row, StateId self);

// The row of a state whose ball is in the hole after so many strokes, on average; it does not say how.
Row holed_for(double strokes);

// Sums the outcomes of an action over the strike lattices.
class TransitionBuilder {
 public:
  // Over equal-weight strikes or not: as the model says, unless told.
  explicit TransitionBuilder(const HoleModel& model) : TransitionBuilder(model, model.has_equal_weight_rows()) {}
  TransitionBuilder(const HoleModel& model, bool equal_weight);
  // The row of an action, over every stride-th node.
  Row build(StateId state, const Action& action, int stride = 1);
  // The same from outcomes already known: begin, add each with its weight (they sum to 1), finish.
  void begin(int stride);
  void add(const Continuation& continuation, double weight);
  Row finish();

 private:
  void add_whole_strokes(const Rest& rest, const Continuation& continuation, double weight);

  const HoleModel* model_;
  bool equal_weight_;
  int stride_ = 1;
  double cost_ = 1.0;
  double replay_ = 0.0;
  std::vector<Share> dropped_;                                                  // as in the row
  std::vector<double> weight_;                                                  // by state; zero between uses
  std::vector<StateId> touched_;                                                // states with a weight
  std::array<double, 2 * static_cast<std::size_t>(finish_places)> finished_{};  // likewise, as in the row
  std::size_t finished_from_ = finished_.size(), finished_to_ = 0;              // where any is not zero
};

// Expected strokes of a shot that costs so many, what follows it included, and is played again with such a probability.
// What can only be replayed for ever is infinite.
double until_away(double strokes, double replay);

// Expected strokes of one shot and then the values given.
double action_value(const Transition& row, const std::vector<double>& value);
// The same of a shot whose row nobody needs, over every stride-th node.
double struck_value(const HoleModel& model, StateId state, const Action& action, int stride,
                    const std::vector<double>& value);

}  // namespace yardworth
