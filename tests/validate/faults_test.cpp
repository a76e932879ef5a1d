#include <doctest/doctest.h>

#include <functional>
#include <limits>
#include <string>
#include <vector>

#include "baseline/published.hpp"
#include "support/scenario.hpp"
#include "support/words.hpp"
#include "yardworth/limits.hpp"
#include "yardworth/read.hpp"

// Things that are broken by hand, one limit at a time.

namespace yardworth {
namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();

template <class T>
std::string faults_of(const T& thing) {
  std::string lines;
  for (const Diagnostic& finding : validate(thing)) lines += to_line(finding) + "\n";
  return lines;
}

// What breaks a thing, and what is said of it.
template <class T>
struct Break {
  std::function<void(T&)> change;
  std::string words;
};

template <class T>
void check_each(const T& whole, const std::vector<Break<T>>& breaks) {
  REQUIRE(faults_of(whole).empty());
  for (const Break<T>& one : breaks) {
    T broken = whole;
    one.change(broken);
    const std::string told = faults_of(broken);
    CAPTURE(one.words);
    CHECK_MESSAGE(test::says(told, one.words), told);
  }
}

// A number of a thing with its limits, which are tried on both sides, as NaN and as infinity.
template <class T>
struct Number {
  std::function<double&(T&)> at;
  Limits limits;
  const char* path;
};

template <class T>
void check_limits(const T& whole, const std::vector<Number<T>>& numbers) {
  for (const Number<T>& number : numbers) {
    const Limits& limits = number.limits;
    const double step = 1e-3 * (limits.high - limits.low);
    for (const double value : {limits.low - step, limits.high + step, nan, std::numeric_limits<double>::infinity()}) {
      T broken = whole;
      number.at(broken) = value;
      const std::string told = faults_of(broken);
      CAPTURE(value);
      CHECK_MESSAGE(test::says(told, number.path + std::string(": found ")), number.path << " " << told);
    }
  }
}

Limits in_radians(const Limits& degrees) { return {radians(degrees.low), radians(degrees.high)}; }

Hole& hole(Course& course) { return course.holes[0]; }

// The first hole of the scenario: a dogleg, a fairway, strips beside and across, a polygon last.
Hazard& strip(Course& course) { return hole(course).hazards[0]; }
Hazard& water(Course& course) { return hole(course).hazards[1]; }
Hazard& polygon(Course& course) { return hole(course).hazards[4]; }

}  // namespace

TEST_CASE("each number of a course that is beyond its limits is reported") {
  using N = Number<Course>;
  check_limits<Course>(
      test::scenario_course(),
      {N{[](Course& c) -> double& { return hole(c).length_yd[0]; }, limits::hole_length, "holes[0].length.back"},
       N{[](Course& c) -> double& { return hole(c).length_yd[2]; }, limits::hole_length, "holes[0].length.forward"},
       N{[](Course& c) -> double& { return hole(c).doglegs[0].at_yd; }, limits::along_hole, "holes[0].dogleg[0].at"},
       N{[](Course& c) -> double& { return hole(c).doglegs[0].turn_rad; }, in_radians(limits::turn),
         "holes[0].dogleg[0].turn"},
       N{[](Course& c) -> double& { return hole(c).fairway[0].from_yd; }, limits::along_hole,
         "holes[0].fairway[0].from"},
       N{[](Course& c) -> double& { return hole(c).fairway[0].to_yd; }, limits::along_hole, "holes[0].fairway[0].to"},
       N{[](Course& c) -> double& { return hole(c).fairway[0].left_yd; }, limits::half_width,
         "holes[0].fairway[0].left"},
       N{[](Course& c) -> double& { return hole(c).fairway[0].right_yd; }, limits::half_width,
         "holes[0].fairway[0].right"},
       N{[](Course& c) -> double& { return hole(c).green.depth_yd; }, limits::green_extent, "holes[0].green.depth"},
       N{[](Course& c) -> double& { return hole(c).green.width_yd; }, limits::green_extent, "holes[0].green.width"},
       N{[](Course& c) -> double& { return strip(c).from_yd; }, limits::along_hole, "holes[0].hazards[0].from"},
       N{[](Course& c) -> double& { return strip(c).to_yd; }, limits::along_hole, "holes[0].hazards[0].to"},
       N{[](Course& c) -> double& { return strip(c).near_yd; }, limits::from_line, "holes[0].hazards[0].near"},
       N{[](Course& c) -> double& { return strip(c).far_yd; }, limits::from_line, "holes[0].hazards[0].far"},
       N{[](Course& c) -> double& { return water(c).far_yd; }, limits::from_line, "holes[0].hazards[1].far"},
       N{[](Course& c) -> double& { return polygon(c).corners[1].right_yd; }, limits::beside_line,
         "holes[0].hazards[4].polygon[1]"},
       N{[](Course& c) -> double& { return polygon(c).corners[1].along_yd; }, limits::along_hole,
         "holes[0].hazards[4].polygon[1]"},
       N{[](Course& c) -> double& { return c.tees[0].course_rating.emplace(70.0); }, limits::rating_of_18_holes,
         "tees[0].course_rating"},
       N{[](Course& c) -> double& { return c.tees[0].slope.emplace(113.0); }, limits::slope, "tees[0].slope"}});
}

TEST_CASE("each part of a course that does not go with the others is reported") {
  using B = Break<Course>;
  check_each<Course>(
      test::scenario_course(),
      {B{[](Course& c) { c.name.clear(); }, "course: fault: name: found \"\", expected text"},
       B{[](Course& c) { c.name.assign(1001, 'x'); }, "text of at most 1000 bytes"},
       B{[](Course& c) { c.tees.clear(); }, "tees: found a list of 0, expected from 1 to 20 tees"},
       B{[](Course& c) { c.tees.resize(21); }, "tees: found a list of 21"},
       B{[](Course& c) { c.tees[1].name = "back"; }, "tees[1]: found the tee \"back\" again"},
       B{[](Course& c) { c.tees[1].name = " "; }, "tees[1].name: found"},
       B{[](Course& c) {
           for (Hole& each : c.holes) std::swap(each.length_yd[0], each.length_yd[2]);
         },
         "tees longest first"},
       B{[](Course& c) { c.holes.clear(); }, "holes: found a list of 0, expected from 1 to 18 holes"},
       B{[](Course& c) {
           c.holes.push_back(c.holes[17]);
           c.holes[18].number = 19;
         },
         "holes[18].number: found 19"},
       B{[](Course& c) { hole(c).number = 2; }, "holes[1].number: found hole 2 again"},
       B{[](Course& c) { hole(c).number = 0; }, "holes[0].number: found 0, expected a whole number from 1 to 18"},
       B{[](Course& c) { std::swap(c.holes[3], c.holes[4]); }, "holes[4].number: found hole 4 after hole 5"},
       B{[](Course& c) { hole(c).stroke_index = c.holes[1].stroke_index; }, "stroke_index: found stroke index"},
       B{[](Course& c) { hole(c).stroke_index = 19; }, "holes[0].stroke_index: found 19"},
       B{[](Course& c) { hole(c).par = 2; }, "holes[0].par: found 2, expected a whole number from 3 to 6"},
       B{[](Course& c) { hole(c).par = 7; }, "holes[0].par: found 7"},
       B{[](Course& c) { hole(c).length_yd.pop_back(); }, "holes[0].length: found 2 lengths, expected 3"},
       B{[](Course& c) { hole(c).doglegs[0].at_yd = 900.0; }, "a place between the longest tee and the green"},
       B{[](Course& c) { hole(c).doglegs.resize(2, hole(c).doglegs[0]); }, "of the dogleg before"},
       B{[](Course& c) {
           hole(c).doglegs.push_back({hole(c).doglegs[0].at_yd + 0.1, -1.5});
         },
         "does not fold"},
       B{[](Course& c) { hole(c).doglegs.resize(201); }, "dogleg: found a list of 201"},
       B{[](Course& c) { hole(c).fairway[0].left_yd = hole(c).fairway[0].right_yd = 0.0; }, "a fairway without width"},
       B{[](Course& c) { hole(c).fairway[0].to_yd = hole(c).fairway[0].from_yd; }, "fairway[0].to: found"},
       B{[](Course& c) { hole(c).fairway[0].from_yd = -1.0; }, "0, the longest tee, or more"},
       B{[](Course& c) { hole(c).fairway[0].to_yd = 999.0; }, "at most the hole's length"},
       B{[](Course& c) { hole(c).fairway.push_back(hole(c).fairway[0]); }, "the end of the one before"},
       B{[](Course& c) { hole(c).fairway.resize(201); }, "fairway: found a list of 201"},
       B{[](Course& c) { hole(c).hazards.resize(201, strip(c)); }, "hazards: found a list of 201"},
       B{[](Course& c) { strip(c).side.reset(); }, "hazards[0].side: found nothing"},
       B{[](Course& c) { polygon(c).side = Side::left; }, "hazards[4].side: found side beside polygon"},
       B{[](Course& c) { strip(c).to_yd = strip(c).from_yd; }, "hazards[0].to: found"},
       B{[](Course& c) { strip(c).from_yd = 800.0, strip(c).to_yd = 810.0; }, "a hazard wholly off the hole"},
       B{[](Course& c) { strip(c).near_yd = 210.0, strip(c).far_yd = 220.0; }, "hazards[0].near: found 210 yards"},
       B{[](Course& c) { strip(c).far_yd = strip(c).near_yd; }, "hazards[0].far: found"},
       B{[](Course& c) { strip(c).side = Side::left, strip(c).from_yd = 239.0, strip(c).to_yd = 241.0; },
         "a hazard wholly inside the corner"},
       B{[](Course& c) { polygon(c).corners.resize(2); }, "hazards[4].polygon: found a list of 2"},
       B{[](Course& c) {
           polygon(c).corners = {{0.0, 0.0}, {9.0, 9.0}, {9.0, 0.0}, {0.0, 9.0}};
         },
         "crosses or touches"},
       B{[](Course& c) {
           polygon(c).corners = {{0.0, 0.0}, {9.0, 9.0}, {18.0, 18.0}};
         },
         "a polygon without area"},
       B{[](Course& c) {
           polygon(c).corners = {{210.0, 0.0}, {220.0, 0.0}, {220.0, 9.0}};
         },
         "wholly off the hole"}});
}

TEST_CASE("each number of a player that is beyond its limits is reported") {
  using N = Number<Player>;
  const Limits angle = in_radians(limits::direction_sd);
  const Limits mean_angle = in_radians(limits::direction_mean);
  std::vector<N> numbers = {
      N{[](Player& p) -> double& { return p.handicap_index.emplace(10.0); }, limits::handicap_index, "handicap_index"},
      N{[](Player& p) -> double& { return p.clubs[1].carry_yd; }, limits::carry, "clubs[1].carry"},
      N{[](Player& p) -> double& { return p.clubs[1].roll_yd; }, limits::roll, "clubs[1].roll"},
      N{[](Player& p) -> double& { return p.clubs[1].carry_sd_yd; }, limits::carry_sd, "clubs[1].carry_sd"},
      N{[](Player& p) -> double& { return p.clubs[1].direction_sd_rad; }, angle, "clubs[1].direction_sd"},
      N{[](Player& p) -> double& { return p.clubs[1].direction_mean_rad; }, mean_angle, "clubs[1].direction_mean"},
      N{[](Player& p) -> double& { return p.clubs[1].poor_strike; }, limits::poor_strike, "clubs[1].poor_strike"},
      N{[](Player& p) -> double& { return p.clubs[1].place; }, {0.0, 1.0}, "clubs[1].place"},
      N{[](Player& p) -> double& { return p.clubs[1].carry_sd_floor_yd; }, {0.0, 100.0}, "clubs[1].carry_sd_floor"},
      N{[](Player& p) -> double& { return p.clubs[1].half_swing_yd; }, {0.0, 420.0}, "clubs[1].half_swing"},
      N{[](Player& p) -> double& { return p.skill.driver_carry_yd; }, limits::carry, "skill.driver_carry"},
      N{[](Player& p) -> double& { return p.skill.driver_roll_yd; }, limits::roll, "skill.driver_roll"},
      N{[](Player& p) -> double& { return p.skill.carry_sd_floor_yd; }, {0.0, 100.0}, "skill.carry_sd_floor"},
      N{[](Player& p) -> double& { return p.skill.carry_sd_share; }, {0.0, 1.0}, "skill.carry_sd_share"},
      N{[](Player& p) -> double& { return p.skill.driver_direction_sd_rad; }, angle, "skill.driver_direction_sd"},
      N{[](Player& p) -> double& { return p.skill.hybrid_direction_sd_rad; }, angle, "skill.hybrid_direction_sd"},
      N{[](Player& p) -> double& { return p.skill.wedge_direction_sd_rad; }, angle, "skill.wedge_direction_sd"},
      N{[](Player& p) -> double& { return p.skill.direction_mean_rad; }, mean_angle, "skill.direction_mean"},
      N{[](Player& p) -> double& { return p.skill.driver_poor_strike; }, limits::poor_strike, "driver_poor_strike"},
      N{[](Player& p) -> double& { return p.skill.wedge_poor_strike; }, limits::poor_strike, "wedge_poor_strike"},
      N{[](Player& p) -> double& { return p.skill.putting.direction_sd_rad; },
        {0.0, radians(30.0)},
        "putting.direction_sd"},
      N{[](Player& p) -> double& { return p.skill.putting.distance_sd_share; },
        {0.0, 1.0},
        "putting.distance_sd_share"}};
  for (LieEffect Skill::*lie : {&Skill::fairway, &Skill::rough, &Skill::bunker, &Skill::recovery}) {
    numbers.push_back(
        N{[lie](Player& p) -> double& { return (p.skill.*lie).carry_factor; }, {0.01, 1.0}, "carry_factor"});
    numbers.push_back(
        N{[lie](Player& p) -> double& { return (p.skill.*lie).carry_sd_factor; }, {1.0, 10.0}, "carry_sd_factor"});
    numbers.push_back(N{[lie](Player& p) -> double& { return (p.skill.*lie).direction_sd_factor; },
                        {1.0, 10.0},
                        "direction_sd_factor"});
    numbers.push_back(
        N{[lie](Player& p) -> double& { return (p.skill.*lie).poor_strike_added; }, {0.0, 1.0}, "poor_strike_added"});
  }
  for (Touch ShortGameSkill::*touch :
       {&ShortGameSkill::fairway, &ShortGameSkill::rough, &ShortGameSkill::bunker, &ShortGameSkill::recovery}) {
    numbers.push_back(N{[touch](Player& p) -> double& { return (p.skill.short_game.*touch).spread_floor_yd; },
                        {0.0, 100.0},
                        "spread_floor"});
    numbers.push_back(N{[touch](Player& p) -> double& { return (p.skill.short_game.*touch).spread_share; },
                        {0.0, 1.0},
                        "spread_share"});
    numbers.push_back(N{
        [touch](Player& p) -> double& { return (p.skill.short_game.*touch).poor_strike; }, {0.0, 1.0}, "poor_strike"});
  }
  check_limits<Player>(test::scenario_member("weekend-16-man"), numbers);
}

TEST_CASE("each part of a player that does not go with the others is reported") {
  using B = Break<Player>;
  check_each<Player>(
      test::scenario_member("weekend-16-man"),
      {B{[](Player& p) { p.label.clear(); }, "player: fault: label: found \"\", expected text"},
       B{[](Player& p) { p.clubs.clear(); }, "clubs: found a list of 0, expected from 1 to 30 clubs"},
       B{[](Player& p) { p.clubs.resize(31, p.clubs.back()); }, "clubs: found a list of 31"},
       B{[](Player& p) { p.clubs[2].name.clear(); }, "clubs[2].club: found"},
       B{[](Player& p) { p.clubs[2].carry_yd = 0.0; },
         "clubs[2].carry: found 0, expected a number from 5 to 420 yards"},
       B{[](Player& p) { p.clubs[2].name = p.clubs[1].name; }, "again, expected each club once"},
       B{[](Player& p) { p.clubs[2].name = "PUTTER"; }, "clubs[2]: found a putter"},
       B{[](Player& p) { p.clubs[2].kind = ClubKind::driver; }, "clubs[2]: found a second driver"},
       B{[](Player& p) { std::swap(p.clubs[1], p.clubs[2]); }, "clubs[2]: found a carry of"},
       B{[](Player& p) { p.clubs[2].carry_sd_yd = 0.6 * p.clubs[2].carry_yd; }, "at most half the carry"}});
}

TEST_CASE("each fault of a table is reported") {
  using B = Break<BaselineTable>;
  check_each<BaselineTable>(
      tour_table(),
      {B{[](BaselineTable& t) { t.name.clear(); }, "baseline: fault: name"},
       B{[](BaselineTable& t) { t.source.clear(); }, "baseline: fault: source"},
       B{[](BaselineTable& t) {
           t.rough = {{100.0}, {3.0}};
         },
         "rough: found a list of 1, expected from 2 to 2000"},
       B{[](BaselineTable& t) { t.rough.strokes.pop_back(); }, "rough: found 29 strokes, expected 30"},
       B{[](BaselineTable& t) { t.tee.distance[3] = t.tee.distance[2]; }, "tee[3]: found 140, expected more than"},
       B{[](BaselineTable& t) { t.tee.distance[3] = 1001.0; }, "tee[3]: found 1001, expected a number from 0 to 1000"},
       B{[](BaselineTable& t) { t.green.distance[3] = 301.0; }, "green[3]: found 301, expected a number from 0 to 300"},
       B{[](BaselineTable& t) { t.bunker.strokes[0] = nan; }, "bunker[0]: found nan, which is not a finite number"},
       B{[](BaselineTable& t) { t.bunker.strokes[0] = 21.0; }, "bunker[0]: found 21, expected a number from 0 to 20"}});
}

TEST_CASE("all faults are reported at once") {
  Course course = test::scenario_course();
  hole(course).par = 9;
  course.holes[7].green.depth_yd = nan;
  course.tees[2].slope = 1.0;
  CHECK(validate(course).size() == 3);
}

}  // namespace yardworth
