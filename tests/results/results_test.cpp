#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <limits>
#include <optional>
#include <string>
#include <vector>

#include "results/figures.hpp"
#include "support/sanitized.hpp"
#include "support/scenario.hpp"
#include "yardworth/bands.hpp"
#include "yardworth/gain.hpp"

// What the program says of the scenario, against what it said when results.txt was written. They say nothing of right
// and wrong: they show at a glance what a change of the code did to the numbers. To store them anew, on purpose:
//   YARDWORTH_UPDATE_RESULTS=1 build/release/tests/yardworth_tests -tc='the numbers of the scenario*'

namespace yardworth::test {
namespace {

const std::string results_file = "tests/results/results.txt";

// The results do not depend on the number of threads, and what one compiler makes of the sums differs from another's
// by rounding.
constexpr double tolerance = 1e-9;

const char* const heading =
    "# Expected strokes before and after 20 yards more carry with the driver and 6 with the irons, and strokes saved.\n"
    "# Written by the test beside it, on purpose only: DEVELOPERS.md, \"Build, test, check\".\n";

Figures figures_of(const std::string& name, const StepValues& strokes) {
  return {name, {strokes.before, strokes.replanned, strokes.strokes_saved()}};
}

void add_policy(const std::string& name, const std::optional<PolicyGain>& gain, bool holes, std::vector<Figures>& all) {
  if (!gain) return;
  all.push_back(figures_of(name + "/round", gain->round));
  if (!holes) return;
  for (const HoleGain& hole : gain->holes) {
    all.push_back(figures_of(fmt::format("{}/hole-{:02}", name, hole.number), hole.strokes));
  }
}

void add_gain(const std::string& name, const Course& course, const Player& player, PolicyChoice policy, bool holes,
              std::vector<Figures>& all) {
  GainRequest request;
  request.tee = std::min(middle_tee, course.tees.size() - 1);
  request.change = {20.0, 6.0};
  request.policy = policy;
  const GainResult result = compute_gain(course, player, baseline_of(player), request);
  add_policy("gain/" + name + "/habit", result.habit, holes, all);
  add_policy("gain/" + name + "/best", result.best, holes, all);
}

void add_bands(const Course& course, std::vector<Figures>& all) {
  BandsRequest request;
  request.bands = {Band::scratch, Band::from_13_to_20};
  request.change = {20.0, 6.0};
  const BandsResult result = compute_bands(course, request);
  for (const BandOnTee& golfer : result.golfers) {
    all.push_back(figures_of(
        fmt::format("bands/{}/{}/{}", name(golfer.gender), name(golfer.band), result.tees.at(golfer.tee).name),
        golfer.round));
  }
}

Course bare_scorecard() {
  const std::string file = "courses/bare-scorecard/course.yaml";
  const Reading<Course> course = read_course(text_of(file), file);
  REQUIRE(course.ok());
  return *course.value;
}

// All of them, or, where everything is slow, those of the habit of one golfer.
std::vector<Figures> compute_figures() {
  std::vector<Figures> all;
  const Course course = scenario_course();
  const std::string weekend = "weekend-16-man";
  if (sanitized) {
    add_gain(weekend, course, scenario_member(weekend), PolicyChoice::habit, true, all);
    return all;
  }
  for (const char* member : scenario_members) {
    add_gain(member, course, scenario_member(member), PolicyChoice::both, member == weekend, all);
  }
  add_gain("bare-scorecard", bare_scorecard(), scenario_member(weekend), PolicyChoice::both, true, all);
  add_bands(course, all);
  return all;
}

}  // namespace

TEST_CASE("the numbers of the scenario are those that were stored") {
  const std::vector<Figures> computed = compute_figures();
  if (std::getenv("YARDWORTH_UPDATE_RESULTS") != nullptr) {
    REQUIRE_FALSE(sanitized);
    std::ofstream file(std::string(YARDWORTH_SOURCE_DIR) + "/" + results_file, std::ios::binary);
    file << heading << write_figures(computed);
    file.close();
    REQUIRE(file);
    std::printf("results: %zu lines stored\n", computed.size());
    return;
  }
  const Moves moved = moves(read_figures(text_of(results_file)), computed, tolerance, !sanitized);
  std::printf("results: %zu lines, largest move %.2g strokes\n", computed.size(), moved.largest);
  for (const std::string& line : moved.lines) std::printf("  %s\n", line.c_str());
  CHECK(moved.lines.empty());
}

TEST_CASE("a number that moved is named, with how far") {
  const std::vector<Figures> stored = {{"round", {88.5, 86.75, 1.75}}, {"hole", {4.5, 4.25, 0.25}}};
  CHECK(moves(stored, read_figures("# heading\n" + write_figures(stored)), 0.0, true).lines.empty());
  std::vector<Figures> computed = stored;
  computed[0].values[1] += 0.5e-6;
  CHECK(moves(stored, computed, 1e-6, true).lines.empty());
  CHECK(moves(stored, computed, 1e-6, true).largest == doctest::Approx(0.5e-6));
  const auto lines = moves(stored, computed, 1e-9, true).lines;
  REQUIRE(lines.size() == 1);
  CHECK(lines.front().find("round") == 0);
  CHECK(lines.front().find("after") != std::string::npos);
  CHECK(lines.front().find("+5e-07") != std::string::npos);
  computed[0].values[1] = std::numeric_limits<double>::quiet_NaN();
  CHECK(moves(stored, computed, 1e-9, true).lines.size() == 1);
  CHECK(moves(stored, {stored[0]}, 0.0, true).lines.size() == 1);
  CHECK(moves(stored, {stored[0]}, 0.0, false).lines.empty());
  CHECK(moves({}, {stored[0]}, 0.0, false).lines.size() == 1);
}

}  // namespace yardworth::test
