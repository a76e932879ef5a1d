#include <doctest/doctest.h>

#include <cstdio>

#include "derive/published_flight.hpp"
#include "yardworth/flight.hpp"

namespace yardworth {

// The sources and allowances stand with each row in src/derive/published_flight.cpp; docs/validation.md has the table.
TEST_CASE("deliveries and flights against what was published") {
  const std::vector<PublishedCheck> checks = check_published_flight();
  CHECK(checks.size() >= 12);
  for (const PublishedCheck& check : checks) {
    std::printf("flight: %s: published %.1f computed %.2f difference %+.2f allowed %.2f\n", check.fact.c_str(),
                check.published, check.computed, check.difference(), check.allowed);
    CHECK_MESSAGE(check.holds(), check.fact);
  }
}

TEST_CASE("the share of the face in the start comes out too large") {
  // Wood, Henrikson and Broadie, Proceedings (MDPI) 2(6):249, 2018 (the split read in a quotation): 76 (+-8), 69 (+-3)
  // and 61 (+-7)% to the side, where 83, 81 and 72% were measured upwards. A face that is rigid and grips the same in
  // every direction has the same share in both, so the model misses this by 8 to 10 points: docs/model.md says so.
  struct Row {
    const char* club;
    double published;
  };
  for (const Row& row : {Row{"driver", 76.0}, Row{"7-iron", 69.0}, Row{"pitching wedge", 61.0}}) {
    const TypicalClub club = *typical_club(row.club);
    Delivery delivery = typical_delivery(club, from_mph(94.0));
    delivery.face_rad = radians(2.0);
    const double share = 100.0 * launch_of(delivery, club.head).start_rad / delivery.face_rad;
    std::printf("flight: share of the face in the start, %s: published %.0f%% computed %.1f%%, missed\n", row.club,
                row.published, share);
    CHECK(share > row.published);
    CHECK(share < row.published + 11.0);
  }
}

TEST_CASE("another set of coefficients can be given") {
  // The balls of A. J. Smits and D. R. Smith, Science and Golf II, 1994, drag more than those of the default set.
  FlightConditions conditions;
  const Delivery delivery{from_mph(105.0), 0.0, radians(13.0), 0.0, 0.0};
  const double carry = fly(delivery, ClubHead(), conditions).carry_m;
  conditions.aerodynamics = smits_smith_1994();
  CHECK(fly(delivery, ClubHead(), conditions).carry_m < carry - 10.0);
}

}  // namespace yardworth
