#include "yardworth/members.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "support/courses.hpp"
#include "support/scenario.hpp"
#include "yardworth/limits.hpp"

namespace yardworth {
namespace {

// What taking members together may change of the strokes that one saves in a round (docs/performance.md, "Members"),
// and of the strokes and points of the round.
constexpr double saved_tolerance = 0.05;
constexpr double round_tolerance = 0.12;

Course three_holes() {
  std::vector<Hole> holes = {test::open_hole(1, 160.0), test::open_hole(2, 390.0), test::open_hole(3, 500.0)};
  for (Hole& hole : holes) hole.length_yd.push_back(hole.length_yd.front() * 0.8);
  Course course = test::course_of(std::move(holes));
  course.tees = {{"back", 35.0, 124.0, {}}, {"forward", 34.0, 113.0, Gender::women}};
  return course;
}

// Members who lie close together, so that the corners around them are fewer.
std::vector<Member> alike_members(int count) {
  std::vector<Member> members;
  for (int i = 0; i < count; ++i) {
    members.push_back({"weekend " + std::to_string(i), 13.4 + 2.6 * i / count, Gender::men, 188.0 + (i * 5) % 7});
  }
  return members;
}

bool same(const MemberOnTee& a, const MemberOnTee& b) {
  return a.round.before == b.round.before && a.round.replanned == b.round.replanned && a.clubs_apart == b.clubs_apart &&
         a.second_shot_before == b.second_shot_before;
}

}  // namespace

TEST_CASE("a member worked out alone is what gain says of a player with these clubs") {
  const Course course = three_holes();
  MembersRequest request;
  request.members = {{"a", 14.2, Gender::men, 190.0}, {"b", 24.0, Gender::women, std::nullopt}};
  const MembersResult result = compute_members(course, request);
  REQUIRE(result.members.size() == 2);
  CHECK(result.golfers_worked_out == 2);
  Player player = standard_player(skill_of(14.2, Gender::men), Gender::men, 190.0);
  player.label = "a";
  player.handicap_index = 14.2;
  GainRequest gain;
  gain.tee = 1;
  gain.change = Change::of(request.change);
  gain.policy = PolicyChoice::habit;
  const GainResult alone = compute_gain(course, player, gain);
  const MemberOnTee& forward = result.members[0].from_tees[1];
  CHECK(forward.round.before == doctest::Approx(alone.answer().round.before).epsilon(1e-12));
  CHECK(forward.round.replanned == doctest::Approx(alone.answer().round.replanned).epsilon(1e-12));
  CHECK(forward.second_shot_before == alone.answer().second_shot.typical_before);
  CHECK_FALSE(forward.scores);  // three holes are no round
  CHECK(result.members[1].usual_tee == 1);
}

TEST_CASE("net scores and points of a member are those of gain, where the tees are rated for the member") {
  const Course course = test::scenario_course();
  MembersRequest request;
  request.tees = {test::middle_tee};
  request.members = {{"man", 16.2, Gender::men, std::nullopt}, {"woman", 30.0, Gender::women, std::nullopt}};
  const MembersResult result = compute_members(course, request);
  Player player = standard_player(skill_of(16.2, Gender::men), Gender::men);
  player.label = "man";
  player.handicap_index = 16.2;
  GainRequest gain;
  gain.tee = test::middle_tee;
  gain.change = Change::of(request.change);
  gain.policy = PolicyChoice::habit;
  const GainResult alone = compute_gain(course, player, gain);
  const auto& scores = result.members[0].from_tees[0].scores;
  REQUIRE(scores);
  const PolicyScores& expected = *alone.answer().scores;
  CHECK(scores->course_handicap == alone.handicap->course_handicap);
  CHECK(scores->net_before == doctest::Approx(expected.before.handicap->net).epsilon(1e-9));
  CHECK(scores->stableford_after == doctest::Approx(expected.after.handicap->stableford.mean()).epsilon(1e-9));
  CHECK(scores->handicap_index_change == doctest::Approx(*expected.handicap_index_change).epsilon(1e-9));
  // Strokes saved are strokes off the net score.
  const StepValues& round = result.members[0].from_tees[0].round;
  CHECK(scores->net_before - scores->net_after == doctest::Approx(round.strokes_saved()).epsilon(1e-9));
  CHECK_FALSE(result.members[1].from_tees[0].scores);
  CHECK_FALSE(result.members[0].by_clubs);
}

TEST_CASE("members who are taken together come out as each alone, within what is said of it") {
  const Course course = test::scenario_course();
  MembersRequest request;
  request.tees = {test::middle_tee};
  request.members = alike_members(24);
  const MembersResult together = compute_members(course, request);
  CHECK(together.golfers_worked_out < 12);
  MembersRequest alone = request;
  alone.together = false;
  alone.members = {request.members[3], request.members[11], request.members[20]};
  const MembersResult each = compute_members(course, alone);
  CHECK(each.golfers_worked_out == 3);
  for (const MemberResult& member : each.members) {
    const MemberOnTee& by_itself = member.from_tees.front();
    for (const MemberResult& other : together.members) {
      if (other.member.label != member.member.label) continue;
      const MemberOnTee& mixed = other.from_tees.front();
      CAPTURE(member.member.label);
      CHECK(std::abs(mixed.round.strokes_saved() - by_itself.round.strokes_saved()) < saved_tolerance);
      CHECK(std::abs(mixed.round.before - by_itself.round.before) < round_tolerance);
      REQUIRE(mixed.scores);
      CHECK(mixed.scores->course_handicap == by_itself.scores->course_handicap);
      CHECK(std::abs(mixed.scores->stableford_before - by_itself.scores->stableford_before) < round_tolerance);
      CHECK(*mixed.clubs_longer == doctest::Approx(*by_itself.clubs_longer).epsilon(0.1));
    }
  }
}

TEST_CASE("members: the same bytes for any number of threads, and whatever others are called") {
  MembersRequest request;
  request.members = alike_members(24);
  request.threads = 1;
  const Course course = three_holes();
  const MembersResult one = compute_members(course, request);
  request.threads = 2;
  for (Member& member : request.members) member.label += "!";
  const MembersResult two = compute_members(course, request);
  CHECK(one.golfers_worked_out == two.golfers_worked_out);
  for (std::size_t i = 0; i < one.members.size(); ++i) {
    for (std::size_t tee = 0; tee < one.tees.size(); ++tee) {
      CHECK(same(one.members[i].from_tees[tee], two.members[i].from_tees[tee]));
    }
  }
}

TEST_CASE("members who differ in nothing but labels are one, and progress is told") {
  MembersRequest request;
  for (int i = 0; i < 40; ++i) request.members.push_back({std::to_string(i), 20.0, Gender::women, 140.0});
  std::size_t last = 0;
  std::size_t of = 0;
  request.progress = [&](std::size_t done, std::size_t all) {
    CHECK(done == last + 1);
    CHECK(done <= all);
    last = done;
    of = all;
  };
  request.tees = {0};
  const MembersResult result = compute_members(three_holes(), request);
  CHECK(result.golfers_worked_out == 1);
  CHECK(last == of);
  CHECK(same(result.members.front().from_tees[0], result.members.back().from_tees[0]));
  CHECK(result.members.back().member.label == "39");
}

TEST_CASE("a member who cannot finish is told apart from who can") {
  Hole island = test::open_hole(1, 210.0);
  island.fairway.clear();
  island.hazards = {test::across(HazardKind::penalty_area, 2.0, 200.0),
                    test::across(HazardKind::penalty_area, 230.0, 260.0)};
  MembersRequest request;
  request.members = {{"long", 0.0, Gender::men, std::nullopt}, {"short", 24.0, Gender::women, std::nullopt}};
  const MembersResult result = compute_members(test::course_of({island}), request);
  CHECK(result.members[0].from_tees[0].cannot_finish.empty());
  REQUIRE(result.members[1].from_tees[0].cannot_finish.size() == 1);
  CHECK(result.members[1].from_tees[0].cannot_finish.front().needed_carry_yd > 150.0);
  request.members.erase(request.members.begin());
  CHECK_THROWS_AS(compute_members(test::course_of({island}), request), CannotFinish);
}

TEST_CASE("a request about members that makes no sense is refused with all of its faults") {
  MembersRequest request;
  request.members = {{"", 99.0, Gender::men, 20.0}, {"b", 16.0, Gender::men, 100.0}};
  request.change = {-120.0, 0.0};
  request.tees = {7};
  request.policy = PolicyChoice::both;
  try {
    compute_members(three_holes(), request);
    FAIL("not refused");
  } catch (const InvalidRequest& refused) {
    const std::string words = refused.what();
    for (const char* path : {"members[0].label", "members[0].handicap_index", "members[0].driver_carry_yd", "tees[0]",
                             "policy", "the driver of b no carry"}) {
      CAPTURE(words);
      CHECK_MESSAGE(words.find(path) != std::string::npos, path);
    }
  }
  request = {};
  CHECK_THROWS_AS(compute_members(three_holes(), request), InvalidRequest);
}

}  // namespace yardworth
