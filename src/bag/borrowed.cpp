#include "bag/borrowed.hpp"

#include <algorithm>

#include "player/skill.hpp"
#include "yardworth/limits.hpp"

namespace yardworth {
namespace {

// The golfer's own club of that name, or the one that the name can only mean: "7i" is the 7-iron.
const Club* same_club(const Player& golfer, const std::string& name) {
  for (const Club& club : golfer.clubs) {
    if (plain_name(club.name) == plain_name(name)) return &club;
  }
  const ClubName parsed = parse_club_name(name);
  const bool tells = parsed.kind == ClubKind::driver || parsed.number > 0;
  for (const Club& club : golfer.clubs) {
    if (tells && club.kind == parsed.kind && club.number == parsed.number) return &club;
  }
  return nullptr;
}

}  // namespace

TypicalOfClub typical_of_club(const Player& golfer, const std::string& club, double measured_yd, double longest_yd) {
  const Club* same = same_club(golfer, club);
  TypicalOfClub typical;
  Club known;
  if (same != nullptr) {
    typical.carry_yd = same->carry_yd;
    known = *same;
  } else {
    known = complete_club({club, std::max(measured_yd, limits::carry.low), {}, {}, {}, {}},
                          std::max(longest_yd, limits::carry.low), golfer.skill);
  }
  typical.mixture = {known.carry_yd, known.carry_sd_yd, 0.0, known.direction_sd_rad, known.poor_strike};
  return typical;
}

MixturePrior prior_of(const TypicalOfClub& typical) {
  return {typical.mixture, typical_counts_for_shots, typical.carry_yd ? carry_differs_share * *typical.carry_yd : 0.0};
}

void state_borrowed(const MixturePrior& prior, const MixtureFit& fit, ClubMeasure& measure) {
  measure.borrowed_share = prior.shots / (prior.shots + static_cast<double>(measure.shots));
  if (prior.carry_spread_yd <= 0.0) return;
  const double known = 1.0 / (prior.carry_spread_yd * prior.carry_spread_yd);
  const double own = fit.solid / (fit.mixture.carry_sd_yd * fit.mixture.carry_sd_yd);
  measure.carry_borrowed_share = known / (known + own);
}

}  // namespace yardworth
