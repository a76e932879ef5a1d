#include <doctest/doctest.h>

#include <functional>
#include <limits>
#include <string>
#include <vector>

#include "support/courses.hpp"
#include "support/scenario.hpp"
#include "support/words.hpp"
#include "yardworth/bands.hpp"
#include "yardworth/read.hpp"
#include "yardworth/strategy.hpp"

namespace yardworth {
namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();

// What is said of a question, or nothing where it is answered.
std::string refusal(const std::function<void()>& ask) {
  try {
    ask();
  } catch (const InvalidRequest& error) {
    REQUIRE(!error.findings().empty());
    return error.what();
  }
  return "";
}

Course two_holes() { return test::course_of({test::open_hole(1, 90.0), test::open_hole(2, 100.0)}); }
Player golfer() { return test::scenario_member("weekend-16-man"); }

GainRequest quick_request() {
  GainRequest request;
  request.policy = PolicyChoice::habit;
  request.holes = {1};
  return request;
}

std::string gain_refusal(const std::function<void(GainRequest&)>& spoil) {
  GainRequest request = quick_request();
  spoil(request);
  return refusal([&] { compute_gain(two_holes(), golfer(), request); });
}

struct Spoilt {
  std::function<void(GainRequest&)> spoil;
  std::string words;
};

TEST_CASE("each member of a request is held to its limits") {
  CHECK(gain_refusal([](GainRequest&) {}).empty());
  for (const Spoilt& one : std::vector<Spoilt>{
           {[](GainRequest& r) { r.tee = 1; }, "tee: found 1"},
           {[](GainRequest& r) { r.change.driver_carry_yd = 151.0; }, "change.driver_carry_yd: found 151"},
           {[](GainRequest& r) { r.change.driver_carry_yd = nan; }, "change.driver_carry_yd: found nan"},
           {[](GainRequest& r) { r.change.irons_carry_yd = -nan; }, "change.irons_carry_yd: found"},
           {[](GainRequest& r) { r.change.irons_carry_yd = -145.0; }, "no carry"},
           {[](GainRequest& r) { r.holes = {3}; }, "holes[0]: found 3"},
           {[](GainRequest& r) {
              r.holes = {1, 1};
            },
            "holes[1]: found 1 again"},
           {[](GainRequest& r) { r.threads = -1; }, "threads: found -1"},
           {[](GainRequest& r) { r.threads = 2000; }, "threads: found 2000"},
           {[](GainRequest& r) { r.mark = 19; }, "mark: found 19"},
           {[](GainRequest& r) { r.mark = 201; }, "mark: found 201"},
           {[](GainRequest& r) {
              r.mark = 90;
              r.method = Method::table;
            },
            "mark: found method table beside it"},
       }) {
    const std::string told = gain_refusal(one.spoil);
    CAPTURE(one.words);
    CHECK_MESSAGE(test::says(told, one.words), told);
  }
}

TEST_CASE("every fault of course, player and request is told at once") {
  Course course = two_holes();
  course.holes[1].length_yd = {nan};
  Player player = golfer();
  player.clubs[0].carry_yd = -1.0;
  GainRequest request = quick_request();
  request.threads = -1;
  const std::string told = refusal([&] { compute_gain(course, player, request); });
  CHECK_MESSAGE(test::says(told, "course"), told);
  CHECK_MESSAGE(test::says(told, "player"), told);
  CHECK_MESSAGE(test::says(told, "threads"), told);
  const std::string of_strategy = refusal([&] {
    StrategyRequest asked;
    asked.threads = -1;
    compute_strategy(course, player, asked);
  });
  CHECK(of_strategy == told);
}

TEST_CASE("a curve has to have an end, and steps") {
  const Course course = two_holes();
  const Player player = golfer();
  const Baseline baseline = default_baseline(player);
  const auto curve = [&](GainRequest request, double limit, double step) {
    return refusal([&] { compute_curve(course, player, baseline, request, limit, step); });
  };
  GainRequest request = quick_request();
  request.change.driver_carry_yd = 10.0;
  CHECK(curve(request, 10.0, 10.0).empty());
  CHECK(test::says(curve(request, 10.0, 0.0), "step_yd"));
  CHECK(test::says(curve(request, nan, 5.0), "limit_yd"));
  CHECK(test::says(curve(request, 100.0, 0.1), "at most 200 steps"));
  request.change = {0.0, 5.0};
  CHECK(test::says(curve(request, 10.0, 10.0), "proportion"));
}

TEST_CASE("bands are held to the same limits") {
  const auto bands = [&](const std::function<void(BandsRequest&)>& spoil) {
    BandsRequest request;
    request.bands = {Band::scratch};
    request.genders = {Gender::men};
    spoil(request);
    return refusal([&] { compute_bands(two_holes(), request); });
  };
  CHECK(bands([](BandsRequest&) {}).empty());
  CHECK(test::says(bands([](BandsRequest& r) { r.bands.clear(); }), "bands"));
  CHECK(test::says(bands([](BandsRequest& r) { r.genders.clear(); }), "genders"));
  CHECK(test::says(bands([](BandsRequest& r) { r.tees = {4}; }), "tees[0]"));
  CHECK(test::says(bands([](BandsRequest& r) { r.policy = PolicyChoice::both; }), "habit or best"));
  CHECK(test::says(bands([](BandsRequest& r) { r.change.irons_carry_yd = nan; }), "irons"));
}

TEST_CASE("where nothing is said, tees and baseline are those of the command") {
  const Course course = test::scenario_course();
  const Player player = golfer();
  GainRequest request = quick_request();
  request.holes = {4};
  request.change = {20.0, 6.0};
  const GainResult silent = compute_gain(course, player, request);
  request.tee = default_tee(course, player.gender);
  const GainResult spoken = compute_gain(course, player, default_baseline(player), request);
  CHECK(silent.tee == spoken.tee);
  CHECK(silent.baseline_name == spoken.baseline_name);
  CHECK(silent.answer().round.replanned == spoken.answer().round.replanned);
  REQUIRE(silent.answer().holes.size() == 1);
  CHECK(silent.answer().holes.front().number == 4);
}

}  // namespace
}  // namespace yardworth
