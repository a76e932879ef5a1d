#pragma once

#include <algorithm>
#include <vector>

#include "yardworth/player.hpp"

namespace yardworth {

// A club swung from a lie to one mean carry: everything that the spread of its shots depends on.
struct Swing {
  std::size_t club = 0;              // index into Player::clubs
  double carry_yd = 0.0;             // mean carry of a solid strike
  double carry_sd_share = 0.0;       // spread of carry over carry
  double carry_sd_floor_yd = 0.0;    // as Club::carry_sd_floor_yd
  double half_swing_yd = 0.0;        // as Club::half_swing_yd
  double direction_scale_rad = 0.0;  // what the deviates of strike.hpp are multiplied with
  double direction_mean_rad = 0.0;   // what is added to them: as Club::direction_mean_rad
  double roll_share = 0.0;           // roll on a normal fairway over carry
  double poor_strike = 0.0;          // probability

  friend bool operator==(const Swing&, const Swing&) = default;

  // The carry of a solid strike so many standard deviations longer than the mean; none goes backwards.
  double solid_carry_yd(double deviate) const { return carry_yd * std::max(0.0, 1.0 + carry_sd_share * deviate); }
  // Carry and roll on ground of a roll_factor, and the carry that comes to such a total.
  double total_yd(double roll_factor) const { return carry_yd * (1.0 + roll_share * roll_factor); }
  double carry_for(double total_yd, double roll_factor) const { return total_yd / (1.0 + roll_share * roll_factor); }
};

// Every swing that the lie allows at full length, longest first; never empty for a player with clubs. From the tee all
// clubs; from the fairway no driver; from the rough no driver and no wood longer than a 5-wood; from a bunker irons and
// wedges; among trees irons, hybrids and wedges. A bag with nothing of the kind may play what it has.
std::vector<Swing> full_swings(const Player& player, Lie lie);

// The same swing with less in it. Direction, its mean and spread, roll as a share of carry and poor strikes stay. The
// spread of carry falls with the carry to its floor; a shot of less than half a swing is as much less sure as it is
// shorter than that. carry_yd > 0.
Swing played_down(const Swing& swing, double carry_yd);

// Whether `a` spreads no more than `b` in every respect, to numerics::rounding_share of each: clubs whose spreads lie
// on one line spread alike when played down, whatever the last digit says. The second: and less in one.
bool spreads_no_more(const Swing& a, const Swing& b);
bool spreads_less(const Swing& a, const Swing& b);

}  // namespace yardworth
