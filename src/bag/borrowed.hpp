#pragma once

#include <optional>
#include <string>

#include "bag/fit_club.hpp"
#include "bag/mixture.hpp"
#include "yardworth/bag.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// What a club of few shots borrows from what is typical of the golfer (docs/model.md, "Few shots").

// What is typical counts for so many shots in spreads and poor strikes: n shots tell a spread to 1 / sqrt(2 n) of
// itself, and golfers of one index differ in theirs by about a fifth (common practice, no source).
inline constexpr double typical_counts_for_shots = 10.0;
// By so much of it golfers of one index differ in the carry of a club (common practice, no source).
inline constexpr double carry_differs_share = 0.1;

// Of a club of that name; measured_yd is what its shots carry, longest_yd what the golfer's longest club does.
TypicalOfClub typical_of_club(const Player& golfer, const std::string& club, double measured_yd, double longest_yd);

MixturePrior prior_of(const TypicalOfClub& typical);

// States how much of a fit is borrowed.
void state_borrowed(const MixturePrior& prior, const MixtureFit& fit, ClubMeasure& measure);

}  // namespace yardworth
