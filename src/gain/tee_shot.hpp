#pragma once

#include <string>
#include <vector>

#include "core/numerics.hpp"
#include "strategy/policy.hpp"
#include "yardworth/gain.hpp"

namespace yardworth {

// One node of the strike lattice of a tee shot: where it came to rest and what is played next. The nodes of two tee
// shots from the same tee are the same strikes, in the same order.
struct TeeShotNode {
  double weight = 0.0;
  Rest rest;
  std::string next_club;
  std::size_t next_place = 0;  // as in BagPlaces
  // As it flew, from the tee: a unit vector, the carry, and the roll on a normal fairway.
  Point direction = {};
  double carry_yd = 0.0;
  double roll_yd = 0.0;
};

// The tee shot of a policy as it is told of, node by node.
std::vector<TeeShotNode> strike_tee_shot(const HoleModel& model, const Player& player, const Action& action,
                                         const ActionFrom& action_from);
// The same without what is played next, which takes longer to find than where the ball came to rest; at every stride-th
// node.
std::vector<TeeShotNode> strike_tee_shot_alone(const HoleModel& model, const Action& action,
                                               int stride = numerics::told_tee_stride);

TeeShotResult summarise_tee_shot(const HoleModel& model, const Player& player, const Action& action,
                                 const std::vector<TeeShotNode>& nodes);

// The probability that the same strike is followed by another club.
double next_club_changed(const std::vector<TeeShotNode>& before, const std::vector<TeeShotNode>& after);

// Method table: the tee shot and then the baseline where it came to rest; out of bounds is played again.
double table_strokes(const HoleModel& model, const Baseline& baseline, const std::vector<TeeShotNode>& nodes);

}  // namespace yardworth
