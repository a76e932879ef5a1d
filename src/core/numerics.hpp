#pragma once

#include <array>
#include <cstddef>
#include <limits>

namespace yardworth::numerics {

// Every number that trades accuracy for time, or says when a sum, a search or a solve has gone far enough. Facts of
// golf (spreads, roll factors, sizes, rules) are not here: they stay with the model that they belong to.
// Lengths are yards; visits are the balls that come to a state, of one struck from the tee.

// ---- The grid of states

// Between rings and between the states along a ring, on the grid that policies are looked for on. The best shot changes
// less along a ring than the strokes it leads to, so states may lie far apart there; along the line of play the club
// changes every ten yards.
inline constexpr double search_ring_yd = 13.0;
inline constexpr double search_arc_yd = 40.0;
// The rings of the held-out grid lie so many times closer, and its states along a ring. What a policy is worth is read
// off between them, and it jumps where a habit changes its club, mostly along the line of play.
inline constexpr double held_out_rings = 1.8;
inline constexpr double held_out_arcs = 5.0;
// Where nothing is searched and evaluated apart, as when a baseline is derived: one grid for both.
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
// Whether a lay-up has its margin is asked of carries no further apart than this.
inline constexpr double habit_margin_step_yd = 2.0;
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
// Times as many for the tee shot, on the search grid and on the held-out grid: there is one of it, and no other state's
// error cancels its own.
inline constexpr int tee_refinement = 6;
inline constexpr int held_out_tee_refinement = 24;
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
// common factor, so that of as many vertices in a row no two begin at the same node, and with the golden ratio neither
// nearly a whole number, so that the carries of neighbours differ, nor that of a few nodes.
inline constexpr int lattice_offsets = 233;
inline constexpr int lattice_offset_step = 67;
// Holes begin so many carries of a lattice apart, and their rings this share of a ring's distance: numbers without a
// common factor, and the golden section, so that of 18 holes no two err alike.
inline constexpr int hole_offset_step = 61;
inline constexpr double hole_ring_shift = 0.6180339887498949;
// Equal-weight strikes at stride 1, for each stride: of solid ones this share of the steps in a spread, of poor ones so
// many. About half as many as the nodes of the lattices, for the same error.
inline constexpr int equal_weight_share_above = 17;
inline constexpr int equal_weight_share_below = 24;
inline constexpr int equal_weight_poor = 5;
// On the held-out grid so many times as many at stride 1, for the few states that many balls come to.
inline constexpr int held_out_rows_finer = 8;
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
// leaves this to spare.
inline constexpr double search_sampling_density = 0.65;
// Among trees, where what is best to play changes from place to place, as if so many times as many again.
inline constexpr double recovery_density = 4.0;
// On the held-out grid a state that so many balls come to has the usual number of equal-weight strikes, and others in
// proportion to this power of their visits, between the fewest and the most that there are. A round errs least by
// independent errors of states that fall with n^-a, n being strikes, at the power 2 / (2 a + 1); this is that of a =
// 3/4.
inline constexpr double usual_strikes_visits = 0.015;
inline constexpr double strikes_by_visits = 0.8;
// The sampling density at which every state is struck at every node.
inline constexpr double every_node = std::numeric_limits<double>::infinity();

// ---- Policy iteration

// Swings are first looked at on a few nodes of the lattice, every so many times the stride that their state deserves;
// those that come out more than the margin behind the best are not struck as closely. Where all strikes count a screen
// of a sixth of them errs by more than the margin.
inline constexpr int screen_stride = 3;
inline constexpr double screen_margin = 0.03;
// Of the aims of a swing those within this share of the margin of the best, and this many beside them, are looked at
// again.
inline constexpr double narrow_share = 0.5;
inline constexpr int fine_aims = 2;
// States with fewer visits are left as the warm start plays them.
inline constexpr double least_visits = 1.2e-3;
// A state is not tried again while nothing it may lead to has moved by more than this. A complete search, whose Bellman
// residual is asserted to be under 1e-6, allows less.
inline constexpr double search_tolerance = 1e-4;
inline constexpr double complete_tolerance = 2e-7;
// What is no more than this many strokes worse is as good: the first of such options, or aims, is taken, so that no
// rounding, which platforms have of their own, chooses between the two sides of a straight hole.
inline constexpr double as_good_strokes = 1e-10;
// Sweeps alone may come slowly nearer where the same ground is played over again and again; after this many the policy
// so far is evaluated exactly, which is as good for going on. A handful of evaluations is the rule: where rounding
// makes the search go round among policies of the same worth it ends after so many.
inline constexpr int sweeps_before_evaluation = 30;
inline constexpr int most_evaluations = 200;
// A policy that saves less than this, which is rounding and strikes, is not worth other shots than those of its start.
inline constexpr double worth_other_shots = 2e-4;
// Strokes that an unconsidered state is guessed better than its like, so that a policy which looks good because of it
// is tried, and the state then considered.
inline constexpr double optimism = 0.05;
// Nodes of the bound on what a swing can be worth: it only orders the options and saves looks, and no look at a swing
// is saved that comes within what so few nodes miss.
inline constexpr int bound_nodes = 8;
// The bound takes a ball to roll this much further than on the fastest ground there is, in rolls on normal fairway: as
// an estimate from so few nodes it is to err on the side of another look.
inline constexpr double bound_roll_allowance = 0.05;
// A shot that is replayed all but this often costs ten thousand strokes: it need not be watched for becoming the best,
// and rounding would look like movement through it.
inline constexpr double hardly_leaves = 1e-4;

// ---- Evaluation

// A shot that is replayed, or a state that comes back to itself, all but this often is never left: what is nearer to
// certain than that is rounding.
inline constexpr double never_leaves = 1e-9;
inline constexpr double row_never_leaves = 1e-12;
// States that fewer balls come to are taken to be as far above the baseline as others of their lie: one ball in 200
// comes to any of them, and with a tenth of a stroke of error in each that changes nothing that is shown.
inline constexpr double evaluated_visits = 5e-5;
// On the held-out grid, whose values are shown.
inline constexpr double held_out_evaluated_visits = 2e-5;
// That is so where strokes resting on that, by a bound on them, are no more than the first. Else evaluation
// goes on to states with the share of the visits, so often, and at last to all of them.
inline constexpr double most_on_baseline = 0.01;
inline constexpr double fewer_visits_share = 0.01;
inline constexpr int evaluations_with_fewer_visits = 3;
// The bound is solved for to this share of itself.
inline constexpr double bound_accuracy = 1e-3;
// Sweeps over a strong component until none of its values moves by more than the share of the largest; what they do not
// solve in so many is factorised. A component that nothing leaves shows as more strokes than the last.
inline constexpr int component_sweeps = 60;
inline constexpr double component_accuracy = 1e-12;
inline constexpr double most_strokes_of_state = 1e6;
// A hole that takes more strokes cannot be finished, whichever the policy: five times what the shortest hitter needs
// for the longest hole. From the second on an answer is given with a caution: no golfer plays on as long.
inline constexpr double most_strokes_of_hole = 1000.0;
inline constexpr double strokes_with_caution = 30.0;
// A hole that takes more strokes than the first, and more than so many times what its length alone asks for, can hardly
// be finished, and is told of as one that cannot be.
inline constexpr double hardly_finished_strokes = 30.0;
inline constexpr double hardly_finished_by_length = 3.0;

// ---- Policies taken to another place or another bag

// A full swing whose total comes this near to the hole, as a share of the distance left, is one at the hole.
inline constexpr double nearly_at_hole = 0.12;
// What is lost in rounding: a swing played to a distance comes to it to the last digit but not always beyond.
inline constexpr double rounding_yd = 1e-6;
inline constexpr double rounding_share = 1e-6;

// Between states a policy plays what was weighed around a place where the search was at states with at least this share
// of it.
inline constexpr double searched_share = 0.5;

// ---- Clubs by look-ahead

// Vertices lie so many times closer than the states of the search, along the line of play and across.
inline constexpr double look_ahead_closer = 2.0;
// Clubs are weighed at vertices that so many balls come to. At vertices with more than the second every second
// equal-weight strike counts, with more than the third every fourth, and else every twelfth.
inline constexpr double look_ahead_visits = 1e-3;
inline constexpr double look_ahead_every_second_visits = 0.03;
inline constexpr double look_ahead_every_fourth_visits = 0.006;
// Clubs that the search has within this of its best are weighed again, by closer values and on strikes that are alike
// at all vertices.
inline constexpr double look_ahead_margin = 0.025;
// A place is looked ahead from where such vertices have at least this share of the weights of those around it.
inline constexpr double look_ahead_known_share = 0.5;

// ---- What a change could cost in control

// How much wilder costs what a change saves is found to so many bits, from a first try of so many radians or of such a
// probability on, doubled until it costs more.
inline constexpr int control_bits = 7;
inline constexpr double first_control_rad = 0.02;
inline constexpr double first_control_poor_strike = 0.04;

// ---- Options side by side

// So many cases that are equally likely stand for what an option saves.
inline constexpr int option_cases = 400;
// Where it is looked up how much of something saves as much as an option: added driver carry, narrower spreads.
inline constexpr std::array<double, 4> equivalent_carries_yd = {5.0, 10.0, 20.0, 40.0};
inline constexpr std::array<double, 4> equivalent_shares = {-0.05, -0.1, -0.2, -0.4};

// ---- What carry a hole needs

// Cells of the raster on which gaps in the playable ground are measured, how far it goes beyond the line of play, and
// the steps along the line that its extent is found by. It only fills in a message.
inline constexpr double carry_cell_yd = 3.0;
inline constexpr double carry_margin_yd = 60.0;
inline constexpr double carry_line_step_yd = 5.0;

// ---- How a hole is played

// A tee shot is told of by every so manieth of the nodes that it is valued by: for each the next club is looked for,
// which takes longer than the strike.
inline constexpr int told_tee_stride = 2;
// Balls that come to a state less often are left out of how a hole is played: a hundred such states change no
// probability by more than a hundredth, most of them by nothing. Coarser than evaluated_visits, since what is told of
// play is told in whole per cent.
inline constexpr double described_visits = 1e-4;
// Balls that come to a state less often are passed on by its row instead of being struck for their approach.
inline constexpr double approach_visits = 1e-3;
// Balls are followed from stroke to stroke until fewer than this are left, or for so many strokes.
inline constexpr double visits_left = 1e-9;
inline constexpr double approach_visits_left = 1e-6;
inline constexpr int most_strokes_followed = 200;
// The chance of the green from inside the short game is struck at distances so far apart.
inline constexpr double green_step_yd = 5.0;
// The scores of a hole are followed until fewer balls than this are left, and from a state with the same number of
// strokes taken only where more than the second come; what is left counts by what it is still worth.
inline constexpr double score_visits_left = 1e-6;
inline constexpr double score_visits_followed = 3e-8;
// The largest scores, of which all together have a probability below this, count as the last that is told; lower scores
// with a smaller one each are left out.
inline constexpr double score_tail = 1e-15;
// For so many strokes when the graph of a policy is drawn; states with fewer visits than this are then left out.
inline constexpr int most_strokes_drawn = 500;
inline constexpr double drawn_visits = 1e-6;
// A hole played by chance ends after so many strokes: that it has no end is said by then.
inline constexpr int most_strokes_simulated = 200;
// Steps of a curve that come this near to its end, as a share of a step, are on it.
inline constexpr double curve_rounding = 1e-9;

// ---- Strikes and where they end

// A rolling ball is watched at such steps near edges, and at the longer ones where nothing but fairway and rough is in
// reach: an edge between those met a little late only changes the roll a little.
inline constexpr double roll_step_yd = 2.0;
inline constexpr double open_roll_step_yd = 4.0;
// A ball with less roll left lies still.
inline constexpr double least_roll_yd = 1e-6;
// What is kept of shots and habits for those who play a hole from other tees (KeptShots), some 60 MB; then it is thrown
// away.
inline constexpr std::size_t most_kept_strikes = 700000;
inline constexpr std::size_t most_kept_habits = 300000;
// Where a ball last crossed into a penalty area is found to this, and a place to drop looked for at steps of the
// second.
inline constexpr double crossing_yd = 0.001;
inline constexpr double drop_step_yd = 1.0;
// A roll is walked at such steps to tell which area it comes into.
inline constexpr double area_step_yd = 0.5;

// ---- The short game and putts

// Nodes of a stroke's length, of half its direction (the other half mirrors it), and of a poor stroke.
inline constexpr int short_game_lengths = 40;
inline constexpr int short_game_directions = 16;
inline constexpr int short_game_poor = 16;
inline constexpr int putt_lengths = 41;
inline constexpr int putt_directions = 24;
// Paces that a putt is tried at: how far past the hole it would roll.
inline constexpr std::array<double, 7> putt_pasts_ft = {0.25, 0.5, 0.8, 1.2, 1.7, 2.3, 3.0};
// Distances that putts are tabled at, feet: every half up to the first, every second up to the second, then tens.
inline constexpr double near_putts_ft = 12.0;
inline constexpr double middle_putts_ft = 40.0;
inline constexpr double near_putt_step_ft = 0.5;
inline constexpr double middle_putt_step_ft = 2.0;
inline constexpr double far_putt_step_ft = 10.0;
// Sweeps over either table until nothing moves by more than the last.
inline constexpr int short_game_sweeps = 200;
inline constexpr int putt_sweeps = 60;
inline constexpr double table_accuracy = 1e-9;
// Places that the strokes of a finish are told apart by, between which a ball counts for both ends: yards off the
// green, feet on it, of those that putts are tabled at. What lies between is nearly straight.
inline constexpr std::array<int, 13> finish_yards = {0, 1, 2, 3, 5, 7, 10, 15, 20, 25, 30, 40, 50};
inline constexpr std::array<int, 19> finish_feet = {0,  1,  2,  3,  4,  5,  6,  8,   10, 12,
                                                    16, 20, 26, 34, 40, 60, 80, 100, 150};
// Nearer than the first a putt is struck as from there; drawn by chance, nearer than the second it is holed.
inline constexpr double shortest_putt_ft = 1e-3;
inline constexpr double tap_in_ft = 0.05;
// Strokes and putts drawn by chance end after so many.
inline constexpr int most_short_strokes = 30;
inline constexpr int most_putts = 12;

// ---- The map of a hole

// Cells of the raster. In one that an edge crosses, or two that meet, their sides decide; so it is exact at any size.
inline constexpr double map_cell_yd = 2.0;
// How far the raster goes beyond the line of play, wide enough for nearly every ball; beyond it the polygons are asked.
inline constexpr double map_side_margin_yd = 130.0;
inline constexpr double map_end_margin_yd = 90.0;
// Steps along the line that the extent of the raster is found by.
inline constexpr double map_line_step_yd = 10.0;
// Clearance is told up to so many cells: it has to fit in a byte, and no roll is longer.
inline constexpr int most_clearance_cells = 31;
// An edge touches the cells within this share of a cell of it, so that rounding does no harm; one that rises by less
// than the second lies along a row.
inline constexpr double cell_rim = 0.01;
inline constexpr double level_edge = 1e-9;
// Corners of the polygon that a green is.
inline constexpr int green_corners = 20;

// ---- Where tee shots finish

// The density is smoothed by a normal kernel no narrower than this, cut at so many of its widths; the grid has so many
// nodes in one.
inline constexpr double least_finish_width_yd = 1.5;
inline constexpr double finish_kernel_reach = 4.0;
inline constexpr double finish_nodes_in_width = 3.0;
// Corners of the outlines are left out that lie within this of what is left.
inline constexpr double finish_tolerance_yd = 0.3;

// ---- Members who are taken together

// The grid of golfers: indexes no further apart than this beside the rows of skill, and driver carries of which each is
// so many times the one before, beginning anywhere.
inline constexpr double family_index_step = 6.0;
inline constexpr double family_carry_ratio = 1.05;
inline constexpr double family_first_carry_yd = 100.0;
// Golfers who are worked out one beside the other: what they need in memory is given back before the next ones.
inline constexpr std::size_t golfers_at_a_time = 32;

// ---- Flight, in SI units

// Standard gravity (CGPM, 1901).
inline constexpr double gravity_mps2 = 9.80665;
// Error of the integration in one step, m and m/s and their shares, where conditions say nothing else: carries are
// right to 0.0003 yards. A hundred times as much costs 0.002 yards and saves a third of the time.
inline constexpr double flight_tolerance = 1e-6;
// The first step of the integration, which then chooses its own up to the second: a ball goes up and down once in a
// step at most.
inline constexpr double first_flight_step_s = 0.02;
inline constexpr double longest_flight_step_s = 0.5;
// No strike within the limits stays up so long.
inline constexpr double longest_flight_s = 120.0;
// Evaluations in which the time of a landing is found to the last digit; a dozen is the rule.
inline constexpr int most_root_evaluations = 100;
// A head that slides along its face by less than this share of its speed does not slide.
inline constexpr double least_sliding_share = 1e-12;
// A ball rolls when a hop would be lower; each hop is lower than the last, so there are a handful.
inline constexpr double least_hop_m = 0.005;
inline constexpr int most_hops = 100;
// Bits to which an angle of most carry is found: a carry is flat there, so half of a double's digits say nothing more.
inline constexpr int best_angle_bits = 16;
// In wind the best of bent deliveries is climbed to, one angle after another, for so many rounds or until one gains
// less carry; so much more must a bent one carry than a straight one.
inline constexpr int most_climbs = 20;
inline constexpr double least_climb_m = 0.01;

// ---- What a shot log says of a golfer

// The share of shots that are taken to be neither solid nor poor strikes of the model, but anything at all. About as
// likely as a solid strike four spreads from the mean, where the model cuts it.
inline constexpr double stray_share = 0.001;
// The fit is started with so many poor strikes, at the middle of the carries and at this quantile of them (where many
// are poor), and with at least this share of the carry, and so many radians, for spreads.
inline constexpr double first_poor_strike = 0.1;
inline constexpr double upper_start_quantile = 0.75;
inline constexpr double first_carry_sd_share = 0.02;
inline constexpr double first_direction_sd_rad = 0.02;
// A penalty that keeps a spread from closing in on two shots that are alike: worth so many shots of the first spread,
// divided by the number of shots.
inline constexpr double spread_penalty_shots = 2.0;
// The fit ends when nothing moves by more than this share of its spread, or after so many steps.
inline constexpr double mixture_accuracy = 1e-10;
inline constexpr int most_mixture_steps = 20000;
// The largest share of poor strikes that a fit gives.
inline constexpr double most_poor_strike = 0.9;
// Slope of carry over club head speed and spreads about it are found in turn until the slope moves by less than this
// share of itself, or so often. Spreads of nothing count as a millionth of a square yard.
inline constexpr double slope_accuracy = 1e-12;
inline constexpr int most_slope_steps = 200;
inline constexpr double least_carry_variance = 1e-6;

}  // namespace yardworth::numerics
