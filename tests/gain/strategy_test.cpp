#include "yardworth/strategy.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <string>

#include "gain/better_policy.hpp"
#include "gain/finish_holes.hpp"
#include "strategy/dot.hpp"
#include "support/courses.hpp"
#include "support/scenario.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

constexpr int carry_hole = 11;
constexpr int short_hole = 6;

StrategyRequest request_for(int hole) {
  StrategyRequest request;
  request.tee = test::middle_tee;
  request.change = Change{20.0, 6.0};
  request.holes = {hole};
  return request;
}

StrategyResult solve(const StrategyRequest& request) {
  const Player player = test::scenario_member("weekend-16-man");
  return compute_strategy(test::scenario_course(), player, test::baseline_of(player), request);
}

HoleGain gain_of(int hole, const Change& change) {
  const Player player = test::scenario_member("weekend-16-man");
  Course course = test::scenario_course();
  course.holes = {course.holes.at(static_cast<std::size_t>(hole - 1))};
  GainRequest request;
  request.tee = test::middle_tee;
  request.change = change;
  request.policy = PolicyChoice::best;
  return compute_gain(course, player, test::baseline_of(player), request).answer().holes.front();
}

void check_tee_play(const TeePlay& policy) {
  CHECK(policy.tee_shot.costs == 0.0);
  REQUIRE(policy.alternatives.size() >= 2);
  CHECK(policy.alternatives.size() <= 3);
  double last = 0.0;
  for (const TeeOption& option : policy.alternatives) {
    CAPTURE(option.club);
    CHECK(option.costs >= last);
    CHECK(option.strokes == doctest::Approx(policy.tee_shot.strokes + option.costs).epsilon(1e-9));
    const bool elsewhere = std::abs(option.aim.right_yd - policy.tee_shot.aim.right_yd) >= 8.0;
    CHECK((option.club != policy.tee_shot.club || elsewhere));
    last = option.costs;
  }
  double total = 0.0;
  double thirds = 0.0;
  for (const NextShot& next : policy.next) {
    double clubs = 0.0;
    for (const auto& [club, share] : next.clubs) clubs += share;
    CHECK(clubs == doctest::Approx(1.0));
    (next.third.empty() ? total : thirds) += next.probability;
  }
  CHECK(total == doctest::Approx(1.0));
  CHECK(thirds <= total + 1e-9);
}

}  // namespace

TEST_CASE("the strategy of a hole is the best plan of the gain, with what else could be played") {
  const StrategyResult result = solve(request_for(carry_hole));
  REQUIRE(result.holes.size() == 1);
  const HoleStrategy& hole = result.holes.front();
  CHECK(hole.number == carry_hole);
  REQUIRE(hole.after);
  check_tee_play(hole.before);
  check_tee_play(*hole.after);

  const HoleGain gain = gain_of(carry_hole, {20.0, 6.0});
  CHECK(hole.before.tee_shot.strokes == gain.strokes.before);
  CHECK(hole.after->tee_shot.strokes == gain.strokes.replanned);
  CHECK(hole.before.tee_shot.club == gain.before.club);
  CHECK(hole.after->tee_shot.club == gain.after.club);
  CHECK(hole.policy_change == gain.policy_change);
  double penalty = 0.0;
  for (const HazardChance& chance : hole.hazards) {
    if (chance.hazard.ground == Ground::penalty_area) penalty += *chance.after;
  }
  CHECK(penalty == doctest::Approx(gain.after.penalty).epsilon(1e-9));
}

TEST_CASE("strategy and gain agree to the last bit for a part of the change, and for none") {
  for (const Change& change : {Change{20.0, 0.0}, Change{0.0, 6.0}, Change{0.0, 0.0}, Change{-15.0, -5.0}}) {
    CAPTURE(change.driver_carry_yd);
    CAPTURE(change.irons_carry_yd);
    StrategyRequest request = request_for(short_hole);
    request.change = change;
    const HoleStrategy hole = solve(request).holes.front();
    const HoleGain gain = gain_of(short_hole, change);
    CHECK(hole.before.tee_shot.strokes == gain.strokes.before);
    CHECK(hole.after->tee_shot.strokes == gain.strokes.replanned);
  }
}

// Behind other tee shots of these golfers lie places that no shot of a policy leaves.
TEST_CASE("a hole that gain answers strategy answers too, with the same strokes") {
  struct Played {
    const char* member;
    int hole;
  };
  for (const auto& [member, hole] : {Played{"junior", 5}, Played{"28-woman", 7}}) {
    const Player player = test::scenario_member(member);
    StrategyRequest request = request_for(hole);
    request.change = Change{10.0, 0.0};
    const StrategyResult result = compute_strategy(test::scenario_course(), player, test::baseline_of(player), request);
    GainRequest of_gain;
    of_gain.tee = test::middle_tee;
    of_gain.holes = request.holes;
    of_gain.change = *request.change;
    of_gain.policy = PolicyChoice::best;
    const GainResult gain = compute_gain(test::scenario_course(), player, test::baseline_of(player), of_gain);
    CHECK(result.holes.front().before.tee_shot.strokes == gain.answer().holes.front().strokes.before);
    CHECK(result.holes.front().after->tee_shot.strokes == gain.answer().holes.front().strokes.replanned);
  }
}

// Three grids, each once.
TEST_CASE("a hole that no policy finishes is tried on each grid once; where the search fails, with its start again") {
  const Player player = test::scenario_member("weekend-16-man");
  const Baseline baseline = test::baseline_of(player);
  const Golfers golfers = golfers_of(player, baseline, {20.0, 0.0});
  const Hole hole = test::open_hole(1, 300.0);
  const HoleMap map(hole, Firmness::normal);
  const Discretisation& search = search_grid();
  const HoleAsked asked{hole, map, 0, golfers, baseline, search};
  int tried = 0;
  CHECK(finish_hole(asked, [&](const HoleModels&) {
          ++tried;
          throw CannotFinish("the plan");
        }).has_value());
  CHECK(tried == 3);
  tried = 0;
  CHECK_FALSE(finish_hole(asked, [&](const HoleModels& models) {
                ++tried;
                if (!models.start_is_enough) throw SearchCannotFinish("the search");
              }).has_value());
  CHECK(tried == 4);
}

TEST_CASE("nothing else costs less than the plan's own tee shot, even where the search would have it so") {
  const Player player = test::scenario_member("12-woman");
  StrategyRequest request;
  request.tee = test::scenario_course().tees.size() - 1;
  request.holes = {12};
  const StrategyResult result = compute_strategy(test::scenario_course(), player, test::baseline_of(player), request);
  check_tee_play(result.holes.front().before);
}

TEST_CASE("without a change there is the plan as it is, and nothing after") {
  StrategyRequest request = request_for(short_hole);
  request.change.reset();
  const HoleStrategy hole = solve(request).holes.front();
  CHECK_FALSE(hole.after);
  CHECK(hole.policy_change == PolicyChange{});
  CHECK(hole.before.tee_shot.aim.at_green());
  for (const HazardChance& chance : hole.hazards) CHECK_FALSE(chance.after);
}

TEST_CASE("a complete search proves its plan, and only where that is asked for") {
  StrategyRequest request = request_for(short_hole);
  CHECK_FALSE(solve(request).holes.front().proof_before);
  request.prove = true;
  const HoleStrategy hole = solve(request).holes.front();
  REQUIRE(hole.proof_before);
  REQUIRE(hole.proof_after);
  std::printf("largest Bellman residual on hole %d: %.1e before, %.1e after\n", hole.number,
              hole.proof_before->largest_residual, hole.proof_after->largest_residual);
  CHECK(hole.proof_before->largest_residual < 1e-6);
  CHECK(hole.proof_after->largest_residual < 1e-6);
  CHECK(hole.proof_before->states > 0);
}

TEST_CASE("the same bytes for any number of threads") {
  StrategyRequest request = request_for(short_hole);
  request.graph = true;
  request.threads = 1;
  const StrategyResult alone = solve(request);
  request.threads = 4;
  const StrategyResult shared = solve(request);
  CHECK(strategy_json({alone, {}}) == strategy_json({shared, {}}));
  CHECK(alone.holes.front().graph == shared.holes.front().graph);
}

TEST_CASE("a hole that is not there and a carry that is none are refused") {
  CHECK_THROWS_AS(solve(request_for(19)), InvalidRequest);
  StrategyRequest request = request_for(short_hole);
  request.change = Change{-250.0, 0.0};
  CHECK_THROWS_AS(solve(request), InvalidRequest);
}

TEST_CASE("labels of a graph hold any name") {
  CHECK(dot_label("a \"b\" \\ & c") == "a \\\"b\\\" \\\\ &amp; c");
  CHECK(dot_label("x\x1b[2J\n") == "x\\\\x1B[2J\\\\x0A");
}

TEST_CASE("a graph is drawn of a hole whose plan says nothing of places that hardly a ball comes to") {
  const Player player = test::scenario_member("weekend-16-man");
  const Course course = test::course_of({test::open_hole(1, 114.8)});
  StrategyRequest request;
  request.graph = true;
  const std::string graph = compute_strategy(course, player, test::baseline_of(player), request).holes.front().graph;
  CHECK(graph.rfind("digraph plan {", 0) == 0);
  CHECK(graph.find("nan") == std::string::npos);
}

TEST_CASE("Graphviz draws the graph of a plan, whatever the names in it") {
  Player player = test::scenario_member("weekend-16-man");
  player.label = "a \"quote\" \\N <b> &amp; \x1b[2J \xff";
  player.clubs.front().name = "driver \"\\\" ]; x";
  StrategyRequest request = request_for(carry_hole);
  request.graph = true;
  const std::string graph =
      compute_strategy(test::scenario_course(), player, test::baseline_of(player), request).holes.front().graph;
  CHECK(graph.rfind("digraph plan {", 0) == 0);
  CHECK(graph.find("fairway 80-100") != std::string::npos);
  CHECK(graph.find('\x1b') == std::string::npos);
  if (std::system("dot -V >/dev/null 2>&1") != 0) {
    MESSAGE("Graphviz is not installed: what it makes of the graph was not looked at");
    return;
  }
  const auto file = std::filesystem::temp_directory_path() / "yardworth-plan-graph.dot";
  std::ofstream(file, std::ios::binary) << graph;
  const std::string svg = file.string() + ".svg";
  CHECK(std::system(("dot -Tsvg -o '" + svg + "' '" + file.string() + "' 2>&1").c_str()) == 0);
  CHECK(std::filesystem::file_size(svg) > 1000);
  std::filesystem::remove(file);
  std::filesystem::remove(svg);
}

}  // namespace yardworth
