#include "gain/option_doubt.hpp"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>

#include "yardworth/limits.hpp"
#include "yardworth/weigh.hpp"

namespace yardworth {

namespace {

Change times(Change change, double factor) {
  for (double* part :
       {&change.driver_carry_yd, &change.irons_carry_yd, &change.carry_sd_share, &change.direction_sd_share,
        &change.direction_mean_rad, &change.poor_strike, &change.short_game_share, &change.putting_share}) {
    *part *= factor;
  }
  for (OwnChange& own : change.clubs) {
    for (double* part : {&own.carry_yd, &own.roll_yd, &own.carry_sd_share, &own.direction_sd_share,
                         &own.direction_mean_rad, &own.poor_strike}) {
      *part *= factor;
    }
  }
  return change;
}

void hold_within(double& share, const Limits& percent) {
  share = std::clamp(share, percent.low / 100.0, percent.high / 100.0);
}

}  // namespace

double doubt_of(const Option& option) {
  if (is_nothing(option.change) || !option.draws.empty()) return 0.0;
  return option.doubt.value_or(assumed_doubt);
}

Change changed_by(const Change& said, double doubt, double deviations) {
  if (doubt == 0.0 || deviations == 0.0) return said;
  const double reach = boost::math::quantile(boost::math::normal_distribution<double>(), (1.0 + weigh_level) / 2.0);
  Change change = times(said, 1.0 + deviations * doubt / reach);
  for (double* share :
       {&change.carry_sd_share, &change.direction_sd_share, &change.short_game_share, &change.putting_share}) {
    hold_within(*share, limits::spread_change);
  }
  hold_within(change.poor_strike, limits::poor_strike_change);
  return change;
}

}  // namespace yardworth
