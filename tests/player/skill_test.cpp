#include "player/skill.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

#include "yardworth/player.hpp"

namespace yardworth {
namespace {

// Every number of a skill, so that a check can walk over all of them.
std::vector<double> numbers_of(const Skill& skill) {
  std::vector<double> numbers = {
      skill.driver_carry_yd,        skill.driver_roll_yd,          skill.carry_sd_floor_yd,
      skill.carry_sd_share,         skill.driver_direction_sd_rad, skill.hybrid_direction_sd_rad,
      skill.wedge_direction_sd_rad, skill.driver_poor_strike,      skill.wedge_poor_strike};
  for (const LieEffect& lie : {skill.fairway, skill.rough, skill.bunker, skill.recovery}) {
    numbers.insert(numbers.end(),
                   {lie.carry_factor, lie.carry_sd_factor, lie.direction_sd_factor, lie.poor_strike_added});
  }
  for (const Touch& touch :
       {skill.short_game.fairway, skill.short_game.rough, skill.short_game.bunker, skill.short_game.recovery}) {
    numbers.insert(numbers.end(), {touch.spread_floor_yd, touch.spread_share, touch.poor_strike});
  }
  numbers.insert(numbers.end(), {skill.putting.direction_sd_rad, skill.putting.distance_sd_share});
  return numbers;
}

double driver_total(const Skill& skill) { return skill.driver_carry_yd + skill.driver_roll_yd; }

// USGA Course Rating System manual (scratch and bogey golfers' tee shots); R&A / USGA, A Review of Driving Distance,
// 2016 data (men by handicap); Broadie, as reported in 2008 (tour).
TEST_CASE("driver distances of the published golfers") {
  const auto published = [](Band band, Gender gender, double yards, double within) {
    CAPTURE(name(band));
    CAPTURE(yards);
    CHECK(std::abs(driver_total(skill_of(band, gender)) - yards) <= within);
  };
  published(Band::tour, Gender::men, 280.0, 1.0);
  published(Band::scratch, Gender::men, 250.0, 0.5);
  published(Band::bogey, Gender::men, 200.0, 0.5);
  published(Band::below_6, Gender::men, 245.0, 1.0);
  published(Band::from_6_to_12, Gender::men, 225.0, 1.0);
  published(Band::from_13_to_20, Gender::men, 199.0, 1.0);
  published(Band::from_21, Gender::men, 182.0, 1.0);
  published(Band::scratch, Gender::women, 210.0, 0.5);
  published(Band::bogey, Gender::women, 150.0, 0.5);
  // The same manual: 225 carry + 25 roll, 180 carry + 20 roll.
  CHECK(skill_of(Band::scratch, Gender::men).driver_carry_yd == doctest::Approx(225.0));
  CHECK(skill_of(Band::bogey, Gender::men).driver_carry_yd == doctest::Approx(180.0));
}

TEST_CASE("between two rows every number lies on the straight line between theirs") {
  // Rows stand at 3 and 9, at 9 and 16.5; a third of the way from 3 to 9 is 5.
  for (const Gender gender : {Gender::men, Gender::women}) {
    struct Between {
      double low, middle, high, share;
    };
    for (const Between& index :
         {Between{3.0, 5.0, 9.0, 1.0 / 3.0}, Between{9.0, 12.75, 16.5, 0.5}, Between{-6.0, -1.5, 0.0, 0.75}}) {
      const std::vector<double> a = numbers_of(skill_of(index.low, gender));
      const std::vector<double> b = numbers_of(skill_of(index.middle, gender));
      const std::vector<double> c = numbers_of(skill_of(index.high, gender));
      CAPTURE(index.middle);
      for (std::size_t i = 0; i < a.size(); ++i) {
        CAPTURE(i);
        CHECK(b[i] == doctest::Approx((1.0 - index.share) * a[i] + index.share * c[i]).epsilon(1e-12));
      }
    }
  }
}

TEST_CASE("skills fade with the Handicap Index and stop changing beyond the last row") {
  for (const Gender gender : {Gender::men, Gender::women}) {
    for (double index = -6.0; index < 26.0; index += 0.5) {
      const Skill better = skill_of(index, gender);
      const Skill worse = skill_of(index + 0.5, gender);
      CAPTURE(index);
      CHECK(driver_total(worse) < driver_total(better));
      CHECK(worse.carry_sd_floor_yd >= better.carry_sd_floor_yd);
      CHECK(worse.carry_sd_share >= better.carry_sd_share);
      CHECK(worse.driver_direction_sd_rad >= better.driver_direction_sd_rad);
      CHECK(worse.hybrid_direction_sd_rad >= better.hybrid_direction_sd_rad);
      CHECK(worse.wedge_direction_sd_rad >= better.wedge_direction_sd_rad);
      CHECK(worse.driver_poor_strike >= better.driver_poor_strike);
      CHECK(worse.wedge_poor_strike >= better.wedge_poor_strike);
      CHECK(worse.rough.carry_factor <= better.rough.carry_factor);
      CHECK(worse.putting.direction_sd_rad >= better.putting.direction_sd_rad);
      if (index < 0.0) continue;  // tour plays from championship rough and sand
      CHECK(worse.bunker.poor_strike_added >= better.bunker.poor_strike_added);
      CHECK(worse.short_game.rough.spread_share >= better.short_game.rough.spread_share);
    }
    CHECK(numbers_of(skill_of(54.0, gender)) == numbers_of(skill_of(36.0, gender)));
    CHECK(numbers_of(skill_of(-9.0, gender)) == numbers_of(skill_of(-6.0, gender)));
    for (double index = -6.0; index <= 54.0; index += 1.5) {
      const Skill skill = skill_of(index, gender);
      for (const LieEffect& lie : {skill.rough, skill.bunker, skill.recovery}) {
        CHECK(lie.carry_factor > 0.0);
        CHECK(lie.carry_factor <= 1.0);
        CHECK(lie.carry_sd_factor >= 1.0);
        CHECK(lie.direction_sd_factor >= 1.0);
        CHECK(lie.poor_strike_added >= 0.0);
      }
    }
  }
}

TEST_CASE("what an entry gives is kept to the last bit") {
  const Skill skill = skill_of(16.0, Gender::men);
  const ClubEntry entry{"5-wood", 171.0, 11.0, 9.5, 0.083, 0.061};
  const Club club = complete_club(entry, 196.0, skill);
  CHECK(club.name == "5-wood");
  CHECK(club.kind == ClubKind::wood);
  CHECK(club.number == 5);
  CHECK(club.carry_yd == 171.0);
  CHECK(club.roll_yd == 11.0);
  CHECK(club.carry_sd_yd == 9.5);
  CHECK(club.carry_sd_floor_yd == std::min(9.5, skill.carry_sd_floor_yd));
  CHECK(club.direction_sd_rad == 0.083);
  CHECK(club.poor_strike == 0.061);
}

TEST_CASE("what an entry leaves out follows from the club's place in the bag") {
  const Skill skill = skill_of(16.0, Gender::men);
  ClubEntry entry;
  entry.name = "driver";
  entry.carry_yd = 196.0;
  const Club driver = complete_club(entry, 196.0, skill);
  CHECK(driver.roll_yd == doctest::Approx(196.0 * skill.driver_roll_yd / skill.driver_carry_yd));
  CHECK(driver.carry_sd_yd == doctest::Approx(skill.carry_sd_floor_yd + 196.0 * skill.carry_sd_share));
  CHECK(driver.carry_sd_floor_yd == skill.carry_sd_floor_yd);
  CHECK(driver.direction_sd_rad == doctest::Approx(skill.driver_direction_sd_rad));
  CHECK(driver.poor_strike == doctest::Approx(skill.driver_poor_strike));
  // A wedge carries 45% of the longest club or less.
  for (const double carry : {0.45 * 196.0, 60.0}) {
    entry.name = "sand wedge";
    entry.carry_yd = carry;
    const Club wedge = complete_club(entry, 196.0, skill);
    CHECK(wedge.carry_sd_yd == doctest::Approx(skill.carry_sd_floor_yd + carry * skill.carry_sd_share));
    CHECK(wedge.direction_sd_rad == doctest::Approx(skill.wedge_direction_sd_rad));
    CHECK(wedge.poor_strike == doctest::Approx(skill.wedge_poor_strike));
    CHECK(wedge.roll_yd < 0.05 * carry);
  }
  // 72.5% is half-way between the two.
  entry.name = "6-iron";
  entry.carry_yd = 0.725 * 196.0;
  const Club middle = complete_club(entry, 196.0, skill);
  CHECK(middle.poor_strike == doctest::Approx(0.5 * (skill.driver_poor_strike + skill.wedge_poor_strike)));
  // The same shares of a shorter driver give the same spreads.
  entry.carry_yd = 0.725 * 150.0;
  CHECK(complete_club(entry, 150.0, skill).direction_sd_rad == doctest::Approx(middle.direction_sd_rad));
}

// docs/model.md, "Skills": two straight lines that meet at the hybrid of the standard bag, 0.805 of the driver.
TEST_CASE("the spread of direction has a line from the wedges to the hybrid and one from there to the driver") {
  Skill skill = skill_of(16.0, Gender::men);
  skill.wedge_direction_sd_rad = 0.03;
  skill.hybrid_direction_sd_rad = 0.05;
  skill.driver_direction_sd_rad = 0.09;
  const auto spread_at = [&](double share) {
    ClubEntry entry;
    entry.name = "trusty";
    entry.carry_yd = share * 200.0;
    return complete_club(entry, 200.0, skill).direction_sd_rad;
  };
  CHECK(spread_at(0.40) == doctest::Approx(0.03));
  CHECK(spread_at(0.6275) == doctest::Approx(0.04));  // half-way from 0.45 to 0.805
  CHECK(spread_at(0.805) == doctest::Approx(0.05));
  CHECK(spread_at(0.9025) == doctest::Approx(0.07));  // half-way from 0.805 to 1
  CHECK(spread_at(1.0) == doctest::Approx(0.09));
}

TEST_CASE("no club of a standard bag is wilder than a longer one; of tour all lie on one line") {
  for (const Gender gender : {Gender::men, Gender::women}) {
    for (double index = -6.0; index <= 40.0; index += 0.5) {
      const Player player = standard_player(skill_of(index, gender), gender);
      CAPTURE(index);
      for (std::size_t i = 0; i + 1 < player.clubs.size(); ++i) {
        CHECK(player.clubs[i].direction_sd_rad >= player.clubs[i + 1].direction_sd_rad);
      }
    }
    const Skill tour = skill_of(-6.0, gender);
    // Rows keep five digits.
    CHECK(tour.hybrid_direction_sd_rad ==
          doctest::Approx(std::lerp(tour.wedge_direction_sd_rad, tour.driver_direction_sd_rad, hybrid_place()))
              .epsilon(2e-5));
  }
}

TEST_CASE("a standard bag: one driver, longest first, every gap one that a golfer can fill") {
  for (const Gender gender : {Gender::men, Gender::women}) {
    for (const Band band : all_bands) {
      const Player player = standard_player(band, gender);
      CAPTURE(player.label);
      CHECK(player.clubs.front().kind == ClubKind::driver);
      CHECK(std::count_if(player.clubs.begin(), player.clubs.end(),
                          [](const Club& club) { return club.kind == ClubKind::driver; }) == 1);
      CHECK(player.clubs.size() <= 13);  // and a putter: fourteen clubs, Rule 4.1b
      CHECK(player.clubs.front().carry_yd == player.skill.driver_carry_yd);
      for (std::size_t i = 0; i + 1 < player.clubs.size(); ++i) {
        const double gap = player.clubs[i].carry_yd - player.clubs[i + 1].carry_yd;
        CHECK(gap > 0.0);
        CHECK(gap < 26.0);
        CHECK(player.clubs[i].kind != ClubKind::other);
      }
      REQUIRE(reference_iron(player).has_value());
      CHECK(player.clubs[*reference_iron(player)].name == "7-iron");
    }
  }
}

Club club_named(const std::string& name, double carry_yd) {
  const ClubName parsed = parse_club_name(name);
  return {name, parsed.kind, parsed.number, carry_yd, 6.0, 8.0, 0.1, 0.05};
}

Player bag_of(const std::vector<std::pair<std::string, double>>& clubs) {
  Player player;
  for (const auto& [name, carry] : clubs) player.clubs.push_back(club_named(name, carry));
  return player;
}

std::string reference_of(const std::vector<std::pair<std::string, double>>& clubs) {
  const Player player = bag_of(clubs);
  const auto reference = reference_iron(player);
  return reference ? player.clubs[*reference].name : "none";
}

TEST_CASE("the club that added yards of irons are said of") {
  CHECK(reference_of({{"driver", 220.0}, {"6-iron", 150.0}, {"7-iron", 140.0}, {"8-iron", 130.0}}) == "7-iron");
  CHECK(reference_of({{"driver", 220.0}, {"5-iron", 160.0}, {"6-iron", 150.0}, {"9-iron", 120.0}}) == "6-iron");
  CHECK(reference_of({{"driver", 220.0}, {"4-iron", 170.0}, {"9-iron", 120.0}}) == "9-iron");
  CHECK(reference_of({{"driver", 220.0}, {"7-wood", 180.0}, {"9-iron", 120.0}}) == "9-iron");
  // Without irons: the club nearest to 0.665 of the longest, 146 here.
  CHECK(reference_of({{"driver", 220.0}, {"5-wood", 185.0}, {"7-hybrid", 150.0}, {"pitching wedge", 110.0}}) ==
        "7-hybrid");
  CHECK(reference_of({{"driver", 220.0}, {"5-wood", 185.0}}) == "5-wood");
  CHECK(reference_of({{"driver", 220.0}}) == "none");
}

TEST_CASE("longer clubs: the driver by what is said, the irons in proportion") {
  const Player player = bag_of({{"driver", 200.0}, {"5-wood", 175.0}, {"7-iron", 125.0}, {"pitching wedge", 100.0}});
  const Player longer = lengthen(player, 20.0, 5.0);
  // 5 of 125 is 4%: 175 becomes 182, 100 becomes 104.
  const double carries[] = {220.0, 182.0, 130.0, 104.0};
  for (std::size_t i = 0; i < 4; ++i) {
    CAPTURE(i);
    CHECK(longer.clubs[i].carry_yd == doctest::Approx(carries[i]).epsilon(1e-12));
    CHECK(longer.clubs[i].roll_yd == player.clubs[i].roll_yd);
    // What spreads beyond the floor stays a share of the carry.
    const double floor_yd = player.clubs[i].carry_sd_floor_yd;
    CHECK(longer.clubs[i].carry_sd_floor_yd == floor_yd);
    CHECK((longer.clubs[i].carry_sd_yd - floor_yd) / longer.clubs[i].carry_yd ==
          doctest::Approx((player.clubs[i].carry_sd_yd - floor_yd) / player.clubs[i].carry_yd).epsilon(1e-12));
    CHECK(longer.clubs[i].direction_sd_rad == player.clubs[i].direction_sd_rad);
    CHECK(longer.clubs[i].poor_strike == player.clubs[i].poor_strike);
    // Nor does a shot of so many yards become less sure because the club now goes further.
    CHECK(longer.clubs[i].half_swing_yd == player.clubs[i].half_swing_yd);
  }
  const Player driver_only = lengthen(player, 20.0, 0.0);
  for (std::size_t i = 1; i < 4; ++i) CHECK(driver_only.clubs[i].carry_yd == player.clubs[i].carry_yd);
  // A loss is a fair question.
  CHECK(lengthen(player, -15.0, -5.0).clubs[0].carry_yd == doctest::Approx(185.0));
  CHECK(lengthen(player, -15.0, -5.0).clubs[2].carry_yd == doctest::Approx(120.0));
}

TEST_CASE("nothing added leaves every bit as it was") {
  for (const Band band : all_bands) {
    const Player player = standard_player(band, Gender::women);
    const Player same = lengthen(player, 0.0, 0.0);
    REQUIRE(same.clubs.size() == player.clubs.size());
    for (std::size_t i = 0; i < same.clubs.size(); ++i) {
      CHECK(same.clubs[i].carry_yd == player.clubs[i].carry_yd);
      CHECK(same.clubs[i].carry_sd_yd == player.clubs[i].carry_sd_yd);
      CHECK(same.clubs[i].roll_yd == player.clubs[i].roll_yd);
    }
  }
}

TEST_CASE("with a driver only, nothing but the driver can grow") {
  const Player longer = lengthen(bag_of({{"driver", 200.0}}), 10.0, 5.0);
  CHECK(longer.clubs.front().carry_yd == doctest::Approx(210.0));
}

}  // namespace
}  // namespace yardworth
