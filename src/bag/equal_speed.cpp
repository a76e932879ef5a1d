#include "bag/equal_speed.hpp"

#include <cmath>

#include "bag/estimate.hpp"
#include "core/numerics.hpp"

namespace yardworth {
namespace {

// A line through shots that lie so many spreads of their speed away says nothing that anybody measured.
constexpr double furthest_speed_sd = 4.0;

// Sums over the solid strikes that have a speed, about their means.
struct Moments {
  double weight = 0.0, speed = 0.0, carry = 0.0;
  double speed_square = 0.0, both = 0.0, carry_square = 0.0;
  double variance_factor = 1.0;
  double variance = 0.0;  // of carry about the line
  double freedom = 0.0;

  double speed_sd() const { return std::sqrt(speed_square / weight); }
  double squares_about(double slope) const { return carry_square - 2.0 * slope * both + slope * slope * speed_square; }
};

Moments moments_of(const WeighedShots& weighed) {
  Moments moments;
  moments.variance_factor = weighed.variance_factor;
  for (std::size_t i = 0; i < weighed.shots.size(); ++i) {
    if (!weighed.shots[i]->club_speed_mps) continue;
    moments.weight += weighed.solid[i];
    moments.speed += weighed.solid[i] * *weighed.shots[i]->club_speed_mps;
    moments.carry += weighed.solid[i] * weighed.shots[i]->carry_yd;
  }
  if (moments.weight <= 0.0) return moments;
  moments.speed /= moments.weight;
  moments.carry /= moments.weight;
  for (std::size_t i = 0; i < weighed.shots.size(); ++i) {
    if (!weighed.shots[i]->club_speed_mps) continue;
    const double speed = *weighed.shots[i]->club_speed_mps - moments.speed;
    const double carry = weighed.shots[i]->carry_yd - moments.carry;
    moments.speed_square += weighed.solid[i] * speed * speed;
    moments.both += weighed.solid[i] * speed * carry;
    moments.carry_square += weighed.solid[i] * carry * carry;
  }
  return moments;
}

// The information about the common slope; each log's part counts by how closely its shots keep to the line.
double slope_information(const Moments& a, const Moments& b) {
  return a.speed_square / a.variance + b.speed_square / b.variance;
}

// Slope and spreads in turn, until the slope stays.
double fit_slope(Moments& a, Moments& b) {
  double slope = 0.0;
  for (Moments* one : {&a, &b})
    one->variance = std::max(one->carry_square / (one->weight - 1.0), numerics::least_carry_variance);
  for (int i = 0; i < numerics::most_slope_steps; ++i) {
    const double information = slope_information(a, b);
    const double before = slope;
    slope = (a.both / a.variance + b.both / b.variance) / information;
    // The slope is one degree of freedom, which the two share by what they know of it.
    for (Moments* one : {&a, &b}) {
      one->freedom = one->weight - 1.0 - one->speed_square / one->variance / information;
    }
    for (Moments* one : {&a, &b}) {
      one->variance = std::max(one->squares_about(slope) / one->freedom, numerics::least_carry_variance);
    }
    if (std::abs(slope - before) <= numerics::slope_accuracy * std::abs(slope)) break;
  }
  return slope;
}

}  // namespace

std::optional<Estimate> change_at_equal_speed(const WeighedShots& before, const WeighedShots& after) {
  Moments a = moments_of(before);
  Moments b = moments_of(after);
  const double fewest = static_cast<double>(fewest_own_shots) - 1.0;
  if (a.weight < fewest || b.weight < fewest || a.speed_square + b.speed_square <= 0.0) return std::nullopt;
  const double faster = b.speed - a.speed;
  if (std::abs(faster) > furthest_speed_sd * std::max(a.speed_sd(), b.speed_sd())) return std::nullopt;
  const double slope = fit_slope(a, b);
  const double information = slope_information(a, b);
  double variance = faster * faster / information;
  for (const Moments* one : {&a, &b}) variance += one->variance_factor * one->variance / one->weight;
  // Welch and Satterthwaite: by how much the variance moves with each of the two spreads.
  double unsure = 0.0;
  for (const Moments* one : {&a, &b}) {
    const double of_slope = faster / information / one->variance;
    const double moves = one->variance * (one->variance_factor / one->weight + of_slope * of_slope * one->speed_square);
    unsure += moves * moves / one->freedom;
  }
  return normal_estimate(b.carry - a.carry - slope * faster, variance, variance * variance / unsure);
}

}  // namespace yardworth
