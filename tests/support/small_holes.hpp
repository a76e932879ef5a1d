#pragma once

#include <string>
#include <vector>

#include "course/set_up.hpp"
#include "support/courses.hpp"
#include "support/prepared_hole.hpp"

namespace yardworth::test {

// Three small holes with every kind of hazard, for a golfer of a few clubs, coarse enough for a linear programme.

inline std::vector<Hole> small_holes() {
  Hole squeezed = open_hole(1, 260.0);
  squeezed.hazards = {boundary(squeezed, Side::left, 24.0), boundary(squeezed, Side::right, 30.0)};

  Hole wet = open_hole(2, 240.0);
  wet.hazards = {across(HazardKind::penalty_area, 130.0, 165.0),
                 hazard_beside(HazardKind::bunker, Side::right, 205.0, 232.0, 10.0, 24.0)};

  Hole bent = open_hole(3, 290.0);
  bent.doglegs = {{150.0, radians(35.0)}};
  bent.hazards = {hazard_beside(HazardKind::trees, Side::right, 60.0, 200.0, 18.0, 70.0),
                  hazard_beside(HazardKind::out_of_bounds, Side::left, 0.0, 300.0, 35.0, farthest_out_yd),
                  hazard_beside(HazardKind::penalty_area, Side::right, 220.0, 280.0, 20.0, 50.0)};
  return {squeezed, wet, bent};
}

inline Player golfer_of_few_clubs() {
  Player player = standard_player(Band::bogey, Gender::men);
  player.clubs = {player.clubs[0], player.clubs[5], player.clubs[9]};
  return player;
}

inline DiscretisationOptions coarse_discretisation() {
  DiscretisationOptions discretisation;
  discretisation.ring_yd = 60.0;
  discretisation.arc_yd = 90.0;
  discretisation.steps_per_sd = 8;
  discretisation.tee_refinement = 1;
  return discretisation;
}

}  // namespace yardworth::test
