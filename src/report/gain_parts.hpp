#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "yardworth/report.hpp"

namespace yardworth::report {

// Which parts of the strokes saved somebody worked out; the others are 0 by construction.
struct ComputedParts {
  bool irons = true;
  bool replanning = true;
};
ComputedParts computed_parts(const GainResult& result);

// A club with its probability before and after the change.
struct ClubShare {
  std::string club;
  double before = 0.0;
  double after = 0.0;
};

// Clubs in the order of a bag, longest first, then the short game and the putter.
std::vector<std::string> in_bag_order(const ClubShares& shares);
std::vector<ClubShare> in_bag_order(const ClubShares& before, const ClubShares& after);

// What follows the tee shots of the holes longer than a par 3, each hole counting the same.
struct SecondShots {
  int holes = 0;
  std::vector<ClubShare> clubs;
  double fairway_before = 0.0, fairway_after = 0.0;
  double penalty_before = 0.0, penalty_after = 0.0;
};
SecondShots second_shots(const PolicyGain& policy);

// The chance that the tee shot finishes on the green.
double on_green(const TeePlay& play);

// "Second shots are 1.3 clubs shorter on par 4s and 0.2 on par 5s; the typical one of a par 4: 7-iron instead of
// 5-iron." Nothing where there are none, or nothing changes.
std::string second_shot_sentence(const GainResult& result);

// "All of it is lost where every club goes 1.4 degrees wider, or ...". Nothing where it was not asked for.
std::string control_sentence(const GainReport& report);

// The club's name where there is little room: wedges by their letters or their loft.
std::string short_club_name(const std::string& club);

}  // namespace yardworth::report
