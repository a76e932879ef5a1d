#include "yardworth/bands.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <numeric>
#include <stdexcept>

#include "course/set_up.hpp"
#include "gain/bag_places.hpp"
#include "input/derived_table.hpp"
#include "support/courses.hpp"
#include "support/scenario.hpp"

namespace yardworth {
namespace {

// Three holes, two tees: a par 3, a par 4 with a bunker, a par 5; of these lengths, or all so many times as long.
Course small_course(double scale = 1.0) {
  std::vector<Hole> holes = {test::open_hole(1, scale * 160.0), test::open_hole(2, scale * 390.0),
                             test::open_hole(3, scale * 500.0)};
  holes[1].hazards = {hazard_beside(HazardKind::bunker, Side::right, scale * 226.0, scale * 246.0, 10.0, 24.0)};
  for (Hole& hole : holes) hole.length_yd.push_back(hole.length_yd.front() * 0.8);
  Course course = test::course_of(std::move(holes));
  course.tees = {{"back", 35.0, 124.0, {}}, {"forward", 34.0, 113.0, Gender::women}};
  return course;
}

BandsRequest small_request() {
  BandsRequest request;
  request.bands = {Band::scratch, Band::bogey};
  return request;
}

const BandOnTee& golfer(const BandsResult& result, Band band, Gender gender, std::size_t tee) {
  for (const BandOnTee& here : result.golfers) {
    if (here.band == band && here.gender == gender && here.tee == tee) return here;
  }
  FAIL("no such golfer");
  return result.golfers.front();
}

double sum_of(const ClubShares& shares) {
  return std::accumulate(shares.begin(), shares.end(), 0.0,
                         [](double sum, const auto& share) { return sum + share.second; });
}

}  // namespace

TEST_CASE("the change of Handicap Index is that of the score differential") {
  // Score differential (113 / slope) x (score - rating), Handicap Index the average of the best 8 of the last 20 of
  // them (Rules of Handicapping, World Handicap System): when every score falls by 1.24, every differential at slope
  // 124 falls by 1.13, and with them any average.
  CHECK(handicap_index_change(1.24, 124.0) == doctest::Approx(-1.13));
  CHECK(handicap_index_change(2.0, 113.0) == doctest::Approx(-2.0));
  CHECK(handicap_index_change(-1.0, 113.0) == doctest::Approx(1.0));
  CHECK_FALSE(std::signbit(handicap_index_change(0.0, 113.0)));
}

TEST_CASE("how far apart distributions over the bag are, worked by hand") {
  CHECK(places_apart({1.0, 0.0, 0.0}, {0.0, 0.0, 1.0}) == doctest::Approx(2.0));
  // A quarter moves by one place, a quarter by two.
  CHECK(places_apart({0.5, 0.5, 0.0}, {0.25, 0.5, 0.25}) == doctest::Approx(0.5));
  // Means can agree where clubs do not.
  CHECK(places_apart({0.5, 0.0, 0.5}, {0.0, 1.0, 0.0}) == doctest::Approx(1.0));
  CHECK(mean_place({0.5, 0.0, 0.5}) == doctest::Approx(mean_place({0.0, 1.0, 0.0})));
  CHECK(places_apart({0.2, 0.8}, {0.2, 0.8}) == 0.0);
}

TEST_CASE("each band on each tee is the gain of its standard golfer there") {
  const Course course = small_course();
  const BandsResult result = compute_bands(course, small_request());
  REQUIRE(result.golfers.size() == 8);
  REQUIRE(result.tees.size() == 2);
  CHECK(result.tees[0].length_yd == doctest::Approx(1050.0));
  CHECK(result.longest_tee == "back");
  GainRequest request;
  request.tee = 1;
  request.change = {20.0, 0.0};
  request.policy = PolicyChoice::habit;
  const GainResult gain = compute_gain(course, standard_player(Band::bogey, Gender::women),
                                       Baseline(derived_table(Band::bogey, Gender::women)), request);
  const BandOnTee& same = golfer(result, Band::bogey, Gender::women, 1);
  CHECK(same.round.before == gain.answer().round.before);
  CHECK(same.round.replanned == gain.answer().round.replanned);
  CHECK(same.before.fairway ==
        doctest::Approx(0.5 * (gain.answer().holes[1].before.fairway + gain.answer().holes[2].before.fairway)));
}

TEST_CASE("net scores and points of a band are those of gain, where the tees are rated for its golfers") {
  const Course course = test::scenario_course();
  BandsRequest request;
  request.bands = {Band::from_13_to_20};
  request.tees = {test::middle_tee};
  const BandsResult result = compute_bands(course, request);
  GainRequest gain;
  gain.tee = test::middle_tee;
  gain.change = Change::of(request.change);
  gain.policy = PolicyChoice::habit;
  const GainResult alone = compute_gain(course, standard_player(Band::from_13_to_20, Gender::men),
                                        Baseline(derived_table(Band::from_13_to_20, Gender::men)), gain);
  const BandOnTee& men = golfer(result, Band::from_13_to_20, Gender::men, 0);
  const PolicyScores& expected = *alone.answer().scores;
  REQUIRE(men.scores);
  CHECK(men.scores->before.gross.probability == expected.before.gross.probability);
  CHECK(men.scores->after.handicap->net == expected.after.handicap->net);
  CHECK(men.scores->before.handicap->stableford.probability == expected.before.handicap->stableford.probability);
  CHECK(men.handicap->course_handicap == alone.handicap->course_handicap);
  CHECK(men.scores->before.gross.mean() == doctest::Approx(men.round.before).epsilon(1e-9));
  const BandOnTee& women = golfer(result, Band::from_13_to_20, Gender::women, 0);
  CHECK_FALSE(women.handicap);
  CHECK_FALSE(women.scores->before.handicap);
  CHECK(women.handicap_needs == std::vector<HandicapNeed>{HandicapNeed::rated_for_gender});
}

TEST_CASE("bands stand in their order, and everything is a probability") {
  const BandsResult result = compute_bands(small_course(), small_request());
  for (const Gender gender : {Gender::men, Gender::women}) {
    for (const std::size_t tee : {std::size_t{0}, std::size_t{1}}) {
      const BandOnTee& scratch = golfer(result, Band::scratch, gender, tee);
      const BandOnTee& bogey = golfer(result, Band::bogey, gender, tee);
      CHECK(scratch.round.before < bogey.round.before);
      CHECK(scratch.before.green_in_regulation > bogey.before.green_in_regulation);
      CHECK(sum_of(scratch.before.approach) == doctest::Approx(1.0));
      CHECK(sum_of(bogey.after.approach) == doctest::Approx(1.0));
      for (const BandOnTee* here : {&scratch, &bogey}) {
        CHECK(here->before.green_in_regulation > 0.0);
        CHECK(here->before.green_in_regulation < 1.0);
        CHECK(here->round.from_irons() == 0.0);
        CHECK(std::accumulate(here->before.second_shots.begin(), here->before.second_shots.end(), 0.0) ==
              doctest::Approx(1.0));
        for (const BandHole& hole : here->holes) {
          for (const HazardMet& hazard : hole.before.hazards) {
            CHECK(hazard.found <= hazard.reached + 1e-12);
            CHECK(hazard.found + hazard.cleared <= hazard.reached + 1e-12);
            CHECK(hazard.found >= 0.0);
            CHECK(hazard.found <= 1.0);
          }
        }
      }
    }
    // A shorter course is easier, and its greens are nearer.
    CHECK(golfer(result, Band::bogey, gender, 1).round.before < golfer(result, Band::bogey, gender, 0).round.before);
    CHECK(golfer(result, Band::bogey, gender, 1).before.green_in_regulation >
          golfer(result, Band::bogey, gender, 0).before.green_in_regulation);
  }
}

TEST_CASE("slopes are used only for those they are for, and only for 18 holes") {
  Course course = small_course();
  CHECK_FALSE(golfer(compute_bands(course, small_request()), Band::scratch, Gender::men, 0).index_change);
  while (course.holes.size() < 18) {
    course.holes.push_back(course.holes[course.holes.size() % 3]);
    course.holes.back().number = static_cast<int>(course.holes.size());
  }
  for (Tee& tee : course.tees) *tee.course_rating *= 2.0;
  BandsRequest request = small_request();
  request.bands = {Band::bogey};
  const BandsResult result = compute_bands(course, request);
  CHECK(golfer(result, Band::bogey, Gender::men, 0).index_change);
  CHECK_FALSE(golfer(result, Band::bogey, Gender::men, 1).index_change);
  CHECK_FALSE(golfer(result, Band::bogey, Gender::women, 0).index_change);
  const BandOnTee& forward = golfer(result, Band::bogey, Gender::women, 1);
  CHECK(*forward.index_change == doctest::Approx(-forward.round.strokes_saved()));
}

TEST_CASE("scratch golfers from the longest tees are what clubs are measured against") {
  const BandsResult result = compute_bands(small_course(), small_request());
  // From lengths at which women of both bands hit their longest club the scale ends, and tells nothing (docs/model.md).
  const BandsResult shorter = compute_bands(small_course(0.75), small_request());
  for (const Gender gender : {Gender::men, Gender::women}) {
    CHECK(*golfer(result, Band::scratch, gender, 0).clubs_apart == 0.0);
    const BandsResult& suited = gender == Gender::men ? result : shorter;
    CHECK(*golfer(suited, Band::bogey, gender, 0).clubs_longer > 1.0);
    CHECK(*golfer(result, Band::scratch, gender, 1).clubs_longer < 0.0);
  }
  REQUIRE(result.suiting.size() == 4);
  CHECK(*result.suiting[0].by_clubs == 0);
  CHECK(result.suiting[0].driver_distance_yd == doctest::Approx(250.0).epsilon(0.02));
  // With one tee there is nothing to choose, but the measure still stands.
  BandsRequest request = small_request();
  request.tees = {1};
  const BandsResult one = compute_bands(small_course(), request);
  CHECK_FALSE(one.suiting[0].by_clubs);
  CHECK(*golfer(one, Band::bogey, Gender::men, 0).clubs_apart ==
        *golfer(result, Band::bogey, Gender::men, 1).clubs_apart);
}

TEST_CASE("a changed hazard is the course with that hazard") {
  const Course course = small_course();
  BandsRequest request = small_request();
  HazardChange water;
  water.hole = 2;
  water.kind = HazardKind::penalty_area;
  water.side = Side::across;
  water.from_yd = 225.0;
  water.to_yd = 250.0;
  request.changed_course = change_hazards(course, {water}).value;
  REQUIRE(request.changed_course);
  const BandsResult changed = compute_bands(course, request);
  BandsRequest plain = small_request();
  const BandsResult there = compute_bands(request.changed_course->course, plain);
  const BandsResult without = compute_bands(course, plain);
  for (std::size_t i = 0; i < changed.golfers.size(); ++i) {
    REQUIRE(changed.golfers[i].changed.size() == 1);
    const ChangedHole& hole = changed.golfers[i].changed.front();
    CHECK(hole.with.number == 2);
    CHECK(hole.with.strokes.before == there.golfers[i].holes[1].strokes.before);
    CHECK(hole.without.strokes.before == without.golfers[i].holes[1].strokes.before);
    CHECK(hole.with.before.hazards.size() == hole.without.before.hazards.size() + 1);
    CHECK(changed.golfers[i].round.before == without.golfers[i].round.before);
  }
  // Water where the drives of scratch men finish costs them; bogey women do not come near it with theirs.
  const ChangedHole& scratch = golfer(changed, Band::scratch, Gender::men, 0).changed.front();
  CHECK(scratch.with.strokes.before > scratch.without.strokes.before + 0.02);
}

TEST_CASE("the same bytes for any number of threads") {
  BandsRequest request = small_request();
  request.threads = 1;
  const BandsResult one = compute_bands(small_course(), request);
  request.threads = 2;
  const BandsResult two = compute_bands(small_course(), request);
  for (std::size_t i = 0; i < one.golfers.size(); ++i) {
    CHECK(one.golfers[i].round.before == two.golfers[i].round.before);
    CHECK(one.golfers[i].round.replanned == two.golfers[i].round.replanned);
    CHECK(one.golfers[i].before.green_in_regulation == two.golfers[i].before.green_in_regulation);
    CHECK(one.golfers[i].before.approach == two.golfers[i].before.approach);
  }
}

TEST_CASE("who cannot finish is told apart from who can") {
  // An island that takes a carry of 200: scratch men have it, bogey women do not.
  Hole island = test::open_hole(1, 210.0);
  island.fairway.clear();
  island.hazards = {test::across(HazardKind::penalty_area, 2.0, 200.0),
                    test::across(HazardKind::penalty_area, 230.0, 260.0)};
  BandsRequest request = small_request();
  const BandsResult result = compute_bands(test::course_of({island}), request);
  CHECK(golfer(result, Band::scratch, Gender::men, 0).cannot_finish.empty());
  const std::vector<UnfinishedHole>& unfinished = golfer(result, Band::bogey, Gender::women, 0).cannot_finish;
  REQUIRE(unfinished.size() == 1);
  CHECK(unfinished.front().number == 1);
  // From where the water begins, 2 yards out, to the front of the green; cells of the map are 3 yards.
  const double front_yd = 210.0 - default_green().depth_yd / 2.0;
  CHECK(std::abs(unfinished.front().needed_carry_yd - (front_yd - 2.0)) <= 3.0);
  request.bands = {Band::bogey};
  request.genders = {Gender::women};
  CHECK_THROWS_AS(compute_bands(test::course_of({island}), request), CannotFinish);
}

TEST_CASE("a change that leaves a band no carry is refused") {
  BandsRequest request = small_request();
  request.change.driver_carry_yd = -140.0;
  CHECK_THROWS_AS(compute_bands(small_course(), request), InvalidRequest);
}

}  // namespace yardworth
