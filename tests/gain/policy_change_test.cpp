#include "gain/policy_change.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <vector>

#include "course/set_up.hpp"
#include "gain/hazards_met.hpp"
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

constexpr std::size_t driver = 0;
constexpr std::size_t second_club = 1;

}  // namespace

TEST_CASE("the same club and nearly the same aim is no change of plan") {
  const Hole hole = test::open_hole(1, 400.0);
  const Pair pair(hole);
  const auto before = pair.short_shot(driver, 0.0);
  const auto kept = pair.long_shot(driver, 0.0);
  CHECK(explain_policy_change(before, kept, kept) == PolicyChange{});
  CHECK(explain_policy_change(before, kept, pair.long_shot(driver, 3.5)).kind == PolicyChange::Kind::none);
  const PolicyChange change = explain_policy_change(before, kept, pair.long_shot(driver, 4.6));
  CHECK(change.kind == PolicyChange::Kind::other_aim);
  CHECK(change.aim_moves_yd == doctest::Approx(4.6).epsilon(0.02));
  CHECK_FALSE(change.carry_now_on);
  CHECK_FALSE(change.avoided);
}

TEST_CASE("of a shot at the green it is told how often it finishes there") {
  const Hole par_3 = test::open_hole(1, 190.0);
  const Pair pair(par_3);
  const PolicyChange change = explain_policy_change(pair.short_shot(driver, 0.0), pair.long_shot(driver, 0.0),
                                                    pair.long_shot(second_club, 0.0));
  CHECK(change.kind == PolicyChange::Kind::other_club);
  CHECK(change.at_green);
  CHECK(change.on_green > 0.05);
  CHECK(change.on_green < 0.95);
  const Hole par_4 = test::open_hole(1, 400.0);
  const Pair longer(par_4);
  const PolicyChange lay_up = explain_policy_change(longer.short_shot(driver, 0.0), longer.long_shot(driver, 0.0),
                                                    longer.long_shot(second_club, 0.0));
  CHECK_FALSE(lay_up.at_green);
  CHECK(lay_up.on_green == 0.0);
}

TEST_CASE("a carry that is now on is told at its far side, from the tee") {
  Hole hole = test::open_hole(1, 400.0);
  const Pair open(hole);
  const double short_carry = open.short_hitter.clubs[driver].carry_yd;
  const double long_carry = open.long_hitter.clubs[driver].carry_yd;
  REQUIRE(long_carry - short_carry == doctest::Approx(20.0));
  const double far_side = short_carry + 10.0;
  for (const HazardKind kind : {HazardKind::penalty_area, HazardKind::bunker}) {
    hole.hazards = {test::across(kind, far_side - 10.0, far_side)};
    const Pair pair(hole);
    const PolicyChange change = explain_policy_change(pair.short_shot(second_club, 0.0),
                                                      pair.long_shot(second_club, 0.0), pair.long_shot(driver, 0.0));
    CHECK(change.kind == PolicyChange::Kind::other_club);
    CHECK(change.club == "driver");
    CHECK(change.club_kept == pair.long_hitter.clubs[second_club].name);
    CHECK_FALSE(change.shorter);
    REQUIRE(change.carry_now_on);
    CHECK(std::abs(change.carry_now_on->far_side_yd - far_side) <= 0.5);
    CHECK(change.carry_now_on->hazard == hazards_from(pair.after.model.map(), pair.after.model.tee()).front());
  }
  // A hazard that was carried already, or is not carried now, is no such reason.
  for (const double elsewhere : {short_carry - 5.0, long_carry + 15.0}) {
    hole.hazards = {test::across(HazardKind::penalty_area, elsewhere - 10.0, elsewhere)};
    const Pair other(hole);
    CHECK_FALSE(explain_policy_change(other.short_shot(second_club, 0.0), other.long_shot(second_club, 0.0),
                                      other.long_shot(driver, 0.0))
                    .carry_now_on);
  }
}

TEST_CASE("a bunker that comes into reach is why a shorter club is taken, a boundary why the aim moves") {
  Hole hole = test::open_hole(1, 420.0);
  hole.hazards = {hazard_beside(HazardKind::bunker, Side::right, 225.0, 245.0, -12.0, 14.0)};
  const Pair pair(hole);
  const PolicyChange club = explain_policy_change(pair.short_shot(driver, 0.0), pair.long_shot(driver, 0.0),
                                                  pair.long_shot(second_club, 0.0));
  CHECK(club.kind == PolicyChange::Kind::other_club);
  CHECK(club.club_kept == "driver");
  CHECK(club.shorter);
  CHECK(club.comes_into_reach);
  REQUIRE(club.avoided);
  CHECK(club.avoided->side == HazardSide::in_the_middle);
  CHECK(club.left_yd > 150.0);
  hole.hazards = {test::boundary(hole, Side::right, 25.0)};
  const Pair bounded(hole);
  const PolicyChange aim = explain_policy_change(bounded.short_shot(driver, 0.0), bounded.long_shot(driver, 0.0),
                                                 bounded.long_shot(driver, -9.0));
  CHECK(aim.kind == PolicyChange::Kind::other_aim);
  CHECK(aim.aim_moves_yd == doctest::Approx(-9.0).epsilon(0.02));
  REQUIRE(aim.avoided);
  CHECK(aim.avoided->ground == Ground::out_of_bounds);
  CHECK(aim.avoided->all_along);
}

TEST_CASE("hazards are told from the tee in use, in the order in which the ball meets them") {
  Hole hole = test::open_hole(1, 400.0);
  hole.length_yd = {400.0, 370.0};
  hole.hazards = {hazard_beside(HazardKind::bunker, Side::right, 226.0, 244.0, 13.0, 25.0),
                  hazard_beside(HazardKind::trees, Side::left, -20.0, 120.0, 30.0, 60.0),
                  hazard_beside(HazardKind::bunker, Side::left, 5.0, 20.0, 30.0, 60.0),
                  test::across(HazardKind::penalty_area, 338.0, 352.0)};
  const HoleMap map(hole, Firmness::normal);
  const std::vector<HazardView> hazards = hazards_from(map, map.tee(370.0));
  // The third is behind the tee.
  REQUIRE(hazards.size() == 3);
  CHECK(hazards[0].hazard == 1);
  CHECK(hazards[0].side == HazardSide::left);
  CHECK(hazards[0].from_yd == doctest::Approx(-50.0));
  CHECK(hazards[0].to_yd == doctest::Approx(90.0));
  CHECK(hazards[1].hazard == 0);
  CHECK(hazards[1].ground == Ground::bunker);
  CHECK(hazards[1].side == HazardSide::right);
  CHECK(hazards[1].from_yd == doctest::Approx(196.0));
  CHECK(hazards[1].to_yd == doctest::Approx(214.0));
  CHECK(hazards[2].side == HazardSide::across);
  CHECK(std::abs(hazards[2].from_yd - 308.0) <= 0.5);
  CHECK(std::abs(hazards[2].to_yd - 322.0) <= 0.5);
  CHECK(hazards_from(map, map.tee(400.0)).at(2).from_yd == doctest::Approx(226.0));
}

TEST_CASE("aims are told by what a golfer sees there") {
  Hole hole = test::open_hole(1, 400.0);  // fairway 16 yards either side
  hole.hazards = {hazard_beside(HazardKind::bunker, Side::right, 200.0, 230.0, 16.0, 30.0)};
  const HoleMap map(hole, Firmness::normal);
  struct Expected {
    LinePlace place;
    AimMark mark;
    AimSide side;
    double beside_yd;
  };
  const Expected all[] = {{{-1.0, 215.0}, AimMark::middle, AimSide::straight, 0.0},
                          {{-9.0, 215.0}, AimMark::middle, AimSide::left, 9.0},
                          {{-14.5, 215.0}, AimMark::fairway_edge, AimSide::left, 0.0},
                          {{-30.0, 215.0}, AimMark::fairway_edge, AimSide::left, 14.0},
                          {{20.0, 215.0}, AimMark::bunker, AimSide::right, 0.0},
                          {{8.0, 60.0}, AimMark::line_of_play, AimSide::right, 8.0}};
  for (const Expected& expected : all) {
    CAPTURE(expected.place.right_yd);
    const Aim aim = aim_on_hole(map, map.tee(400.0), expected.place);
    CHECK(aim.right_yd == expected.place.right_yd);
    CHECK(aim.mark == expected.mark);
    CHECK(aim.side == expected.side);
    CHECK(std::abs(aim.beside_yd - expected.beside_yd) <= 0.5);
    CHECK_FALSE(aim.at_green());
  }
  const Aim beside = aim_at_green({-4.0, 400.0});
  CHECK(beside.at_green());
  CHECK(beside.side == AimSide::left);
  CHECK(beside.beside_yd == 4.0);
  CHECK(aim_at_green({0.5, 400.0}).side == AimSide::straight);
}

TEST_CASE("the chances of all hazards are those of the lies") {
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
    for (const HazardMet& met :
         hazards_met(model, hazards_from(model.map(), model.tee()), strike_tee_shot_alone(model, action, 1))) {
      const HazardKind kind = hole.hazards[static_cast<std::size_t>(met.hazard.hazard)].kind;
      if (kind == HazardKind::penalty_area || kind == HazardKind::out_of_bounds) penalty -= met.found;
      if (kind == HazardKind::bunker) bunker -= met.found;
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
  const PolicyChange& change = result.answer().holes.front().policy_change;
  REQUIRE(change.carry_now_on);
  CHECK(change.carry_now_on->hazard.ground == Ground::penalty_area);
  request.change = {0.0, 0.0};
  CHECK(compute_gain(course, player, test::baseline_of(player), request).answer().holes.front().policy_change ==
        PolicyChange{});
}

}  // namespace yardworth
