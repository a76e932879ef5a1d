#include "gain/measured_change.hpp"

#include <algorithm>
#include <boost/random/beta_distribution.hpp>
#include <boost/random/chi_squared_distribution.hpp>
#include <boost/random/student_t_distribution.hpp>
#include <cmath>
#include <optional>

#include "bag/borrowed.hpp"
#include "gain/golfers.hpp"
#include "shot/sample.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/shot_log.hpp"

namespace yardworth {

namespace {

double carry_within(const Club& club, double carry_yd) {
  return std::clamp(carry_yd, std::max(limits::carry_change.low, limits::least_carry_yd - club.carry_yd),
                    std::min(limits::carry_change.high, limits::longest_carry_yd - club.carry_yd));
}

// One club's change, told or drawn.
struct ClubMoves {
  double carry_yd = 0.0;
  std::optional<double> carry_sd_ratio, direction_sd_ratio;  // after over before
  double poor_strike = 0.0;
};

bool is_known(const Estimate& estimate) { return estimate.freedom > 0.0 && std::isfinite(estimate.standard_error); }

// What is measured of one club on one side, with the player's own numbers of it, which count beside it.
struct Side {
  const ClubMeasure& measure;
  double carry_sd_yd = 0.0, direction_sd_rad = 0.0, poor_strike = 0.0;  // the player's own

  double measured_share() const {
    const auto shots = static_cast<double>(measure.shots);
    return shots / (shots + typical_counts_for_shots);
  }
  double drawn_to(double own_sd, double sd) const {
    return std::sqrt(std::lerp(own_sd * own_sd, sd * sd, measured_share()));
  }
};

Side side_of(const ClubMeasure& measure, const Club& own) {
  return {measure, own.carry_sd_yd, own.direction_sd_rad, own.poor_strike};
}

// Takes each estimate for what it is.
struct AsEstimated {
  double carry(const Estimate& of) { return of.value; }
  double carry_sd(const Side& side) { return side.drawn_to(side.carry_sd_yd, side.measure.carry_sd_yd->value); }
  double direction_sd(const Side& side) {
    return side.drawn_to(side.direction_sd_rad, side.measure.direction_sd_rad->value);
  }
  double poor_strike(const Side& side) {
    return std::lerp(side.poor_strike, side.measure.poor_strike->value, side.measured_share());
  }
};

// Draws from what an estimate leaves open, by the distribution that its interval is of (estimate.hpp), with what the
// player's own number adds to what is known.
struct Drawn {
  RandomEngine& engine;

  double carry(const Estimate& of) {
    return of.standard_error > 0.0 ? of.value + of.standard_error * student(of.freedom) : of.value;
  }
  double carry_sd(const Side& side) {
    const double freedom = side.measure.carry_sd_yd->freedom + typical_counts_for_shots;
    const double squares = boost::random::chi_squared_distribution<double>(freedom)(engine);
    return AsEstimated().carry_sd(side) * std::sqrt(freedom / squares);
  }
  double direction_sd(const Side& side) {
    const Estimate& of = *side.measure.direction_sd_rad;
    // As many shots as would tell the spread to that standard error: 1 / sqrt(2 n) of itself.
    const double shots = 0.5 / (of.standard_error * of.standard_error) + typical_counts_for_shots;
    return AsEstimated().direction_sd(side) *
           std::exp(student(of.freedom + typical_counts_for_shots) / std::sqrt(2.0 * shots));
  }
  double poor_strike(const Side& side) {
    const double strikes = side.measure.poor_strike->freedom + typical_counts_for_shots;
    const double poor = AsEstimated().poor_strike(side) * strikes;
    return boost::random::beta_distribution<double>(poor + 0.5, std::max(0.0, strikes - poor) + 0.5)(engine);
  }

  double student(double freedom) { return boost::random::student_t_distribution<double>(freedom)(engine); }
};

bool both_known(const std::optional<Estimate>& before, const std::optional<Estimate>& after) {
  return before && after && is_known(*before) && is_known(*after) && before->value > 0.0 && after->value > 0.0;
}

template <class Take>
ClubMoves moves_of(const Club& club, const ClubChange& change, Take take) {
  ClubMoves moves;
  moves.carry_yd = take.carry(change.answer());
  const Side before = side_of(change.before, club);
  // A longer club that is struck no better spreads more in yards.
  const Side after = side_of(change.after, lengthen(club, carry_within(club, moves.carry_yd)));
  if (both_known(before.measure.carry_sd_yd, after.measure.carry_sd_yd)) {
    moves.carry_sd_ratio = take.carry_sd(after) / take.carry_sd(before);
  }
  if (both_known(before.measure.direction_sd_rad, after.measure.direction_sd_rad)) {
    moves.direction_sd_ratio = take.direction_sd(after) / take.direction_sd(before);
  }
  if (before.measure.poor_strike && after.measure.poor_strike && is_known(*before.measure.poor_strike) &&
      is_known(*after.measure.poor_strike)) {
    moves.poor_strike = take.poor_strike(after) - take.poor_strike(before);
  }
  return moves;
}

// A share of a number that leaves it within limits.
double share_within(double number, double ratio, double low, double high) {
  const double least = std::max(low / number, 1.0 + limits::spread_change.low / 100.0);
  const double most = std::min(high / number, 1.0 + limits::spread_change.high / 100.0);
  return std::clamp(ratio, least, std::max(least, most)) - 1.0;
}

// A draw may go further than any golfer does: it is kept within what may be asked.
OwnChange own_change(const Club& club, const ClubMoves& moves) {
  OwnChange own;
  own.club = club.name;
  own.carry_yd = carry_within(club, moves.carry_yd);
  if (moves.carry_sd_ratio) {
    // A longer club spreads more in yards already: what was measured is of what the club did.
    const double longer_sd = lengthen(club, own.carry_yd).carry_sd_yd;
    own.carry_sd_share = share_within(longer_sd, *moves.carry_sd_ratio * club.carry_sd_yd / longer_sd,
                                      limits::least_carry_sd_yd, limits::carry_sd.high);
  }
  if (moves.direction_sd_ratio) {
    own.direction_sd_share = share_within(degrees(club.direction_sd_rad), *moves.direction_sd_ratio,
                                          limits::least_direction_sd_deg, limits::direction_sd.high);
  }
  own.poor_strike = std::clamp(moves.poor_strike, -club.poor_strike, limits::poor_strike.high - club.poor_strike);
  return own;
}

// Clubs below the driver that were not measured gain in proportion to their carry, as those that were.
void add_unmeasured(const Player& player, const MeasuredChange& measured, Change& change) {
  double gained_yd = 0.0;
  double carried_yd = 0.0;
  for (const OwnChange& own : change.clubs) {
    const Club& club = *club_named(player, own.club);
    if (club.kind == ClubKind::driver) continue;
    gained_yd += own.carry_yd;
    carried_yd += club.carry_yd;
  }
  if (carried_yd <= 0.0) return;
  for (const Club& club : player.clubs) {
    const bool known = std::any_of(measured.clubs.begin(), measured.clubs.end(), [&](const MeasuredClub& of) {
      return plain_name(of.club) == plain_name(club.name);
    });
    if (known || club.kind == ClubKind::driver) continue;
    OwnChange own;
    own.club = club.name;
    own.carry_yd = carry_within(club, gained_yd / carried_yd * club.carry_yd);
    change.clubs.push_back(own);
  }
}

Change change_of_clubs(const Player& player, const MeasuredChange& measured, const std::vector<ClubMoves>& moves) {
  Change change;
  for (std::size_t i = 0; i < moves.size(); ++i) {
    change.clubs.push_back(own_change(*club_named(player, measured.clubs[i].club), moves[i]));
  }
  add_unmeasured(player, measured, change);
  for (OwnChange& own : change.clubs) {
    if (club_named(player, own.club)->kind != ClubKind::driver) continue;
    change.driver_carry_yd = own.carry_yd;
    own.carry_yd = 0.0;
  }
  return change;
}

}  // namespace

MeasuredChange measured_change(const BagComparison& comparison, const Player& player) {
  MeasuredChange measured;
  for (const ClubChange& change : comparison.changes) {
    const Club* club = club_named(player, change.club);
    if (club == nullptr) {
      measured.not_in_bag.push_back(change.club);
    } else if (change.verdict == ClubChange::Verdict::too_few_shots || !is_known(change.answer())) {
      measured.few_shots.push_back(club->name);
    } else {
      measured.clubs.push_back({club->name, change});
    }
  }
  return measured;
}

Change estimated_change(const MeasuredChange& measured, const Player& player) {
  std::vector<ClubMoves> moves;
  for (const MeasuredClub& of : measured.clubs) {
    moves.push_back(moves_of(*club_named(player, of.club), of.change, AsEstimated{}));
  }
  return change_of_clubs(player, measured, moves);
}

std::vector<Change> drawn_changes(const MeasuredChange& measured, const Player& player, int draws, std::uint64_t seed) {
  RandomEngine engine(seed);
  std::vector<Change> changes;
  for (int i = 0; i < draws; ++i) {
    std::vector<ClubMoves> moves;
    for (const MeasuredClub& of : measured.clubs) {
      moves.push_back(moves_of(*club_named(player, of.club), of.change, Drawn{engine}));
    }
    changes.push_back(change_of_clubs(player, measured, moves));
  }
  return changes;
}

}  // namespace yardworth
