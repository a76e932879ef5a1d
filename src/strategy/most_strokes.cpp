#include "strategy/most_strokes.hpp"

#include <algorithm>

#include "core/numerics.hpp"
#include "strategy/shot_at_hole.hpp"
#include "yardworth/diagnostics.hpp"

namespace yardworth {

namespace {

// By how much a stroke may take the ball nearer, on average: the longest mean total of any club from any lie, on
// fairway.
double longest_mean_total_yd(const HoleModel& model) {
  constexpr double lost_by_poor_strikes = 1.0 - 0.5 * (poor_carry_low + poor_carry_high);
  double longest = 0.0;
  for (const Lie lie : all_lies) {
    for (const Swing& swing : model.swings(lie)) {
      const double of_carry = 1.0 - lost_by_poor_strikes * swing.poor_strike;
      longest = std::max(longest, of_carry * swing.total_yd(roll_on_fairway(model)));
    }
  }
  return longest;
}

}  // namespace

double most_strokes_of(const HoleModel& model) {
  const double by_length = distance_yd(model.tee(), model.pin()) / longest_mean_total_yd(model);
  return std::max(numerics::hardly_finished_strokes, numerics::hardly_finished_by_length * by_length);
}

void require_finished(const HoleModel& model, double strokes) {
  if (strokes > most_strokes_of(model)) throw CannotFinish("the plan takes more strokes than a golfer plays on for");
}

}  // namespace yardworth
