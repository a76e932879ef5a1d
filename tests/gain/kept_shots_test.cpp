#include "strategy/kept_shots.hpp"

#include <doctest/doctest.h>

#include "gain/round_gain.hpp"
#include "input/derived_table.hpp"
#include "support/courses.hpp"
#include "yardworth/limits.hpp"

namespace yardworth {
namespace {

// A hole with as many tees as a course may have, three yards apart, and a ditch every eight yards.
Hole hole_of_many_tees() {
  Hole hole = test::open_hole(1, 400.0);
  for (std::size_t tee = 1; tee < limits::most_tees; ++tee)
    hole.length_yd.push_back(400.0 - 3.0 * static_cast<double>(tee));
  for (double at = 60.0; at < 370.0; at += 8.0) {
    hole.hazards.push_back(test::across(HazardKind::penalty_area, at, at + 0.5));
  }
  return hole;
}

struct Plays {
  const Hole hole = hole_of_many_tees();
  const HoleMap map{hole, Firmness::normal};
  const Player player = standard_player(Band::from_13_to_20, Gender::men);
  const Baseline baseline{derived_table(Band::from_13_to_20, Gender::men)};
  const Golfers golfers = golfers_of(player, baseline, {20.0, 6.0});
  const Discretisation& search = search_grid();

  HoleGain from(std::size_t tee, PolicyChoice policy, KeptShots* kept) const {
    GainRequest request;
    request.tee = tee;
    request.policy = policy;
    request.describe_play = true;
    HoleGains gains;
    CHECK_FALSE(compute_hole_gain({hole, map, tee, golfers, baseline, search, kept}, request, gains));
    return policy == PolicyChoice::habit ? *gains.habit : *gains.best;
  }
};

void check_same(const HoleGain& a, const HoleGain& b) {
  CHECK(a.strokes.before == b.strokes.before);
  CHECK(a.strokes.from_tee() == b.strokes.from_tee());
  CHECK(a.strokes.followed() == b.strokes.followed());
  CHECK(a.strokes.replanned == b.strokes.replanned);
  CHECK(a.play_before->green_in_regulation == b.play_before->green_in_regulation);
  CHECK(a.play_after->approach == b.play_after->approach);
}

}  // namespace

// Only the tee shot differs, and how closely a place is struck.
TEST_CASE("who plays a hole from twenty tees strikes fewer than three times as many shots as from one") {
  const Plays plays;
  KeptShots from_one;
  plays.from(0, PolicyChoice::habit, &from_one);
  KeptShots from_all;
  for (std::size_t tee = 0; tee < limits::most_tees; ++tee) plays.from(tee, PolicyChoice::habit, &from_all);
  MESSAGE("shots struck: " << from_one.shots_struck() << " from one tee, " << from_all.shots_struck() << " from all");
  CHECK(from_one.shots_struck() > 100);
  CHECK(from_all.shots_struck() < 3 * from_one.shots_struck());
}

TEST_CASE("kept shots change no answer") {
  const Plays plays;
  for (const PolicyChoice policy : {PolicyChoice::habit, PolicyChoice::best}) {
    KeptShots kept;
    for (const std::size_t tee : {std::size_t{0}, std::size_t{9}, std::size_t{9}})
      check_same(plays.from(tee, policy, &kept), plays.from(tee, policy, nullptr));
  }
}

}  // namespace yardworth
