#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "course/hole_map.hpp"
#include "derive/derive_baseline.hpp"
#include "derive/drive_spread.hpp"
#include "derive/reference_hole.hpp"
#include "derive/scores.hpp"
#include "input/derived_table.hpp"
#include "shot/strike.hpp"
#include "support/courses.hpp"
#include "support/sanitized.hpp"
#include "yardworth/gain.hpp"

namespace yardworth {
namespace {

TEST_CASE("where a lie is sampled the reference hole has that lie") {
  for (const SetUp set_up : {SetUp::championship, SetUp::club}) {
    const HoleMap map(reference_hole(500.0, set_up), Firmness::normal);
    const auto at = [&](double right, double to_pin) { return map.ground_at(map.pin() + Point{right, -to_pin}); };
    CHECK(at(0.0, 200.0) == Ground::fairway);
    CHECK(at(reference_off_line_yd(Lie::recovery, set_up), 200.0) == Ground::trees);
    CHECK(at(0.0, 0.0) == Ground::green);
    CHECK(at(-100.0, 200.0) == Ground::out_of_bounds);
    CHECK(at(100.0, 200.0) == Ground::penalty_area);
    // Bunkers lie beside the fairway here and there, at the side where they are sampled.
    int sand = 0;
    int rough = 0;
    for (double to_pin = 110.0; to_pin < 380.0; to_pin += 1.0) {
      if (at(reference_off_line_yd(Lie::bunker, set_up), to_pin) == Ground::bunker) ++sand;
      if (at(reference_off_line_yd(Lie::rough, set_up) + 4.0, to_pin) == Ground::rough) ++rough;
    }
    CHECK(sand > 20);
    CHECK(rough > 100);
  }
}

// Two roads to how widely a poor drive spreads: the integral, and the lattice that strikes are summed over.
TEST_CASE("the spread of all drives is that of the strikes they are made of") {
  const StrikeLattice solid(40, direction_cut_sd, direction_cut_sd * 40);
  const StrikeLattice poor(40, poor_direction_cut_sd, poor_direction_cut_sd * 40);
  const auto variance = [](const StrikeLattice& lattice) {
    double sum = 0.0;
    for (int j = -lattice.half_width(); j <= lattice.half_width(); ++j) {
      const double z = static_cast<double>(j) / lattice.steps_per_sd();
      sum += lattice.weights()[static_cast<std::size_t>(lattice.half_width() + j)] * z * z;
    }
    return sum;
  };
  const double wider = poor_direction_factor * poor_direction_factor * variance(poor) / variance(solid);
  CHECK(poor_direction_variance_ratio() == doctest::Approx(wider).epsilon(1e-3));
  CHECK(all_drives_sd_rad(0.1, 0.0) == 0.1);
  CHECK(all_drives_sd_rad(0.1, 0.2) == doctest::Approx(std::sqrt(0.8 * 0.01 + 0.2 * 0.01 * wider)).epsilon(1e-3));
  CHECK(solid_drives_sd_rad(all_drives_sd_rad(0.07, 0.1), 0.1) == doctest::Approx(0.07));
}

// The whole derivation of one band in little: the file shipped is what comes out.
TEST_CASE("a derived table is the one that is compiled in") {
  DeriveOptions options = all_distances();
  options.tee_lengths_yd = test::sanitized ? std::vector<double>{160.0} : std::vector<double>{160.0, 400.0, 520.0};
  if (test::sanitized) options.near = derived_table(Band::from_13_to_20, Gender::men);
  const BaselineTable found = derive_baseline(standard_player(Band::from_13_to_20, Gender::men), options);
  const BaselineTable shipped = derived_table(Band::from_13_to_20, Gender::men);
  // With another table to interpolate near to, the same to the accuracy of the grid.
  const double within = test::sanitized ? 0.02 : 5e-5;
  REQUIRE(found.rough.strokes.size() == shipped.rough.strokes.size());
  for (std::size_t i = 0; i < found.rough.strokes.size(); ++i) {
    CAPTURE(found.rough.distance[i]);
    CHECK(std::abs(found.fairway.strokes[i] - shipped.fairway.strokes[i]) <= within);
    CHECK(std::abs(found.rough.strokes[i] - shipped.rough.strokes[i]) <= within);
  }
  const Baseline table(shipped);
  for (std::size_t i = found.tee.strokes.size() - options.tee_lengths_yd.size(); i < found.tee.strokes.size(); ++i) {
    CHECK(std::abs(found.tee.strokes[i] - table.strokes(Lie::tee, found.tee.distance[i])) <= 0.02);
  }
}

// Two roads to a score: the sum of the tee column, and rounds played shot by shot.
TEST_CASE("simulated rounds have the mean that the tee column gives") {
  const Player golfer = standard_player(Band::from_6_to_12, Gender::men);
  const BaselineTable table = derived_table(Band::from_6_to_12, Gender::men);
  const std::vector<double> lengths = {160.0, 380.0, 520.0};
  const int twenties = test::sanitized ? 5 : 200;
  const ScoreSummary scores = simulate_scores(golfer, table, lengths, twenties, 3);
  double by_table = 0.0;
  for (const double length : lengths) by_table += Baseline(table).strokes(Lie::tee, length);
  const double error = scores.spread / std::sqrt(20.0 * twenties);
  CHECK(std::abs(scores.mean - by_table) < 3.0 * error + 0.06);
  CHECK(scores.best_8_of_20 < scores.better_half);
  CHECK(scores.better_half < scores.mean);
}

// Two roads to fairways and greens: rounds played shot by shot, and the sums that gain describes a hole with.
TEST_CASE("simulated rounds find the fairways and greens that gain works out") {
  const Player golfer = standard_player(Band::from_13_to_20, Gender::men);
  const BaselineTable table = derived_table(Band::from_13_to_20, Gender::men);
  const std::vector<double> lengths = {160.0, 380.0, 520.0};
  const ScoreSummary scores = simulate_scores(golfer, table, lengths, test::sanitized ? 5 : 200, 3);
  std::vector<Hole> holes;
  for (const double length : lengths) holes.push_back(reference_hole(length, SetUp::club));
  for (std::size_t i = 0; i < holes.size(); ++i) holes[i].number = static_cast<int>(i) + 1;
  GainRequest request;
  request.policy = PolicyChoice::best;
  request.describe_play = true;
  double fairways = 0.0;
  double greens = 0.0;
  const GainResult gain = compute_gain(test::course_of(holes), golfer, Baseline(table), request);
  for (const HoleGain& hole : gain.answer().holes) {
    if (hole.par > 3) fairways += 0.5 * hole.before.fairway;
    REQUIRE(hole.play_before.has_value());
    greens += hole.play_before->green_in_regulation;
  }
  const double within = test::sanitized ? 0.15 : 0.03;
  CHECK(std::abs(scores.fairway_share - fairways) < within);
  CHECK(std::abs(scores.greens - greens) < 3.0 * within);
  // Nobody holes out from the tee, and few putt more than thrice.
  CHECK(scores.putts > 3.0 * 1.5);
  CHECK(scores.putts < 3.0 * 2.6);
}

}  // namespace
}  // namespace yardworth
