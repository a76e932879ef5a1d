#pragma once

#include <memory>
#include <vector>

#include "core/numerics.hpp"
#include "shot/strike.hpp"

namespace yardworth {

// How finely a hole is to be cut into states and shots. docs/performance.md shows what each costs in accuracy.
struct DiscretisationOptions {
  double ring_yd = numerics::ring_yd;             // between rings around the hole, far out; closer near the green
  double arc_yd = numerics::arc_yd;               // between states along a ring
  int steps_per_sd = numerics::steps_per_sd;      // strike lattice; a multiple of aims_per_sd
  int tee_refinement = numerics::tee_refinement;  // times as many steps for the tee shot, of which there is only one
  // States are struck as closely as if so many times as many balls came to them (HoleModel::stride_for), and as many
  // are looked at; every_node leaves out none. Of states cut finer each has fewer balls.
  double sampling_density = 1.0;
  // More rings, one close on each side of these distances from the hole: where a policy changes abruptly
  // (habit_edges_yd).
  std::vector<double> edges_yd;
  // Whether rows are summed over equal-weight strikes: fewer nodes do as well where none has to serve more than one
  // aim.
  bool equal_weight_rows = false;
  // Times as many equal-weight strikes at stride 1 as are usual. Above 1 their number follows the visits of a state
  // (HoleModel::stride_for).
  int rows_finer = 1;
  // States that fewer balls come to, over the sampling density, are not evaluated but taken to be worth what others of
  // their lie say (assumed_value).
  double evaluated_visits = numerics::evaluated_visits;
  // Where states begin along the lattice. A policy found under one offset is evaluated under another: of many actions
  // weighed with small errors the best-looking owes some of its looks to them.
  int lattice_offset = 0;
  // The rings but the first lie this share of their distance from each other nearer the hole, from 0 to below 1.
  double ring_shift = 0.0;
};

// The grid that a golfer's policies are looked for on. The best shot changes less along a ring than the strokes it
// leads to, so states may lie far apart there; what is saved goes into rings and strikes.
DiscretisationOptions search_options();

// For a hole of this number: where its rings lie and its strikes begin is its own. Holes that are alike would otherwise
// err alike, and a round adds their errors up.
DiscretisationOptions options_for_hole(DiscretisationOptions options, int number);

// The held-out grid for policies that were looked for on another: states closer together, fewer of them left to the
// baseline, and other strikes, which the search has not seen.
DiscretisationOptions held_out_options(DiscretisationOptions searched);

// Steps of a lattice from one aim to the next. A poor strike's spread is poor_direction_factor times wider, so fewer of
// its steps make up the same angle.
inline int solid_steps_per_aim(const StrikeLattice& solid) { return solid.steps_per_sd() / numerics::aims_per_sd; }
inline int poor_steps_per_aim(const StrikeLattice& poor) {
  return static_cast<int>(poor.steps_per_sd() / (numerics::aims_per_sd * poor_direction_factor));
}

// The strikes that expectations are summed over.
struct StrikeLattices {
  explicit StrikeLattices(const DiscretisationOptions& options);

  bool are_for(const DiscretisationOptions& options) const;

  int steps_per_sd, tee_refinement, rows_finer;  // that they were made for
  StrikeLattice solid, poor;                     // of most shots
  StrikeLattice tee_solid, tee_poor;             // of the tee shot
  EqualWeightLattice equal_weight_solid,
      equal_weight_poor;  // of shots but the tee shot, where one aim is all that is asked
};

// What was asked for together with its lattices, so that no grid can meet lattices that are not its own. Making
// lattices costs as much as a hole: make one, and others from it.
class Discretisation {
 public:
  explicit Discretisation(const DiscretisationOptions& options = {});

  // Another grid. It shares the lattices of this one or of those that this one was made from, where it asks for their
  // steps; else it makes its own.
  Discretisation with(const DiscretisationOptions& options) const;

  const DiscretisationOptions& options() const { return options_; }
  const StrikeLattices& lattices() const { return *known_[own_]; }

 private:
  DiscretisationOptions options_;
  std::vector<std::shared_ptr<const StrikeLattices>> known_;
  std::size_t own_ = 0;
};

inline Discretisation held_out_grid(const Discretisation& searched) {
  return searched.with(held_out_options(searched.options()));
}
// Knows the lattices of the held-out grid, too. Made once in a process: a page asks about one hole again and again.
const Discretisation& search_grid();

}  // namespace yardworth
