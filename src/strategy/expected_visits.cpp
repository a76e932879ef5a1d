#include "strategy/expected_visits.hpp"

namespace yardworth {

Visits expected_visits(const HoleModel& model, const RowAt& row_at, const FollowedUntil& until) {
  Visits visits = no_visits(model);
  play_strokes(model, until, [&](StateId state, double here, Visits& next) {
    visits[static_cast<std::size_t>(state)] += here;
    pass_on(row_at(state), state, here, next);
  });
  return visits;
}

Visits expected_visits(const HoleModel& model, const std::vector<Row>& rows, const FollowedUntil& until) {
  const auto row_at = [&](StateId state) -> const Transition& { return *rows[static_cast<std::size_t>(state)]; };
  return expected_visits(model, RowAt(row_at), until);
}

}  // namespace yardworth
