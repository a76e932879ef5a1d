#include "gain/tee_shot.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/numerics.hpp"
#include "gain/bag_places.hpp"
#include "gain/hole_play.hpp"
#include "strategy/shot_at_hole.hpp"
#include "strategy/strikes.hpp"

namespace yardworth {

namespace {

// What is played next, and its place.
struct Next {
  std::string club;
  std::size_t place = BagOrder::lay_up;
};

Next next_after(const HoleModel& model, const Player& player, const BagOrder& order, const Rest& rest,
                const ActionFrom& action_from) {
  const auto word = [&](std::size_t place) { return Next{order.name_of(place), place}; };
  if (rest.lie == Lie::green) return word(order.putter());
  if (distance_yd(rest.at, model.pin()) <= short_game_radius_yd) return word(order.short_game());
  const Action action = action_from(rest.lie, rest.at);
  const std::size_t club = model.swings(rest.lie)[static_cast<std::size_t>(action.swing)].club;
  const bool at_green = is_played_at_green(model, rest.lie, rest.at, action);
  return {player.clubs[club].name, at_green ? order.place_of(club) : BagOrder::lay_up};
}

const std::string& tee_club_of(const HoleModel& model, const Player& player, const Action& action) {
  return player.clubs[model.swings(Lie::tee)[static_cast<std::size_t>(action.swing)].club].name;
}

}  // namespace

std::vector<TeeShotNode> strike_tee_shot(const HoleModel& model, const Player& player, const Action& action,
                                         const ActionFrom& action_from) {
  const std::string& tee_club = tee_club_of(model, player, action);
  const BagOrder order(player);
  std::vector<TeeShotNode> nodes = strike_tee_shot_alone(model, action);
  for (TeeShotNode& node : nodes) {
    Next next = node.rest.replay ? Next{tee_club} : next_after(model, player, order, node.rest, action_from);
    node.next_club = std::move(next.club);
    node.next_place = next.place;
  }
  return nodes;
}

// The strikes do not depend on the aim: so two policies can be paired.
std::vector<TeeShotNode> strike_tee_shot_alone(const HoleModel& model, const Action& action, int stride) {
  const Swing swing = model.swing_of(Lie::tee, action);
  const double heading = HoleModel::struck_heading_of(swing, action);
  std::vector<TeeShotNode> nodes;
  std::size_t count = 0;
  for (const Stratum& stratum : strata_of(model, model.tee_state(), swing, stride)) count += stratum.weights().size();
  nodes.reserve(count);
  for_each_tee_flight(model, swing, heading, stride, [&](Point direction, double carry, double weight) {
    const double roll = carry * swing.roll_share;
    const Rest rest = come_to_rest(model.map(), model.tee(), direction, carry, roll);
    nodes.push_back({weight, rest, {}, BagOrder::lay_up, direction, carry, roll});
  });
  return nodes;
}

TeeShotResult summarise_tee_shot(const HoleModel& model, const Player& player, const Action& action,
                                 const std::vector<TeeShotNode>& nodes) {
  TeeShotResult result;
  result.club = tee_club_of(model, player, action);
  const BagOrder order(player);
  result.next_places = order.none();
  double left_squares = 0.0;
  for (const TeeShotNode& node : nodes) {
    const Rest& rest = node.rest;
    const double left = distance_yd(rest.replay ? model.tee() : rest.at, model.pin());
    result.left_yd += node.weight * left;
    left_squares += node.weight * left * left;
    result.next_shares[node.next_club] += node.weight;
    result.next_places[node.next_place] += node.weight;
    if (rest.penalty_strokes > 0) {
      result.penalty += node.weight;
    } else if (rest.lie == Lie::fairway || rest.lie == Lie::green) {
      result.fairway += node.weight;
    }
  }
  result.next_club = order.name_of(middle_place(result.next_places));
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
