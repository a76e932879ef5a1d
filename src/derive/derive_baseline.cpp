#include "derive/derive_baseline.hpp"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

#include "baseline/published.hpp"
#include "core/parallel.hpp"
#include "derive/reference_hole.hpp"
#include "shot/short_game.hpp"
#include "strategy/habit.hpp"
#include "strategy/policy_iteration.hpp"
#include "strategy/strikes.hpp"

namespace yardworth {

namespace {

constexpr std::array<double, 10> short_distances_yd = {0.5, 2.0, 5.0, 10.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0};
constexpr std::array<double, 24> putt_distances_ft = {1.0,  2.0,  3.0,  4.0,  5.0,  6.0,  7.0,   8.0,
                                                      9.0,  10.0, 12.0, 15.0, 18.0, 20.0, 25.0,  30.0,
                                                      35.0, 40.0, 50.0, 60.0, 75.0, 90.0, 120.0, 150.0};
// The lies other than the tee and the green, with the column of each.
struct LieColumn {
  Lie lie;
  BaselineColumn BaselineTable::*column;
};
constexpr std::array<LieColumn, 4> lie_columns = {{
    {Lie::fairway, &BaselineTable::fairway},
    {Lie::rough, &BaselineTable::rough},
    {Lie::bunker, &BaselineTable::bunker},
    {Lie::recovery, &BaselineTable::recovery},
}};

void append(BaselineColumn& column, double distance, double strokes) {
  column.distance.push_back(distance);
  column.strokes.push_back(strokes);
}

// Greens and the short game, which need no hole.
BaselineTable near_the_hole(const Player& golfer) {
  const Putting putting(golfer.skill.putting);
  const ShortGame short_game(golfer.skill.short_game, putting);
  BaselineTable table;
  table.band = golfer.band;
  table.gender = golfer.gender;
  for (const double feet : putt_distances_ft) append(table.green, feet, putting.putts(feet));
  for (const double yards : short_distances_yd) {
    for (const LieColumn& each : lie_columns) {
      append(table.*each.column, yards, short_game.strokes(each.lie, yards));
    }
    append(table.tee, yards, short_game.strokes(Lie::fairway, yards));
  }
  return table;
}

// A first guess beyond the short game: a full shot more for every two hundred yards.
BaselineTable guess_beyond(BaselineTable table) {
  for (BaselineColumn* column : {&table.tee, &table.fairway, &table.rough, &table.bunker, &table.recovery}) {
    const double there = column->strokes.back();
    for (const double yards : {100.0, 700.0}) append(*column, yards, there + (yards - 50.0) / 200.0);
  }
  return table;
}

// A place on a reference hole where a column is read.
struct Sample {
  std::size_t column;    // of lie_columns
  std::size_t distance;  // of the options' distances
  Rest rest;
};

std::vector<Sample> samples_on(const HoleMap& map, const std::vector<double>& distances_yd, SetUp set_up) {
  std::vector<Sample> samples;
  for (std::size_t column = 0; column < lie_columns.size(); ++column) {
    for (std::size_t i = 0; i < distances_yd.size(); ++i) {
      const double off = std::min(reference_off_line_yd(lie_columns[column].lie, set_up), 0.8 * distances_yd[i]);
      const double back = std::sqrt(distances_yd[i] * distances_yd[i] - off * off);
      for (const double side : {-1.0, 1.0}) {
        samples.push_back({column, i, {map.pin() + Point{side * off, -back}, lie_columns[column].lie, 0, false}});
      }
    }
  }
  return samples;
}

// Strikes that no search has seen; the step keeps the sets apart on the lattice.
DiscretisationOptions held_out(int set) {
  DiscretisationOptions options;
  options.lattice_offset = (set + 1) * numerics::lattice_offset_step % numerics::lattice_offsets;
  return options;
}

struct Setting {
  const Player& golfer;
  const Baseline& near;
  const DeriveOptions& options;
  Discretisation searched = Discretisation();

  HoleModel model_of(const HoleMap& map, double length_yd, const DiscretisationOptions& wanted) const {
    return {map, map.tee(length_yd), golfer, near, searched.with(wanted)};
  }
};

// Who derives a table has time for every strike.
PolicyIterationOptions closely() {
  PolicyIterationOptions options;
  options.thin_tails = false;
  return options;
}

// Columns of all lies but the tee and the green, from one long hole.
void derive_lies(const Setting& setting, BaselineTable& table) {
  const std::vector<double>& distances = setting.options.distances_yd;
  const double length_yd = distances.back() + 20.0;
  const SetUp set_up = set_up_of(setting.golfer.band);
  const HoleMap map(reference_hole(length_yd, set_up), Firmness::normal);
  const HoleModel model = setting.model_of(map, length_yd, {});
  const std::vector<Sample> samples = samples_on(map, distances, set_up);
  std::set<StateId> corners;
  for (const Sample& sample : samples) {
    const Continuation continuation = model.continuation(sample.rest);
    for (const auto state : continuation.state) corners.insert(static_cast<StateId>(state));
  }
  const std::vector<StateId> roots(corners.begin(), corners.end());
  const PolicyEvaluation warm_start =
      evaluate_from(model, roots, Policy(static_cast<std::size_t>(model.state_count())));
  PolicyIterationOptions everywhere = closely();
  everywhere.least_visits = 0.0;
  const BestPolicy best = find_best_policy(model, habit_of(model), warm_start, everywhere);
  std::vector<std::vector<double>> sums(lie_columns.size(), std::vector<double>(distances.size(), 0.0));
  for (int set = 0; set < setting.options.held_out_offsets; ++set) {
    const HoleModel held_out_model = setting.model_of(map, length_yd, held_out(set));
    const PolicyEvaluation value = evaluate_from(held_out_model, roots, best.exact.policy);
    for (const Sample& sample : samples) {
      sums[sample.column][sample.distance] += held_out_model.continuation(sample.rest).worth(value.value);
    }
  }
  const double samples_each = 2.0 * setting.options.held_out_offsets;
  for (std::size_t column = 0; column < lie_columns.size(); ++column) {
    for (std::size_t i = 0; i < distances.size(); ++i) {
      append(table.*lie_columns[column].column, distances[i], sums[column][i] / samples_each);
    }
  }
}

double derive_tee(const Setting& setting, double length_yd) {
  const HoleMap map(reference_hole(length_yd, set_up_of(setting.golfer.band)), Firmness::normal);
  const HoleModel model = setting.model_of(map, length_yd, {});
  const ActionOf habit = habit_of(model);
  const BestPolicy best = find_best_policy(model, habit, evaluate_policy(model, habit), closely());
  double sum = 0.0;
  for (int set = 0; set < setting.options.held_out_offsets; ++set) {
    const HoleModel held_out_model = setting.model_of(map, length_yd, held_out(set));
    sum += evaluate_from(held_out_model, {held_out_model.tee_state()}, best.exact.policy)
               .value[static_cast<std::size_t>(held_out_model.tee_state())];
  }
  return sum / setting.options.held_out_offsets;
}

}  // namespace

DeriveOptions all_distances() {
  DeriveOptions options;
  for (double yards = 60.0; yards <= 680.0; yards += 20.0) {
    options.distances_yd.push_back(yards);
    options.tee_lengths_yd.push_back(yards);
  }
  return options;
}

BaselineTable derive_baseline(const Player& golfer, const DeriveOptions& options) {
  const BaselineTable start = near_the_hole(golfer);
  BaselineTable table = options.near ? *options.near : guess_beyond(start);
  if (!options.near) {
    const Baseline near(table);
    BaselineTable first = start;
    derive_lies({golfer, near, options}, first);
    first.tee = first.fairway;
    table = first;
  }
  BaselineTable derived = start;
  const Baseline near(table);
  const Setting setting{golfer, near, options};
  std::vector<double> tee(options.tee_lengths_yd.size());
  // The long hole is the longest piece of work, and the first of pieces that are alike is taken up first.
  work_in_parallel(0, tee.size() + 1, [&](std::size_t i) {
    if (i == 0) {
      derive_lies(setting, derived);
    } else {
      tee[i - 1] = derive_tee(setting, options.tee_lengths_yd[i - 1]);
    }
  });
  for (std::size_t i = 0; i < tee.size(); ++i) append(derived.tee, options.tee_lengths_yd[i], tee[i]);
  return derived;
}

ApproachResult approach_from(const Player& golfer, double distance_yd) {
  const double length_yd = distance_yd + 300.0;
  const HoleMap map(reference_hole(length_yd, set_up_of(golfer.band)), Firmness::normal);
  // The habit asks no baseline.
  const Baseline any(tour_table());
  const HoleModel model(map, map.tee(length_yd), golfer, any, Discretisation());
  const Point from = model.pin() + Point{0.0, -distance_yd};
  const Action action = habit_action(model, Lie::fairway, from);
  const Swing swing = model.swing_of(Lie::fairway, action);
  const double heading = HoleModel::struck_heading_of(swing, action);
  ApproachResult result;
  std::vector<std::pair<double, double>> leaves;  // yards, weight
  for_each_strike_from(model, from, swing, strata_of(model, model.tee_state(), swing), heading, 0,
                       [&](const Rest& rest, double weight) {
                         if (rest.penalty_strokes == 0 && rest.lie == Lie::green) result.green_hit += weight;
                         leaves.emplace_back(yardworth::distance_yd(rest.replay ? from : rest.at, model.pin()), weight);
                       });
  std::sort(leaves.begin(), leaves.end());
  double passed = 0.0;
  for (const auto& [yards, weight] : leaves) {
    passed += weight;
    if (passed < 0.5) continue;
    result.median_leave_ft = yards * feet_per_yard;
    break;
  }
  return result;
}

}  // namespace yardworth
