#include "strategy/transition.hpp"

#include <algorithm>
#include <limits>

#include "core/numerics.hpp"
#include "strategy/strikes.hpp"

namespace yardworth {

TransitionBuilder::TransitionBuilder(const HoleModel& model, bool equal_weight)
    : model_(&model), equal_weight_(equal_weight), weight_(static_cast<std::size_t>(model.state_count()), 0.0) {}

void TransitionBuilder::begin(int stride) {
  stride_ = stride;
  cost_ = 1.0;
  replay_ = 0.0;
  dropped_.clear();
  touched_.clear();
}

void TransitionBuilder::add(const Continuation& continuation, double weight) {
  cost_ += weight * continuation.cost;
  if (continuation.kind == Continuation::Kind::replay) replay_ += weight;
  if (continuation.kind != Continuation::Kind::between_states) return;
  const std::array<double, 4> shares = continuation.weights();
  for (std::size_t i = 0; i < 4; ++i) {
    if (shares[i] * weight <= 0.0) continue;
    double& sum = weight_[continuation.state[i]];
    if (sum == 0.0) touched_.push_back(static_cast<StateId>(continuation.state[i]));
    sum += weight * shares[i];
  }
}

// What else is known of a strike than what it is worth.
void TransitionBuilder::add_whole_strokes(const Rest& rest, const Continuation& continuation, double weight) {
  if (continuation.kind == Continuation::Kind::holed) {
    const FinishPlace place = finish_place(rest.lie, distance_yd(rest.at, model_->pin()));
    const auto lower = static_cast<std::size_t>(place.lower + (rest.penalty_strokes > 0 ? finish_places : 0));
    finished_[lower] += weight * (1.0 - place.share);
    finished_[lower + 1] += weight * place.share;
    finished_from_ = std::min(finished_from_, lower);
    finished_to_ = std::max(finished_to_, lower + 2);
  } else if (continuation.kind == Continuation::Kind::between_states && rest.penalty_strokes > 0) {
    const std::array<double, 4> shares = continuation.weights();
    for (std::size_t i = 0; i < 4; ++i) {
      if (shares[i] * weight > 0.0) dropped_.emplace_back(continuation.state[i], weight * shares[i]);
    }
  }
}

Row TransitionBuilder::finish() {
  const auto row = std::make_shared<Transition>();
  row->cost = cost_;
  row->replay = replay_;
  row->stride = stride_;
  row->to_end = touched_.size();
  row->dropped_end = row->to_end + dropped_.size();
  std::vector<Share>& shares = row->shares;
  std::size_t places = 0;
  for (std::size_t place = finished_from_; place < finished_to_; ++place) places += finished_[place] != 0.0;
  shares.reserve(row->dropped_end + places);
  for (const StateId to : touched_) {
    shares.emplace_back(to, weight_[static_cast<std::size_t>(to)]);
    weight_[static_cast<std::size_t>(to)] = 0.0;
  }
  shares.insert(shares.end(), dropped_.begin(), dropped_.end());
  for (std::size_t place = finished_from_; place < finished_to_; ++place) {
    if (finished_[place] == 0.0) continue;
    shares.emplace_back(static_cast<int>(place), finished_[place]);
    finished_[place] = 0.0;
  }
  finished_from_ = finished_.size();
  finished_to_ = 0;
  return row;
}

Row TransitionBuilder::build(StateId state, const Action& action, int stride) {
  begin(stride);
  for_each_strike(*model_, state, action, stride, equal_weight_, [this](const Rest& rest, double weight) {
    const Continuation continuation = model_->continuation(rest);
    add(continuation, weight);
    add_whole_strokes(rest, continuation, weight);
  });
  return finish();
}

bool is_never_left(const Transition& row, StateId self) {
  double stays = row.replay;
  for (const auto& [state, weight] : row.to()) {
    if (state == self) stays += weight;
  }
  return stays > 1.0 - numerics::never_leaves;
}

Row holed_for(double strokes) {
  Transition row;
  row.cost = strokes;
  return std::make_shared<const Transition>(std::move(row));
}

double until_away(double strokes, double replay) {
  const double leaves = 1.0 - replay;
  return leaves > numerics::row_never_leaves ? strokes / leaves : std::numeric_limits<double>::infinity();
}

double action_value(const Transition& row, const std::vector<double>& value) {
  double sum = row.cost;
  for (const auto& [state, weight] : row.to()) sum += weight * value[static_cast<std::size_t>(state)];
  return until_away(sum, row.replay);
}

double struck_value(const HoleModel& model, StateId state, const Action& action, int stride,
                    const std::vector<double>& value) {
  double sum = 1.0;
  double replay = 0.0;
  for_each_strike(model, state, action, stride, [&](const Rest& rest, double weight) {
    const Continuation continuation = model.continuation(rest);
    sum += weight * continuation.worth(value);
    if (continuation.kind == Continuation::Kind::replay) replay += weight;
  });
  return until_away(sum, replay);
}

}  // namespace yardworth
