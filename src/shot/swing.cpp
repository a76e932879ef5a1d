#include "shot/swing.hpp"

#include <algorithm>
#include <cmath>

#include "core/numerics.hpp"
#include "shot/strike.hpp"

namespace yardworth {

namespace {

bool allowed(const Club& club, Lie lie) {
  const bool wood = club.kind == ClubKind::wood;
  switch (lie) {
    case Lie::tee:
    case Lie::green:
      return true;
    case Lie::fairway:
      return club.kind != ClubKind::driver;
    case Lie::rough:
      return club.kind != ClubKind::driver && !(wood && club.number < 5);
    case Lie::bunker:
      return club.kind != ClubKind::driver && !wood && club.kind != ClubKind::hybrid;
    case Lie::recovery:
      return club.kind != ClubKind::driver && !wood;
  }
  return true;
}

// What a lie does to a club that stands at a place in the bag.
LieEffect effect_of(const Skill& skill, Lie lie, double place) {
  switch (lie) {
    case Lie::fairway: {
      // The shorter the club, the less it misses the tee.
      const LieEffect& longest = skill.fairway;
      return {std::lerp(1.0, longest.carry_factor, place), std::lerp(1.0, longest.carry_sd_factor, place),
              std::lerp(1.0, longest.direction_sd_factor, place), place * longest.poor_strike_added};
    }
    case Lie::rough:
      return skill.rough;
    case Lie::bunker:
      return skill.bunker;
    case Lie::recovery:
      return skill.recovery;
    case Lie::tee:
    case Lie::green:
      break;
  }
  return {};
}

}  // namespace

std::vector<Swing> full_swings(const Player& player, Lie lie) {
  const bool any =
      std::any_of(player.clubs.begin(), player.clubs.end(), [lie](const Club& club) { return allowed(club, lie); });
  std::vector<Swing> swings;
  for (std::size_t i = 0; i < player.clubs.size(); ++i) {
    const Club& club = player.clubs[i];
    if (any && !allowed(club, lie)) continue;
    const LieEffect effect = effect_of(player.skill, lie, club.place);
    Swing swing;
    swing.club = i;
    swing.carry_yd = club.carry_yd * effect.carry_factor;
    swing.carry_sd_share = club.carry_sd_yd / club.carry_yd * effect.carry_sd_factor;
    swing.half_swing_yd = club.half_swing_yd * effect.carry_factor;
    swing.carry_sd_floor_yd = club.carry_sd_floor_yd * effect.carry_factor * effect.carry_sd_factor;
    swing.direction_scale_rad = club.direction_sd_rad * effect.direction_sd_factor * direction_scale_per_sd;
    swing.direction_mean_rad = club.direction_mean_rad;
    swing.roll_share = club.roll_yd / club.carry_yd;
    swing.poor_strike = std::min(0.9, club.poor_strike + effect.poor_strike_added);
    swings.push_back(swing);
  }
  std::stable_sort(swings.begin(), swings.end(),
                   [](const Swing& a, const Swing& b) { return a.carry_yd > b.carry_yd; });
  return swings;
}

Swing played_down(const Swing& swing, double carry_yd) {
  if (carry_yd >= swing.carry_yd) return swing;
  Swing shorter = swing;
  shorter.carry_yd = carry_yd;
  const double share = shorter.carry_yd / swing.carry_yd;
  const double sd_yd = std::lerp(swing.carry_sd_floor_yd, swing.carry_sd_share * swing.carry_yd, share);
  shorter.carry_sd_share = sd_yd / shorter.carry_yd * (2.0 - std::min(1.0, carry_yd / swing.half_swing_yd));
  return shorter;
}

bool spreads_no_more(const Swing& a, const Swing& b) {
  const auto no_larger = [](double x, double y) { return x <= y * (1.0 + numerics::rounding_share); };
  return no_larger(a.carry_sd_share, b.carry_sd_share) && no_larger(a.direction_scale_rad, b.direction_scale_rad) &&
         no_larger(a.poor_strike, b.poor_strike) && no_larger(a.roll_share, b.roll_share);
}

bool spreads_less(const Swing& a, const Swing& b) { return spreads_no_more(a, b) && !spreads_no_more(b, a); }

}  // namespace yardworth
