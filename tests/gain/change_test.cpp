#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <string>

#include "support/courses.hpp"
#include "support/random_player.hpp"
#include "support/sanitized.hpp"
#include "support/scenario.hpp"
#include "yardworth/gain.hpp"
#include "yardworth/report.hpp"

namespace yardworth {
namespace {

GainRequest request_of(const Change& change, Method method, PolicyChoice policy) {
  GainRequest request;
  request.change = change;
  request.method = method;
  request.policy = policy;
  return request;
}

GainResult gain_on(const Course& course, const Player& player, const Change& change, Method method,
                   PolicyChoice policy) {
  return compute_gain(course, player, test::baseline_of(player), request_of(change, method, policy));
}

double saved_on(const Hole& hole, const Player& player, Method method, PolicyChoice policy) {
  return gain_on(test::course_of({hole}), player, {20.0, 0.0}, method, policy).answer().round.strokes_saved();
}

// The least of the parts of a saving: what the longer driver gives, what longer irons add, and what planning adds.
double least_part(const HoleGain& hole) {
  return std::min({hole.strokes.from_tee(), hole.strokes.from_irons(), hole.strokes.from_replanning()});
}

// The holes of a result, of either policy.
std::vector<HoleGain> holes_of(const GainResult& result) {
  std::vector<HoleGain> holes = result.habit->holes;
  if (result.best) holes.insert(holes.end(), result.best->holes.begin(), result.best->holes.end());
  return holes;
}

std::vector<Hole> open_holes(const std::vector<double>& lengths) {
  std::vector<Hole> holes;
  for (const double length : lengths) holes.push_back(test::open_hole(static_cast<int>(holes.size()) + 1, length));
  return holes;
}

// By play the two values of a difference are each right to 0.01 strokes a hole at the default resolution. By table the
// rule is strict on holes that leave a second shot; where the tee shot comes within a pitch of the green, 20 yards
// nearer inside 100 may be worth less than what more offline takes by ending in the rough.
constexpr double accuracy = 0.01;
double most_lost(double length_yd, Method method) {
  constexpr double short_of_a_second_shot_yd = 300.0;
  return method == Method::table && length_yd > short_of_a_second_shot_yd ? 1e-9 : accuracy;
}

}  // namespace

TEST_CASE("more carry never loses strokes on a hole without hazards, whatever the club table") {
  constexpr std::uint64_t seed = 20;
  RandomEngine engine(seed);
  const Course course = test::course_of(open_holes({120.0, 185.0, 290.0, 345.0, 380.0, 430.0, 500.0, 560.0}));
  const int tables = test::sanitized ? 3 : 20;
  double worst = 1.0;
  for (int table = 0; table < tables; ++table) {
    const Player player = test::random_player(engine);
    const Change change{test::uniform(engine, 1.0, 30.0), test::uniform(engine, 1.0, 12.0)};
    for (const Method method : {Method::table, Method::play}) {
      for (const HoleGain& hole : holes_of(gain_on(course, player, change, method, PolicyChoice::both))) {
        CAPTURE(table);
        CAPTURE(hole.length_yd);
        CAPTURE(change.driver_carry_yd);
        CAPTURE(change.irons_carry_yd);
        CHECK_MESSAGE(least_part(hole) >= -most_lost(hole.length_yd, method), name(method));
        worst = std::min(worst, least_part(hole));
      }
    }
  }
  std::printf("%d random club tables, seed %d: least part of a saving on a hole %+.6f\n", tables,
              static_cast<int>(seed), worst);
}

TEST_CASE("more carry never loses strokes on a hole without hazards, in any band") {
  const std::vector<Hole> holes =
      open_holes({100, 115, 130, 145, 160, 175, 190, 205, 230, 260, 290, 320, 350, 380, 420, 460, 500, 540});
  for (const Gender gender : {Gender::men, Gender::women}) {
    for (const Band band : all_bands) {
      const Player player = standard_player(band, gender);
      CAPTURE(player.label);
      double worst = 1.0;
      for (const Method method : {Method::table, Method::play}) {
        const GainResult result = gain_on(test::course_of(holes), player, {20.0, 6.0}, method, PolicyChoice::both);
        for (const HoleGain& hole : holes_of(result)) {
          CAPTURE(hole.length_yd);
          CHECK_MESSAGE(least_part(hole) >= -most_lost(hole.length_yd, method), name(method));
          worst = std::min(worst, least_part(hole));
        }
      }
      std::printf("+20 driver, +6 irons, %s: least part of a saving on a hole %+.6f\n", player.label.c_str(), worst);
      if (test::sanitized) return;
    }
  }
}

// Who spreads widely comes to places that few strikes get away from.
TEST_CASE("every member finishes every hole by both plans, and the best plan costs no more than the habit") {
  const Course course = test::scenario_course();
  std::size_t turn = 0;
  for (const char* member : test::scenario_members) {
    // Each member from one tee, each tee for some members.
    const std::size_t tee = turn++ % course.tees.size();
    if (test::sanitized && std::string(member) != "junior") continue;
    const Player player = test::scenario_member(member);
    CAPTURE(member);
    CAPTURE(tee);
    GainRequest request = request_of({20.0, 6.0}, Method::play, PolicyChoice::both);
    request.tee = tee;
    const GainResult result = compute_gain(course, player, test::baseline_of(player), request);
    for (std::size_t hole = 0; hole < course.holes.size(); ++hole) {
      CHECK(result.best->holes[hole].strokes.before <= result.habit->holes[hole].strokes.before);
    }
  }
}

TEST_CASE("a change of nothing saves exactly nothing, in every part and on every hole") {
  Course course = test::scenario_course();
  if (test::sanitized) course.holes.resize(6);
  const std::vector<const char*> members = test::sanitized
                                               ? std::vector<const char*>{"weekend-16-man"}
                                               : std::vector<const char*>{"weekend-16-man", "28-woman", "scratch-man"};
  for (const char* member : members) {
    const Player player = test::scenario_member(member);
    for (const Method method : {Method::table, Method::play}) {
      const GainResult result = gain_on(course, player, {0.0, 0.0}, method, PolicyChoice::both);
      std::vector<const PolicyGain*> gains;
      if (result.habit) gains.push_back(&*result.habit);
      if (result.best) gains.push_back(&*result.best);
      REQUIRE(!gains.empty());
      for (const PolicyGain* gain : gains) {
        CHECK(gain->round.from_tee() == 0.0);
        CHECK(gain->round.from_irons() == 0.0);
        CHECK(gain->round.from_replanning() == 0.0);
        for (const HoleGain& hole : gain->holes) {
          CAPTURE(hole.number);
          CHECK(hole.strokes.before == hole.strokes.after_step(ChangeStep::driver_carry));
          CHECK(hole.strokes.before == hole.strokes.followed());
          CHECK(hole.strokes.before == hole.strokes.replanned);
          CHECK(hole.before.club == hole.after.club);
          CHECK(hole.before.left_yd == hole.after.left_yd);
          CHECK(hole.before.next_shares == hole.after.next_shares);
          CHECK(hole.next_club_changed == 0.0);
        }
      }
    }
  }
}

TEST_CASE("the same inputs give the same bytes, whatever the number of threads") {
  Course course = test::scenario_course();
  if (test::sanitized) course.holes.resize(4);
  const Player player = test::scenario_member("weekend-16-man");
  const Baseline baseline = test::baseline_of(player);
  GainRequest request = request_of({20.0, 6.0}, Method::play, PolicyChoice::both);
  request.tee = test::middle_tee;
  request.threads = 1;
  const std::string once = gain_json({compute_gain(course, player, baseline, request), {}, {}});
  for (const int threads : {1, 2, 5}) {
    request.threads = threads;
    CAPTURE(threads);
    CHECK(gain_json({compute_gain(course, player, baseline, request), {}, {}}) == once);
  }
}

TEST_CASE("a longer driver gains nothing from the tee of a par 3 that is played without it") {
  const Player player = standard_player(Band::from_13_to_20, Gender::men);
  for (const double length : {110.0, 130.0, 150.0}) {
    const Course course = test::course_of({test::open_hole(1, length)});
    for (const Method method : {Method::table, Method::play}) {
      const GainResult result = gain_on(course, player, {20.0, 0.0}, method, PolicyChoice::habit);
      const HoleGain& hole = result.answer().holes.front();
      CAPTURE(length);
      CHECK(hole.par == 3);
      CHECK(hole.before.club != "driver");
      CHECK(hole.after.club != "driver");
      CHECK(hole.strokes.from_tee() == 0.0);
    }
  }
}

TEST_CASE("a longer driver and longer irons: what the driver gives a par 3 played with an iron is nothing") {
  const Course course = test::scenario_course();
  const GainResult result =
      gain_on(course, test::scenario_member("weekend-16-man"), {20.0, 6.0}, Method::play, PolicyChoice::best);
  int par_3s = 0;
  for (const HoleGain& hole : result.answer().holes) {
    if (hole.par != 3 || hole.before.club == "driver") continue;
    CAPTURE(hole.number);
    CHECK(hole.strokes.from_tee() == 0.0);
    ++par_3s;
  }
  CHECK(par_3s >= 3);
}

// On the search grid such a golfer comes to places that are only left for themselves; the habit ends all the same.
TEST_CASE("one short club ends in an answer for both plans, though on some holes no better one can be looked for") {
  Player player = standard_player(Band::from_21, Gender::men);
  player.clubs = {player.clubs[player.clubs.size() / 2]};
  player.clubs[0].carry_yd = 30.0;
  player.clubs[0].roll_yd = 3.0;
  player.clubs[0].carry_sd_yd = player.clubs[0].half_swing_yd = 15.0;
  player.clubs[0].carry_sd_floor_yd = 5.0;
  const Course course = test::scenario_course();
  CHECK(gain_on(course, player, {0.0, 6.0}, Method::play, PolicyChoice::habit).answer().round.before > 18.0 * 8.0);
  // Asked for together, both are evaluated on the same grids.
  const GainResult both = gain_on(course, player, {0.0, 6.0}, Method::play, PolicyChoice::both);
  CHECK(both.best->round.before > 18.0 * 8.0);
  CHECK(both.best->round.before <= both.habit->round.before + 1e-9);
  CHECK(gain_on(test::course_of({test::open_hole(1, 300.0)}), player, {0.0, 6.0}, Method::play, PolicyChoice::best)
            .answer()
            .round.before > 8.0);
}

TEST_CASE("a bag without a driver gains nothing from a longer one") {
  Player player = standard_player(Band::from_13_to_20, Gender::men);
  player.clubs.erase(player.clubs.begin());
  const Course course = test::course_of({test::open_hole(1, 150.0), test::open_hole(2, 390.0)});
  const GainResult result = gain_on(course, player, {20.0, 0.0}, Method::play, PolicyChoice::both);
  CHECK(result.habit->round.strokes_saved() == 0.0);
  CHECK(result.best->round.from_tee() == 0.0);
  CHECK(result.best->round.from_irons() == 0.0);
  // A second search starts from the policy of the first and may find what that screened out.
  CHECK(std::abs(result.best->round.from_replanning()) < 0.001);
}

TEST_CASE("added distance is worth less where out of bounds squeezes the hole, because direction is an angle") {
  const Hole open = test::open_hole(1, 400.0);
  Hole squeezed = open;
  squeezed.hazards = {test::boundary(open, Side::left, 22.0), test::boundary(open, Side::right, 22.0)};
  for (const Band band : {Band::scratch, Band::from_13_to_20, Band::bogey}) {
    const Player player = standard_player(band, Gender::men);
    for (const Method method : {Method::table, Method::play}) {
      const double on_open = saved_on(open, player, method, PolicyChoice::habit);
      const double on_squeezed = saved_on(squeezed, player, method, PolicyChoice::habit);
      std::printf("+20 driver, %s man, %s: open %.3f, squeezed %.3f strokes saved\n", std::string(name(band)).c_str(),
                  std::string(name(method)).c_str(), on_open, on_squeezed);
      CHECK(on_squeezed < on_open);
    }
  }
}

TEST_CASE("a part of the change that no club takes is noted, and how near to the hole the baseline takes over") {
  const auto notes = [](const Player& player, const Change& change) {
    const Course course = test::course_of({test::open_hole(1, 152.0)});
    return gain_on(course, player, change, Method::play, PolicyChoice::habit).notes;
  };
  const auto has = [](const std::vector<Note>& all, Note::Kind kind) {
    return std::any_of(all.begin(), all.end(), [&](const Note& note) { return note.kind == kind; });
  };
  const Player whole = test::scenario_member("weekend-16-man");
  Player only_driver = whole;
  only_driver.clubs.resize(1);
  Player no_driver = whole;
  no_driver.clubs.erase(no_driver.clubs.begin());
  Player hooks = whole;
  hooks.clubs.front().direction_mean_rad = radians(-4.0);
  CHECK_FALSE(has(notes(whole, {20.0, 6.0}), Note::Kind::misses_to_one_side));
  REQUIRE(has(notes(hooks, {20.0, 6.0}), Note::Kind::misses_to_one_side));
  CHECK(notes(hooks, {20.0, 6.0}).back().misses.front().club == hooks.clubs.front().name);
  const auto driver_missed = Note::Kind::no_driver_to_change;
  const auto irons_missed = Note::Kind::no_irons_to_change;
  CHECK_FALSE(has(notes(whole, {20.0, 6.0}), driver_missed));
  CHECK_FALSE(has(notes(whole, {20.0, 6.0}), irons_missed));
  CHECK(notes(whole, {20.0, 6.0}).front().kind == Note::Kind::own_shots_then_baseline);
  CHECK(notes(whole, {20.0, 6.0}).front().radius_yd == 50.0);  // docs/model.md, "Value and policies"
  CHECK(has(notes(no_driver, {20.0, 6.0}), driver_missed));
  CHECK_FALSE(has(notes(no_driver, {0.0, 6.0}), driver_missed));
  CHECK(has(notes(only_driver, {20.0, 6.0}), irons_missed));
  CHECK_FALSE(has(notes(only_driver, {20.0, 0.0}), irons_missed));
}

// States far apart may lie where nobody plays from and nothing leads on: that a search fails there says nothing of the
// hole. So it was with these clubs on hole 7.
TEST_CASE("a hole that a coarse grid cannot finish is tried on a finer one") {
  const Course course = test::scenario_course();
  const Player player = test::scenario_member("senior-20-man");
  GainRequest request;
  request.tee = 0;
  request.change = {-40.0, -20.0};
  const GainResult result = compute_gain(course, player, test::baseline_of(player), request);
  CHECK(result.answer().round.strokes_saved() < -10.0);
}

// Policies share rows of states that they play alike; which policy was struck first must not be seen.
TEST_CASE("the best plan's answer is the same whether the habit's is asked for too or not") {
  const Course course = test::scenario_course();
  const Player player = test::scenario_member("weekend-16-man");
  const StepValues alone = gain_on(course, player, {20.0, 6.0}, Method::play, PolicyChoice::best).best->round;
  const StepValues beside = gain_on(course, player, {20.0, 6.0}, Method::play, PolicyChoice::both).best->round;
  CHECK(alone.before == beside.before);
  CHECK(alone.after_step(ChangeStep::driver_carry) == beside.after_step(ChangeStep::driver_carry));
  CHECK(alone.followed() == beside.followed());
  CHECK(alone.replanned == beside.replanned);
}

}  // namespace yardworth
