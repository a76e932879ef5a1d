#include "strategy/discretisation.hpp"

#include <algorithm>
#include <cmath>

namespace yardworth {

namespace {

using numerics::aims_per_sd;
using numerics::largest_aim;
using numerics::largest_lattice_stride;
using numerics::lattice_offsets;

// Poor strikes are few, so a coarser lattice serves: one step for each step between aims.
constexpr int poor_steps_per_sd = static_cast<int>(aims_per_sd * poor_direction_factor);

// Nodes on each side, so many of aims and more for the lattice offsets; equal-weight strikes take their carries from
// the same nodes, from the middle on.
int reach_of(int aimed, int equal_weight_nodes) { return std::max(aimed, equal_weight_nodes) + lattice_offsets; }

StrikeLattice solid_lattice_of(int steps_per_sd, int equal_weight_nodes) {
  const int aimed = direction_cut_sd * steps_per_sd + largest_aim * steps_per_sd / aims_per_sd;
  return {steps_per_sd, direction_cut_sd, reach_of(aimed, equal_weight_nodes)};
}

StrikeLattice poor_lattice_of(int refinement, int equal_weight_nodes) {
  const int steps_per_sd = poor_steps_per_sd * refinement;
  // At a long stride the last aim may lie between two that have nodes, so that these go on beyond it.
  constexpr int furthest_aim = largest_aim + largest_lattice_stride;
  const int aimed = poor_direction_cut_sd * steps_per_sd + furthest_aim * refinement;
  return {steps_per_sd, poor_direction_cut_sd, reach_of(aimed, equal_weight_nodes)};
}

// As often as solid strikes have their usual steps.
int poor_refinement(const DiscretisationOptions& options) {
  return std::max(1, options.steps_per_sd / numerics::steps_per_sd);
}

// At stride 1; every stride divides them.
int equal_weight_solid_nodes(const DiscretisationOptions& options) {
  const int share = options.steps_per_sd * numerics::equal_weight_share_above / numerics::equal_weight_share_below;
  return std::max(1, share) * largest_lattice_stride * options.rows_finer;
}
int equal_weight_poor_nodes(const DiscretisationOptions& options) {
  return numerics::equal_weight_poor * poor_refinement(options) * largest_lattice_stride * options.rows_finer;
}

}  // namespace

DiscretisationOptions search_options() {
  DiscretisationOptions options;
  options.ring_yd = numerics::search_ring_yd;
  options.arc_yd = numerics::search_arc_yd;
  options.sampling_density = numerics::search_sampling_density;
  options.equal_weight_rows = true;
  return options;
}

DiscretisationOptions options_for_hole(DiscretisationOptions options, int number) {
  options.lattice_offset += numerics::hole_offset_step * number;
  const double turns = numerics::hole_ring_shift * number;
  options.ring_shift = turns - std::floor(turns);
  return options;
}

DiscretisationOptions held_out_options(DiscretisationOptions searched) {
  searched.lattice_offset += lattice_offsets / 2;
  searched.ring_yd /= numerics::held_out_rings;
  searched.arc_yd /= numerics::held_out_arcs;
  searched.sampling_density /= numerics::search_sampling_density;
  searched.tee_refinement *= numerics::held_out_tee_refinement / numerics::tee_refinement;
  searched.rows_finer = numerics::held_out_rows_finer;
  searched.evaluated_visits = numerics::held_out_evaluated_visits;
  return searched;
}

StrikeLattices::StrikeLattices(const DiscretisationOptions& options)
    : steps_per_sd(options.steps_per_sd),
      tee_refinement(options.tee_refinement),
      rows_finer(options.rows_finer),
      solid(solid_lattice_of(steps_per_sd, equal_weight_solid_nodes(options))),
      poor(poor_lattice_of(poor_refinement(options), equal_weight_poor_nodes(options))),
      tee_solid(solid_lattice_of(steps_per_sd * tee_refinement, 0)),
      tee_poor(poor_lattice_of(poor_refinement(options) * tee_refinement, 0)),
      equal_weight_solid(equal_weight_solid_nodes(options), direction_cut_sd),
      equal_weight_poor(equal_weight_poor_nodes(options), poor_direction_cut_sd) {}

bool StrikeLattices::are_for(const DiscretisationOptions& options) const {
  return steps_per_sd == options.steps_per_sd && tee_refinement == options.tee_refinement &&
         rows_finer == options.rows_finer;
}

Discretisation::Discretisation(const DiscretisationOptions& options)
    : options_(options), known_{std::make_shared<const StrikeLattices>(options)} {}

const Discretisation& search_grid() {
  static const Discretisation grid = held_out_grid(Discretisation(search_options())).with(search_options());
  return grid;
}

Discretisation Discretisation::with(const DiscretisationOptions& options) const {
  Discretisation other = *this;
  other.options_ = options;
  other.own_ = 0;
  while (other.own_ < known_.size() && !known_[other.own_]->are_for(options)) ++other.own_;
  if (other.own_ == known_.size()) other.known_.push_back(std::make_shared<const StrikeLattices>(options));
  return other;
}

}  // namespace yardworth
