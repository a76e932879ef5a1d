#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <string>
#include <vector>

#include "course/ground.hpp"
#include "gain/followed_policy.hpp"
#include "gain/solve_hole.hpp"
#include "input/derived_table.hpp"
#include "strategy/expected_visits.hpp"
#include "support/random_cases.hpp"
#include "support/sanitized.hpp"
#include "support/scenario.hpp"
#include "support/small_holes.hpp"
#include "yardworth/limits.hpp"

// What a value may owe to the baseline, from places outside the short game at which evaluation has stopped
// (docs/model.md, "What rests on the baseline").

namespace yardworth {
namespace {

double baseline_at(const HoleModel& model, StateId state) {
  return model.short_game().strokes(model.lie_of(state), distance_yd(model.place_of(state), model.pin()));
}

bool is_worth_baseline(const PolicyEvaluation& evaluation, StateId state) {
  const auto index = static_cast<std::size_t>(state);
  return evaluation.rows[index] && std::isnan(evaluation.value[index]);
}

// The habit on the same rows, and where evaluation has stopped on rows of their own, to the last state.
PolicyEvaluation evaluate_to_the_last(const HoleModel& model, const PolicyEvaluation& evaluation) {
  TransitionBuilder builder(model);
  const ActionOf habit = habit_of(model);
  const RowOf row_of = [&](StateId state, double) {
    const Row& known = evaluation.rows[static_cast<std::size_t>(state)];
    return known && !is_worth_baseline(evaluation, state) ? known : builder.build(state, habit(state));
  };
  return evaluate_rows(model, row_of, {model.tee_state()});
}

// By lie, how much more than the baseline the states were worth that were evaluated, on average, when those at which
// evaluation has stopped were worth the baseline alone. On the same rows.
std::vector<double> above_baseline(const HoleModel& model, const PolicyEvaluation& evaluation) {
  const RowOf row_of = [&](StateId state, double) {
    return is_worth_baseline(evaluation, state) ? holed_for(baseline_at(model, state))
                                                : evaluation.rows[static_cast<std::size_t>(state)];
  };
  const std::vector<double> value = evaluate_rows(model, row_of, {model.tee_state()}).value;
  std::vector<double> mean;
  for (const Lie lie : all_lies) {
    double sum = 0.0;
    int states = 0;
    for (StateId state = 0; state < model.state_count(); ++state) {
      const auto index = static_cast<std::size_t>(state);
      if (model.lie_of(state) != lie || std::isnan(evaluation.value[index])) continue;
      sum += value[index] - baseline_at(model, state);
      ++states;
    }
    mean.push_back(states > 0 ? sum / states : 0.0);
  }
  return mean;
}

}  // namespace

// The equation of docs/model.md; visits by playing a ball stroke by stroke, values by solving linear equations.
TEST_CASE("the error of a value is what the places worth the baseline cost beyond it, by the balls that come there") {
  const Player player = test::golfer_of_few_clubs();
  const Baseline baseline(derived_table(Band::bogey, Gender::men));
  DiscretisationOptions seldom_closely = test::coarse_discretisation();
  seldom_closely.sampling_density = 0.1;
  const test::Mesh mesh(seldom_closely);
  int places = 0;
  for (const Hole& hole : test::small_holes()) {
    const test::PreparedHole here(hole, Firmness::normal, 0, player, baseline, mesh);
    const HoleModel& model = here.model;
    const PolicyEvaluation habit = test::habit_value(model);
    const PolicyEvaluation to_the_last = evaluate_to_the_last(model, habit);
    const Visits visits = expected_visits(model, habit.rows);
    const std::vector<double> above = above_baseline(model, habit);
    const auto assumed_at = [&](StateId state) {
      return std::max(1.0, baseline_at(model, state) + above[static_cast<std::size_t>(model.lie_of(state))]);
    };
    std::vector<double> furthest(all_lies.size(), 0.0);
    for (StateId state = 0; state < model.state_count(); ++state) {
      const auto index = static_cast<std::size_t>(state);
      if (std::isnan(habit.value[index])) continue;
      double& largest = furthest[static_cast<std::size_t>(model.lie_of(state))];
      largest = std::max(largest, std::abs(habit.value[index] - assumed_at(state)));
    }
    double error = 0.0;
    double bound = 0.0;
    int worth_baseline = 0;
    for (StateId state = 0; state < model.state_count(); ++state) {
      if (!is_worth_baseline(habit, state)) continue;
      const auto index = static_cast<std::size_t>(state);
      error += visits[index] * (to_the_last.value[index] - assumed_at(state));
      bound += visits[index] * furthest[static_cast<std::size_t>(model.lie_of(state))];
      ++worth_baseline;
    }
    std::printf("hole %d: %d places worth the baseline, error %.6f, bound %.6f\n", hole.number, worth_baseline, error,
                bound);
    CAPTURE(hole.number);
    places += worth_baseline;
    CHECK(to_the_last.at_tee - habit.at_tee == doctest::Approx(error).epsilon(1e-6));
    CHECK(habit.baseline_bound == doctest::Approx(bound).epsilon(2.0 * numerics::bound_accuracy));
  }
  CHECK(places > 0);
}

TEST_CASE("on the scenario the bound holds for every member, and is under a hundredth of a stroke a hole") {
  const Course course = test::scenario_course();
  double largest_bound = 0.0;
  double largest_error = 0.0;
  for (const char* member : test::scenario_members) {
    const Player player = test::scenario_member(member);
    const Baseline baseline = test::baseline_of(player);
    const Golfers golfers = golfers_of(player, baseline, {});
    for (const Hole& hole : course.holes) {
      const HoleMap map(hole, course.firmness);
      const HoleModels models(map, map.tee(hole.length_yd[test::middle_tee]), golfers, baseline,
                              HoleModels::Grids::of(test::search_grid_for(hole)));
      const PolicyEvaluation habit = test::habit_value(models.before);
      CAPTURE(member);
      CAPTURE(hole.number);
      CHECK(habit.baseline_bound <= numerics::most_on_baseline);
      largest_bound = std::max(largest_bound, habit.baseline_bound);
      double error = 0.0;
      try {
        const PolicyEvaluation to_the_last = evaluate_to_the_last(models.before, habit);
        error = std::abs(to_the_last.at_tee - habit.at_tee);
        // Or one that it hardly ever leaves, worse than any place that was evaluated: the bound knows nothing of it,
        // and what it costs is held to be as little as the bound may be.
        constexpr double hardly_left_strokes = 100.0;
        const auto is_corner = [](double value) { return value > hardly_left_strokes; };
        if (std::any_of(to_the_last.value.begin(), to_the_last.value.end(), is_corner)) {
          CHECK(error <= numerics::most_on_baseline);
          continue;
        }
      } catch (const CannotFinish&) {
        // One ball in a million comes to a corner that the habit never leaves: there is nothing to compare with.
        continue;
      }
      // Where the bound comes from a second evaluation, that has strikes of its own.
      constexpr double of_other_strikes = 0.0005;
      CHECK(error <= habit.baseline_bound + of_other_strikes);
      largest_error = std::max(largest_error, error);
    }
    if (test::sanitized) break;
  }
  std::printf("largest bound %.5f, largest error %.5f strokes\n", largest_bound, largest_error);
}

namespace {

double between(double low, double high) { return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0; }

// Now and then one of the ends, which the readers accept too.
double within(const Limits& limits) {
  const int end = *rc::gen::inRange(0, 6);
  return end == 0 ? limits.low : end == 1 ? limits.high : between(limits.low, limits.high);
}

std::string club_text(const char* club, double carry_yd) {
  const double widest = std::min(limits::carry_sd.high, limits::largest_carry_sd_share * carry_yd);
  const Limits spread{limits::carry_sd.low, widest, ""};
  const Limits roll{limits::roll.low, std::min(limits::roll.high, carry_yd), ""};
  return "  - {club: " + std::string(club) + ", carry: " + std::to_string(carry_yd) +
         ", roll: " + std::to_string(within(roll)) + ", carry_sd: " + std::to_string(within(spread)) +
         ", direction_sd: " + std::to_string(within(limits::direction_sd)) +
         ", poor_strike: " + std::to_string(within(limits::poor_strike)) + "}\n";
}

// A player as the reader takes it, with one to three clubs. Most carry little, which takes the most strokes.
Player any_player() {
  const double longest = *rc::gen::arbitrary<bool>() ? between(limits::carry.low, 40.0) : within(limits::carry);
  std::string text =
      "format: yardworth/player/1\nlabel: any\nhandicap_index: " + std::to_string(*rc::gen::inRange(-10, 55)) +
      "\ngender: men\nunits: yards\nclubs:\n" + club_text("driver", longest);
  if (*rc::gen::arbitrary<bool>()) text += club_text("7-iron", between(limits::carry.low, longest));
  if (*rc::gen::arbitrary<bool>()) text += club_text("sand wedge", limits::carry.low);
  const Reading<Player> player = read_player(text, "any");
  if (!player.ok()) RC_DISCARD(to_line(player.findings.front()));
  return *player.value;
}

Hazard any_hazard(double length_yd) {
  const auto kind =
      *rc::gen::element(HazardKind::bunker, HazardKind::penalty_area, HazardKind::out_of_bounds, HazardKind::trees);
  const double from = between(-20.0, length_yd);
  if (*rc::gen::arbitrary<bool>()) return test::across(kind, from, from + between(1.0, 30.0));
  const double near = between(0.0, 40.0);
  return hazard_beside(kind, *rc::gen::element(Side::left, Side::right), from, from + between(5.0, 80.0), near,
                       near + between(5.0, 60.0));
}

// Most are short, since the time goes with the strokes.
Hole any_hole() {
  const int size = *rc::gen::inRange(0, 100);
  Hole hole = test::open_hole(
      1, size == 0 ? limits::hole_length.high : between(limits::hole_length.low, size < 90 ? 150.0 : 350.0));
  const int hazards = *rc::gen::inRange(0, 3);
  for (int i = 0; i < hazards; ++i) hole.hazards.push_back(any_hazard(hole.length_yd.front()));
  return hole;
}

// The mean of a normal cut off below nought, which carries are; their cut at four spreads takes next to nothing.
double mean_carry_yd(const Swing& swing) {
  const double spread = swing.carry_sd_share;
  const double above = 0.5 * std::erfc(-1.0 / (spread * std::sqrt(2.0)));
  const double density = std::exp(-0.5 / (spread * spread)) / std::sqrt(2.0 * std::acos(-1.0));
  return swing.carry_yd * (above + spread * density);
}

// By how much a stroke may take the ball nearer on average: the longest mean total of any swing from any lie, played
// down or not, all of it on a fairway.
double longest_mean_total_yd(const HoleModel& model, double roll_factor) {
  constexpr int carries = 40;
  constexpr double poor_share = 0.6;
  double longest = 0.0;
  for (const Lie lie : all_lies) {
    if (lie == Lie::green) continue;
    for (const Swing& full : model.swings(lie)) {
      for (int i = 1; i <= carries; ++i) {
        const Swing swing = played_down(full, full.carry_yd * i / carries);
        const double carry =
            (1.0 - swing.poor_strike) * mean_carry_yd(swing) + swing.poor_strike * poor_share * swing.carry_yd;
        longest = std::max(longest, carry * (1.0 + swing.roll_share * roll_factor));
      }
    }
  }
  return longest;
}

}  // namespace

// Wald's identity: a stroke takes the ball nearer by no more than the longest mean total, and all of the hole but the
// short game has to be gone. A mean over the fewest strikes that a row is summed over differs from that of all by less
// than the share.
TEST_CASE("strokes are at least in proportion to the length of the hole, for every player that the reader takes") {
  constexpr double of_few_strikes = 0.05;
  const Baseline baseline(derived_table(Band::from_21, Gender::men));
  const Discretisation& search = search_grid();
  int finished = 0;
  int stopped = 0;
  test::check_property("strokes in proportion", 2026, test::repeats(2000), [&] {
    const Hole hole = any_hole();
    const Player player = any_player();
    const auto firmness = *rc::gen::element(Firmness::soft, Firmness::normal, Firmness::firm);
    const HoleMap map(hole, firmness);
    const HoleModel model(map, map.tee(hole.length_yd.front()), player, baseline, held_out_grid(search));
    const double away = hole.length_yd.front() - short_game_radius_yd;
    const double least = away / longest_mean_total_yd(model, roll_factor(Ground::fairway, firmness));
    try {
      const PolicyEvaluation habit = test::habit_value(model);
      RC_LOG() << hole.length_yd.front() << " yards, carry " << player.clubs.front().carry_yd << ": " << habit.at_tee
               << " strokes, at least " << least << '\n';
      RC_ASSERT(habit.baseline_bound <= numerics::most_on_baseline);
      RC_ASSERT(habit.at_tee >= least * (1.0 - of_few_strikes));
      ++finished;
    } catch (const CannotFinish&) {
      ++stopped;
    }
  });
  std::printf("%d finished, %d cannot be\n", finished, stopped);
  CHECK(finished > stopped);
}

}  // namespace yardworth
