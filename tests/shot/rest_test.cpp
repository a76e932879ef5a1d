#include "shot/rest.hpp"

#include <doctest/doctest.h>

#include <boost/random/uniform_int_distribution.hpp>
#include <boost/random/uniform_real_distribution.hpp>
#include <cmath>
#include <limits>
#include <string>
#include <utility>

#include "course/hazard_kind.hpp"
#include "shot/sample.hpp"
#include "shot/samples.hpp"
#include "yardworth/read.hpp"

namespace yardworth {
namespace {

constexpr Point tee{0.0, 0.0};
constexpr Point forward{0.0, 1.0};

HoleMap map_with(std::vector<Hazard> hazards, Firmness firmness = Firmness::normal) {
  Hole hole = sample_hole(400.0, 16.0);
  hole.hazards = std::move(hazards);
  return {hole, firmness};
}

void check_at(const Rest& rest, double x, double y, double tolerance = 1e-9) {
  CHECK(std::abs(rest.at.x - x) <= tolerance);
  CHECK(std::abs(rest.at.y - y) <= tolerance);
  CHECK_FALSE(rest.replay);
}

// The factors of docs/model.md, "Roll": common practice, no source. Worked from roll 20 on a normal fairway.
TEST_CASE("roll by the ground the ball lands on, and by firmness") {
  for (const Firmness firmness : {Firmness::soft, Firmness::normal, Firmness::firm}) {
    const double factor = firmness == Firmness::soft ? 0.6 : firmness == Firmness::normal ? 1.0 : 1.35;
    CAPTURE(factor);
    const HoleMap map = map_with({sample_hazard(HazardKind::trees, 60.0, 120.0, 150.0, 300.0)}, firmness);
    const Rest fairway = come_to_rest(map, tee, forward, 200.0, 20.0);
    check_at(fairway, 0.0, 200.0 + 20.0 * factor);
    CHECK(fairway.lie == Lie::fairway);
    const Rest rough = come_to_rest(map, {40.0, 0.0}, forward, 200.0, 20.0);
    check_at(rough, 40.0, 200.0 + 20.0 * factor * 0.4);
    CHECK(rough.lie == Lie::rough);
    const Rest trees = come_to_rest(map, {90.0, 0.0}, forward, 200.0, 20.0);
    check_at(trees, 90.0, 200.0 + 20.0 * factor * 0.3);
    CHECK(trees.lie == Lie::recovery);
    const Rest green = come_to_rest(map, {0.0, 200.0}, forward, 190.0, 10.0);
    check_at(green, 0.0, 390.0 + 10.0 * factor * 0.7);
    CHECK(green.lie == Lie::green);
    CHECK(green.penalty_strokes == 0);
  }
}

// 4 yards of rough use 10 of a roll of 20; the other 10 run on the fairway.
TEST_CASE("a roll goes on at the pace of the next ground") {
  const HoleMap map = map_with({});
  const Rest onto_fairway = come_to_rest(map, tee, forward, 96.0, 20.0);
  check_at(onto_fairway, 0.0, 110.0);
  CHECK(onto_fairway.lie == Lie::fairway);
  // 10 yards of fairway use 10 of 20, the other 10 run 4 in the rough. With no trouble near, an edge may be
  // met four yards late: that much of fairway instead of rough is 2.4 yards of roll.
  const Rest into_rough = come_to_rest(map, {0.0, 150.0}, forward, 210.0, 20.0);
  check_at(into_rough, 0.0, 374.0, 2.4 + 1e-9);
  CHECK(into_rough.lie == Lie::rough);
  // Sideways off the fairway: 6 yards of fairway use 6 of 10, the other 4 run 1.6 in the rough.
  const Rest sideways = come_to_rest(map, {-90.0, 200.0}, {1.0, 0.0}, 100.0, 10.0);
  check_at(sideways, 17.6, 200.0, 2.4 + 1e-9);
  CHECK(sideways.lie == Lie::rough);
}

TEST_CASE("a bunker holds a ball that lands in it or rolls into it, and not one that flies it") {
  const HoleMap map = map_with({sample_hazard(HazardKind::bunker, -10.0, 10.0, 210.0, 222.0)});
  const Rest lands = come_to_rest(map, tee, forward, 215.0, 20.0);
  check_at(lands, 0.0, 215.0);
  CHECK(lands.lie == Lie::bunker);
  const Rest rolls = come_to_rest(map, tee, forward, 200.0, 20.0);
  CHECK(rolls.lie == Lie::bunker);
  CHECK(rolls.at.y >= 210.0);
  CHECK(rolls.at.y <= 212.0);
  CHECK(rolls.penalty_strokes == 0);
  const Rest short_of_it = come_to_rest(map, tee, forward, 200.0, 9.0);
  check_at(short_of_it, 0.0, 209.0);
  CHECK(short_of_it.lie == Lie::fairway);
  const Rest flies = come_to_rest(map, tee, forward, 223.0, 20.0);
  check_at(flies, 0.0, 243.0);
  CHECK(flies.lie == Lie::fairway);
}

// Rules of Golf (R&A and USGA, 2019 and later), Rule 17.1d, from memory: one stroke, relief behind where the ball last
// crossed the edge. The relief area is 2.5 yards deep here.
TEST_CASE("a penalty area: carried it is nothing, entered it costs a stroke and a drop behind the crossing") {
  const HoleMap map = map_with({sample_hazard(HazardKind::penalty_area, -80.0, 80.0, 200.0, 230.0)});
  const Rest dry = come_to_rest(map, tee, forward, 231.0, 10.0);
  check_at(dry, 0.0, 241.0);
  CHECK(dry.penalty_strokes == 0);
  const Rest lands = come_to_rest(map, tee, forward, 220.0, 10.0);
  check_at(lands, 0.0, 197.5, 0.001);
  CHECK(lands.penalty_strokes == 1);
  CHECK(lands.lie == Lie::fairway);
  const Rest rolls = come_to_rest(map, tee, forward, 190.0, 15.0);
  check_at(rolls, 0.0, 197.5, 0.001);
  CHECK(rolls.penalty_strokes == 1);
  const Rest stops = come_to_rest(map, tee, forward, 190.0, 9.0);
  check_at(stops, 0.0, 199.0);
  CHECK(stops.penalty_strokes == 0);
  // Along a slant the drop is 2.5 yards back along the line of flight.
  const Point slanted = along_heading(0.3);
  const Rest slant = come_to_rest(map, tee, slanted, 225.0, 0.0);
  const double crossing = 200.0 / slanted.y;
  check_at(slant, (crossing - 2.5) * slanted.x, (crossing - 2.5) * slanted.y, 0.001);
  CHECK(slant.lie == Lie::rough);
}

TEST_CASE("the crossing is the last one: water flown on the way does not count") {
  const HoleMap map = map_with({sample_hazard(HazardKind::penalty_area, -80.0, 80.0, 100.0, 120.0),
                                sample_hazard(HazardKind::penalty_area, -80.0, 80.0, 200.0, 230.0)});
  const Rest rest = come_to_rest(map, tee, forward, 215.0, 0.0);
  check_at(rest, 0.0, 197.5, 0.001);
}

TEST_CASE("a drop goes further back over ground that cannot be played, and to the tee when there is no other") {
  const Hazard water = sample_hazard(HazardKind::penalty_area, -80.0, 80.0, 200.0, 230.0);
  const Rest further = come_to_rest(
      map_with({water, sample_hazard(HazardKind::out_of_bounds, -80.0, 80.0, 180.0, 199.0)}), tee, forward, 215.0, 0.0);
  CHECK(further.penalty_strokes == 1);
  CHECK_FALSE(further.replay);
  CHECK(further.at.y < 180.0);
  CHECK(further.at.y > 178.0);
  const HoleMap from_the_edge = map_with({sample_hazard(HazardKind::penalty_area, -80.0, 80.0, 1.0, 230.0)});
  const Rest replay = come_to_rest(from_the_edge, tee, forward, 215.0, 0.0);
  CHECK(replay.replay);
  CHECK(replay.penalty_strokes == 1);
}

// Rule 18.2, from memory: stroke and distance.
TEST_CASE("out of bounds is played again, whether flown or rolled into, and nothing when flown over") {
  const HoleMap map = map_with({sample_hazard(HazardKind::out_of_bounds, -80.0, 80.0, 200.0, 230.0)});
  for (const auto& [carry, roll] : {std::pair{215.0, 0.0}, {190.0, 15.0}, {200.0, 0.0}}) {
    const Rest rest = come_to_rest(map, tee, forward, carry, roll);
    CHECK(rest.replay);
    CHECK(rest.penalty_strokes == 1);
    CHECK(distance_yd(rest.at, tee) == 0.0);
  }
  check_at(come_to_rest(map, tee, forward, 240.0, 5.0), 0.0, 245.0);
}

// What the ground costs is asked of its table, so a ground that is penalised is so however a ball rolls on it.
TEST_CASE("a hazard of every kind costs what its ground says, landed in or rolled into") {
  for (const HazardKind kind : all_hazard_kinds) {
    const Ground ground = facts_of(kind).ground;
    CAPTURE(name(kind));
    const HoleMap map = map_with({sample_hazard(kind, -80.0, 80.0, 200.0, 230.0)});
    for (const auto& strike : {std::pair{215.0, 0.0}, {215.0, 5.0}, {200.0, 0.0}, {190.0, 15.0}}) {
      const double carry = strike.first;
      const double roll = strike.second;
      CAPTURE(carry);
      const Rest rest = come_to_rest(map, tee, forward, carry, roll);
      CHECK(rest.found == ground);
      CHECK(rest.penalty_strokes == (is_penalised(ground) ? 1 : 0));
      CHECK(rest.replay == (penalty_on(ground) == Penalty::stroke_and_distance));
      if (penalty_on(ground) == Penalty::drop) check_at(rest, 0.0, 197.5, 0.001);
      if (is_playable(ground)) CHECK(rest.lie == lie_on(ground));
      CHECK(is_trouble(rest.found) == facts_of(ground).trouble);
      CHECK(ground_found(map, tee, forward, carry, roll) == rest.found);
    }
    CHECK(come_to_rest(map, tee, forward, 231.0, 10.0).found == Ground::fairway);
  }
}

// A ball rolled a hair at a time, over ground asked of the polygons: the second road.
Rest rolled_finely(const HoleMap& map, Point from, Point direction, double carry_yd, double roll_yd) {
  constexpr double step = 0.01;
  const auto ground_at = [&](Point p) {
    const int area = map.area_at(p);
    return area < 0 ? Ground::rough : map.areas()[static_cast<std::size_t>(area)].ground;
  };
  Point at = from + carry_yd * direction;
  for (double left = roll_yd;;) {
    const Ground ground = ground_at(at);
    if (ground == Ground::out_of_bounds) return {from, Lie::rough, 1, true};
    if (ground == Ground::penalty_area) return {at, Lie::rough, 1, false};
    const double factor = roll_factor(ground, map.firmness());
    if (factor == 0.0 || left <= 0.0) return {at, lie_on(ground), 0, false};
    at = at + std::min(step, left * factor) * direction;
    left -= step / factor;
  }
}

TEST_CASE("a roll that is not a number ends") {
  const HoleMap map = map_with({});
  const double nothing = std::numeric_limits<double>::quiet_NaN();
  CHECK_FALSE(come_to_rest(map, tee, forward, 200.0, nothing).replay);
  CHECK_FALSE(come_to_rest(map, tee, forward, nothing, nothing).replay);
}

TEST_CASE("random shots on every hole of two courses") {
  unsigned seed = 81;
  int shots = 0;
  int alike = 0;
  int drops = 0;
  for (const std::string place : {"heron-ferry", "marsh-end"}) {
    const std::string path = std::string(YARDWORTH_SOURCE_DIR) + "/courses/" + place + "/course.yaml";
    const Reading<std::string> text = read_text(path);
    REQUIRE(text.ok());
    const Reading<Course> course = read_course(*text.value, path);
    REQUIRE(course.ok());
    for (const Hole& hole : course.value->holes) {
      const HoleMap map(hole, course.value->firmness);
      CAPTURE(place);
      CAPTURE(hole.number);
      RandomEngine engine(seed++);
      const auto between = [&](double low, double high) {
        return boost::random::uniform_real_distribution<double>(low, high)(engine);
      };
      for (int i = 0; i < 2000; ++i) {
        const Point from = map.line().to_plane({between(-30.0, 30.0), between(0.0, map.line().length_yd() - 60.0)});
        const Point direction = along_heading(heading_rad(from, map.pin()) + between(-0.5, 0.5));
        const double carry = between(30.0, 270.0);
        const double roll = between(0.0, 30.0);
        const Rest rest = come_to_rest(map, from, direction, carry, roll);
        const Rest fine = rolled_finely(map, from, direction, carry, roll);
        CHECK(ground_found(map, from, direction, carry, roll) == rest.found);
        ++shots;
        const bool same_end = distance_yd(rest.at, fine.at) < 4.0 || rest.penalty_strokes == 1;
        if (rest.replay == fine.replay && rest.penalty_strokes == fine.penalty_strokes && same_end &&
            (rest.lie == fine.lie || rest.penalty_strokes == 1)) {
          ++alike;
        }
        if (rest.replay) {
          CHECK(rest.penalty_strokes == 1);
          continue;
        }
        const Ground ground = map.ground_at(rest.at);
        CHECK(is_playable(ground));
        CHECK(rest.lie == lie_on(ground));
        // On the line of flight, ahead of where it was struck.
        const Point gone = rest.at - from;
        CHECK(std::abs(gone.x * direction.y - gone.y * direction.x) < 1e-6);
        CHECK(gone.x * direction.x + gone.y * direction.y > 0.0);
        CHECK(distance_yd(rest.at, from) <= carry + 1.35 * roll + 1e-6);
        if (rest.penalty_strokes == 1) ++drops;
      }
    }
  }
  CHECK(drops > 100);
  MESSAGE("alike with a roll in steps of a hundredth of a yard: ", alike, " of ", shots);
  // What differs is edges met a step too late.
  CHECK(alike > 0.99 * shots);
}

}  // namespace
}  // namespace yardworth
