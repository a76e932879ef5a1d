#include "gain/golfer_family.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <numeric>

namespace yardworth {
namespace {

constexpr FamilyGolfer weekend{Gender::men, 15.0, 192.0};

std::optional<CornerWeights> weights_at(double along_index, double along_carry,
                                        const std::array<bool, family_corners>& alike) {
  FamilyCell cell = cell_of(weekend);
  cell.along_index = along_index;
  cell.along_carry = along_carry;
  return weights_of_corners(cell, alike);
}

// A plane over the cell, at its corners.
double at_corners(const CornerWeights& weights) {
  return weights[0] * 1.0 + weights[1] * 3.0 + weights[2] * 6.0 + weights[3] * 8.0;
}

}  // namespace

TEST_CASE("a golfer lies in the cell of the grid around him") {
  for (const double index : {-6.0, -0.4, 0.0, 9.0, 15.0, 26.0, 35.9, 36.0}) {
    for (const double carry : {50.0, 99.9, 100.0, 105.0, 192.0, 400.0}) {
      const FamilyCell cell = cell_of({Gender::women, index, carry});
      CHECK(cell.corners[0].handicap_index <= index);
      CHECK(cell.corners[3].handicap_index >= index);
      CHECK(cell.corners[0].driver_carry_yd <= carry);
      CHECK(cell.corners[3].driver_carry_yd >= carry);
      CHECK(cell.corners[3].handicap_index - cell.corners[0].handicap_index <= 6.0);
      CHECK(cell.corners[3].driver_carry_yd == doctest::Approx(1.05 * cell.corners[0].driver_carry_yd));
      for (const double along : {cell.along_index, cell.along_carry}) {
        CHECK(along >= 0.0);
        CHECK(along <= 1.0);
      }
    }
  }
}

TEST_CASE("the weights of corners are exact for planes, and none is negative") {
  for (const double i : {0.0, 0.25, 0.7, 1.0}) {
    for (const double c : {0.0, 0.4, 0.9, 1.0}) {
      const double plane = 1.0 + 5.0 * i + 2.0 * c;
      const auto all = weights_at(i, c, {true, true, true, true});
      REQUIRE(all);
      CHECK(at_corners(*all) == doctest::Approx(plane));
      for (std::size_t missing = 0; missing < family_corners; ++missing) {
        std::array<bool, family_corners> alike = {true, true, true, true};
        alike[missing] = false;
        const auto three = weights_at(i, c, alike);
        if (!three) continue;
        CHECK(at_corners(*three) == doctest::Approx(plane));
        CHECK((*three)[missing] == 0.0);
        CHECK(*std::min_element(three->begin(), three->end()) >= 0.0);
        CHECK(std::accumulate(three->begin(), three->end(), 0.0) == doctest::Approx(1.0));
      }
    }
  }
  // In the half of the cell that a missing corner has, and between two corners across, nobody can be placed.
  CHECK_FALSE(weights_at(0.7, 0.7, {true, true, true, false}));
  CHECK(weights_at(0.3, 0.3, {true, true, true, false}));
  CHECK_FALSE(weights_at(0.3, 0.3, {true, false, false, true}));
  // On a side the others do not count.
  CHECK(weights_at(0.0, 0.3, {true, true, false, false}));
}

TEST_CASE("few golfers are worked out themselves, many in a cell by its corners") {
  const FamilyPlan few = plan_family({weekend, {Gender::men, 15.2, 193.0}, {Gender::women, 20.0, 140.0}});
  CHECK(few.corners.empty());
  CHECK(std::count(few.between.begin(), few.between.end(), true) == 0);
  std::vector<FamilyGolfer> many;
  for (int i = 0; i < 12; ++i) many.push_back({Gender::men, 13.0 + 0.2 * i, 192.0});
  many.push_back({Gender::women, 20.0, 140.0});
  const FamilyPlan plan = plan_family(many);
  CHECK(plan.corners.size() == 4);
  CHECK(std::count(plan.between.begin(), plan.between.end(), true) == 12);
  CHECK_FALSE(plan.between.back());
  CHECK(std::is_sorted(plan.corners.begin(), plan.corners.end()));
}

TEST_CASE("a member has the clubs of the driver and the skill of the index") {
  const Member member{"a", 40.0, Gender::men, 200.0};
  const FamilyGolfer golfer = family_golfer(member);
  CHECK(golfer.handicap_index == 36.0);
  const Player player = player_of(golfer);
  CHECK(player.clubs.front().carry_yd == 200.0);
  // As a file that gives these carries: shares of the driver's, spreads of the index for shots of that length.
  const Player typical = standard_player(skill_of(36.0, Gender::men), Gender::men);
  for (std::size_t i = 0; i < player.clubs.size(); ++i) {
    CHECK(player.clubs[i].carry_yd / 200.0 ==
          doctest::Approx(typical.clubs[i].carry_yd / typical.clubs.front().carry_yd));
    CHECK(player.clubs[i].direction_sd_rad == doctest::Approx(typical.clubs[i].direction_sd_rad));
    CHECK(player.clubs[i].carry_sd_yd ==
          doctest::Approx(player.skill.carry_sd_floor_yd + player.skill.carry_sd_share * player.clubs[i].carry_yd));
  }
  CHECK(family_golfer({"b", 16.5, Gender::women, std::nullopt}).driver_carry_yd ==
        doctest::Approx(skill_of(16.5, Gender::women).driver_carry_yd));
}

}  // namespace yardworth
