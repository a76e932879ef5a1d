#include "gain/strokes_variance.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "core/numerics.hpp"
#include "gain/strike_outcomes.hpp"
#include "strategy/expected_visits.hpp"
#include "strategy/state_values.hpp"
#include "strategy/strikes.hpp"

namespace yardworth {

double two_numbers_variance(double expected) {
  const double share = expected - std::floor(expected);
  return share * (1.0 - share);
}

double short_game_variance(double expected) {
  // Drawn with ShortGame::draw_strokes for the golfers of all rows from every lie: near the medians. At 2 strokes,
  // where putts vary less than chips, between the two; around 3 a little less, since the better golfers vary less.
  struct Knot {
    double expected;
    double variance;
  };
  constexpr Knot knots[] = {{1.0, 0.0},  {1.1, 0.09}, {1.3, 0.22}, {1.6, 0.29},  {1.9, 0.2}, {2.0, 0.13}, {2.2, 0.2},
                            {2.4, 0.27}, {2.7, 0.32}, {3.0, 0.38}, {3.3, 0.535}, {3.6, 0.7}, {4.4, 1.08}};
  std::size_t upper = 1;
  while (upper + 1 < std::size(knots) && expected > knots[upper].expected) ++upper;
  const Knot& a = knots[upper - 1];
  const Knot& b = knots[upper];
  const double share = (std::max(1.0, expected) - a.expected) / (b.expected - a.expected);
  return std::lerp(a.variance, b.variance, share);
}

double strokes_variance(const HoleModel& model, const PolicyEvaluation& planned, VarianceOf short_game_spread) {
  const std::vector<double> value = filled_values(model, planned.value);
  const Visits visits = expected_visits(model, planned.rows);
  double variance = 0.0;
  for (StateId state = 0; state < model.state_count(); ++state) {
    const auto index = static_cast<std::size_t>(state);
    if (visits[index] < numerics::described_visits || !has_action(planned, state)) continue;
    double mean = 0.0;
    double squares = 0.0;
    double short_game = 0.0;
    // A spread to a few hundredths is all that is asked for, and few strikes tell that.
    const int stride = model.fitting_stride(state, largest_lattice_stride);
    for_each_strike(model, state, planned.policy[index], stride, [&](const Rest& rest, double weight) {
      const Continuation continuation = model.continuation(rest);
      double worth = continuation.worth(value);
      if (continuation.kind == Continuation::Kind::replay) worth += value[index];
      if (continuation.kind == Continuation::Kind::holed) {
        short_game += weight * short_game_spread(worth - rest.penalty_strokes);
      }
      mean += weight * worth;
      squares += weight * worth * worth;
    });
    variance += visits[index] * (std::max(0.0, squares - mean * mean) + short_game);
  }
  return variance;
}

}  // namespace yardworth
