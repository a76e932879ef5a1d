#include "gain/measured_change.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "gain/golfers.hpp"
#include "gain/player_change.hpp"
#include "gain/saved_draws.hpp"
#include "support/courses.hpp"
#include "support/scenario.hpp"
#include "yardworth/read.hpp"

namespace yardworth {
namespace {

const Player& bay_golfer() {
  static const Player player = test::scenario_member("weekend-16-man");
  return player;
}

ShotLog bay_log(const std::string& name) {
  const std::string path = "courses/heron-ferry/bay/" + name;
  return *read_shot_log(test::text_of(path), path).value;
}

MeasuredChange weekend_in_the_bay() {
  const BagComparison comparison =
      compare_bags(bay_log("weekend-16-before.csv"), bay_log("weekend-16-after.csv"), {bay_golfer(), true});
  return measured_change(comparison, bay_golfer());
}

double quantile(std::vector<double> values, double share) {
  std::sort(values.begin(), values.end());
  return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1))];
}

}  // namespace

TEST_CASE("between a player's file and itself nothing changes, and longer clubs in a second one are their yards") {
  const Player& player = bay_golfer();
  const Reading<Change> same = change_between(player, player, "after.yaml");
  REQUIRE(same.ok());
  CHECK(is_nothing(*same.value));
  Player longer = player;
  longer.clubs.front() = lengthen(longer.clubs.front(), 15.0);
  longer.clubs[4].direction_sd_rad *= 0.9;
  const Reading<Change> change = change_between(player, longer, "after.yaml");
  REQUIRE(change.ok());
  CHECK(change.value->driver_carry_yd == doctest::Approx(15.0));
  REQUIRE(change.value->clubs.size() == 1);
  CHECK(change.value->clubs.front().club == player.clubs[4].name);
  CHECK(change.value->clubs.front().direction_sd_share == doctest::Approx(-0.1));
  CHECK(change.value->clubs.front().carry_sd_share == 0.0);
}

TEST_CASE("a second file's golfer is the player after the change that is read from it") {
  Player after = bay_golfer();
  for (Club& club : after.clubs) {
    club = lengthen(club, 4.0);
    club.poor_strike *= 0.5;
    club.carry_sd_yd *= 0.9;
    club.direction_mean_rad += 0.01;
  }
  const Reading<Change> change = change_between(bay_golfer(), after, "after.yaml");
  REQUIRE(change.ok());
  const Player changed = golfer_after(bay_golfer(), *change.value);
  for (std::size_t i = 0; i < after.clubs.size(); ++i) {
    CHECK(changed.clubs[i].carry_yd == doctest::Approx(after.clubs[i].carry_yd));
    CHECK(changed.clubs[i].carry_sd_yd == doctest::Approx(after.clubs[i].carry_sd_yd));
    CHECK(changed.clubs[i].poor_strike == doctest::Approx(after.clubs[i].poor_strike));
    CHECK(changed.clubs[i].direction_mean_rad == doctest::Approx(after.clubs[i].direction_mean_rad));
  }
}

TEST_CASE("clubs that only one of two files has are faults, each told") {
  Player other = bay_golfer();
  other.clubs[1].name = "7-wood";
  const Reading<Change> change = change_between(bay_golfer(), other, "after.yaml");
  CHECK_FALSE(change.ok());
  REQUIRE(change.findings.size() == 2);
  CHECK(to_line(change.findings[0]).find(bay_golfer().clubs[1].name) != std::string::npos);
  CHECK(to_line(change.findings[1]).find("7-wood") != std::string::npos);
}

TEST_CASE("what the bay measured of a club is what changes of it, and the others follow in proportion to carry") {
  const Player& player = bay_golfer();
  const MeasuredChange measured = weekend_in_the_bay();
  REQUIRE(!measured.clubs.empty());
  const Change change = estimated_change(measured, player);
  double gained = 0.0;
  double carried = 0.0;
  for (const MeasuredClub& of : measured.clubs) {
    const Club& club = *club_named(player, of.club);
    const auto own = std::find_if(change.clubs.begin(), change.clubs.end(),
                                  [&](const OwnChange& one) { return one.club == club.name; });
    REQUIRE(own != change.clubs.end());
    const Player after = golfer_after(player, change);
    const Club& is = *club_named(after, of.club);
    CHECK(is.carry_yd - club.carry_yd == doctest::Approx(of.change.answer().value));
    // The player's own numbers count for ten shots on both sides.
    const auto drawn_to = [](const ClubMeasure& measure, double sd, double usual) {
      const double shots = static_cast<double>(measure.shots);
      return std::sqrt((shots * sd * sd + 10.0 * usual * usual) / (shots + 10.0));
    };
    const ClubMeasure& was_measured = of.change.before;
    const ClubMeasure& is_measured = of.change.after;
    const double longer_sd = lengthen(club, is.carry_yd - club.carry_yd).carry_sd_yd;
    CHECK(is.carry_sd_yd / club.carry_sd_yd ==
          doctest::Approx(drawn_to(is_measured, is_measured.carry_sd_yd->value, longer_sd) /
                          drawn_to(was_measured, was_measured.carry_sd_yd->value, club.carry_sd_yd)));
    CHECK(is.direction_sd_rad / club.direction_sd_rad ==
          doctest::Approx(drawn_to(is_measured, is_measured.direction_sd_rad->value, club.direction_sd_rad) /
                          drawn_to(was_measured, was_measured.direction_sd_rad->value, club.direction_sd_rad)));
    if (club.kind == ClubKind::driver) continue;
    gained += of.change.answer().value;
    carried += club.carry_yd;
  }
  for (const OwnChange& own : change.clubs) {
    const bool of_log = std::any_of(measured.clubs.begin(), measured.clubs.end(),
                                    [&](const MeasuredClub& of) { return of.club == own.club; });
    if (of_log) continue;
    CHECK(own.carry_yd == doctest::Approx(gained / carried * club_named(player, own.club)->carry_yd));
  }
}

// The other road: the interval that Student's distribution gives (tests/bag hold it to R).
TEST_CASE("carries are drawn from the distribution that their intervals are of") {
  constexpr int draws = 20000;
  const Player& player = bay_golfer();
  const MeasuredChange measured = weekend_in_the_bay();
  const std::vector<Change> changes = drawn_changes(measured, player, draws, 5);
  for (const MeasuredClub& of : measured.clubs) {
    std::vector<double> carries;
    for (const Change& change : changes) {
      const bool is_driver = club_named(player, of.club)->kind == ClubKind::driver;
      const auto own = std::find_if(change.clubs.begin(), change.clubs.end(),
                                    [&](const OwnChange& one) { return one.club == of.club; });
      carries.push_back(is_driver ? change.driver_carry_yd : own->carry_yd);
    }
    const Estimate& answer = of.change.answer();
    // Of 20,000 draws a quantile of 5% is off by about a fiftieth of the interval's half (three standard errors).
    const double off = 0.05 * (answer.high - answer.low);
    CHECK(std::abs(quantile(carries, 0.05) - answer.low) < off);
    CHECK(std::abs(quantile(carries, 0.95) - answer.high) < off);
  }
}

TEST_CASE("the interval is the same on one thread as on several, and about what was measured") {
  const Player& player = bay_golfer();
  const Baseline baseline = test::baseline_of(player);
  const MeasuredChange measured = weekend_in_the_bay();
  GainRequest request;
  request.change = estimated_change(measured, player);
  request.policy = PolicyChoice::habit;
  request.spread_of_score = false;
  const Course course = test::water_and_bunker(Units::yards);
  std::vector<Change> draws = drawn_changes(measured, player, 20, 1);
  draws.push_back(request.change);
  request.threads = 1;
  const std::vector<double> one = compute_saved_draws(course, player, baseline, request, draws);
  request.threads = 3;
  const std::vector<double> three = compute_saved_draws(course, player, baseline, request, draws);
  CHECK(one == three);
  const double saved = compute_gain(course, player, baseline, request).habit->round.strokes_saved();
  // Step by step or at once the habit chooses between the same shots; where they are as good as equal it may differ.
  constexpr double of_steps = 0.01;
  CHECK(std::abs(one.back() - saved) < of_steps * static_cast<double>(course.holes.size()));
  const SavedInterval interval = interval_of(one, 0.9, PolicyChoice::habit);
  CHECK(interval.low < saved);
  CHECK(interval.high > saved);
  CHECK(interval.draws == 21);
}

TEST_CASE("draws by method table save what the gain by that method does, steps that it leaves out and all") {
  const Player& player = bay_golfer();
  const Baseline baseline = test::baseline_of(player);
  const Course course = test::water_and_bunker(Units::yards);
  GainRequest request;
  request.method = Method::table;
  Change carry_and_spread{15.0, 5.0};
  carry_and_spread.direction_sd_share = -0.1;
  for (const Change& change : {Change{20.0, 6.0}, carry_and_spread, estimated_change(weekend_in_the_bay(), player)}) {
    request.change = change;
    const double saved = compute_gain(course, player, baseline, request).answer().round.strokes_saved();
    CHECK(saved > 0.0);
    CHECK(compute_saved_draws(course, player, baseline, request, {change}).front() == doctest::Approx(saved));
  }
}

TEST_CASE("an interval is made of quantiles between the draws") {
  std::vector<double> saved(101);
  std::iota(saved.begin(), saved.end(), 0.0);
  std::reverse(saved.begin(), saved.end());
  const SavedInterval interval = interval_of(saved, 0.9, PolicyChoice::best);
  CHECK(interval.low == doctest::Approx(5.0));
  CHECK(interval.high == doctest::Approx(95.0));
}

}  // namespace yardworth
