#include "shot/putting.hpp"

#include <algorithm>
#include <boost/random/normal_distribution.hpp>
#include <cmath>
#include <limits>
#include <numeric>

#include "core/numerics.hpp"
#include "core/plane.hpp"
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

// From none at all, from where a putt is one putt.
std::vector<double> distances() {
  std::vector<double> all = {0.0};
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

// A place on straight lines between points: the value of the upper one counts by the share.
struct Between {
  std::size_t upper = 1;
  double share = 0.0;
};

Between between(const std::vector<double>& x, double at) {
  if (at <= x.front()) return {1, 0.0};
  if (at >= x.back()) return {x.size() - 1, 1.0};
  const auto upper = static_cast<std::size_t>(std::upper_bound(x.begin(), x.end(), at) - x.begin());
  return {upper, (at - x[upper - 1]) / (x[upper] - x[upper - 1])};
}

double interpolate(const std::vector<double>& x, const std::vector<double>& y, double at) {
  const Between place = between(x, at);
  return std::lerp(y[place.upper - 1], y[place.upper], place.share);
}

}  // namespace

double capture_half_width_ft(double past_ft) {
  const double speed = std::sqrt(2.0 * green_deceleration_ftps2 * past_ft);
  return speed >= fastest_capture_ftps ? 0.0 : hole_radius_ft * std::sqrt(1.0 - speed / fastest_capture_ftps);
}

Putting::Putting(const PuttingSkill& skill) : skill_(skill), distance_ft_(distances()) {
  putts_.assign(distance_ft_.size(), 1.5);
  putts_.front() = 1.0;
  past_ft_.assign(distance_ft_.size(), putt_pasts_ft.front());
  strokes_.resize(distance_ft_.size());
  std::vector<std::array<Stroke, putt_pasts_ft.size()>> tried(distance_ft_.size());
  for (std::size_t i = 1; i < distance_ft_.size(); ++i) {
    for (std::size_t pace = 0; pace < putt_pasts_ft.size(); ++pace) {
      tried[i][pace] = stroke(distance_ft_[i], putt_pasts_ft[pace]);
    }
  }
  // What is left is mostly shorter than what was there, so sweeps from near to far settle at once.
  for (int sweep = 0; sweep < numerics::putt_sweeps; ++sweep) {
    double moved = 0.0;
    for (std::size_t i = 1; i < distance_ft_.size(); ++i) {
      double best = std::numeric_limits<double>::infinity();
      for (std::size_t pace = 0; pace < putt_pasts_ft.size(); ++pace) {
        const double putts = tried[i][pace].putts(putts_);
        if (putts >= best) continue;
        best = putts;
        past_ft_[i] = putt_pasts_ft[pace];
        strokes_[i] = tried[i][pace];
      }
      moved = std::max(moved, std::abs(putts_[i] - best));
      putts_[i] = best;
    }
    if (moved < numerics::table_accuracy) break;
  }
  past_ft_.front() = past_ft_[1];
}

double Putting::Stroke::putts(const std::vector<double>& by_distance) const {
  return 1.0 + std::inner_product(left.begin(), left.end(), by_distance.begin(), 0.0);
}

Putting::Stroke Putting::stroke(double distance_ft, double past_ft) const {
  Stroke stroke;
  stroke.left.assign(distance_ft_.size(), 0.0);
  std::array<Point, putt_directions> ways;
  for (std::size_t i = 0; i < ways.size(); ++i) {
    ways[i] = along_heading(skill_.direction_sd_rad * nodes().direction[i]);
  }
  for (const double length : nodes().length) {
    const double rolled = (distance_ft + past_ft) * (1.0 + skill_.distance_sd_share * length);
    const double past = rolled - distance_ft;
    double holed = 0.0;
    double within_rad = 0.0;
    if (past >= 0.0) {
      within_rad = capture_half_width_ft(past) / distance_ft;
      holed = std::erf(within_rad / (skill_.direction_sd_rad * std::sqrt(2.0)));
    }
    // The widest node stands for what misses when no node does.
    const auto misses = [&](double deviate) {
      return skill_.direction_sd_rad * deviate > within_rad || deviate == nodes().direction.back();
    };
    const auto missed = std::count_if(nodes().direction.begin(), nodes().direction.end(), misses);
    const double weight = (1.0 - holed) / static_cast<double>(missed) / putt_lengths;
    for (std::size_t i = 0; i < ways.size(); ++i) {
      if (!misses(nodes().direction[i])) continue;
      add_at(std::hypot(rolled * ways[i].y - distance_ft, rolled * ways[i].x), weight, stroke.left);
    }
    stroke.holed += holed / putt_lengths;
  }
  return stroke;
}

void Putting::add_at(double distance_ft, double weight, std::vector<double>& by_distance) const {
  const Between place = between(distance_ft_, distance_ft);
  by_distance[place.upper - 1] += weight * (1.0 - place.share);
  by_distance[place.upper] += weight * place.share;
}

std::vector<StrokeCounts> Putting::counts() const {
  std::vector<StrokeCounts> counts(distance_ft_.size(), StrokeCounts(numerics::most_short_strokes + 1, 0.0));
  counts.front()[1] = 1.0;
  for (std::size_t putts = 1; putts < counts.front().size(); ++putts) {
    for (std::size_t i = 1; i < counts.size(); ++i) {
      if (putts == 1) counts[i][1] = strokes_[i].holed;
      for (std::size_t j = 0; putts > 1 && j < counts.size(); ++j) {
        counts[i][putts] += strokes_[i].left[j] * counts[j][putts - 1];
      }
    }
  }
  for (StrokeCounts& of : counts) put_rest_last(of);
  return counts;
}

double Putting::putts(double distance_ft) const { return interpolate(distance_ft_, putts_, distance_ft); }

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
