#include "bag/fit_club.hpp"

#include <algorithm>
#include <cmath>

#include "bag/borrowed.hpp"
#include "bag/estimate.hpp"
#include "core/numerics.hpp"
#include "shot/strike.hpp"

namespace yardworth {
namespace {

std::vector<StruckShot> struck_shots(const std::vector<const Shot*>& shots) {
  std::vector<StruckShot> struck;
  struck.reserve(shots.size());
  for (const Shot* shot : shots) {
    const bool has_direction = shot->offline_yd.has_value() && shot->carry_yd > 0.0;
    struck.push_back({shot->carry_yd, has_direction ? direction_of(*shot) : 0.0, has_direction});
  }
  return struck;
}

// The scale that a t which is not cut has on strikes that are cut at +-4 spreads, for the scale that they have: where
// E[(f + 1) x^2 / (f + x^2)] is 1.
constexpr double fitted_scale_of_cut = 0.9877483176;

// The mean over solid strikes of what a shot may not have.
template <class Of>
std::optional<Estimate> mean_of(const std::vector<const Shot*>& shots, const std::vector<double>& solid, const Of& of) {
  std::vector<double> values, weights;
  for (std::size_t i = 0; i < shots.size(); ++i) {
    const std::optional<double> value = of(*shots[i]);
    if (!value) continue;
    values.push_back(*value);
    weights.push_back(solid[i]);
  }
  return mean_estimate(values, weights);
}

void measure_other_columns(const std::vector<const Shot*>& shots, const std::vector<double>& solid,
                           ClubMeasure& measure) {
  const auto run = mean_of(shots, solid, [](const Shot& shot) -> std::optional<double> {
    return shot.total_yd ? std::optional(*shot.total_yd - shot.carry_yd) : std::nullopt;
  });
  measure.total_yd = mean_of(shots, solid, [](const Shot& shot) { return shot.total_yd; });
  if (run && measure.total_yd) {
    // What a solid strike rolls, on top of the typical carry: so that total and carry are about the same shots.
    const double moved = measure.carry_yd.value + run->value - measure.total_yd->value;
    measure.total_yd->value += moved;
    measure.total_yd->low += moved;
    measure.total_yd->high += moved;
  }
  measure.club_speed_mps = mean_of(shots, solid, [](const Shot& shot) { return shot.club_speed_mps; });
  measure.smash_factor = mean_of(shots, solid, [](const Shot& shot) -> std::optional<double> {
    if (!shot.ball_speed_mps || !shot.club_speed_mps) return std::nullopt;
    return *shot.ball_speed_mps / *shot.club_speed_mps;
  });
}

// Without anything to borrow: the middle of the shots, of which nobody knows how sure it is.
FittedClub too_few(const std::vector<const Shot*>& shots, FittedClub fitted) {
  std::vector<double> carries;
  for (const Shot* shot : shots) carries.push_back(shot->carry_yd);
  fitted.measure.carry_yd = normal_estimate(median(carries), 0.0, 0.0);
  fitted.solid.assign(shots.size(), 0.0);
  return fitted;
}

void measure_carry(const MixtureFit& fit, ClubMeasure& measure) {
  // As many solid strikes as would know the spread as well if one knew which they were. The likelihood's spread is that
  // of shots about their own mean.
  const double informed = 0.5 / fit.log_carry_sd_variance;
  // However little is left of the information, no less than two shots know.
  const double freedom = std::max(informed - 1.0, std::min(1.0, fit.solid + fit.prior_shots - 1.0));
  const double correction = freedom > 0.0 ? (freedom + 1.0) / freedom : 1.0;
  measure.carry_yd = normal_estimate(fit.mixture.carry_yd, correction * fit.carry_variance, freedom);
  measure.carry_sd_yd = spread_estimate(std::sqrt(correction) * fit.mixture.carry_sd_yd, freedom);
}

void measure_poor_strikes(const MixtureFit& fit, double borrowed_shots, double typical, ClubMeasure& measure) {
  const double all = fit.solid + fit.poor;
  const double seen = fit.poor + borrowed_shots * typical;
  const double of = all + borrowed_shots;
  if (of <= 0.0) return;
  const double share = seen / of;
  // Shots that may have been either count for less.
  const double spread = share * (1.0 - share);
  const double informed = spread > 0.0 && fit.poor_strike_variance > 0.0 && seen >= 0.5
                              ? std::min(of, spread / fit.poor_strike_variance)
                              : of;
  measure.poor_strike = share_estimate(share * informed, informed);
}

void measure_direction(const MixtureFit& fit, double borrowed_shots, ClubMeasure& measure) {
  const double strikes = fit.solid_directions + fit.poor_directions;
  if (strikes <= 0.0) return;
  const double behind = borrowed_shots > 0.0 ? fit.prior_shots : 0.0;
  const double freedom = strikes + behind - 1.0;
  const double correction = freedom > 0.0 ? (strikes + behind) / freedom : 1.0;
  const double sd = std::sqrt(correction) * fit.mixture.direction_sd_rad / fitted_scale_of_cut;
  // Fisher's information of a t: on its middle (f + 1) / (f + 3) over the scale squared, on the logarithm of its scale
  // 2 f / (f + 3).
  const double scale = sd * direction_scale_per_sd * std::sqrt((direction_freedom - 2.0) / direction_freedom);
  const double on_middle = (direction_freedom + 1.0) / (direction_freedom + 3.0);
  const double on_log_scale = 2.0 * direction_freedom / (direction_freedom + 3.0);
  const double weight = fit.solid_directions + fit.poor_directions / (poor_direction_factor * poor_direction_factor);
  measure.direction_mean_rad =
      normal_estimate(fit.mixture.direction_mean_rad, scale * scale / (on_middle * weight), freedom);
  measure.direction_sd_rad = log_estimate(sd, 1.0 / (on_log_scale * (strikes + behind)), freedom);
}

OutlyingShot::Why why_outlying(const StruckShot& shot, const Mixture& mixture) {
  const bool solid_carry = std::abs(shot.carry_yd - mixture.carry_yd) <= carry_cut_sd * mixture.carry_sd_yd;
  const double share = shot.carry_yd / mixture.carry_yd;
  const bool poor_carry = share >= poor_carry_low && share <= poor_carry_high;
  if (solid_carry || poor_carry) return OutlyingShot::Why::wider;
  return shot.carry_yd > mixture.carry_yd ? OutlyingShot::Why::longer : OutlyingShot::Why::shorter;
}

std::vector<OutlyingShot> outliers_of(const std::vector<const Shot*>& shots, const std::vector<StruckShot>& struck,
                                      const MixtureFit& fit, const std::string& club) {
  std::vector<OutlyingShot> outliers;
  for (std::size_t i = 0; i < shots.size(); ++i) {
    const ShotShares shares = shares_of(struck[i], fit.mixture);
    if (shares.stray <= shares.solid + shares.poor) continue;
    const auto direction = struck[i].has_direction ? std::optional(struck[i].direction_rad) : std::nullopt;
    outliers.push_back({shots[i]->line, club, shots[i]->carry_yd, direction, why_outlying(struck[i], fit.mixture)});
  }
  return outliers;
}

}  // namespace

double direction_of(const Shot& shot) {
  return std::asin(std::clamp(shot.offline_yd.value_or(0.0) / shot.carry_yd, -1.0, 1.0));
}

FittedClub fit_club(const std::string& club, const std::vector<const Shot*>& shots,
                    const std::optional<TypicalOfClub>& typical) {
  FittedClub fitted;
  fitted.measure.club = club;
  fitted.measure.shots = shots.size();
  fitted.all_the_same = shots.size() > 1 && std::all_of(shots.begin(), shots.end(), [&](const Shot* shot) {
                          return shot->carry_yd == shots.front()->carry_yd;
                        });
  const bool few = shots.size() < fewest_own_shots;
  if (few && !typical) return too_few(shots, std::move(fitted));
  const MixturePrior prior = few ? prior_of(*typical) : MixturePrior{};
  const std::vector<StruckShot> struck = struck_shots(shots);
  const MixtureFit fit = fit_mixture(struck, prior);
  for (const ShotShares& shares : fit.shares) fitted.solid.push_back(shares.solid);
  ClubMeasure& measure = fitted.measure;
  measure.solid_shots = fit.solid;
  measure.log_likelihood = fit.log_likelihood;
  measure_carry(fit, measure);
  measure_poor_strikes(fit, prior.shots, prior.typical.poor_strike, measure);
  measure_direction(fit, prior.shots, measure);
  measure_other_columns(shots, fitted.solid, measure);
  if (few) state_borrowed(prior, fit, measure);
  fitted.outliers = outliers_of(shots, struck, fit, club);
  return fitted;
}

}  // namespace yardworth
