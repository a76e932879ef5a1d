#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>
#include <string>
#include <vector>

#include "core/parallel.hpp"
#include "support/courses.hpp"
#include "support/sanitized.hpp"
#include "support/scenario.hpp"
#include "yardworth/gain.hpp"

namespace yardworth {

namespace {

// The clubs after the tee shot of a bare par 4, made longer yard by yard. Number 4 of nine of its kind: each number has
// its own rings.
std::vector<ClubShares> next_clubs(const Player& player, PolicyChoice policy, double from_yd, int yards) {
  std::vector<ClubShares> shares(static_cast<std::size_t>(yards));
  work_in_parallel(0, shares.size(), [&](std::size_t i) {
    std::vector<Hole> holes;
    for (int number = 1; number <= 9; ++number) {
      holes.push_back(test::open_hole(number, from_yd + static_cast<double>(i)));
      holes.back().par = 4;
    }
    GainRequest request;
    request.policy = policy;
    request.threads = 1;
    request.spread_of_score = false;
    request.holes = {4};
    shares[i] = compute_gain(test::course_of(holes), player, request).answer().holes.front().before.next_shares;
  });
  return shares;
}

struct Jump {
  double share = 0.0;
  std::string club;
  std::size_t yard = 0;
};

// The largest change of a club's share from one yard to the next.
Jump largest_jump(const std::vector<ClubShares>& shares) {
  Jump largest;
  const auto share_of = [](const ClubShares& clubs, const std::string& club) {
    const auto found = clubs.find(club);
    return found == clubs.end() ? 0.0 : found->second;
  };
  for (std::size_t i = 1; i < shares.size(); ++i) {
    for (const ClubShares& either : {shares[i - 1], shares[i]}) {
      for (const auto& [club, share] : either) {
        const double jump = std::abs(share_of(shares[i], club) - share_of(shares[i - 1], club));
        if (jump > largest.share) largest = {jump, club, i};
      }
    }
  }
  return largest;
}

constexpr double smooth = 0.05;

// Clubs ten yards apart, of a golfer of 16.
Player evenly_spaced() {
  Player player = standard_player(Band::from_13_to_20, Gender::men);
  double carry = 200.0;
  for (Club& club : player.clubs) {
    club.carry_yd = carry;
    carry -= carry == 200.0 ? 20.0 : 10.0;
  }
  return player;
}

}  // namespace

TEST_CASE("the next club changes smoothly as a hole is made longer, under either plan") {
  for (const char* member :
       {"scratch-man", "8-man", "12-woman", "weekend-16-man", "senior-20-man", "24-man", "28-woman", "junior"}) {
    if (test::sanitized && std::string(member) != "junior") continue;
    const Player player = test::scenario_member(member);
    // Where a solid drive leaves shots with the middle of the bag.
    const Club& driver = player.clubs.front();
    const double length = driver.carry_yd + driver.roll_yd + 0.7 * driver.carry_yd;
    for (const PolicyChoice policy : {PolicyChoice::habit, PolicyChoice::best}) {
      const Jump jump = largest_jump(next_clubs(player, policy, std::round(length), 8));
      std::printf("%s, %s plan: largest jump %.3f, %s\n", member, std::string(name(policy)).c_str(), jump.share,
                  jump.club.c_str());
      CHECK_MESSAGE(jump.share <= smooth, member << ", " << name(policy) << ", " << jump.club);
    }
  }
}

TEST_CASE("each club of an evenly spaced bag has its turn") {
  const Player player = evenly_spaced();
  for (const PolicyChoice policy : {PolicyChoice::habit, PolicyChoice::best}) {
    if (test::sanitized && policy == PolicyChoice::best) continue;
    const std::vector<ClubShares> shares = next_clubs(player, policy, 325.0, 45);
    const Jump jump = largest_jump(shares);
    CHECK_MESSAGE(jump.share <= smooth, name(policy) << ", " << jump.club);
    std::map<std::string, double> most;
    for (const ClubShares& clubs : shares) {
      for (const auto& [club, share] : clubs) most[club] = std::max(most[club], share);
    }
    // From the clubs of 170 yards to those of 110: each is what some length asks for most.
    for (const Club& club : player.clubs) {
      if (club.carry_yd < 110.0 || club.carry_yd > 160.0) continue;
      std::printf("%s plan, %s of %.0f yards: %.0f of 100 at most\n", std::string(name(policy)).c_str(),
                  club.name.c_str(), club.carry_yd, 100.0 * most[club.name]);
      CHECK_MESSAGE(most[club.name] > 0.10, name(policy) << ", " << club.name);
    }
  }
}

}  // namespace yardworth
