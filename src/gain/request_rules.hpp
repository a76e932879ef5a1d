#pragma once

#include "yardworth/bands.hpp"
#include "yardworth/gain.hpp"
#include "yardworth/members.hpp"
#include "yardworth/strategy.hpp"
#include "yardworth/weigh.hpp"

namespace yardworth {

// What a question has to be to be answered. Each throws InvalidRequest with every fault of the course, the player and
// the request at once; limits are those of limits.hpp.

void require_valid(const Course& course, const Player& player, const GainRequest& request);
void require_valid(const Course& course, const Player& player, const StrategyRequest& request);
void require_valid(const Course& course, const BandsRequest& request);
void require_valid(const Course& course, const MembersRequest& request);
void require_valid(const Course& course, const Player& player, const WeighRequest& request);
// Of a curve; its request is checked by itself.
void require_valid_curve(const Course& course, const GainRequest& request, double limit_yd, double step_yd);

}  // namespace yardworth
