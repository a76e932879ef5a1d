#include <doctest/doctest.h>
#include <fmt/format.h>

#include <cstdio>
#include <regex>

#include "course/set_up.hpp"
#include "input/derived_table.hpp"
#include "strategy/needed_carry.hpp"
#include "support/courses.hpp"
#include "support/prepared_hole.hpp"
#include "support/scenario.hpp"
#include "yardworth/gain.hpp"
#include "yardworth/read.hpp"

namespace yardworth {
namespace {

// The best tee shot's direction in degrees, right of the line positive.
double best_tee_aim_deg(const Hole& hole, const Player& player, const Baseline& baseline, const test::Mesh& mesh) {
  const test::PreparedHole here(hole, Firmness::normal, 0, player, baseline, mesh);
  const BestPolicy best = test::best_policy(here.model);
  const Action& action = best.exact.policy[static_cast<std::size_t>(here.model.tee_state())];
  return degrees(HoleModel::heading_of(here.model.swing_of(Lie::tee, action), action));
}

// The same clubs, hit with so many times the spread in direction.
Player wilder(Player player, double factor) {
  for (Club& club : player.clubs) club.direction_sd_rad *= factor;
  return player;
}

// A green that only a carry of `carry_yd` reaches: water across the whole hole, boundaries at its sides.
Hole island_hole(int number, double carry_yd) {
  Hole hole = test::open_hole(number, 250.0);
  hole.hazards = {test::across(HazardKind::penalty_area, 230.0 - carry_yd, 230.0),
                  test::boundary(hole, Side::left, 50.0), test::boundary(hole, Side::right, 50.0)};
  return hole;
}

Player golfer_who_carries(double carry_yd) {
  Player player = standard_player(Band::from_21, Gender::men);
  const double factor = carry_yd / player.clubs.front().carry_yd;
  for (Club& club : player.clubs) {
    club.carry_yd *= factor;
    club.carry_sd_yd *= factor;
    club.roll_yd *= factor;
  }
  return player;
}

// As the reader takes a player of one club.
Player one_club_golfer(double carry_yd) {
  const std::string carry = std::to_string(carry_yd);
  const std::string text =
      "format: yardworth/player/1\nlabel: one club\nhandicap_index: 30.4\ngender: men\nunits: yards\nclubs:\n"
      "  - {club: driver, carry: " +
      carry + ", roll: 2, carry_sd: 4, direction_sd: 5, poor_strike: 0.1}\n";
  return *read_player(text, "one club").value;
}

}  // namespace

TEST_CASE("out of bounds down one side moves the best aim away from it, further for the wilder golfer") {
  const Hole open = test::open_hole(1, 410.0);
  Hole right = open;
  right.hazards = {test::boundary(open, Side::right, 25.0)};
  Hole left = open;
  left.hazards = {test::boundary(open, Side::left, 25.0)};
  const Player straight = standard_player(Band::from_6_to_12, Gender::men);
  const Player wild = wilder(straight, 1.6);
  const Baseline baseline(derived_table(Band::from_6_to_12, Gender::men));
  const test::Mesh mesh;
  const double straight_right = best_tee_aim_deg(right, straight, baseline, mesh);
  const double wild_right = best_tee_aim_deg(right, wild, baseline, mesh);
  const double straight_left = best_tee_aim_deg(left, straight, baseline, mesh);
  const double wild_left = best_tee_aim_deg(left, wild, baseline, mesh);
  std::printf(
      "best aim off the middle, degrees: boundary right %+.2f, wilder %+.2f; boundary left %+.2f, wilder %+.2f\n",
      straight_right, wild_right, straight_left, wild_left);
  CHECK(straight_right < 0.0);
  CHECK(wild_right < straight_right);
  CHECK(straight_left > 0.0);
  CHECK(wild_left > straight_left);
}

// Drives of golfers who score about 100 go off line further than those of golfers who score about 80: 5-11 degrees
// against 4-9 (Broadie, Every Shot Counts, fig. 6.3, as reported). With drives of one length they are to keep clearer
// of a boundary. With drives of their own length both spread by as many yards, and aim as many yards away from it.
TEST_CASE("out of bounds down one side moves the best aim further for an index of 28 than for one of 8") {
  const Skill eight = skill_of(8.0, Gender::men);
  const auto aims_away = [&](double index) {
    Skill skill = skill_of(index, Gender::men);
    skill.driver_carry_yd = eight.driver_carry_yd;
    skill.driver_roll_yd = eight.driver_roll_yd;
    const Player player = standard_player(skill, Gender::men);
    const Baseline baseline(derived_table(index, Gender::men));
    const test::Mesh mesh;
    double sum = 0.0;
    for (const double near_yd : {22.0, 25.0, 30.0}) {
      Hole hole = test::open_hole(1, 410.0);
      for (const Side side : {Side::left, Side::right}) {
        hole.hazards = {test::boundary(hole, side, near_yd)};
        const double away = (side == Side::left ? 1.0 : -1.0) * best_tee_aim_deg(hole, player, baseline, mesh);
        CHECK(away > 0.0);
        sum += away;
      }
    }
    return sum / 6.0;
  };
  const double of_eight = aims_away(8.0);
  const double of_twenty_eight = aims_away(28.0);
  std::printf("best aim away from a boundary, degrees: index 8 %.2f, index 28 %.2f\n", of_eight, of_twenty_eight);
  CHECK(of_twenty_eight > 1.2 * of_eight);
}

TEST_CASE("an island green that cannot be reached ends in a statement that names the hole and the carry") {
  const Course course = test::course_of({test::open_hole(6, 150.0), island_hole(7, 190.0)});
  const Player player = golfer_who_carries(120.0);
  const Baseline baseline(derived_table(Band::from_21, Gender::men));
  for (const PolicyChoice policy : {PolicyChoice::habit, PolicyChoice::best, PolicyChoice::both}) {
    GainRequest request;
    request.policy = policy;
    request.change = {10.0, 3.0};
    try {
      compute_gain(course, player, baseline, request);
      FAIL("a hole that cannot be finished was finished");
    } catch (const CannotFinish& stopped) {
      const std::string said = stopped.what();
      std::smatch found;
      CHECK(said.find("cannot be finished with these clubs") != std::string::npos);
      CHECK(said.find("hole 6") == std::string::npos);
      REQUIRE(std::regex_search(said, found, std::regex("hole 7 needs a carry of ([0-9]+)")));
      CHECK(std::abs(std::stod(found[1]) - 190.0) <= 3.0);
      REQUIRE(stopped.holes().size() == 1);
      CHECK(stopped.holes().front().number == 7);
      CHECK(std::abs(stopped.holes().front().needed_carry_yd - 190.0) <= 3.0);
    }
  }
}

// What is said of a hole: the strokes, or that it cannot be finished.
std::string said_of(const Course& course, const Player& player, PolicyChoice policy) {
  GainRequest request;
  request.policy = policy;
  request.change = {10.0, 0.0};
  const Baseline baseline(derived_table(Band::from_21, Gender::men));
  try {
    const GainResult result = compute_gain(course, player, baseline, request);
    const PolicyGain& begins = result.habit ? *result.habit : *result.best;
    return fmt::format("takes strokes, more than 30: {}", begins.round.before > 30.0);
  } catch (const CannotFinish& stopped) {
    return stopped.what();
  }
}

// Strips of water with next to no land between them, where nearly every stroke of a short hitter costs a penalty, and
// greens that only a few strikes of a hundred come to: with more land, or less water, the hole takes more strokes than
// anybody plays on for, and with less of it there is no end.
TEST_CASE("one verdict for both plans on a hole that can hardly be finished, in the same words") {
  const auto strips = [](double length_yd, double apart_yd, double water_yd) {
    Hole hole = test::open_hole(3, length_yd);
    for (int i = 0; i < 140; ++i) {
      const double from = 60.0 + apart_yd * i;
      hole.hazards.push_back(test::across(HazardKind::penalty_area, from, from + water_yd));
    }
    return test::course_of({hole});
  };
  const Player short_hitter = one_club_golfer(40.0);
  for (const Course& course : {strips(960.0, 6.4, 6.2), strips(480.0, 2.85, 2.84)}) {
    const std::string habit = said_of(course, short_hitter, PolicyChoice::habit);
    CAPTURE(habit);
    CHECK(habit.find("cannot be finished with these clubs in") == 0);
    CHECK(habit.find("strokes a hole: hole 3 ") != std::string::npos);
    CHECK(said_of(course, short_hitter, PolicyChoice::best) == habit);
    CHECK(said_of(course, short_hitter, PolicyChoice::both) == habit);
  }
  const Player player = golfer_who_carries(120.0);
  int stopped = 0;
  for (const double carry : {100.0, 120.0, 130.0, 140.0, 160.0}) {
    CAPTURE(carry);
    const Course course = test::course_of({island_hole(7, carry)});
    const std::string habit = said_of(course, player, PolicyChoice::habit);
    CHECK(said_of(course, player, PolicyChoice::best) == habit);
    CHECK(said_of(course, player, PolicyChoice::both) == habit);
    CHECK(habit.find("more than 30: true") == std::string::npos);
    stopped += habit.find("cannot be finished with these clubs in 30 strokes a hole: hole 7 needs") == 0 ? 1 : 0;
  }
  CHECK(stopped >= 2);
  CHECK(stopped <= 4);
}

// On the 7th the search for the best plan of this golfer has to begin again on a closer grid.
TEST_CASE("the habit is worth the same by itself and beside the best plan, however the search goes") {
  const Player player = test::scenario_member("28-woman");
  const Baseline baseline = test::baseline_of(player);
  GainRequest request;
  request.tee = test::middle_tee;
  request.change = {20.0, 6.0};
  request.holes = {7};
  request.policy = PolicyChoice::habit;
  const StepValues alone = compute_gain(test::scenario_course(), player, baseline, request).habit->round;
  request.policy = PolicyChoice::both;
  const GainResult both = compute_gain(test::scenario_course(), player, baseline, request);
  CHECK(both.habit->round.before == alone.before);
  CHECK(both.habit->round.followed() == alone.followed());
  CHECK(both.best->round.before <= alone.before);
}

TEST_CASE("a hole that takes many strokes by its length alone has its number, and a caution") {
  const Course course = test::course_of({test::open_hole(3, 480.0)});
  const Player player = one_club_golfer(8.0);
  const Baseline baseline(derived_table(Band::from_21, Gender::men));
  GainRequest request;
  request.change = {2.0, 0.0};
  for (const PolicyChoice policy : {PolicyChoice::habit, PolicyChoice::best}) {
    request.policy = policy;
    const GainResult result = compute_gain(course, player, baseline, request);
    CHECK(result.answer().round.before > numerics::strokes_with_caution);
    CHECK(result.cautions.back().kind == Caution::Kind::many_strokes);
    CHECK(result.cautions.back().strokes == result.answer().round.before);
  }
}

TEST_CASE("the same green is finished by a golfer who carries that far") {
  const Course course = test::course_of({island_hole(7, 190.0)});
  const Player player = golfer_who_carries(230.0);
  const Baseline baseline(derived_table(Band::from_21, Gender::men));
  GainRequest request;
  request.policy = PolicyChoice::both;
  const GainResult result = compute_gain(course, player, baseline, request);
  CHECK(result.best->round.before > 3.0);
  CHECK(result.best->round.before <= result.habit->round.before + 1e-12);
}

// Gaps worked by hand from the files' numbers. The map is looked at in cells of 3 yards, so that a gap is right to 3.
TEST_CASE("the needed carry is the widest gap on the easiest way") {
  const auto needed = [](const Hole& hole) {
    const HoleMap map(hole, Firmness::normal);
    return needed_carry_yd(map, map.tee(hole.length_yd.front()));
  };
  const Hole open = test::open_hole(1, 400.0);
  CHECK(needed(open) == 0.0);

  Hole beside = open;
  beside.hazards = {hazard_beside(HazardKind::penalty_area, Side::left, 50.0, 380.0, 10.0, farthest_out_yd)};
  CHECK(needed(beside) == 0.0);

  Hole once = open;
  once.hazards = {test::across(HazardKind::penalty_area, 100.0, 180.0)};
  CHECK(std::abs(needed(once) - 80.0) <= 3.0);

  Hole twice = once;
  twice.hazards.push_back(test::across(HazardKind::penalty_area, 230.0, 270.0));
  CHECK(std::abs(needed(twice) - 80.0) <= 3.0);

  // 60 on the left half, 120 on the right half: the golfer goes left.
  Hole uneven = open;
  uneven.hazards = {test::across(HazardKind::penalty_area, 100.0, 160.0),
                    hazard_beside(HazardKind::penalty_area, Side::right, 160.0, 220.0, 0.0, farthest_out_yd)};
  CHECK(std::abs(needed(uneven) - 60.0) <= 3.0);

  // An island 30 yards long in 190 yards of water: 80 and 80, not 190.
  Hole stepping = open;
  stepping.hazards = {test::across(HazardKind::penalty_area, 100.0, 180.0),
                      test::across(HazardKind::penalty_area, 210.0, 290.0)};
  CHECK(std::abs(needed(stepping) - 80.0) <= 3.0);

  CHECK(std::abs(needed(island_hole(1, 190.0)) - 190.0) <= 3.0);
}

}  // namespace yardworth
