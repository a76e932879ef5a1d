#include "strategy/bounds.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace yardworth {

Bounds::Bounds(const HoleModel& model) {
  for (std::size_t i = 0; i < strikes; ++i) {
    const double u = (static_cast<double>(i) + 0.5) / strikes;
    solid_deviates_[i] = cut_normal_quantile(u);
    poor_carry_shares_[i] = std::lerp(poor_carry_low, poor_carry_high, u);
  }
  for (double yard = 0.0; yard <= short_game_radius_yd; yard += 1.0) {
    const double green = model.short_game().strokes(Lie::green, yard);
    least_.push_back(std::min(green, model.short_game().strokes(Lie::fairway, yard)));
  }
}

void Bounds::note(double distance_yd, double strokes) {
  const auto yard = static_cast<std::size_t>(distance_yd);
  if (yard >= least_.size()) least_.resize(yard + 1, std::numeric_limits<double>::infinity());
  least_[yard] = std::min(least_[yard], strokes);
  least_from_on_.clear();
}

double Bounds::least_strokes(double distance_yd, const Swing& swing) {
  if (least_from_on_.empty()) {
    // A place no further out is never worth more.
    least_from_on_ = least_;
    for (std::size_t i = least_from_on_.size() - 1; i-- > 0;) {
      least_from_on_[i] = std::min(least_from_on_[i], least_from_on_[i + 1]);
    }
  }
  double solid = 0.0;
  double poor = 0.0;
  for (std::size_t i = 0; i < strikes; ++i) {
    solid += least_after(distance_yd - swing.carry_yd * (1.0 + swing.carry_sd_share * solid_deviates_[i]), swing);
    poor += least_after(distance_yd - swing.carry_yd * poor_carry_shares_[i], swing);
  }
  return 1.0 + std::lerp(solid, poor, swing.poor_strike) / strikes;
}

// Any roll may help: the nearest place between landing and the longest roll.
double Bounds::least_after(double left_yd, const Swing& swing) const {
  const double roll = swing.carry_yd * swing.roll_share * (longest_roll_factor() + numerics::bound_roll_allowance);
  const double nearest = left_yd > 0.0 ? std::max(0.0, left_yd - roll) : -left_yd;
  return least_from_on_[std::min(static_cast<std::size_t>(nearest), least_from_on_.size() - 1)];
}

}  // namespace yardworth
