#include <doctest/doctest.h>

#include <string>

#include "player/skill.hpp"
#include "yardworth/player.hpp"

namespace yardworth {
namespace {

void check_club(const std::string& text, ClubKind kind, int number) {
  CAPTURE(text);
  const ClubName parsed = parse_club_name(text);
  CHECK(parsed.kind == kind);
  CHECK(parsed.number == number);
}

TEST_CASE("what a club's name tells") {
  check_club("driver", ClubKind::driver, 0);
  check_club("Driver", ClubKind::driver, 0);
  check_club("1-wood", ClubKind::driver, 0);
  check_club("mini driver", ClubKind::wood, 0);
  check_club("3-wood", ClubKind::wood, 3);
  check_club("5 Wood", ClubKind::wood, 5);
  check_club("7w", ClubKind::wood, 7);
  check_club("4-hybrid", ClubKind::hybrid, 4);
  check_club("3h", ClubKind::hybrid, 3);
  check_club("7-iron", ClubKind::iron, 7);
  check_club("iron 9", ClubKind::iron, 9);
  check_club("6i", ClubKind::iron, 6);
  check_club("2-driving-iron", ClubKind::iron, 2);
  check_club("pitching wedge", ClubKind::wedge, 0);
  check_club("52-degree wedge", ClubKind::wedge, 0);
  check_club("56 degree", ClubKind::wedge, 0);
  check_club("SW", ClubKind::wedge, 0);
  check_club("chipper", ClubKind::other, 0);
  check_club("", ClubKind::other, 0);
  check_club("99999999999-iron", ClubKind::iron, 0);
}

TEST_CASE("names of bands, genders and lies") {
  for (const Band band : all_bands) CHECK(band_named(name(band)) == band);
  // By skill, best first: a bogey golfer is better than the middle of 21 and over.
  for (const Gender gender : {Gender::men, Gender::women}) {
    for (std::size_t i = 1; i < all_bands.size(); ++i) {
      CHECK(typical_handicap_index(all_bands[i - 1], gender) < typical_handicap_index(all_bands[i], gender));
    }
  }
  CHECK(name(Band::from_21) == "21 and over");
  CHECK(name(Band::below_6) == "below 6");
  CHECK_FALSE(band_named("Tour").has_value());
  CHECK(gender_named("women") == Gender::women);
  CHECK(gender_named("men") == Gender::men);
  CHECK_FALSE(gender_named("").has_value());
  CHECK(name(Lie::recovery) == "recovery");
  for (const Lie lie : all_lies) CHECK_FALSE(name(lie).empty());
}

TEST_CASE("the band of a Handicap Index") {
  CHECK(band_of(-2.0) == Band::below_6);
  CHECK(band_of(5.9) == Band::below_6);
  CHECK(band_of(6.0) == Band::from_6_to_12);
  CHECK(band_of(12.4) == Band::from_6_to_12);
  CHECK(band_of(12.5) == Band::from_13_to_20);
  CHECK(band_of(20.4) == Band::from_13_to_20);
  CHECK(band_of(20.5) == Band::from_21);
  for (const Band band : {Band::below_6, Band::from_6_to_12, Band::from_13_to_20, Band::from_21}) {
    CHECK(band_of(typical_handicap_index(band, Gender::men)) == band);
    CHECK(band_of(typical_handicap_index(band, Gender::women)) == band);
  }
}

// USGA Course Rating System manual, as quoted: the bogey golfer has a Handicap Index of 17.5 to 22.4 (men), 21.5 to
// 26.4 (women); the scratch golfer plays to 0.
TEST_CASE("the golfers of course rating") {
  CHECK(typical_handicap_index(Band::scratch, Gender::men) == 0.0);
  CHECK(typical_handicap_index(Band::bogey, Gender::men) > 17.4);
  CHECK(typical_handicap_index(Band::bogey, Gender::men) < 22.5);
  CHECK(typical_handicap_index(Band::bogey, Gender::women) > 21.4);
  CHECK(typical_handicap_index(Band::bogey, Gender::women) < 26.5);
}

}  // namespace
}  // namespace yardworth
