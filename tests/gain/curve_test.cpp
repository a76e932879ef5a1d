#include <doctest/doctest.h>

#include "course/set_up.hpp"
#include "input/derived_table.hpp"
#include "support/courses.hpp"
#include "yardworth/gain.hpp"

namespace yardworth {
namespace {

// A golfer whose driver carries 200 yards, rolls a tenth of it, and spreads by 4 yards and a degree, never struck
// poorly.
Player sure_driver() {
  Player player = standard_player(Band::from_13_to_20, Gender::men);
  Club& driver = player.clubs.front();
  driver.carry_yd = 200.0;
  driver.roll_yd = 20.0;
  driver.carry_sd_yd = 4.0;
  driver.carry_sd_floor_yd = 0.0;
  driver.direction_sd_rad = 0.0175;
  driver.poor_strike = 0.0;
  return player;
}

std::vector<CurvePoint> curve_of(Method method) {
  Hole hole = test::open_hole(7, 420.0);
  hole.hazards = {hazard_beside(HazardKind::bunker, Side::left, 300.0, 320.0, 30.0, 40.0),
                  hazard_beside(HazardKind::bunker, Side::right, 240.0, 260.0, 30.0, 40.0),
                  hazard_beside(HazardKind::bunker, Side::right, 190.0, 205.0, 30.0, 40.0)};
  GainRequest request;
  request.change.driver_carry_yd = 20.0;
  request.policy = PolicyChoice::habit;
  request.method = method;
  return compute_curve(test::course_of({hole}), sure_driver(),
                       Baseline(derived_table(Band::from_13_to_20, Gender::men)), request, 25.0, 5.0);
}

}  // namespace

// The tee shots finish at 1.1 times their carry, spread by 4.4 yards: one in ten passes 240 yards where 1.2816 x 4.4
// more than the mean do, from 213 yards of carry on. At 200 all pass 190, and at 225, 247.5 on average, none 300.
TEST_CASE("a curve tells where a hazard comes into reach, as worked by hand") {
  const std::vector<CurvePoint> curve = curve_of(Method::play);
  REQUIRE(curve.size() == 6);
  for (std::size_t i = 0; i < curve.size(); ++i) {
    CAPTURE(curve[i].change.driver_carry_yd);
    REQUIRE(curve[i].into_reach.size() == (i == 3 ? 1 : 0));
  }
  const HazardInReach& reached = curve[3].into_reach.front();
  CHECK(curve[3].change.driver_carry_yd == 15.0);
  CHECK(reached.hole == 7);
  CHECK(reached.hazard.hazard == 1);
  CHECK(reached.hazard.from_yd == doctest::Approx(240.0).epsilon(0.01));
}

TEST_CASE("with method table a curve tells of no hazards, since nobody looks at them") {
  for (const CurvePoint& point : curve_of(Method::table)) CHECK(point.into_reach.empty());
}

}  // namespace yardworth
