#pragma once

#include <memory>
#include <vector>

#include "yardworth/baseline.hpp"
#include "yardworth/change.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// A golfer after a step of a change and all those before it.
struct GolferAfterStep {
  ChangeStep step = ChangeStep::driver_carry;
  Player player;
  std::shared_ptr<const Baseline> finish = nullptr;  // what the short game is worth now; null: what it was
};

// The golfers of a change: before it, and after each of its steps that moves something. A change that moves nothing has
// no steps, and saves exactly nothing.
struct Golfers {
  Player before;
  std::vector<GolferAfterStep> steps = {};

  const Player& after() const { return steps.empty() ? before : steps.back().player; }
  // What the short game is worth after a step; that of before is the caller's.
  const Baseline& finish_after(std::size_t step, const Baseline& before_change) const {
    return steps[step].finish ? *steps[step].finish : before_change;
  }
  const Baseline& finish_after_all(const Baseline& before_change) const {
    return steps.empty() ? before_change : finish_after(steps.size() - 1, before_change);
  }
};

// The change has to leave a golfer that can be simulated (require_valid).
Golfers golfers_of(const Player& player, const Baseline& baseline, const Change& change);

// The golfer after the steps up to one.
Player golfer_after(const Player& player, const Change& change, ChangeStep last);
inline Player golfer_after(const Player& player, const Change& change) {
  return golfer_after(player, change, all_change_steps.back());
}

// The steps that are asked for and move nothing of this golfer.
std::vector<ChangeStep> steps_without_effect(const Player& player, const Change& change);

// The club of the bag that a change speaks of by name; null where there is none.
const Club* club_named(const Player& player, std::string_view name);

}  // namespace yardworth
