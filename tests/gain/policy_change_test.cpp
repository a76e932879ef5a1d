#include "gain/policy_change.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <cmath>
#include <string>
#include <vector>

#include "course/set_up.hpp"
#include "gain/tee_view.hpp"
#include "strategy/strikes.hpp"
#include "support/courses.hpp"
#include "support/prepared_hole.hpp"
#include "support/scenario.hpp"
#include "yardworth/gain.hpp"

namespace yardworth {
namespace {

const test::Mesh& mesh() {
  static const test::Mesh shared;
  return shared;
}

// Two golfers on one hole; policies are made by hand.
struct Pair {
  explicit Pair(const Hole& hole)
      : short_hitter(test::scenario_member("weekend-16-man")),
        long_hitter(lengthen(short_hitter, 20.0, 6.0)),
        baseline(test::baseline_of(short_hitter)),
        before(hole, Firmness::normal, 0, short_hitter, baseline, mesh()),
        after(hole, Firmness::normal, 0, long_hitter, baseline, mesh()) {}

  PlannedTeeShot short_shot(std::size_t swing, double right_yd) const {
    return shot(before.model, short_hitter, swing, right_yd);
  }
  PlannedTeeShot long_shot(std::size_t swing, double right_yd) const {
    return shot(after.model, long_hitter, swing, right_yd);
  }
  static PlannedTeeShot shot(const HoleModel& model, const Player& player, std::size_t swing, double right_yd) {
    const Swing& full = model.swings(Lie::tee)[swing];
    const double heading = std::asin(right_yd / full.total_yd(1.0));
    return {model, player, {static_cast<int>(swing), full.carry_yd, heading, 0}};
  }

  Player short_hitter, long_hitter;
  Baseline baseline;
  test::PreparedHole before, after;
};

bool says(const std::string& text, const std::string& words) { return text.find(words) != std::string::npos; }

constexpr std::size_t driver = 0;
constexpr std::size_t second_club = 1;

}  // namespace

TEST_CASE("the same club and nearly the same aim is no change of plan") {
  const Hole hole = test::open_hole(1, 400.0);
  const Pair pair(hole);
  const auto before = pair.short_shot(driver, 0.0);
  const auto kept = pair.long_shot(driver, 0.0);
  CHECK(explain_policy_change(before, kept, kept, Units::yards).empty());
  CHECK(explain_policy_change(before, kept, pair.long_shot(driver, 3.5), Units::yards).empty());
  CHECK(explain_policy_change(before, kept, pair.long_shot(driver, 4.6), Units::yards) == "aim moves 5 yards right");
}

TEST_CASE("a carry that is now on is told at its far side, from the tee") {
  Hole hole = test::open_hole(1, 400.0);
  const Pair open(hole);
  const double short_carry = open.short_hitter.clubs[driver].carry_yd;
  const double long_carry = open.long_hitter.clubs[driver].carry_yd;
  REQUIRE(long_carry - short_carry == doctest::Approx(20.0));
  const double far_side = short_carry + 10.0;
  hole.hazards = {test::across(HazardKind::penalty_area, far_side - 10.0, far_side)};
  const Pair pair(hole);
  const std::string words = explain_policy_change(pair.short_shot(second_club, 0.0), pair.long_shot(second_club, 0.0),
                                                  pair.long_shot(driver, 0.0), Units::yards);
  CHECK(says(words, fmt::format("the carry over the penalty area at {:.0f} is now on with driver", far_side)));
  // A hazard that was carried already, or is not carried now, is no such reason.
  for (const double elsewhere : {short_carry - 5.0, long_carry + 15.0}) {
    hole.hazards = {test::across(HazardKind::penalty_area, elsewhere - 10.0, elsewhere)};
    const Pair other(hole);
    CHECK_FALSE(says(explain_policy_change(other.short_shot(second_club, 0.0), other.long_shot(second_club, 0.0),
                                           other.long_shot(driver, 0.0), Units::yards),
                     "now on"));
  }
}

TEST_CASE("a bunker that comes into reach is why a shorter club is taken, a boundary why the aim moves") {
  Hole hole = test::open_hole(1, 420.0);
  hole.hazards = {hazard_beside(HazardKind::bunker, Side::right, 225.0, 245.0, -12.0, 14.0)};
  const Pair pair(hole);
  CHECK(says(explain_policy_change(pair.short_shot(driver, 0.0), pair.long_shot(driver, 0.0),
                                   pair.long_shot(second_club, 0.0), Units::yards),
             "driver would now reach the bunker in the middle at 225-245, so "));
  hole.hazards = {test::boundary(hole, Side::right, 25.0)};
  const Pair bounded(hole);
  CHECK(explain_policy_change(bounded.short_shot(driver, 0.0), bounded.long_shot(driver, 0.0),
                              bounded.long_shot(driver, -9.0),
                              Units::yards) == "aim moves 9 yards left, away from the out of bounds right, all along");
}

TEST_CASE("hazards are told from the tee in use, in the units asked for") {
  Hole hole = test::open_hole(1, 400.0);
  hole.length_yd = {400.0, 370.0};
  hole.hazards = {hazard_beside(HazardKind::bunker, Side::right, 226.0, 244.0, 13.0, 25.0),
                  hazard_beside(HazardKind::trees, Side::left, -20.0, 120.0, 30.0, 60.0),
                  hazard_beside(HazardKind::bunker, Side::left, 5.0, 20.0, 30.0, 60.0),
                  test::across(HazardKind::penalty_area, 338.0, 352.0)};
  const HoleMap map(hole, Firmness::normal);
  std::vector<std::string> words;
  for (const HazardView& hazard : hazards_from(map, map.tee(370.0)))
    words.push_back(hazard_words(hazard, Units::yards));
  CHECK(words ==
        std::vector<std::string>{"trees left up to 90", "bunker right at 196-214", "penalty area across at 308-322"});
  CHECK(hazard_words(hazards_from(map, map.tee(400.0)).at(2), Units::metres) == "bunker right at 207-223");
}

TEST_CASE("aims are told as a golfer would") {
  Hole hole = test::open_hole(1, 400.0);  // fairway 16 yards either side
  hole.hazards = {hazard_beside(HazardKind::bunker, Side::right, 200.0, 230.0, 16.0, 30.0)};
  const HoleMap map(hole, Firmness::normal);
  const auto words = [&](double right_yd, double along_yd) {
    return aim_words(map, map.tee(400.0), {right_yd, along_yd, false}, Units::yards);
  };
  CHECK(words(-1.0, 215.0) == "down the middle");
  CHECK(words(-9.0, 215.0) == "9 yards left of the middle");
  CHECK(words(-14.5, 215.0) == "at the left edge of the fairway");
  CHECK(words(-30.0, 215.0) == "14 yards outside the left edge of the fairway");
  CHECK(words(20.0, 215.0) == "at the right-hand bunker");
  CHECK(words(8.0, 60.0) == "8 yards right of the line of play");
  CHECK(aim_words(map, map.tee(400.0), {-4.0, 400.0, true}, Units::yards) == "4 yards left of the middle of the green");
  CHECK(aim_words(map, map.tee(400.0), {0.5, 400.0, true}, Units::yards) == "at the middle of the green");
}

TEST_CASE("the chances of all areas and of the rough are those of the lies") {
  const Course course = test::scenario_course();
  const Player player = test::scenario_member("weekend-16-man");
  const Baseline baseline = test::baseline_of(player);
  for (const Hole& hole : course.holes) {
    const test::PreparedHole prepared(hole, course.firmness, test::middle_tee, player, baseline, mesh());
    const HoleModel& model = prepared.model;
    const Action action = habit_action(model, Lie::tee, model.tee());
    double penalty = 0.0;
    double bunker = 0.0;
    for_each_strike(model, model.tee_state(), action, 1, [&](const Rest& rest, double weight) {
      if (rest.penalty_strokes > 0) penalty += weight;
      if (rest.penalty_strokes == 0 && rest.lie == Lie::bunker) bunker += weight;
    });
    const std::vector<double> chances = area_chances(model, action);
    for (std::size_t i = 0; i < chances.size(); ++i) {
      const Ground ground = model.map().areas()[i].ground;
      if (ground == Ground::penalty_area || ground == Ground::out_of_bounds) penalty -= chances[i];
      if (ground == Ground::bunker) bunker -= chances[i];
    }
    CAPTURE(hole.number);
    CHECK(std::abs(penalty) < 1e-9);
    CHECK(std::abs(bunker) < 1e-9);
  }
}

TEST_CASE("on the 11th of the scenario 20 yards more bring the carry within reach") {
  const Player player = test::scenario_member("weekend-16-man");
  GainRequest request;
  request.tee = test::middle_tee;
  request.change = {20.0, 6.0};
  request.policy = PolicyChoice::best;
  Course course = test::scenario_course();
  course.holes = {course.holes.at(10)};
  const GainResult result = compute_gain(course, player, test::baseline_of(player), request);
  CHECK(says(result.answer().holes.front().policy_change, "the carry over the penalty area at "));
  request.change = {0.0, 0.0};
  CHECK(compute_gain(course, player, test::baseline_of(player), request).answer().holes.front().policy_change.empty());
}

}  // namespace yardworth
