#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <cmath>
#include <limits>

#include "flight/samples.hpp"
#include "support/random_cases.hpp"

namespace yardworth {

using test::delivery_of;

TEST_CASE("deliveries that cannot be are named with the range that is allowed") {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  struct Row {
    Delivery delivery;
    const char* path;
    const char* expected;
  };
  for (const Row& row : {
           Row{delivery_of(300.0, 0.0, 14.0), "club_speed_mph", "from 10 to 160 mph"},
           Row{delivery_of(nan, 0.0, 14.0), "club_speed_mph", "from 10 to 160 mph"},
           Row{delivery_of(-90.0, 0.0, 14.0), "club_speed_mph", "from 10 to 160 mph"},
           Row{delivery_of(95.0, 5.0, 3.0), "dynamic_loft_deg", "from the attack angle, 5, to 70 degrees"},
           Row{delivery_of(95.0, 0.0, 14.0, 90.0), "path_deg", "from -30 to 30 degrees"},
           Row{delivery_of(95.0, 0.0, 14.0, 0.0, -45.0), "face_deg", "from -30 to 30 degrees"},
           Row{delivery_of(95.0, -20.0, 14.0), "attack_deg", "from -15 to 15 degrees"},
           Row{delivery_of(95.0, 0.0, 85.0), "dynamic_loft_deg", "from 0 to 70 degrees"},
           Row{delivery_of(95.0, -15.0, 70.0, -30.0, 30.0), "spin_loft_deg", "from 0 to 80 degrees"},
           Row{delivery_of(95.0, std::numeric_limits<double>::infinity(), 14.0), "attack_deg",
               "from -15 to 15 degrees"},
       }) {
    const auto findings = validate(row.delivery);
    REQUIRE(findings.size() == 1);
    CHECK(findings.front().severity == Severity::fault);
    CHECK(findings.front().file == "delivery");
    CHECK(findings.front().path == row.path);
    CHECK_MESSAGE(findings.front().expected.find(row.expected) != std::string::npos, findings.front().expected);
    CHECK_THROWS_AS(fly(row.delivery, ClubHead()), InvalidRequest);
    CHECK_THROWS_AS(losses_of(row.delivery, ClubHead(), {}, attainable(*typical_club("driver"))), InvalidRequest);
    CHECK_THROWS_AS(new_head_gain(row.delivery, ClubHead(), {}), InvalidRequest);
  }
  CHECK(validate(delivery_of(95.0, -1.0, 14.0)).empty());
  CHECK(validate(delivery_of(nan, nan, nan, nan, nan)).size() == 5);
}

TEST_CASE("so are heads, launches, weather and limits") {
  ClubHead head;
  head.mass_kg = 0.0;
  CHECK(validate(head).size() == 1);
  Launch launch = test::launch_at(500.0, 10.0, 2500.0);
  CHECK(validate(launch).size() == 1);
  CHECK_THROWS_AS(fly(launch, {}), InvalidRequest);
  FlightConditions conditions;
  conditions.wind.speed_mps = 60.0;
  conditions.air.temperature_c = std::nan("");
  conditions.air.humidity = 50.0;
  conditions.tolerance = 0.0;
  CHECK(validate(conditions).size() == 4);
  CHECK_THROWS_AS(fly(delivery_of(95.0, 0.0, 14.0), ClubHead(), conditions), InvalidRequest);
  Attainable limits = attainable(*typical_club("driver"));
  std::swap(limits.attack.low, limits.attack.high);
  CHECK(validate(limits).size() == 1);
  CHECK_THROWS_AS(most_carry(40.0, ClubHead(), {}, limits), InvalidRequest);
  CHECK_THROWS_AS(most_carry(400.0, ClubHead(), {}, attainable(*typical_club("driver"))), InvalidRequest);
  const Delivery delivery = delivery_of(95.0, 0.0, 14.0);
  for (const double fitting : {std::nan(""), -0.01, 1.0}) {
    CHECK_THROWS_AS(new_head_gain(delivery, ClubHead(), {}, {Restitution(), fitting}), InvalidRequest);
  }
  CHECK_THROWS_AS(new_head_gain(delivery, ClubHead(), {}, {Restitution{2.0, 0.0}, 0.0}), InvalidRequest);
  const Limits swapped{radians(20.0), radians(10.0)};
  CHECK_THROWS_AS(best_loft(delivery, ClubHead(), {}, swapped), InvalidRequest);
  CHECK_THROWS_AS(board({40.0}, {0.0}, ClubHead(), {}, swapped), InvalidRequest);
  for (const TypicalClub& club : typical_clubs()) {
    CHECK(validate(club.head).empty());
    CHECK(validate(attainable(club)).empty());
  }
}

namespace {

double between(double low, double high) { return low + (high - low) * *rc::gen::inRange(0, 100001) / 100000.0; }

Delivery any_delivery() {
  Delivery delivery{};
  do {
    delivery = delivery_of(between(10, 160), between(-15, 15), between(0, 70), between(-30, 30), between(-30, 30));
  } while (!validate(delivery).empty());
  return delivery;
}

}  // namespace

TEST_CASE("whatever is within its range lands in finite time, in any wind that is allowed") {
  test::check_property("every flight lands", 2026, 100, [] {
    FlightConditions conditions;
    conditions.wind = {between(0, 25), radians(between(-180, 180)), between(0, 1)};
    conditions.air = {between(-20, 50), between(-500, 5000), between(850, 1100), between(0, 1)};
    if (*rc::gen::inRange(0, 2) == 1) conditions.aerodynamics = smits_smith_1994();
    const int firmness = *rc::gen::inRange(0, 3);
    conditions.turf = firmness == 0 ? soft_turf() : firmness == 1 ? normal_turf() : firm_turf();
    const Flight flight = fly(any_delivery(), ClubHead(), conditions);
    RC_ASSERT(flight.hang_time_s >= 0.0);
    RC_ASSERT(flight.hang_time_s < 60.0);
    RC_ASSERT(flight.carry_m >= 0.0);
    RC_ASSERT(flight.apex_m >= 0.0);
    RC_ASSERT(std::isfinite(flight.total_m));
    RC_ASSERT(std::isfinite(flight.total_offline_m));
    RC_ASSERT(std::isfinite(flight.landing_rad));
    RC_ASSERT(flight.total_m < 1000.0);
  });
}

}  // namespace yardworth
