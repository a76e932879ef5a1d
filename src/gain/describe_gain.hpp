#pragma once

#include "gain/finishes_of_change.hpp"
#include "gain/solve_hole.hpp"
#include "gain/table_method.hpp"
#include "yardworth/gain.hpp"

namespace yardworth {

// What a solved hole comes to, as facts of its HoleGain. `about` has the number, the par and the length.

// Beyond strokes and tee shots.
struct DescribeOptions {
  bool play = false;                         // how the hole is played
  const FinishesOfChange* finish = nullptr;  // how often it takes how many strokes, with these
};

HoleGain describe_table(const HoleModels& models, const TableAnswer& answer, const HoleGain& about);
HoleGain describe_habit(const HoleModels& models, const SolvedHabit& habit, const HoleGain& about,
                        const DescribeOptions& options);
HoleGain describe_best(const HoleModels& models, const SolvedBest& best, const HoleGain& about,
                       const DescribeOptions& options);

}  // namespace yardworth
