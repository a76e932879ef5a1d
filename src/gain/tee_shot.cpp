#include "gain/tee_shot.hpp"

#include <algorithm>
#include <cmath>

#include "core/numerics.hpp"
#include "gain/hole_play.hpp"
#include "strategy/strikes.hpp"

namespace yardworth {

namespace {

std::string club_after(const HoleModel& model, const Player& player, const Rest& rest, const std::string& tee_club,
                       const ActionFrom& action_from) {
  if (rest.replay) return tee_club;
  if (rest.lie == Lie::green) return "putter";
  if (distance_yd(rest.at, model.pin()) <= short_game_radius_yd) return "short game";
  const Action action = action_from(rest.lie, rest.at);
  return player.clubs[model.swings(rest.lie)[static_cast<std::size_t>(action.swing)].club].name;
}

const std::string& tee_club_of(const HoleModel& model, const Player& player, const Action& action) {
  return player.clubs[model.swings(Lie::tee)[static_cast<std::size_t>(action.swing)].club].name;
}

}  // namespace

std::vector<TeeShotNode> strike_tee_shot(const HoleModel& model, const Player& player, const Action& action,
                                         const ActionFrom& action_from) {
  // Aim 0 of the same heading: the nodes' strikes then do not depend on the aim, and two policies can be paired.
  Action straight = action;
  straight.reference_heading_rad = HoleModel::heading_of(model.swing_of(Lie::tee, action), action);
  straight.aim = 0;
  const std::string& tee_club = tee_club_of(model, player, action);
  std::vector<TeeShotNode> nodes;
  for_each_strike(model, model.tee_state(), straight, 1, [&](const Rest& rest, double weight) {
    nodes.push_back({weight, rest, club_after(model, player, rest, tee_club, action_from)});
  });
  return nodes;
}

TeeShotResult summarise_tee_shot(const HoleModel& model, const Player& player, const Action& action,
                                 const std::vector<TeeShotNode>& nodes) {
  TeeShotResult result;
  result.club = tee_club_of(model, player, action);
  double left_squares = 0.0;
  for (const TeeShotNode& node : nodes) {
    const Rest& rest = node.rest;
    const double left = distance_yd(rest.replay ? model.tee() : rest.at, model.pin());
    result.left_yd += node.weight * left;
    left_squares += node.weight * left * left;
    result.next_shares[node.next_club] += node.weight;
    if (rest.penalty_strokes > 0) {
      result.penalty += node.weight;
    } else if (rest.lie == Lie::fairway || rest.lie == Lie::green) {
      result.fairway += node.weight;
    }
  }
  const auto likeliest = std::max_element(result.next_shares.begin(), result.next_shares.end(),
                                          [](const auto& a, const auto& b) { return a.second < b.second; });
  result.next_club = likeliest->first;
  result.left_sd_yd = std::sqrt(std::max(0.0, left_squares - result.left_yd * result.left_yd));
  return result;
}

double next_club_changed(const std::vector<TeeShotNode>& before, const std::vector<TeeShotNode>& after) {
  // A club that has no poor strikes has no nodes for them: what cannot be paired counts as unchanged.
  double changed = 0.0;
  for (std::size_t i = 0; i < std::min(before.size(), after.size()); ++i) {
    if (before[i].next_club != after[i].next_club) changed += after[i].weight;
  }
  return changed;
}

double table_strokes(const HoleModel& model, const Baseline& baseline, const std::vector<TeeShotNode>& nodes) {
  double strokes = 1.0;
  double replay = 0.0;
  for (const TeeShotNode& node : nodes) {
    strokes += node.weight * node.rest.penalty_strokes;
    if (node.rest.replay) {
      replay += node.weight;
    } else {
      strokes += node.weight * baseline.strokes(node.rest.lie, distance_yd(node.rest.at, model.pin()));
    }
  }
  if (replay > 1.0 - numerics::never_leaves) throw CannotFinish("every tee shot is out of bounds");
  return strokes / (1.0 - replay);
}

}  // namespace yardworth
