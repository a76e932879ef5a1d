#include "strategy/candidates.hpp"

#include <algorithm>
#include <cmath>

#include "core/numerics.hpp"
#include "strategy/shot_at_hole.hpp"

namespace yardworth {

std::vector<Candidate> candidates_at(const HoleModel& model, Lie lie, Point from, int aim_reach_sd) {
  using numerics::furthest_pin_steps;
  std::vector<Candidate> candidates;
  const bool allows = model.has_direction_mean();
  const auto add = [&](const Action& action) {
    const Swing swing = model.swing_of(lie, action);
    const double aim_step = swing.direction_scale_rad / aims_per_sd;
    const double off = std::remainder(heading_rad(from, model.pin()) - action.reference_heading_rad, 2.0 * pi);
    const int to_pin =
        static_cast<int>(std::lround(std::clamp(off / aim_step, -furthest_pin_steps, furthest_pin_steps)));
    const int reach = aim_reach_sd * aims_per_sd;
    candidates.push_back({action, std::max(-largest_aim, std::min(0, to_pin) - reach),
                          std::min(largest_aim, std::max(0, to_pin) + reach)});
  };
  const std::vector<Swing>& swings = model.swings(lie);
  const double distance = distance_yd(from, model.pin());
  const double green = roll_on_green(model);
  std::vector<Swing> to_hole;
  for (std::size_t i = swings.size(); i-- > 0;) {
    if (swings[i].total_yd(green) < distance) continue;
    const Swing swing = played_down(swings[i], swings[i].carry_for(distance, green));
    const bool beaten =
        std::any_of(to_hole.begin(), to_hole.end(), [&](const Swing& other) { return spreads_no_more(other, swing); });
    if (beaten) continue;
    to_hole.push_back(swing);
    add({static_cast<int>(i), swing.carry_yd, heading_rad(from, model.pin()), 0, allows});
  }
  for (std::size_t i = 0; i < swings.size(); ++i) {
    const Action action{static_cast<int>(i), swings[i].carry_yd, reference_heading(model, from, swings[i]), 0, allows};
    if (candidates.empty() || !(candidates.front().action == action)) add(action);
  }
  return candidates;
}

}  // namespace yardworth
