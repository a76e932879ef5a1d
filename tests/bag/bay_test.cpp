#include <doctest/doctest.h>

#include <string>

#include "support/scenario.hpp"
#include "yardworth/bag.hpp"

// The invented sessions of the scenario's members (courses/heron-ferry/bay) show what they are there to show.

namespace yardworth {
namespace {

ShotLog bay_log(const std::string& name) {
  const std::string file = "courses/heron-ferry/bay/" + name + ".csv";
  const Reading<ShotLog> log = read_shot_log(test::text_of(file), file);
  for (const Diagnostic& finding : log.findings) MESSAGE(to_line(finding));
  REQUIRE(log.ok());
  CHECK(log.findings.empty());
  return *log.value;
}

const ClubChange& change_of_club(const BagComparison& comparison, const std::string& club) {
  for (const ClubChange& change : comparison.changes) {
    if (change.club == club) return change;
  }
  FAIL("no such club: " << club);
  return comparison.changes.front();
}

}  // namespace

TEST_CASE("the bay's before and after: an outlier, a club of four shots, and a driver that is struck better") {
  BagRequest request;
  request.golfer = test::scenario_member("weekend-16-man");
  request.golfer_has_file = true;
  const BagComparison comparison = compare_bags(bay_log("weekend-16-before"), bay_log("weekend-16-after"), request);
  REQUIRE(comparison.measured_before.outliers.size() == 1);
  CHECK(comparison.measured_before.outliers.front().why == OutlyingShot::Why::longer);
  CHECK(change_of_club(comparison, "driver").verdict == ClubChange::Verdict::real);
  CHECK(change_of_club(comparison, "driver").at_equal_club_speed_yd.has_value());
  CHECK(change_of_club(comparison, "5-wood").verdict == ClubChange::Verdict::too_few_shots);
  for (const ClubMeasure& club : comparison.measured_before.clubs) {
    CHECK((club.borrowed_share > 0.0) == (club.club == "5-wood"));
  }
}

TEST_CASE("the bay's speed work: longer, but not at the same club head speed") {
  const ShotLog log = bay_log("senior-20");
  const BagComparison comparison = compare_bags(*shots_of_session(log, "before"), *shots_of_session(log, "after"));
  const ClubChange& driver = change_of_club(comparison, "driver");
  CHECK(driver.club_speed_mps->low > 0.0);
  REQUIRE(driver.at_equal_club_speed_yd.has_value());
  CHECK(driver.verdict == ClubChange::Verdict::cannot_tell);
}

TEST_CASE("the bay's metric logs with decimal commas, and two heads hit in turn") {
  const BagComparison woman = compare_bags(bay_log("12-woman-before"), bay_log("12-woman-after"));
  CHECK(woman.measured_after.units == Units::metres);
  CHECK(woman.changes.size() == 3);
  const ShotLog heads = bay_log("weekend-16-heads");
  const BagComparison two = compare_clubs(*shots_of_club(heads, "driver 9"), *shots_of_club(heads, "driver 11"));
  REQUIRE(two.changes.size() == 1);
  CHECK(two.changes.front().before.shots == two.changes.front().after.shots);
}

}  // namespace yardworth
