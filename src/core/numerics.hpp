#pragma once

#include <limits>

namespace yardworth::numerics {

// Every number that trades accuracy for time, or says when a sum, a search or a solve has gone far enough. Facts of
// golf (spreads, roll factors, sizes, rules) are not here: they stay with the model that they belong to.
// Lengths are yards; visits are the balls that come to a state, of one struck from the tee.

// ---- The grid of states

// Between rings and between the states along a ring, on the grid that policies are looked for on. The best shot changes
// less along a ring than the strokes it leads to, so states may lie far apart there; along the line of play the club
// changes every ten yards.
inline constexpr double search_ring_yd = 11.0;
inline constexpr double search_arc_yd = 40.0;
// The states of the held-out grid lie so many times closer along a ring: what a state is worth is felt in full by how
// far apart they are, with the square.
inline constexpr double held_out_arcs = 3.5;
// Where nothing is searched and judged apart, as when a baseline is derived: one grid for both.
inline constexpr double ring_yd = 13.0;
inline constexpr double arc_yd = 22.0;
// Rings lie as far apart as asked from the first distance on out, and in proportion nearer the hole, but no closer than
// the share: strokes change fastest near the green.
inline constexpr double rings_even_from_yd = 150.0;
inline constexpr double closest_rings_share = 0.6;
// A ring has a multiple of four states, which puts one in line with each axis; two in a quarter at least keep the
// innermost ring round.
inline constexpr int least_states_in_quarter = 2;
// Where the habit changes its club abruptly there is a ring this far on each side of the edge, and no two rings are
// closer together than that.
inline constexpr double ring_beside_edge_yd = 0.5;
// Where a habit changes is asked of places, not of states, so the grid that it is asked on may have few of them.
inline constexpr double habit_edge_grid_yd = 200.0;
// The edge between two clubs is looked for at steps of this, and halved so often: to a sixtieth of a yard.
inline constexpr double habit_edge_step_yd = 1.0;
inline constexpr int habit_edge_halvings = 6;
// Rings go on this far behind the tee, for balls that have gone backwards, and to the second distance at least.
inline constexpr double grid_behind_tee_yd = 60.0;
inline constexpr double least_grid_yd = 120.0;
// Rings are cut off this far from the line of play: nothing that the model strikes goes further. A ball that does is
// taken to lie at the nearest place on the ring.
inline constexpr double corridor_yd = 200.0;
// Points of the line of play that the corridor is measured from; to two yards.
inline constexpr double corridor_step_yd = 50.0;

// ---- The strike lattices

// Steps of the lattice of solid strikes in a direction spread: a multiple of aims_per_sd and of four.
inline constexpr int steps_per_sd = 24;
// Times as many for the tee shot: there is one of it, and no other state's error cancels its own.
inline constexpr int tee_refinement = 6;
// Aims lie this share of the direction spread apart: a quarter of a spread off the best costs less than the quadrature.
inline constexpr int aims_per_sd = 4;
// Aims are searched this far beyond the hole and the reference direction, in direction spreads.
inline constexpr int aim_reach_sd = 2;
// The largest aim, in steps either way of the reference, that the lattices reach: twelve spreads.
inline constexpr int largest_aim = 48;
// The hole may lie this many steps off the reference before it is cut to that: any number above largest_aim does.
inline constexpr double furthest_pin_steps = 60.0;
// The longest stride at which a lattice is struck, and of the lattices for one aim, whose nodes it divides.
inline constexpr int largest_lattice_stride = 6;
// States begin at this many different carries of a lattice, neighbouring vertices so many apart: a number without a
// common factor, so that of as many vertices in a row no two begin at the same.
inline constexpr int lattice_offsets = 233;
inline constexpr int lattice_offset_step = 89;
// Equal-weight strikes at stride 1, for each stride: of solid ones this share of the steps in a spread, of poor ones so
// many. About half as many as the nodes of the lattices, for the same error.
inline constexpr int equal_weight_share_above = 17;
inline constexpr int equal_weight_share_below = 24;
inline constexpr int equal_weight_poor = 5;
// Places between its neighbours that a node of an equal-weight lattice may take: states differ in it, so that errors
// cancel.
inline constexpr int equal_weight_shifts = 12;
// Far tails hold a thirtieth of the strikes: further than so many spreads from the aims that nodes serve, one node in
// so many may stand for its neighbours too.
inline constexpr int thin_from_sd = 2;
inline constexpr int thin_every = 3;

// ---- Fewer strikes where few balls come

// Expected visits from which on a state is struck at every node, every second and every third; below the last at every
// sixth. A state errs as often as it is come to, and the errors of different states cancel.
inline constexpr double every_node_visits = 0.005;
inline constexpr double every_second_visits = 0.0015;
inline constexpr double every_third_visits = 0.001;
// On the search grid a state counts as if so many times as many balls came to it: what rings and held-out states give
// leaves this to spare. On the held-out grid less by the divisor, since equal-weight strikes give more than as many
// nodes of a lattice do.
inline constexpr double search_sampling_density = 0.65;
inline constexpr double held_out_density_divisor = 1.3;
// The sampling density at which every state is struck at every node.
inline constexpr double every_node = std::numeric_limits<double>::infinity();

}  // namespace yardworth::numerics
