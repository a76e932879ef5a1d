#include "shot/swing.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "player/skill.hpp"
#include "shot/strike.hpp"

namespace yardworth {
namespace {

Club club_named(const std::string& name, double carry_yd) {
  const ClubName parsed = parse_club_name(name);
  return {name, parsed.kind, parsed.number, carry_yd, 0.1 * carry_yd,       0.08 * carry_yd,
          0.1,  0.05,        0.0,           3.0,      half_swing * carry_yd};
}

Player bag_of(const std::vector<std::pair<std::string, double>>& clubs) {
  Player player;
  for (const auto& [name, carry] : clubs) player.clubs.push_back(club_named(name, carry));
  player.skill.rough = {0.9, 1.3, 1.2, 0.04};
  player.skill.bunker = {0.8, 1.5, 1.25, 0.10};
  player.skill.recovery = {0.5, 1.8, 1.1, 0.90};
  return player;
}

Player full_bag() {
  return bag_of({{"driver", 230.0},
                 {"3-wood", 210.0},
                 {"5-wood", 200.0},
                 {"4-hybrid", 190.0},
                 {"6-iron", 160.0},
                 {"pitching wedge", 120.0}});
}

std::vector<std::string> names_of(const Player& player, const std::vector<Swing>& swings) {
  std::vector<std::string> names;
  names.reserve(swings.size());
  for (const Swing& swing : swings) names.push_back(player.clubs[swing.club].name);
  return names;
}

// What golfers are taught to take out of the bag: common practice, no source.
TEST_CASE("which clubs a lie allows") {
  const Player player = full_bag();
  using Names = std::vector<std::string>;
  const auto from = [&](Lie lie) { return names_of(player, full_swings(player, lie)); };
  CHECK(from(Lie::tee) == Names{"driver", "3-wood", "5-wood", "4-hybrid", "6-iron", "pitching wedge"});
  CHECK(from(Lie::fairway) == Names{"3-wood", "5-wood", "4-hybrid", "6-iron", "pitching wedge"});
  CHECK(from(Lie::rough) == Names{"5-wood", "4-hybrid", "6-iron", "pitching wedge"});
  CHECK(from(Lie::bunker) == Names{"6-iron", "pitching wedge"});
  CHECK(from(Lie::recovery) == Names{"4-hybrid", "6-iron", "pitching wedge"});
}

TEST_CASE("a bag with nothing that suits may play what it has") {
  const Player player = bag_of({{"driver", 200.0}, {"3-wood", 180.0}});
  CHECK(full_swings(player, Lie::bunker).size() == 2);
  CHECK(full_swings(player, Lie::fairway).size() == 1);
  CHECK(full_swings(bag_of({{"driver", 200.0}}), Lie::fairway).size() == 1);
}

TEST_CASE("a good lie gives the club's own numbers") {
  const Player player = full_bag();
  for (const Lie lie : {Lie::tee, Lie::fairway}) {
    for (const Swing& swing : full_swings(player, lie)) {
      const Club& club = player.clubs[swing.club];
      CHECK(swing.carry_yd == doctest::Approx(club.carry_yd));
      CHECK(swing.carry_sd_share == doctest::Approx(0.08));
      CHECK(swing.direction_scale_rad == doctest::Approx(0.1 * direction_scale_per_sd));
      CHECK(swing.roll_share == doctest::Approx(0.1));
      CHECK(swing.poor_strike == doctest::Approx(0.05));
    }
  }
}

// By hand from the factors in bag_of: 160 * 0.9 = 144, 0.08 * 1.3 = 0.104, 0.1 * 1.2 = 0.12, 0.05 + 0.04 = 0.09.
TEST_CASE("a poor lie costs distance and control") {
  const Player player = full_bag();
  const auto six_iron = [&](Lie lie) {
    const std::vector<Swing> swings = full_swings(player, lie);
    return *std::find_if(swings.begin(), swings.end(), [](const Swing& swing) { return swing.club == 4; });
  };
  const Swing rough = six_iron(Lie::rough);
  CHECK(rough.carry_yd == doctest::Approx(144.0));
  CHECK(rough.carry_sd_share == doctest::Approx(0.104));
  CHECK(rough.direction_scale_rad == doctest::Approx(0.12 * direction_scale_per_sd));
  CHECK(rough.poor_strike == doctest::Approx(0.09));
  CHECK(rough.roll_share == doctest::Approx(0.1));
  const Swing bunker = six_iron(Lie::bunker);
  CHECK(bunker.carry_yd == doctest::Approx(128.0));
  CHECK(bunker.carry_sd_share == doctest::Approx(0.12));
  // A probability stays one: never more than nine in ten.
  CHECK(six_iron(Lie::recovery).poor_strike == doctest::Approx(0.9));
}

TEST_CASE("longest first, whatever the order of the bag") {
  const Player player = bag_of({{"7-iron", 140.0}, {"driver", 220.0}, {"5-iron", 160.0}});
  const std::vector<Swing> swings = full_swings(player, Lie::tee);
  CHECK(names_of(player, swings) == std::vector<std::string>{"driver", "5-iron", "7-iron"});
}

TEST_CASE("a swing played down keeps its floor of spread, is less sure below half, and is never played up") {
  const Swing full = full_swings(full_bag(), Lie::rough).front();
  const double floor_yd = full.carry_sd_floor_yd;
  const double share = full.carry_sd_share - floor_yd / full.carry_yd;
  REQUIRE(floor_yd > 0.0);
  REQUIRE(share > 0.0);
  for (const double part : {0.9, 0.7, 0.5}) {
    const Swing down = played_down(full, part * full.carry_yd);
    CHECK(down.carry_sd_share * down.carry_yd == doctest::Approx(floor_yd + share * down.carry_yd));
  }
  const Swing little = played_down(full, 0.4 * full.carry_yd);
  CHECK(little.carry_sd_share * little.carry_yd == doctest::Approx(1.2 * (floor_yd + share * little.carry_yd)));
  const Swing down = played_down(full, 100.0);
  CHECK(down.carry_yd == 100.0);
  CHECK(played_down(full, full.carry_yd) == full);
  CHECK(down.direction_scale_rad == full.direction_scale_rad);
  CHECK(down.roll_share == full.roll_share);
  CHECK(down.poor_strike == full.poor_strike);
  CHECK(down.club == full.club);
  CHECK(played_down(full, 1000.0).carry_yd == full.carry_yd);
  CHECK(down.total_yd(0.5) == doctest::Approx(105.0));
}

TEST_CASE("a shot of so many yards spreads as before when its club goes further") {
  for (const Band band : all_bands) {
    const Player player = standard_player(band, Gender::men);
    const std::vector<Swing> before = full_swings(player, Lie::fairway);
    const std::vector<Swing> after = full_swings(lengthen(player, 20.0, 12.0), Lie::fairway);
    for (std::size_t i = 0; i < before.size(); ++i) {
      for (const double part : {0.3, 0.49, 0.6, 1.0}) {
        const double carry = part * before[i].carry_yd;
        CHECK(played_down(after[i], carry).carry_sd_share ==
              doctest::Approx(played_down(before[i], carry).carry_sd_share).epsilon(1e-12));
      }
    }
  }
}

TEST_CASE("a solid strike goes its mean carry and so many spreads more, and never backwards") {
  Swing swing;
  swing.carry_yd = 100.0;
  swing.carry_sd_share = 0.3;
  CHECK(swing.solid_carry_yd(0.0) == 100.0);
  CHECK(swing.solid_carry_yd(2.0) == doctest::Approx(160.0));
  CHECK(swing.solid_carry_yd(-2.0) == doctest::Approx(40.0));
  CHECK(swing.solid_carry_yd(-4.0) == 0.0);
}

TEST_CASE("a longer driver leaves the other swings as they are, from every lie") {
  for (const Band band : {Band::scratch, Band::bogey}) {
    const Player player = standard_player(band, Gender::men);
    const Player longer = lengthen(player, 20.0, 0.0);
    for (const Lie lie : {Lie::fairway, Lie::rough, Lie::bunker, Lie::recovery}) {
      CHECK(full_swings(longer, lie) == full_swings(player, lie));
    }
    const std::vector<Swing> before = full_swings(player, Lie::tee);
    const std::vector<Swing> after = full_swings(longer, Lie::tee);
    CHECK(after.front().carry_yd == doctest::Approx(before.front().carry_yd + 20.0));
    CHECK(std::equal(before.begin() + 1, before.end(), after.begin() + 1, after.end()));
  }
}

TEST_CASE("spreading no more means in every respect") {
  const Swing swing = full_swings(full_bag(), Lie::tee).front();
  CHECK(spreads_no_more(swing, swing));
  for (double Swing::*part :
       {&Swing::carry_sd_share, &Swing::direction_scale_rad, &Swing::poor_strike, &Swing::roll_share}) {
    Swing wilder = swing;
    wilder.*part += 0.01;
    CHECK(spreads_no_more(swing, wilder));
    CHECK_FALSE(spreads_no_more(wilder, swing));
    CHECK(spreads_less(swing, wilder));
    CHECK_FALSE(spreads_less(wilder, swing));
    Swing rounded = swing;
    rounded.*part *= 1.0 + 1e-9;
    CHECK(spreads_no_more(rounded, swing));
    CHECK_FALSE(spreads_less(swing, rounded));
  }
}

}  // namespace
}  // namespace yardworth
