#pragma once

#include <cstdio>
#include <stdexcept>
#include <string>
#include <vector>

#include "support/courses.hpp"
#include "support/scenario.hpp"

namespace yardworth::test {

// Courses and golfers that are hard on states, rings and lattices. The golfers are invented.

struct OnCourse {
  std::string name;
  Course course;
  std::size_t tee = 0;
};

// Water where most tee shots come down, and dry ground in front of it.
inline Course water_at_the_drive() {
  Course course = standard_course();
  for (Hole& hole : course.holes) {
    if (hole.par > 3) hole.hazards = {across(HazardKind::penalty_area, 165.0, 215.0)};
  }
  return course;
}

inline Course narrow_between_trees() {
  Course course = standard_course();
  for (Hole& hole : course.holes) {
    for (FairwayStretch& stretch : hole.fairway) stretch.left_yd = stretch.right_yd = 12.0;
    for (const Side side : {Side::left, Side::right}) {
      hole.hazards.push_back(hazard_beside(HazardKind::trees, side, 60.0, hole.length_yd.front() - 20.0, 22.0, 80.0));
    }
  }
  return course;
}

inline std::vector<OnCourse> courses_to_agree_on() {
  return {{"plain", standard_course(), 0},
          {"built-in", scenario_course(), middle_tee},
          {"water", water_at_the_drive(), 0},
          {"narrow", narrow_between_trees(), 0}};
}

struct OfGolfer {
  std::string name;
  Player player;
};

// Every spread given, so that what a shot is worth jumps where the club changes.
inline OfGolfer given_bag(const std::string& name, const std::string& index, const std::vector<double>& carries_yd) {
  std::string text = "format: yardworth/player/1\nlabel: " + name + "\nhandicap_index: " + index +
                     "\ngender: men\nunits: yards\nclubs:\n";
  const char* const clubs[] = {"driver", "5-wood", "4-iron",         "5-iron",    "6-iron",    "7-iron",
                               "8-iron", "9-iron", "pitching wedge", "gap wedge", "sand wedge"};
  for (std::size_t i = 0; i < carries_yd.size(); ++i) {
    const double carry = carries_yd[i];
    char line[200];
    std::snprintf(line, sizeof line,
                  "  - {club: %s, carry: %.0f, carry_sd: %.1f, direction_sd: %.1f, poor_strike: %.2f, roll: %.0f}\n",
                  clubs[i], carry, 0.06 * carry, 3.5 + 0.012 * carry, 0.05 + 0.0003 * carry, 0.06 * carry);
    text += line;
  }
  const Reading<Player> player = read_player(text, name);
  if (!player.ok()) throw std::runtime_error(to_line(player.findings.front()));
  return {name, *player.value};
}

inline std::vector<OfGolfer> golfers_to_agree_on() {
  std::vector<OfGolfer> all;
  for (const char* member : scenario_members) all.push_back({member, scenario_member(member)});
  all.push_back(given_bag("even 12", "12", {230, 210, 190, 178, 166, 154, 142, 130, 118, 106, 94}));
  all.push_back(given_bag("uneven 12", "12", {234, 219, 189, 181, 166, 149, 143, 125, 119, 101, 88}));
  all.push_back(given_bag("even 20", "20", {205, 188, 170, 160, 150, 140, 130, 120, 110, 100, 90}));
  all.push_back(given_bag("uneven 4", "4", {252, 228, 208, 199, 184, 171, 165, 147, 139, 120, 101}));
  return all;
}

}  // namespace yardworth::test
