#include "strategy/discretisation.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace yardworth {

namespace {

using numerics::aims_per_sd;
using numerics::largest_aim;
using numerics::largest_lattice_stride;
using numerics::lattice_offsets;

// Poor strikes are few, so a coarser lattice serves: one step for each step between aims.
constexpr int poor_steps_per_sd = static_cast<int>(aims_per_sd * poor_direction_factor);

StrikeLattice solid_lattice_of(int steps_per_sd) {
  return {steps_per_sd, direction_cut_sd,
          direction_cut_sd * steps_per_sd + largest_aim * steps_per_sd / aims_per_sd + lattice_offsets};
}

StrikeLattice poor_lattice_of(int refinement) {
  const int steps_per_sd = poor_steps_per_sd * refinement;
  // At a long stride the last aim may lie between two that have nodes, so that these go on beyond it.
  constexpr int furthest_aim = largest_aim + largest_lattice_stride;
  return {steps_per_sd, poor_direction_cut_sd,
          poor_direction_cut_sd * steps_per_sd + furthest_aim * refinement + lattice_offsets};
}

// As often as solid strikes have their usual steps.
int poor_refinement(const DiscretisationOptions& options) {
  return std::max(1, options.steps_per_sd / numerics::steps_per_sd);
}

// At stride 1; every stride divides them.
int equal_weight_solid_nodes(const DiscretisationOptions& options) {
  const int share = options.steps_per_sd * numerics::equal_weight_share_above / numerics::equal_weight_share_below;
  return std::max(1, share) * largest_lattice_stride;
}
int equal_weight_poor_nodes(const DiscretisationOptions& options) {
  return numerics::equal_weight_poor * poor_refinement(options) * largest_lattice_stride;
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
  searched.arc_yd /= numerics::held_out_arcs;
  searched.sampling_density /= numerics::held_out_density_divisor;
  return searched;
}

StrikeLattices::StrikeLattices(const DiscretisationOptions& options)
    : solid(solid_lattice_of(options.steps_per_sd)),
      poor(poor_lattice_of(poor_refinement(options))),
      tee_solid(solid_lattice_of(options.steps_per_sd * options.tee_refinement)),
      tee_poor(poor_lattice_of(poor_refinement(options) * options.tee_refinement)),
      equal_weight_solid(equal_weight_solid_nodes(options), direction_cut_sd),
      equal_weight_poor(equal_weight_poor_nodes(options), poor_direction_cut_sd) {}

Discretisation::Discretisation(const DiscretisationOptions& options)
    : Discretisation(options, std::make_shared<const StrikeLattices>(options)) {}

Discretisation::Discretisation(const DiscretisationOptions& options, std::shared_ptr<const StrikeLattices> lattices)
    : options_(options), lattices_(std::move(lattices)) {}

Discretisation Discretisation::with(const DiscretisationOptions& options) const {
  const bool same_steps =
      options.steps_per_sd == options_.steps_per_sd && options.tee_refinement == options_.tee_refinement;
  return same_steps ? Discretisation(options, lattices_) : Discretisation(options);
}

}  // namespace yardworth
