#include <doctest/doctest.h>

#include "input/derived_table.hpp"
#include "strategy/shot_at_hole.hpp"
#include "support/courses.hpp"
#include "support/prepared_hole.hpp"
#include "yardworth/read.hpp"

namespace yardworth {
namespace {

// Beyond the reach of every club in one stroke.
constexpr double far_yd = 560.0;

struct Ditch {
  double from, to;
};

// What the scratch golfer's habit plays down the middle of a hole from the tee, by club: -1 where it is a shot at the
// hole. Beside it the club's carry, spread and total on a fairway.
struct LayUp {
  Action action;
  Swing swing;
};

LayUp lay_up_before(Ditch ditch, Lie lie = Lie::tee) {
  const Player player = standard_player(Band::scratch, Gender::men);
  const Baseline baseline(derived_table(player.band, player.gender));
  const test::Mesh mesh;
  Hole hole = test::open_hole(1, far_yd);
  hole.fairway = {{0.0, far_yd - 20.0, 60.0, 60.0}};
  if (ditch.to > ditch.from) hole.hazards = {test::across(HazardKind::penalty_area, ditch.from, ditch.to)};
  const test::PreparedHole here(hole, Firmness::normal, 0, player, baseline, mesh);
  const Action action = habit_action(here.model, lie, here.model.tee());
  return {action, here.model.swing_of(lie, action)};
}

double total_of(const Swing& swing) { return swing.total_yd(1.0); }
double spread_of(const Swing& swing) { return swing.carry_yd * swing.carry_sd_share; }

// A wedge whose spread of carry grows from 2 yards by a twelfth of its carry.
Swing wedge_on_line(double carry_yd) {
  Swing swing;
  swing.carry_yd = carry_yd;
  swing.half_swing_yd = half_swing * carry_yd;
  swing.carry_sd_floor_yd = 2.0;
  swing.carry_sd_share = (2.0 + carry_yd / 12.0) / carry_yd;
  swing.direction_scale_rad = 0.07;
  swing.roll_share = 0.03;
  swing.poor_strike = 0.04;
  return swing;
}

}  // namespace

// Rounding is not to choose the club: which of two equal numbers is the larger in the last digit depends on the
// machine.
TEST_CASE("of two wedges that spread alike when played down the shorter is played") {
  std::vector<Swing> swings = {wedge_on_line(113.0), wedge_on_line(101.0)};
  for (double carry = 57.0; carry <= 101.0; carry += 0.37) {
    CAPTURE(carry);
    CHECK(fitting_swing(swings, [&](const Swing&) { return carry; }) == 1);
  }
  CHECK(fitting_swing(swings, [](const Swing&) { return 102.0; }) == 0);
  swings[0].poor_strike = 0.03;
  CHECK(fitting_swing(swings, [](const Swing&) { return 90.0; }) == 0);
}

// Common practice, no source.
TEST_CASE("the habit lays up short of a ditch by a spread of the carry, and no club further than it has to") {
  const Swing longest = lay_up_before({0.0, 0.0}).swing;
  const double reach = total_of(longest);
  const double margin = spread_of(longest) * (1.0 + longest.roll_share);
  CHECK(lay_up_before({reach + margin + 1.0, reach + margin + 200.0}).action.swing == 0);
  CHECK(lay_up_before({reach + margin - 1.0, reach + margin + 200.0}).action.swing == 1);
  for (double from = 90.0; from < reach + margin; from += 7.0) {
    CAPTURE(from);
    const LayUp played = lay_up_before({from, from + 300.0});
    const double room = from - total_of(played.swing);
    CHECK(room > spread_of(played.swing));
  }
}

TEST_CASE("the habit carries a ditch that it clears by a spread of the carry, and else stays short of it") {
  const Swing longest = lay_up_before({0.0, 0.0}).swing;
  const double short_carry = longest.carry_yd - spread_of(longest);
  CHECK(lay_up_before({60.0, short_carry - 1.0}).action.swing == 0);
  const LayUp stays_short = lay_up_before({short_carry - 30.0, short_carry + 1.0});
  CHECK(stays_short.action.swing > 0);
  CHECK(total_of(stays_short.swing) < short_carry - 30.0 - spread_of(stays_short.swing));
}

TEST_CASE("where no club has the margin the habit plays the longest that stays out of trouble without it") {
  const Swing longest = lay_up_before({0.0, 0.0}).swing;
  // Nothing is short of this ditch, and the driver clears it by less than its spread.
  CHECK(lay_up_before({3.0, longest.carry_yd - 1.0}).action.swing == 0);
  // Nothing at all is out of trouble.
  CHECK(lay_up_before({3.0, far_yd - 60.0}).action.swing == 0);
  // Among trees no margin is asked for.
  const LayUp out = lay_up_before({0.0, 0.0}, Lie::recovery);
  CHECK(lay_up_before({total_of(out.swing) + 1.0, far_yd - 60.0}, Lie::recovery).action.swing == out.action.swing);
}

}  // namespace yardworth
