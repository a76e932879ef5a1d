#include "gain/said_change.hpp"

namespace yardworth {

Change SaidChange::in_yards(Units units) const {
  const auto share = [](const std::optional<double>& percent) { return percent.value_or(0.0) / 100.0; };
  Change change = Change::of(carry_in_yards(units));
  for (const SaidClub& said : clubs) {
    OwnChange own;
    own.club = said.club;
    own.carry_yd = to_yards(said.carry, units);
    change.clubs.push_back(std::move(own));
  }
  change.carry_sd_share = share(carry_sd);
  change.direction_sd_share = share(direction_sd);
  change.direction_mean_rad = radians(direction_mean.value_or(0.0));
  change.poor_strike = share(poor_strike);
  change.short_game_share = share(short_game);
  change.putting_share = share(putting);
  return change;
}

}  // namespace yardworth
