#pragma once

#include <cstdint>
#include <functional>

#include "shot/rest.hpp"
#include "shot/sample.hpp"
#include "strategy/policy.hpp"

namespace yardworth {

// What is played from any place of the hole, not only from a state.
using ActionAt = std::function<Action(Lie lie, Point from, RandomEngine& engine)>;

// The habit policy asks nothing of chance.
ActionAt habit_at(const HoleModel& model);

// A policy by state, played from any place as action_near says.
ActionAt policy_at(const HoleModel& model, const Policy& policy);

// Where a shot from a place, struck at random, comes to rest.
Rest draw_rest(const HoleModel& model, Lie lie, Point from, const Action& action, RandomEngine& engine);

// Strokes that a ball at rest in the short game or on the green still takes.
using FinishFrom = std::function<int(Lie lie, double distance_yd, RandomEngine& engine)>;

// Strokes to hole out once, shot by shot from the tee. Inside the short game the baseline's expectation is drawn as a
// whole number, or, given `finish_from`, what it says. A hole that has not ended after 200 strokes counts 200.
int play_hole(const HoleModel& model, const ActionAt& action_at, RandomEngine& engine);
int play_hole(const HoleModel& model, const ActionAt& action_at, const FinishFrom& finish_from, RandomEngine& engine);

// Told of every stroke from the tee on until the short game or the green: how many had been taken before it, and what
// it came to.
using OnRest = std::function<void(int strokes_before, const Rest& rest)>;
int play_hole(const HoleModel& model, const ActionAt& action_at, const FinishFrom& finish_from, RandomEngine& engine,
              const OnRest& on_rest);

struct SampledMean {
  double mean = 0.0;
  double standard_error = 0.0;
  double spread = 0.0;  // standard deviation of one hole's strokes
};

// The mean of `plays` plays of the hole. Same seed, same result.
SampledMean sample_hole(const HoleModel& model, const ActionAt& action_at, int plays, std::uint64_t seed);

}  // namespace yardworth
