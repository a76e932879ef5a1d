#include "gain/changed_finish.hpp"

#include <algorithm>

#include "shot/putting.hpp"
#include "shot/short_game.hpp"
#include "strategy/hole_model.hpp"

namespace yardworth {

namespace {

// A golfer's own strokes to hole out.
struct OwnFinish {
  explicit OwnFinish(const Skill& skill) : putting(skill.putting), short_game(skill.short_game, putting) {}
  OwnFinish(const OwnFinish&) = delete;  // the one refers to the other
  OwnFinish& operator=(const OwnFinish&) = delete;

  double strokes(Lie lie, double distance_yd) const {
    if (lie == Lie::green) return putting.putts(std::min(distance_yd * feet_per_yard, Putting::longest_ft));
    return short_game.strokes(lie, std::min(distance_yd, short_game_radius_yd));
  }

  Putting putting;
  ShortGame short_game;
};

}  // namespace

Baseline changed_finish(const Baseline& baseline, const Skill& before, const Skill& after) {
  const OwnFinish was(before);
  const OwnFinish is(after);
  return baseline.with_added(
      [&](Lie lie, double distance_yd) { return is.strokes(lie, distance_yd) - was.strokes(lie, distance_yd); });
}

}  // namespace yardworth
