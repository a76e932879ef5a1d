// Whether what the habit is worth, before and after a change, is what comes out when it is played with every shot
// decided where the ball lies: golfers and courses that are hard on states, rings and lattices. docs/validation.md
// keeps the table.
//
// yardworth_agreement [plays of each hole] [part of the names of courses and golfers that are wanted]

#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

#include "core/parallel.hpp"
#include "support/courses.hpp"
#include "support/played_habit.hpp"
#include "support/scenario.hpp"

namespace yardworth::test {
namespace {

struct OnCourse {
  std::string name;
  Course course;
  std::size_t tee = 0;
};

// Water where most tee shots come down, and dry ground in front of it.
Course water_at_the_drive() {
  Course course = standard_course();
  for (Hole& hole : course.holes) {
    if (hole.par > 3) hole.hazards = {across(HazardKind::penalty_area, 165.0, 215.0)};
  }
  return course;
}

Course narrow_between_trees() {
  Course course = standard_course();
  for (Hole& hole : course.holes) {
    for (FairwayStretch& stretch : hole.fairway) stretch.left_yd = stretch.right_yd = 12.0;
    for (const Side side : {Side::left, Side::right}) {
      hole.hazards.push_back(hazard_beside(HazardKind::trees, side, 60.0, hole.length_yd.front() - 20.0, 22.0, 80.0));
    }
  }
  return course;
}

struct OfGolfer {
  std::string name;
  Player player;
};

// Every spread given, so that what a shot is worth jumps where the club changes.
OfGolfer given_bag(const std::string& name, const std::string& index, const std::vector<double>& carries_yd) {
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

std::vector<OfGolfer> golfers() {
  std::vector<OfGolfer> all;
  for (const char* member : scenario_members) all.push_back({member, scenario_member(member)});
  all.push_back(given_bag("even 12", "12", {230, 210, 190, 178, 166, 154, 142, 130, 118, 106, 94}));
  all.push_back(given_bag("uneven 12", "12", {234, 219, 189, 181, 166, 149, 143, 125, 119, 101, 88}));
  all.push_back(given_bag("even 20", "20", {205, 188, 170, 160, 150, 140, 130, 120, 110, 100, 90}));
  all.push_back(given_bag("uneven 4", "4", {252, 228, 208, 199, 184, 171, 165, 147, 139, 120, 101}));
  return all;
}

void compare(const OnCourse& on, const OfGolfer& of, int plays) {
  std::vector<HabitPlayed> holes(on.course.holes.size());
  const Golfers golfers = lengthen_all(of.player, {20.0, 6.0});
  const Baseline baseline = baseline_of(of.player);
  work_in_parallel(0, holes.size(), [&](std::size_t i) {
    holes[i] = play_habit(on.course, on.course.holes[i], on.tee, golfers, baseline, plays, 500 + i);
  });
  double off_before = 0.0;
  double off_after = 0.0;
  double variance_before = 0.0;
  double variance_after = 0.0;
  double worst = 0.0;
  int worst_hole = 0;
  for (std::size_t i = 0; i < holes.size(); ++i) {
    const HabitPlayed& hole = holes[i];
    const double before = hole.evaluated_before - hole.before.mean;
    const double after = hole.evaluated_after - hole.after.mean;
    off_before += before;
    off_after += after;
    variance_before += hole.before.variance;
    variance_after += hole.after.variance;
    for (const double off : {before, after}) {
      if (std::abs(off) <= std::abs(worst)) continue;
      worst = off;
      worst_hole = on.course.holes[i].number;
    }
  }
  std::printf("%-9s  %-14s  %+7.4f  %+7.4f  %+7.4f  %6.4f  %+7.4f on %d\n", on.name.c_str(), of.name.c_str(),
              off_before, off_after, off_before - off_after, std::sqrt(std::max(variance_before, variance_after)),
              worst, worst_hole);
  std::fflush(stdout);
}

}  // namespace
}  // namespace yardworth::test

int main(int argc, char** argv) {
  using namespace yardworth::test;
  const int plays = argc > 1 ? std::atoi(argv[1]) : 500'000;
  const std::string wanted = argc > 2 ? argv[2] : "";
  const OnCourse courses[] = {{"plain", standard_course(), 0},
                              {"built-in", scenario_course(), middle_tee},
                              {"water", water_at_the_drive(), 0},
                              {"narrow", narrow_between_trees(), 0}};
  std::printf("evaluated less played, strokes a round; %d plays of each hole\n", plays);
  std::printf("course     golfer           before    after    saved  std err  worst hole\n");
  for (const OnCourse& on : courses) {
    for (const OfGolfer& of : golfers()) {
      if ((on.name + " " + of.name).find(wanted) != std::string::npos) compare(on, of, plays);
    }
  }
}
