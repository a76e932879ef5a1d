#include "bag/logged_strike.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "bag/fitted_bag.hpp"
#include "bag/mixture.hpp"

namespace yardworth {
namespace {

// By the fields of a delivery.
constexpr std::array<std::optional<double> Shot::*, delivery_fields.size()> of_shot = {
    &Shot::club_speed_mps, &Shot::attack_rad, &Shot::dynamic_loft_rad, &Shot::path_rad, &Shot::face_rad};

// Flights with so many lofts tell a spread as well as any more.
constexpr std::size_t most_lofts = 500;

struct Weighed {
  double loft_rad = 0.0, carry_m = 0.0, weight = 0.0;
};

double weighted_sd(const std::vector<Weighed>& all, double Weighed::*number) {
  double weight = 0.0, mean = 0.0, squares = 0.0;
  for (const Weighed& one : all) weight += one.weight;
  for (const Weighed& one : all) mean += one.weight / weight * one.*number;
  for (const Weighed& one : all) squares += one.weight * (one.*number - mean) * (one.*number - mean);
  return std::sqrt(squares / (weight - 1.0));
}

}  // namespace

LoggedStrike logged_strike(const ShotLog& log) {
  LoggedStrike strike;
  strike.shots = log.shots.size();
  for (std::size_t i = 0; i < of_shot.size(); ++i) {
    std::vector<double> values;
    for (const Shot& shot : log.shots) {
      if (shot.*of_shot[i]) values.push_back(*(shot.*of_shot[i]));
    }
    if (!values.empty()) strike.medians[i] = median(std::move(values));
  }
  return strike;
}

std::optional<UnevenLoft> uneven_loft(const ShotLog& log, const Delivery& strike, const ClubHead& head,
                                      const FlightConditions& conditions) {
  const FittedBag bag = fit_bag(log, {});
  std::vector<Weighed> all;
  double weight = 0.0;
  const std::size_t stride = (log.shots.size() + most_lofts - 1) / most_lofts;
  for (std::size_t i = 0; i < bag.shots.size(); ++i) {
    // Shots too few to tell solid from poor strikes all count.
    const bool fitted = bag.shots[i].size() >= fewest_own_shots;
    for (std::size_t j = 0; j < bag.shots[i].size(); j += std::max<std::size_t>(stride, 1)) {
      const auto loft = bag.shots[i][j]->dynamic_loft_rad;
      if (!loft) continue;
      Delivery own = strike;
      own.dynamic_loft_rad = *loft;
      if (has_fault(validate(own))) continue;
      all.push_back({*loft, fly(own, head, conditions).carry_m, fitted ? bag.solid[i][j] : 1.0});
      weight += all.back().weight;
    }
  }
  if (weight < 2.0) return std::nullopt;
  return UnevenLoft{weighted_sd(all, &Weighed::loft_rad), weighted_sd(all, &Weighed::carry_m)};
}

}  // namespace yardworth
