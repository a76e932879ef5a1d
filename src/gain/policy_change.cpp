#include "gain/policy_change.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>
#include <vector>

#include "gain/tee_view.hpp"
#include "strategy/strikes.hpp"

namespace yardworth {

namespace {

// A hazard is a reason for another club from this difference in the chance of finding it, and for another aim from the
// smaller one.
constexpr double reason_for_club = 0.03;
constexpr double reason_for_aim = 0.01;

// A planned tee shot with what is told about it.
struct Shot {
  std::string club;
  Swing swing;
  double heading_rad = 0.0;
  AimPlace aim;
  std::vector<double> chances;  // by area
  double left_yd = 0.0;         // expected distance to the hole
};

Shot shot_of(const PlannedTeeShot& planned) {
  const HoleModel& model = planned.model;
  const Swing swing = model.swing_of(Lie::tee, planned.action);
  const double heading = HoleModel::heading_of(swing, planned.action);
  Shot shot{planned.player.clubs[swing.club].name, swing, heading, aim_place(model.map(), model.tee(), swing, heading),
            area_chances(model, planned.action),   0.0};
  for_each_strike(model, model.tee_state(), planned.action, 1, [&](const Rest& rest, double weight) {
    shot.left_yd += weight * distance_yd(rest.replay ? model.tee() : rest.at, model.pin());
  });
  return shot;
}

// The change of aim alone: by how far the finish moves to the right.
double moved_yd(const HoleMap& map, const Shot& followed, const Shot& after) {
  const double total = after.swing.total_yd(roll_factor(Ground::fairway, map.firmness()));
  return total * std::sin(after.heading_rad - followed.heading_rad);
}

// From the tee along the flight, the far side of an area where the flight first crosses it.
std::optional<double> far_side_yd(const HoleMap& map, std::size_t area, Point tee, double heading) {
  constexpr double step_yd = 0.5;
  constexpr double farthest_yd = 400.0;
  const Point direction = along_heading(heading);
  bool inside = false;
  for (double at = 0.0; at <= farthest_yd; at += step_yd) {
    const bool here = contains(map.areas()[area].polygon, tee + at * direction);
    if (inside && !here) return at;
    inside = here;
  }
  return std::nullopt;
}

bool carries(const HoleMap& map, std::size_t area, Point tee, const Shot& shot) {
  const auto far_side = far_side_yd(map, area, tee, shot.heading_rad);
  return far_side && shot.swing.carry_yd >= *far_side;
}

double carry_of(const Player& player, const std::string& name) {
  for (const Club& club : player.clubs) {
    if (club.name == name) return club.carry_yd;
  }
  return 0.0;
}

// What the shot after flies over, and what neither the shot before nor the same club then did.
std::string new_carry(const HoleMap& map, Point tee, const std::vector<HazardView>& hazards, const Shot& before,
                      double carry_before, const Shot& after, Units units) {
  for (const Ground ground : {Ground::penalty_area, Ground::bunker}) {
    for (const HazardView& hazard : hazards) {
      if (hazard.ground != ground || !carries(map, hazard.area, tee, after)) continue;
      const double far_side = *far_side_yd(map, hazard.area, tee, after.heading_rad);
      if (std::max(carry_before, before.swing.carry_yd) >= far_side || carries(map, hazard.area, tee, before)) continue;
      if (ground == Ground::bunker)
        return fmt::format("{} now carries the {}", after.club, hazard_words(hazard, units));
      return fmt::format("the carry over the {} at {:.0f} is now on with {}", name(ground), from_yards(far_side, units),
                         after.club);
    }
  }
  return "";
}

// The hazard that one shot finds most more often than another, if by so much.
const HazardView* most_avoided(const std::vector<HazardView>& hazards, const std::vector<double>& more,
                               const std::vector<double>& less, double at_least) {
  const HazardView* most = nullptr;
  double largest = at_least;
  for (const HazardView& hazard : hazards) {
    const double difference = more[hazard.area] - less[hazard.area];
    if (difference < largest) continue;
    largest = difference;
    most = &hazard;
  }
  return most;
}

std::string why_other_club(const std::vector<HazardView>& hazards, const Shot& before, const Shot& followed,
                           const Shot& after, Units units) {
  const bool shorter = after.swing.carry_yd < followed.swing.carry_yd;
  const HazardView* avoided = most_avoided(hazards, followed.chances, after.chances, reason_for_club);
  if (shorter && avoided != nullptr) {
    const bool more_now = followed.chances[avoided->area] > before.chances[avoided->area] + reason_for_aim;
    return fmt::format("{} would {} the {}, so {}", followed.club, more_now ? "now reach" : "find",
                       hazard_words(*avoided, units), after.club);
  }
  std::string words = fmt::format("{} instead of {}, which leaves about {}", after.club, followed.club,
                                  distance_words(after.left_yd, units));
  if (avoided != nullptr) words += fmt::format(" and keeps away from the {}", hazard_words(*avoided, units));
  return words;
}

std::string why_other_aim(const std::vector<HazardView>& hazards, const Shot& followed, const Shot& after, double moved,
                          Units units) {
  std::string words =
      fmt::format("aim moves {} {}", distance_words(std::abs(moved), units), moved < 0.0 ? "left" : "right");
  if (const HazardView* avoided = most_avoided(hazards, followed.chances, after.chances, reason_for_aim)) {
    words += fmt::format(", away from the {}", hazard_words(*avoided, units));
  }
  return words;
}

}  // namespace

std::string explain_policy_change(const PlannedTeeShot& before, const PlannedTeeShot& followed,
                                  const PlannedTeeShot& after, Units units) {
  const HoleMap& map = after.model.map();
  const Point tee = after.model.tee();
  const Shot kept = shot_of(followed);
  const Shot now = shot_of(after);
  const double moved = moved_yd(map, kept, now);
  const bool same_club = kept.club == now.club;
  if (same_club && std::abs(moved) < same_aim_yd) return "";
  const Shot was = shot_of(before);
  const std::vector<HazardView> hazards = hazards_from(map, tee);
  const std::string carry = new_carry(map, tee, hazards, was, carry_of(before.player, now.club), now, units);
  if (same_club) {
    const std::string aim = why_other_aim(hazards, kept, now, moved, units);
    return carry.empty() ? aim : carry + ": " + aim;
  }
  if (!carry.empty()) return carry;
  return why_other_club(hazards, was, kept, now, units);
}

}  // namespace yardworth
