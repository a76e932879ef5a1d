#include <doctest/doctest.h>

#include <array>
#include <string>
#include <vector>

#include "core/parallel.hpp"
#include "gain/bag_places.hpp"
#include "gain/tee_shot.hpp"
#include "support/courses.hpp"
#include "support/sanitized.hpp"
#include "support/scenario.hpp"
#include "yardworth/bands.hpp"

namespace yardworth {

namespace {

HoleGain hole_with(int par, BagPlaces before, BagPlaces after) {
  HoleGain hole;
  hole.par = par;
  hole.before.next_places = std::move(before);
  hole.after.next_places = std::move(after);
  if (par > 3) hole.clubs_shorter = mean_place(hole.after.next_places) - mean_place(hole.before.next_places);
  return hole;
}

Player three_clubs() {
  Player player = standard_player(Band::from_13_to_20, Gender::men);
  player.clubs.resize(3);
  player.clubs[0].name = "5-iron";
  player.clubs[0].carry_yd = 150.0;
  player.clubs[1].name = "driver";
  player.clubs[1].carry_yd = 200.0;
  player.clubs[2].name = "9-iron";
  player.clubs[2].carry_yd = 110.0;
  return player;
}

}  // namespace

// docs/model.md, "Second shots", worked by hand there.
TEST_CASE("the case of the model worked by hand: clubs shorter, and the typical second shot") {
  // Lay-up, driver, 5-iron, 9-iron, short game, putter.
  const BagPlaces before = {0.35, 0.2, 0.25, 0.2, 0.0, 0.0};
  const BagPlaces after = {0.2, 0.1, 0.4, 0.2, 0.1, 0.0};
  const HoleGain par_4 = hole_with(4, before, after);
  const HoleGain par_5 = hole_with(5, {1.0, 0.0, 0.0, 0.0, 0.0, 0.0}, {0.7, 0.3, 0.0, 0.0, 0.0, 0.0});
  const HoleGain par_3 = hole_with(3, {0.0, 0.0, 0.0, 0.0, 0.5, 0.5}, {0.0, 0.0, 0.0, 0.0, 0.5, 0.5});
  CHECK(*par_4.clubs_shorter == doctest::Approx(0.6));
  CHECK(places_apart(before, after) == doctest::Approx(0.6));
  const SecondShotChange change = second_shot_change({par_4, par_5, par_3}, three_clubs(), three_clubs());
  CHECK(*change.par_4 == doctest::Approx(0.6));
  CHECK(*change.par_5 == doctest::Approx(0.3));
  CHECK(*change.clubs_shorter == doctest::Approx(0.45));
  CHECK(change.typical_before == "driver");
  CHECK(change.typical_after == "5-iron");
}

// Second shots of the par 4s of the 13-20 band, men, from the middle tees of the scenario, before and after 20 yards
// with the driver and 6 with the irons, in ten-thousandths as on 29 November 2026. By hand: 2 x 0.1947 + 3 x 0.1387 +
// 4 x 0.0721 + ... = 2.3525 and 2 x 0.1120 + 3 x 0.1768 + 4 x 0.1026 + ... = 3.6596, so 1.3071 clubs shorter. Half is
// reached at the third place before (0.4154 + 0 + 0.1947 = 0.6101), at the fourth after (0.2794 + 0 + 0.1120 + 0.1768 =
// 0.5682): from 3-wood to 5-wood.
TEST_CASE("a band worked by hand: clubs shorter, and the typical second shot") {
  const BagPlaces before = {0.4154, 0.0,    0.1947, 0.1387, 0.0721, 0.0594, 0.0325, 0.0229,
                            0.0227, 0.0147, 0.0130, 0.0074, 0.0053, 0.0008, 0.0005, 0.0};
  const BagPlaces after = {0.2794, 0.0,    0.1120, 0.1768, 0.1026, 0.0862, 0.0575, 0.0422,
                           0.0356, 0.0331, 0.0268, 0.0194, 0.0161, 0.0061, 0.0062, 0.0};
  const Player player = standard_player(Band::from_13_to_20, Gender::men);
  const SecondShotChange change = second_shot_change({hole_with(4, before, after)}, player, player);
  CHECK(*change.par_4 == doctest::Approx(1.3071));
  // Rounded, the two do not add up to quite the same.
  CHECK(places_apart(before, after) == doctest::Approx(1.3071).epsilon(0.002));
  CHECK(change.typical_before == "3-wood");
  CHECK(change.typical_after == "5-wood");
}

TEST_CASE("without holes longer than a par 3 there is no second shot to tell of") {
  const SecondShotChange change =
      second_shot_change({hole_with(3, {0.0, 1.0}, {0.0, 1.0})}, three_clubs(), three_clubs());
  CHECK_FALSE(change.clubs_shorter);
  CHECK_FALSE(change.par_4);
  CHECK_FALSE(change.par_5);
  CHECK(change.typical_before.empty());
}

TEST_CASE("the bag is taken longest first, whatever the order of the file") {
  const BagOrder order(three_clubs());
  CHECK(order.name_of(BagOrder::lay_up) == "lay-up");
  CHECK(order.place_of(1) == 1);
  CHECK(order.place_of(0) == 2);
  CHECK(order.place_of(2) == 3);
  CHECK(order.name_of(order.short_game()) == "short game");
  CHECK(order.name_of(order.putter()) == "putter");
}

// Every band, men and women, from every tee of the scenario and of a course without hazards.
TEST_CASE("under the habit the typical second shot is never longer after a gain") {
  for (Course course : {test::scenario_course(), test::standard_course()}) {
    course.holes.resize(9);
    for (Tee& tee : course.tees) tee.course_rating.reset();  // of 18 holes
    BandsRequest request;
    request.change = {20.0, 6.0};
    int shorter = 0;
    for (const BandOnTee& golfer : compute_bands(course, request).golfers) {
      if (!golfer.cannot_finish.empty()) continue;
      const std::string where =
          std::string(name(golfer.band)) + " " + std::string(name(golfer.gender)) + " " + std::to_string(golfer.tee);
      const BagPlaces& before = golfer.before.second_shots;
      const BagPlaces& after = golfer.after.second_shots;
      CHECK_MESSAGE(middle_place(after) >= middle_place(before), where);
      CHECK_MESSAGE(mean_place(after) > mean_place(before), where);
      if (middle_place(after) > middle_place(before)) ++shorter;
    }
    CHECK(shorter > 0);
    if (test::sanitized) break;
  }
}

}  // namespace yardworth
