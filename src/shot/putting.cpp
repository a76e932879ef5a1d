#include "shot/putting.hpp"

#include <algorithm>
#include <boost/random/normal_distribution.hpp>
#include <cmath>
#include <limits>

#include "core/numerics.hpp"
#include "shot/strike.hpp"

namespace yardworth {

namespace {

using numerics::putt_directions;
using numerics::putt_lengths;
using numerics::putt_pasts_ft;

// Equally likely deviates, each in the middle of its share: of the cut normal.
template <int count>
std::array<double, count> middle_deviates(double from, double to) {
  std::array<double, count> deviates{};
  for (int i = 0; i < count; ++i) {
    deviates[static_cast<std::size_t>(i)] = cut_normal_quantile(std::lerp(from, to, (i + 0.5) / count));
  }
  return deviates;
}

// Both sides of the line are alike: directions are taken to the right only.
struct Nodes {
  std::array<double, putt_lengths> length = middle_deviates<putt_lengths>(0.0, 1.0);
  std::array<double, putt_directions> direction = middle_deviates<putt_directions>(0.5, 1.0);
};

const Nodes& nodes() {
  static const Nodes all;
  return all;
}

std::vector<double> distances() {
  std::vector<double> all;
  const auto step_at = [](double feet) {
    if (feet < numerics::near_putts_ft) return numerics::near_putt_step_ft;
    return feet < numerics::middle_putts_ft ? numerics::middle_putt_step_ft : numerics::far_putt_step_ft;
  };
  for (double feet = numerics::near_putt_step_ft; feet < Putting::longest_ft; feet += step_at(feet)) {
    all.push_back(feet);
  }
  all.push_back(Putting::longest_ft);
  return all;
}

double interpolate(const std::vector<double>& x, const std::vector<double>& y, double at) {
  if (at <= x.front()) return y.front();
  if (at >= x.back()) return y.back();
  const auto upper = static_cast<std::size_t>(std::upper_bound(x.begin(), x.end(), at) - x.begin());
  return std::lerp(y[upper - 1], y[upper], (at - x[upper - 1]) / (x[upper] - x[upper - 1]));
}

}  // namespace

double capture_half_width_ft(double past_ft) {
  const double speed = std::sqrt(2.0 * green_deceleration_ftps2 * past_ft);
  return speed >= fastest_capture_ftps ? 0.0 : hole_radius_ft * std::sqrt(1.0 - speed / fastest_capture_ftps);
}

Putting::Putting(const PuttingSkill& skill) : skill_(skill), distance_ft_(distances()) {
  putts_.assign(distance_ft_.size(), 1.5);
  past_ft_.assign(distance_ft_.size(), putt_pasts_ft.front());
  // What is left is mostly shorter than what was there, so sweeps from near to far settle at once.
  for (int sweep = 0; sweep < numerics::putt_sweeps; ++sweep) {
    double moved = 0.0;
    for (std::size_t i = 0; i < distance_ft_.size(); ++i) {
      const double before = putts_[i];
      improve(i);
      moved = std::max(moved, std::abs(putts_[i] - before));
    }
    if (moved < numerics::table_accuracy) break;
  }
}

Putting::Stroke Putting::stroke(double distance_ft, double past_ft) const {
  Stroke stroke;
  for (const double length : nodes().length) {
    const double rolled = (distance_ft + past_ft) * (1.0 + skill_.distance_sd_share * length);
    const double past = rolled - distance_ft;
    double holed = 0.0;
    double within_rad = 0.0;
    if (past >= 0.0) {
      within_rad = capture_half_width_ft(past) / distance_ft;
      holed = std::erf(within_rad / (skill_.direction_sd_rad * std::sqrt(2.0)));
    }
    double left = 0.0;
    int missed = 0;
    for (const double deviate : nodes().direction) {
      const double off = skill_.direction_sd_rad * deviate;
      // The widest node stands for what misses when no node does.
      if (off <= within_rad && deviate != nodes().direction.back()) continue;
      left += putts(std::hypot(rolled * std::cos(off) - distance_ft, rolled * std::sin(off)));
      ++missed;
    }
    stroke.holed += holed / putt_lengths;
    stroke.left_putts += (1.0 - holed) * left / missed / putt_lengths;
  }
  return stroke;
}

void Putting::improve(std::size_t index) {
  double best = std::numeric_limits<double>::infinity();
  for (const double past : putt_pasts_ft) {
    const double strokes = 1.0 + stroke(distance_ft_[index], past).left_putts;
    if (strokes >= best) continue;
    best = strokes;
    past_ft_[index] = past;
  }
  putts_[index] = best;
}

double Putting::putts(double distance_ft) const {
  // From no distance at all a putt is one putt.
  if (distance_ft <= distance_ft_.front()) return std::lerp(1.0, putts_.front(), distance_ft / distance_ft_.front());
  return interpolate(distance_ft_, putts_, distance_ft);
}

double Putting::past_at(double distance_ft) const { return interpolate(distance_ft_, past_ft_, distance_ft); }

double Putting::one_putt(double distance_ft) const {
  return stroke(std::max(distance_ft, numerics::shortest_putt_ft), past_at(distance_ft)).holed;
}

int Putting::draw_putts(double distance_ft, RandomEngine& engine) const {
  using numerics::most_putts;
  boost::random::normal_distribution<double> normal;
  double left = distance_ft;
  for (int putt = 1; putt < most_putts; ++putt) {
    if (left < numerics::tap_in_ft) return putt;
    const double rolled = (left + past_at(left)) * (1.0 + skill_.distance_sd_share * normal(engine));
    const double off = skill_.direction_sd_rad * normal(engine);
    const double past = rolled - left;
    if (past >= 0.0 && std::abs(off) * left <= capture_half_width_ft(past)) return putt;
    left = std::hypot(rolled * std::cos(off) - left, rolled * std::sin(off));
  }
  return most_putts;
}

}  // namespace yardworth
