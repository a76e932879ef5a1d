#pragma once

#include "support/step_values.hpp"
#include "yardworth/report.hpp"

namespace yardworth::test {

// Two holes and a round whose parts are 1.25 + 0.3125 + 0.1875 = 1.75, all exact in binary.
inline GainReport sample_gain() {
  const TeeShotResult long_before{"driver", 182.0, "5-iron", {{"5-iron", 0.5}, {"4-hybrid", 0.25}, {"putter", 0.25}},
                                  0.5,      0.125};
  const TeeShotResult long_after{"3-wood", 163.0, "7-iron", {{"5-iron", 0.25}, {"7-iron", 0.75}}, 0.625, 0.0625};
  const TeeShotResult short_shot{"7-iron", 9.0, "putter", {{"putter", 0.75}, {"short game", 0.25}}, 0.5, 0.0};

  PolicyGain best;
  best.round = of_carries(92.5, 91.25, 90.9375, 90.75);
  PolicyChange shorter;
  shorter.kind = PolicyChange::Kind::other_club;
  shorter.club_kept = "driver";
  shorter.club = "3-wood";
  shorter.shorter = shorter.comes_into_reach = true;
  shorter.avoided = HazardView{0, Ground::penalty_area, HazardSide::right, 226.0, 244.0, false};
  best.holes.push_back(
      {1, 4, 376.0, of_carries(5.25, 5.0, 4.875, 4.75), long_before, long_after, 0.875, shorter, 1.25});
  best.holes.push_back({2, 3, 142.0, of_carries(3.5, 3.5, 3.5, 3.5), short_shot, short_shot, 0.0, {}});
  best.second_shot = {1.25, 1.25, {}, "5-iron", "7-iron"};
  PolicyGain habit = best;
  habit.round = of_carries(94.0, 92.875, 92.5, 92.5);

  GainResult result;
  result.course = "Heron Ferry Municipal";
  result.tee = "middle";
  result.player = "weekend 16";
  result.change = {20.0, 6.0};
  result.reference_iron = "7-iron";
  result.best = best;
  result.habit = habit;
  result.replanning_computed = true;
  result.baseline_name = "anchored 16.2 men";
  result.baseline_source = "published yardage ratings";
  result.notes = {{Note::Kind::own_shots_then_baseline, 50.0}};
  result.cautions = {{Caution::Kind::ratings_are_the_associations}};
  return {result, {}, {}};
}

// The same with another gain of the round, all of it from the tee.
inline GainResult sample_with_saved(double saved) {
  GainResult result = sample_gain().result;
  result.best->round = of_carries(92.5, 92.5 - saved, 92.5 - saved, 92.5 - saved);
  return result;
}

}  // namespace yardworth::test
