#include "gain/policy_change.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include "core/telling.hpp"
#include "gain/hazards_met.hpp"
#include "gain/tee_shot.hpp"
#include "gain/tee_view.hpp"

namespace yardworth {

namespace {

using telling::reason_for_aim;
using telling::reason_for_club;

// A planned tee shot with what is told about it.
struct TeeShotTold {
  std::string club;
  Swing swing;
  double heading_rad = 0.0;
  std::vector<HazardMet> met;  // the hazards, as the tee sees them
  double left_yd = 0.0;        // expected distance to the hole
  double on_green = 0.0;       // probability
};

TeeShotTold shot_of(const PlannedTeeShot& planned, const std::vector<HazardView>& hazards) {
  const HoleModel& model = planned.model;
  const Swing swing = model.swing_of(Lie::tee, planned.action);
  const double heading = HoleModel::struck_heading_of(swing, planned.action);
  const std::vector<TeeShotNode> anew =
      planned.struck ? std::vector<TeeShotNode>{} : strike_tee_shot_alone(model, planned.action);
  const std::vector<TeeShotNode>& nodes = planned.struck ? *planned.struck : anew;
  TeeShotTold shot{planned.player.clubs[swing.club].name, swing, heading, hazards_met(model, hazards, nodes), 0.0, 0.0};
  for (const TeeShotNode& node : nodes) {
    shot.left_yd += node.weight * distance_yd(node.rest.replay ? model.tee() : node.rest.at, model.pin());
    if (node.rest.found == Ground::green) shot.on_green += node.weight;
  }
  return shot;
}

// The change of aim alone: by how far the finish moves to the right.
double moved_yd(const HoleMap& map, const TeeShotTold& kept, const TeeShotTold& after) {
  const double total = after.swing.total_yd(roll_factor(Ground::fairway, map.firmness()));
  return total * std::sin(after.heading_rad - kept.heading_rad);
}

// From the tee along the flight, the far side of an area where the flight first crosses it.
std::optional<double> far_side_yd(const HoleMap& map, const HazardView& hazard, Point tee, double heading) {
  const Polygon& area = area_of(map, hazard);
  const Point direction = along_heading(heading);
  bool inside = false;
  for (double at = 0.0; at <= telling::farthest_carry_yd; at += telling::edge_step_yd) {
    const bool here = contains(area, tee + at * direction);
    if (inside && !here) return at;
    inside = here;
  }
  return std::nullopt;
}

bool carries(const HoleMap& map, const HazardView& hazard, Point tee, const TeeShotTold& shot) {
  const auto far_side = far_side_yd(map, hazard, tee, shot.heading_rad);
  return far_side && shot.swing.carry_yd >= *far_side;
}

double carry_of(const Player& player, const std::string& name) {
  for (const Club& club : player.clubs) {
    if (club.name == name) return club.carry_yd;
  }
  return 0.0;
}

// What the shot after flies over, and what neither the shot before nor the same club then did; water first.
std::optional<CarryNowOn> new_carry(const HoleMap& map, Point tee, const std::vector<HazardView>& hazards,
                                    const TeeShotTold& before, double carry_before, const TeeShotTold& after) {
  for (const GroundFacts& facts : ground_table) {
    if (!facts.carry_is_told) continue;
    for (const HazardView& hazard : hazards) {
      if (hazard.ground != facts.ground || !carries(map, hazard, tee, after)) continue;
      const double far_side = *far_side_yd(map, hazard, tee, after.heading_rad);
      if (std::max(carry_before, before.swing.carry_yd) >= far_side || carries(map, hazard, tee, before)) continue;
      return CarryNowOn{hazard, far_side};
    }
  }
  return std::nullopt;
}

// The hazard that one shot finds most more often than another, if by so much: its place among them.
std::optional<std::size_t> most_avoided(const TeeShotTold& more, const TeeShotTold& less, double at_least) {
  std::optional<std::size_t> most;
  double largest = at_least;
  for (std::size_t i = 0; i < more.met.size(); ++i) {
    const double difference = more.met[i].found - less.met[i].found;
    if (difference < largest) continue;
    largest = difference;
    most = i;
  }
  return most;
}

}  // namespace

PolicyChange explain_policy_change(const PlannedTeeShot& before, const PlannedTeeShot& kept,
                                   const PlannedTeeShot& after) {
  const HoleMap& map = after.model.map();
  const Point tee = after.model.tee();
  const std::vector<HazardView> hazards = hazards_from(map, tee);
  const TeeShotTold stays = shot_of(kept, hazards);
  const TeeShotTold now = shot_of(after, hazards);
  const double moved = moved_yd(map, stays, now);
  const bool same_club = stays.club == now.club;
  if (same_club && std::abs(moved) < telling::same_aim_yd) return {};
  const TeeShotTold was = shot_of(before, hazards);
  PolicyChange change;
  change.kind = same_club ? PolicyChange::Kind::other_aim : PolicyChange::Kind::other_club;
  change.club_kept = stays.club;
  change.club = now.club;
  change.shorter = now.swing.carry_yd < stays.swing.carry_yd;
  if (same_club) change.aim_moves_yd = moved;
  change.left_yd = now.left_yd;
  change.at_green = aim_of(map, tee, now.swing, now.heading_rad).at_green();
  change.on_green = now.on_green;
  change.carry_now_on = new_carry(map, tee, hazards, was, carry_of(before.player, now.club), now);
  const auto avoided = most_avoided(stays, now, same_club ? reason_for_aim : reason_for_club);
  if (!avoided) return change;
  change.avoided = hazards[*avoided];
  change.comes_into_reach = stays.met[*avoided].found > was.met[*avoided].found + reason_for_aim;
  return change;
}

}  // namespace yardworth
