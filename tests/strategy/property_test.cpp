#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <cstdio>
#include <vector>

#include "baseline/published.hpp"
#include "course/set_up.hpp"
#include "input/derived_table.hpp"
#include "player/skill.hpp"
#include "support/courses.hpp"
#include "support/every_state.hpp"
#include "support/random_cases.hpp"
#include "support/sanitized.hpp"

// Properties of the optimum over random holes. They are theorems of the model only where nothing but the change in hand
// can play a part, so these golfers' clubs do not roll (a ball that runs further can run into trouble), a lie takes
// nothing from a shot and every lie allows every club (a shot that is shorter from the rough can be the one that stays
// short of the water), and the baseline is a straight line in distance, dearer by lie (what is interpolated between
// states is then exactly monotone). The last case drops all of that but the roll and bounds what is left.

namespace yardworth {
namespace {

constexpr double exactly = 1e-7;  // the search's own tolerance

template <class Property>
void check_property(const char* what, Property property) {
  test::check_property(what, 2024, test::sanitized ? 2 : 25, property);
}

BaselineColumn straight_line(double at_zero, double per_yard) {
  BaselineColumn column;
  for (double distance = 0.0; distance <= 700.0; distance += 100.0) {
    column.distance.push_back(distance);
    column.strokes.push_back(at_zero + per_yard * distance);
  }
  return column;
}

Baseline straight_baseline() {
  BaselineTable table = tour_table();
  table.tee = table.fairway = straight_line(2.2, 0.006);
  table.rough = straight_line(2.4, 0.006);
  table.bunker = straight_line(2.6, 0.006);
  table.recovery = straight_line(2.9, 0.006);
  return Baseline(table);
}

Player plain_golfer() {
  Player player = standard_player(Band::from_13_to_20, Gender::men);
  player.skill.fairway = player.skill.rough = player.skill.bunker = player.skill.recovery = {};
  player.clubs.clear();
  for (const auto& [name, carry] : std::vector<std::pair<const char*, double>>{
           {"2-iron", 180.0}, {"5-iron", 145.0}, {"8-iron", 110.0}, {"wedge", 75.0}}) {
    ClubEntry entry;
    entry.name = name;
    entry.carry_yd = carry;
    entry.roll_yd = 0.0;
    player.clubs.push_back(complete_club(entry, 180.0, player.skill));
  }
  return player;
}

Player rolling_out_of_nothing(Player player) {
  for (Club& club : player.clubs) club.roll_yd = 0.0;
  return player;
}

double between(int low, int high) { return *rc::gen::inRange(low, high + 1); }

Hazard random_hazard(double length_yd) {
  const auto kind =
      *rc::gen::element(HazardKind::bunker, HazardKind::penalty_area, HazardKind::out_of_bounds, HazardKind::trees);
  const double from = between(60, static_cast<int>(length_yd) - 60);
  if (kind == HazardKind::penalty_area && *rc::gen::arbitrary<bool>()) {
    return test::across(kind, from, from + between(8, 30));
  }
  const double near = between(8, 45);
  return hazard_beside(kind, *rc::gen::element(Side::left, Side::right), from, from + between(10, 80), near,
                       near + between(10, 60));
}

// A hole of 180 to 360 yards, bent or straight, with one to three hazards.
Hole random_hole() {
  Hole hole = test::open_hole(1, between(180, 360));
  const double length = hole.length_yd.front();
  hole.fairway = {{60.0, length - 20.0, between(8, 20), between(8, 20)}};
  if (*rc::gen::arbitrary<bool>()) hole.doglegs = {{length * 0.55, radians(between(-30, 30))}};
  const int hazards = *rc::gen::inRange(1, 4);
  for (int i = 0; i < hazards; ++i) hole.hazards.push_back(random_hazard(length));
  return hole;
}

DiscretisationOptions quick_discretisation() {
  DiscretisationOptions discretisation;
  discretisation.ring_yd = 30.0;
  discretisation.arc_yd = 45.0;
  discretisation.steps_per_sd = 8;
  discretisation.tee_refinement = 1;
  return discretisation;
}

test::Mesh same_grid_for_all() {
  test::Mesh mesh(quick_discretisation());
  mesh.edges = false;
  return mesh;
}

struct Solver {
  Player player;
  Baseline baseline;
  test::Mesh mesh = same_grid_for_all();

  double best(const Hole& hole) const { return best_of(hole, player); }
  double best_of(const Hole& hole, const Player& golfer) const {
    const test::PreparedHole here(hole, Firmness::normal, 0, golfer, baseline, mesh);
    try {
      const auto states = test::states_of_all_plans(here.model, PolicyIterationOptions{}.aim_reach_sd);
      return test::best_policy_of_all(here.model, states).exact.at_tee;
    } catch (const CannotFinish&) {
      // Somewhere beside this hole a ball cannot be got back by habit: another hole is tried.
      RC_DISCARD("cannot be finished from everywhere");
    }
  }
};

Solver plain_solver() { return {plain_golfer(), straight_baseline()}; }

Hole with_wider_fairway(Hole hole, double by_yd) {
  hole.fairway.front().left_yd += by_yd;
  hole.fairway.front().right_yd += by_yd;
  return hole;
}

Hole without_hazard(Hole hole, std::size_t index) {
  hole.hazards.erase(hole.hazards.begin() + static_cast<std::ptrdiff_t>(index));
  return hole;
}

}  // namespace

TEST_CASE("widening a fairway never raises the best value") {
  const Solver solver = plain_solver();
  check_property("a wider fairway is never worse", [&] {
    const Hole hole = random_hole();
    RC_ASSERT(solver.best(with_wider_fairway(hole, between(1, 15))) <= solver.best(hole) + exactly);
  });
}

TEST_CASE("removing a hazard, or turning a penalty area into rough, never raises the best value") {
  const Solver solver = plain_solver();
  check_property("a hazard less is never worse", [&] {
    const Hole hole = random_hole();
    const auto index = static_cast<std::size_t>(*rc::gen::inRange(0, static_cast<int>(hole.hazards.size())));
    RC_ASSERT(solver.best(without_hazard(hole, index)) <= solver.best(hole) + exactly);
  });
  check_property("a penalty area less is never worse", [&] {
    Hole hole = random_hole();
    const double from = between(60, static_cast<int>(hole.length_yd.front()) - 60);
    hole.hazards.insert(hole.hazards.begin(),
                        *rc::gen::arbitrary<bool>()
                            ? test::across(HazardKind::penalty_area, from, from + 20.0)
                            : hazard_beside(HazardKind::penalty_area, Side::right, from, from + 60.0, 12.0, 40.0));
    RC_ASSERT(solver.best(without_hazard(hole, 0)) <= solver.best(hole) + exactly);
  });
}

TEST_CASE("adding a club never raises the best value") {
  const Solver solver = plain_solver();
  check_property("a club more is never worse", [&] {
    const Hole hole = random_hole();
    Player richer = solver.player;
    ClubEntry entry;
    entry.name = "6-iron";
    entry.carry_yd = between(60, 200);
    entry.roll_yd = 0.0;
    entry.carry_sd_yd = entry.carry_yd * between(3, 14) / 100.0;
    entry.direction_sd_rad = radians(between(2, 9));
    richer.clubs.push_back(complete_club(entry, 180.0, richer.skill));
    std::stable_sort(richer.clubs.begin(), richer.clubs.end(),
                     [](const Club& a, const Club& b) { return a.carry_yd > b.carry_yd; });
    RC_ASSERT(solver.best_of(hole, richer) <= solver.best(hole) + exactly);
  });
}

TEST_CASE("with lies that cost distance and a table that bends, easier holes are hardly ever worse") {
  const Solver solver{rolling_out_of_nothing(standard_player(Band::from_13_to_20, Gender::men)),
                      Baseline(derived_table(Band::from_13_to_20, Gender::men))};
  double worst = 0.0;
  check_property("an easier hole is no worse by more than 0.001 strokes", [&] {
    const Hole hole = random_hole();
    const double before = solver.best(hole);
    const double wider = solver.best(with_wider_fairway(hole, 6.0)) - before;
    const double cleared = solver.best(without_hazard(hole, 0)) - before;
    worst = std::max({worst, wider, cleared});
    RC_ASSERT(wider <= 0.001);
    RC_ASSERT(cleared <= 0.001);
  });
  std::printf("largest rise %.6f strokes\n", worst);
}

}  // namespace yardworth
