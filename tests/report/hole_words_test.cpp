#include "report/hole_words.hpp"

#include <doctest/doctest.h>

#include "core/distance_words.hpp"

using namespace yardworth;
using report::aim_words;
using report::hazard_words;
using report::policy_change_words;

namespace {

HazardView hazard_at(Ground ground, HazardSide side, double from_yd, double to_yd) {
  return {0, ground, side, from_yd, to_yd, false};
}

std::string words_of(AimMark mark, AimSide side, double beside_yd, Units units = Units::yards) {
  return aim_words({0.0, 215.0, mark, side, beside_yd}, units);
}

PolicyChange change_of(PolicyChange::Kind kind) {
  PolicyChange change;
  change.kind = kind;
  change.club_kept = "driver";
  change.club = "5-wood";
  change.left_yd = 161.0;
  return change;
}

}  // namespace

TEST_CASE("distances have their unit") {
  CHECK(distance_words(12.4, Units::yards) == "12 yards");
  CHECK(distance_words(1.0, Units::yards) == "1 yard");
  CHECK(distance_words(1.0 / metres_per_yard, Units::metres) == "1 metre");
  CHECK(distance_words(100.0, Units::metres) == "91 metres");
}

TEST_CASE("hazards are told in the units asked for") {
  const HazardView bunker = hazard_at(Ground::bunker, HazardSide::right, 226.0, 244.0);
  CHECK(hazard_words(bunker, Units::yards) == "bunker right at 226-244");
  CHECK(hazard_words(bunker, Units::metres) == "bunker right at 207-223");
  CHECK(report::hazard_without_distance(bunker) == "bunker right");
  CHECK(hazard_words(hazard_at(Ground::trees, HazardSide::left, -50.0, 90.0), Units::yards) == "trees left up to 90");
  CHECK(hazard_words(hazard_at(Ground::penalty_area, HazardSide::across, 308.0, 322.0), Units::yards) ==
        "penalty area across at 308-322");
  CHECK(hazard_words(hazard_at(Ground::bunker, HazardSide::behind_the_green, 410.0, 420.0), Units::yards) ==
        "bunker behind the green at 410-420");
  HazardView boundary = hazard_at(Ground::out_of_bounds, HazardSide::left, -50.0, 480.0);
  boundary.all_along = true;
  CHECK(hazard_words(boundary, Units::yards) == "out of bounds left, all along");
}

TEST_CASE("aims are told as a golfer would") {
  CHECK(words_of(AimMark::middle, AimSide::straight, 0.0) == "down the middle");
  CHECK(words_of(AimMark::middle, AimSide::left, 9.0) == "9 yards left of the middle");
  CHECK(words_of(AimMark::middle, AimSide::left, 9.0, Units::metres) == "8 metres left of the middle");
  CHECK(words_of(AimMark::line_of_play, AimSide::straight, 0.0) == "down the line of play");
  CHECK(words_of(AimMark::line_of_play, AimSide::right, 8.0) == "8 yards right of the line of play");
  CHECK(words_of(AimMark::fairway_edge, AimSide::left, 0.0) == "at the left edge of the fairway");
  CHECK(words_of(AimMark::fairway_edge, AimSide::left, 14.0) == "14 yards outside the left edge of the fairway");
  CHECK(words_of(AimMark::bunker, AimSide::right, 0.0) == "at the right-hand bunker");
  CHECK(words_of(AimMark::bunker, AimSide::straight, 0.0) == "at the bunker in the middle");
  CHECK(words_of(AimMark::middle_of_green, AimSide::straight, 0.0) == "at the middle of the green");
  CHECK(words_of(AimMark::middle_of_green, AimSide::left, 4.0) == "4 yards left of the middle of the green");
}

TEST_CASE("why the club changed") {
  CHECK(policy_change_words({}, Units::yards).empty());
  PolicyChange change = change_of(PolicyChange::Kind::other_club);
  CHECK(policy_change_words(change, Units::yards) == "5-wood instead of driver, which leaves about 161 yards");
  CHECK(policy_change_words(change, Units::metres) == "5-wood instead of driver, which leaves about 147 metres");
  // On a par 3 what matters is the green: the mean of putts and misses would be 28 yards.
  PolicyChange at_green = change;
  at_green.at_green = true;
  at_green.left_yd = 28.0;
  at_green.on_green = 0.43;
  CHECK(policy_change_words(at_green, Units::yards) ==
        "5-wood instead of driver, which finishes on the green 43 times in 100");
  change.avoided = hazard_at(Ground::bunker, HazardSide::in_the_middle, 225.0, 245.0);
  CHECK(policy_change_words(change, Units::yards) ==
        "5-wood instead of driver, which leaves about 161 yards and keeps away from the bunker in the middle at "
        "225-245");
  change.shorter = true;
  CHECK(policy_change_words(change, Units::yards) ==
        "driver would find the bunker in the middle at 225-245, so 5-wood");
  change.comes_into_reach = true;
  CHECK(policy_change_words(change, Units::yards) ==
        "driver would now reach the bunker in the middle at 225-245, so 5-wood");
}

TEST_CASE("why the aim changed, and what can now be carried") {
  PolicyChange aim = change_of(PolicyChange::Kind::other_aim);
  aim.club = "driver";
  aim.aim_moves_yd = 5.0;
  CHECK(policy_change_words(aim, Units::yards) == "aim moves 5 yards right");
  aim.aim_moves_yd = -9.0;
  aim.avoided = hazard_at(Ground::out_of_bounds, HazardSide::right, 0.0, 480.0);
  aim.avoided->all_along = true;
  CHECK(policy_change_words(aim, Units::yards) ==
        "aim moves 9 yards left, away from the out of bounds right, all along");
  aim.carry_now_on = {hazard_at(Ground::penalty_area, HazardSide::across, 190.0, 214.0), 214.0};
  CHECK(policy_change_words(aim, Units::yards) ==
        "the carry over the penalty area at 214 is now on with driver: aim moves 9 yards left, away from the out of "
        "bounds right, all along");
  PolicyChange club = change_of(PolicyChange::Kind::other_club);
  club.club = "driver";
  club.carry_now_on = aim.carry_now_on;
  CHECK(policy_change_words(club, Units::metres) == "the carry over the penalty area at 196 is now on with driver");
  club.carry_now_on->hazard.ground = Ground::bunker;
  CHECK(policy_change_words(club, Units::yards) == "driver now carries the bunker across at 190-214");
}
