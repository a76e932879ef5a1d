#include "shot/short_game.hpp"

#include <algorithm>
#include <boost/random/normal_distribution.hpp>
#include <boost/random/uniform_01.hpp>
#include <cmath>
#include <numeric>

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

constexpr auto yards_tabled = static_cast<std::size_t>(ShortGame::longest_yd) + 1;

// A distance between whole yards: the upper one counts by the share.
struct YardsAround {
  std::size_t below = 0;
  double share = 0.0;
};

YardsAround yards_around(double distance_yd) {
  const double at = std::clamp(distance_yd, 0.0, ShortGame::longest_yd);
  const auto below = std::min(static_cast<std::size_t>(at), yards_tabled - 2);
  return {below, at - static_cast<double>(below)};
}

}  // namespace

ShortGame::ShortGame(const ShortGameSkill& skill, const Putting& putting) : skill_(skill), putting_(&putting) {
  std::vector<Ends> ends;
  for (const Lie lie : lies_in_play) {
    for (std::size_t yards = 0; yards < yards_tabled; ++yards) ends.push_back(stroke(lie, static_cast<double>(yards)));
  }
  solve_strokes(ends);
  solve_counts(ends);
}

std::size_t ShortGame::place_index(Lie lie, std::size_t yards) {
  return index_in_play(without_tee(lie)) * yards_tabled + yards;
}

double ShortGame::strokes(Lie lie, double distance_yd) const {
  const YardsAround at = yards_around(distance_yd);
  const std::size_t index = place_index(lie, at.below);
  return std::lerp(strokes_[index], strokes_[index + 1], at.share);
}

const StrokeCounts& ShortGame::counts(Lie lie, int yards) const {
  return counts_[place_index(lie, static_cast<std::size_t>(yards))];
}

void ShortGame::add_at(Lie lie, double distance_yd, double weight, Ends& ends) const {
  const YardsAround at = yards_around(distance_yd);
  const std::size_t index = place_index(lie, at.below);
  ends.short_game[index] += weight * (1.0 - at.share);
  ends.short_game[index + 1] += weight * at.share;
}

// A ball at rest, before it is known where beside the green it lies.
void ShortGame::add_rest(double distance_yd, double weight, Ends& ends) const {
  const double green = on_green(distance_yd);
  if (green > 0.0) putting_->add_at(distance_yd * feet_per_yard, weight * green, ends.putts);
  const double beside = weight * (1.0 - green);
  if (beside <= 0.0) return;
  add_at(Lie::fairway, distance_yd, beside * fairway_beside_green, ends);
  add_at(Lie::bunker, distance_yd, beside * sand_beside_green, ends);
  add_at(Lie::rough, distance_yd, beside * (1.0 - fairway_beside_green - sand_beside_green), ends);
}

ShortGame::Ends ShortGame::stroke(Lie lie, double distance_yd) const {
  Ends ends{std::vector<double>(lies_in_play.size() * yards_tabled, 0.0),
            std::vector<double>(putting_->distances_ft().size(), 0.0)};
  const Touch& touch = touch_of(skill_, lie);
  const double spread = spread_of(touch, distance_yd);
  const double solid = (1.0 - touch.poor_strike) / (nodes_along * nodes_beside);
  for (const double along : deviates().along) {
    for (const double beside : deviates().beside) {
      add_rest(std::hypot(spread * along, across_share * spread * beside), solid, ends);
    }
  }
  const double poor = 0.5 * touch.poor_strike / nodes_poor;
  for (int i = 0; i < nodes_poor; ++i) {
    const double u = (i + 0.5) / nodes_poor;
    add_at(lie, distance_yd * (1.0 - std::lerp(short_low, short_high, u)), poor, ends);
    add_rest(distance_yd * (std::lerp(past_low, past_high, u) - 1.0), poor, ends);
  }
  return ends;
}

void ShortGame::solve_strokes(const std::vector<Ends>& ends) {
  std::vector<double> cost;
  const std::vector<double>& putts = putting_->putts_by_distance();
  for (const Ends& of : ends) cost.push_back(std::inner_product(of.putts.begin(), of.putts.end(), putts.begin(), 1.0));
  strokes_.assign(ends.size(), 3.0);
  for (int sweep = 0; sweep < numerics::short_game_sweeps; ++sweep) {
    double moved = 0.0;
    for (std::size_t yards = 0; yards < yards_tabled; ++yards) {
      for (std::size_t lie = 0; lie < lies_in_play.size(); ++lie) {
        const std::size_t i = lie * yards_tabled + yards;
        const std::vector<double>& next = ends[i].short_game;
        const double now = std::inner_product(next.begin(), next.end(), strokes_.begin(), cost[i]);
        moved = std::max(moved, std::abs(now - strokes_[i]));
        strokes_[i] = now;
      }
    }
    if (moved < numerics::table_accuracy) break;
  }
}

// So many strokes are taken where the first leaves what takes one less.
void ShortGame::solve_counts(const std::vector<Ends>& ends) {
  const std::vector<StrokeCounts> putts = putting_->counts();
  counts_.assign(ends.size(), StrokeCounts(numerics::most_short_strokes + 1, 0.0));
  for (std::size_t strokes = 2; strokes < counts_.front().size(); ++strokes) {
    std::vector<double> one_less, putts_less;
    for (const StrokeCounts& of : counts_) one_less.push_back(of[strokes - 1]);
    for (const StrokeCounts& of : putts) putts_less.push_back(of[strokes - 1]);
    for (std::size_t i = 0; i < ends.size(); ++i) {
      const double on_green = std::inner_product(putts_less.begin(), putts_less.end(), ends[i].putts.begin(), 0.0);
      const std::vector<double>& next = ends[i].short_game;
      counts_[i][strokes] = std::inner_product(next.begin(), next.end(), one_less.begin(), on_green);
    }
  }
  for (StrokeCounts& of : counts_) put_rest_last(of);
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
