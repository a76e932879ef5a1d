#include "shot/short_game.hpp"

#include <algorithm>
#include <boost/random/normal_distribution.hpp>
#include <boost/random/uniform_01.hpp>
#include <cmath>

#include "core/numerics.hpp"
#include "shot/strike.hpp"

namespace yardworth {

namespace {

constexpr double across_share = 0.5;
constexpr double short_low = 0.1;
constexpr double short_high = 0.7;
constexpr double past_low = 1.3;
constexpr double past_high = 1.9;

constexpr int nodes_along = numerics::short_game_lengths;
constexpr int nodes_beside = numerics::short_game_directions;
constexpr int nodes_poor = numerics::short_game_poor;

Lie without_tee(Lie lie) { return lie == Lie::tee ? Lie::fairway : lie; }

const Touch& touch_of(const ShortGameSkill& skill, Lie lie) {
  switch (lie) {
    case Lie::rough:
      return skill.rough;
    case Lie::bunker:
      return skill.bunker;
    case Lie::recovery:
      return skill.recovery;
    case Lie::tee:
    case Lie::fairway:
    case Lie::green:
      break;
  }
  return skill.fairway;
}

double on_green(double distance_yd) {
  return std::clamp((green_edge_far_yd - distance_yd) / (green_edge_far_yd - green_edge_near_yd), 0.0, 1.0);
}

double spread_of(const Touch& touch, double distance_yd) {
  return touch.spread_floor_yd + touch.spread_share * distance_yd;
}

// Equally likely deviates of the cut normal; those of the second coordinate are taken to one side only.
struct Deviates {
  std::array<double, nodes_along> along{};
  std::array<double, nodes_beside> beside{};
  Deviates() {
    for (int i = 0; i < nodes_along; ++i) {
      along[static_cast<std::size_t>(i)] = cut_normal_quantile((i + 0.5) / nodes_along);
    }
    for (int i = 0; i < nodes_beside; ++i) {
      beside[static_cast<std::size_t>(i)] = cut_normal_quantile(0.5 + 0.5 * (i + 0.5) / nodes_beside);
    }
  }
};

const Deviates& deviates() {
  static const Deviates all;
  return all;
}

}  // namespace

ShortGame::ShortGame(const ShortGameSkill& skill, const Putting& putting) : skill_(skill), putting_(&putting) {
  for (std::vector<double>& column : strokes_) column.assign(static_cast<std::size_t>(longest_yd) + 1, 3.0);
  for (int sweep = 0; sweep < numerics::short_game_sweeps; ++sweep) {
    double moved = 0.0;
    for (std::size_t yard = 0; yard <= static_cast<std::size_t>(longest_yd); ++yard) {
      for (const Lie lie : lies_in_play) {
        double& value = strokes_[index_in_play(lie)][yard];
        const double now = stroke(lie, static_cast<double>(yard));
        moved = std::max(moved, std::abs(now - value));
        value = now;
      }
    }
    if (moved < numerics::table_accuracy) break;
  }
}

double ShortGame::strokes(Lie lie, double distance_yd) const {
  const std::vector<double>& column = strokes_[index_in_play(without_tee(lie))];
  const double at = std::clamp(distance_yd, 0.0, longest_yd);
  const auto index = std::min(static_cast<std::size_t>(at), column.size() - 2);
  return std::lerp(column[index], column[index + 1], at - static_cast<double>(index));
}

// What is still to come from a ball at rest, before it is known where beside the green it lies.
double ShortGame::from_rest(double distance_yd) const {
  const double green = on_green(distance_yd);
  double sum = 0.0;
  if (green > 0.0) sum += green * putting_->putts(distance_yd * feet_per_yard);
  if (green < 1.0) {
    sum += (1.0 - green) * (fairway_beside_green * strokes(Lie::fairway, distance_yd) +
                            sand_beside_green * strokes(Lie::bunker, distance_yd) +
                            (1.0 - fairway_beside_green - sand_beside_green) * strokes(Lie::rough, distance_yd));
  }
  return sum;
}

double ShortGame::stroke(Lie lie, double distance_yd) const {
  const Touch& touch = touch_of(skill_, lie);
  const double spread = spread_of(touch, distance_yd);
  double solid = 0.0;
  for (const double along : deviates().along) {
    for (const double beside : deviates().beside) {
      solid += from_rest(std::hypot(spread * along, across_share * spread * beside));
    }
  }
  solid /= nodes_along * nodes_beside;
  double poor = 0.0;
  for (int i = 0; i < nodes_poor; ++i) {
    const double u = (i + 0.5) / nodes_poor;
    const double left = distance_yd * (1.0 - std::lerp(short_low, short_high, u));
    poor += 0.5 * strokes(lie, left) + 0.5 * from_rest(distance_yd * (std::lerp(past_low, past_high, u) - 1.0));
  }
  poor /= nodes_poor;
  return 1.0 + (1.0 - touch.poor_strike) * solid + touch.poor_strike * poor;
}

ShortGame::Drawn ShortGame::draw(Lie lie, double distance_yd, RandomEngine& engine) const {
  using numerics::most_short_strokes;
  boost::random::uniform_01<double> uniform;
  boost::random::normal_distribution<double> normal;
  double left = distance_yd;
  for (int strokes = 0; strokes < most_short_strokes; ++strokes) {
    if (lie == Lie::green) {
      const int putts = putting_->draw_putts(left * feet_per_yard, engine);
      return {strokes + putts, putts};
    }
    const Touch& touch = touch_of(skill_, lie);
    if (uniform(engine) < touch.poor_strike) {
      const double u = uniform(engine);
      if (uniform(engine) < 0.5) {
        left *= 1.0 - std::lerp(short_low, short_high, u);
        continue;
      }
      left *= std::lerp(past_low, past_high, u) - 1.0;
    } else {
      const double spread = spread_of(touch, left);
      const double along = spread * normal(engine);
      left = std::hypot(along, across_share * spread * normal(engine));
    }
    if (uniform(engine) < on_green(left)) {
      lie = Lie::green;
      continue;
    }
    const double place = uniform(engine);
    lie = place < fairway_beside_green                       ? Lie::fairway
          : place < fairway_beside_green + sand_beside_green ? Lie::bunker
                                                             : Lie::rough;
  }
  return {most_short_strokes, 0};
}

}  // namespace yardworth
