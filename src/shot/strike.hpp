#pragma once

#include <cstddef>
#include <vector>

#include "core/numerics.hpp"

namespace yardworth {

// How one strike varies, in units of a swing's own carry and spreads. docs/model.md, "Strike".
//
//   solid strike   carry = mean * (1 + share * z), z standard normal cut at +-4; direction = scale * t, Student t with
//                  5 degrees of freedom scaled to unit variance and cut at +-4
//   poor strike    carry = mean * u, u uniform on [0.3, 0.9]; direction as above with 1.75 times the scale, cut at +-3
inline constexpr double carry_cut_sd = 4.0;
inline constexpr double direction_freedom = 5.0;
inline constexpr int direction_cut_sd = 4;
// The cut takes a tenth of the variance; a scale so much larger gives a solid strike the spread that a club states.
inline constexpr double direction_scale_per_sd = 1.0529775655;
inline constexpr double poor_carry_low = 0.3;
inline constexpr double poor_carry_high = 0.9;
inline constexpr double poor_direction_factor = 1.75;
inline constexpr int poor_direction_cut_sd = 3;

// The standard normal deviate cut at +-carry_cut_sd that has the share u in (0, 1) below it.
double cut_normal_quantile(double u);

using numerics::largest_lattice_stride;

// The two-dimensional rule that turns expectations over strikes into sums, seen along one coordinate: direction.
// Node k lies k steps of sd / steps_per_sd from the reference direction (a trapezoid rule, whose weights are the cut t
// density), and takes the carry quantile frac(1/2 + k * golden ratio): a rank-1 lattice, so that edges of lies crossed
// in either coordinate are met at as many different places as there are nodes (H. Niederreiter, Random Number
// Generation and Quasi-Monte Carlo Methods, SIAM, 1992, ch. 5). A node does not depend on the aim: all aims that are
// whole steps apart share the nodes and differ in the weights only.
class StrikeLattice {
 public:
  // The direction is cut at +-cut_sd; nodes -reach..reach exist; steps_per_sd > 0, reach >= cut_sd * steps_per_sd.
  StrikeLattice(int steps_per_sd, int cut_sd, int reach);

  int steps_per_sd() const { return steps_per_sd_; }
  // The weights of one aim span -half_width..half_width around it; they sum to 1 at any stride.
  int half_width() const { return half_width_; }
  int reach() const { return reach_; }
  // weights()[half_width + j] is the weight of the node j steps right of the aim.
  const std::vector<double>& weights() const { return weights_.front(); }
  // The same where only every stride-th node is struck, from the leftmost on; stride, from 1 to largest_lattice_stride,
  // divides 2 * half_width. The carries of the nodes left are a rank-1 lattice again.
  const std::vector<double>& weights(int stride) const { return weights_[static_cast<std::size_t>(stride - 1)]; }
  // Carry deviate of node k for a solid strike, share of carry for a poor one; k in -reach..reach.
  double solid_deviate(int k) const { return solid_deviates_[static_cast<std::size_t>(k + reach_)]; }
  double poor_carry_share(int k) const { return poor_shares_[static_cast<std::size_t>(k + reach_)]; }

 private:
  int steps_per_sd_;
  int half_width_;
  int reach_;
  std::vector<std::vector<double>> weights_;  // by stride, from 1 on; empty for strides that do not fit
  std::vector<double> solid_deviates_;
  std::vector<double> poor_shares_;
};

// The node that a place with such an offset, 0..lattice_offsets - 1, takes for its node k. Half of the offsets begin
// left of the middle node, half right of it: carries left of it are those right of it mirrored, and all offsets
// together strike neither long nor short.
inline int node_at_offset(int k, int lattice_offset) { return k + lattice_offset - numerics::lattice_offsets / 2; }

// The same expectations for one aim alone, where no node has to serve others: a rank-1 lattice in the quantiles of both
// coordinates, so that all its nodes weigh the same and fewer do as well. Of n nodes node i stands, over all shifts,
// for the strikes that have shares from i / n to (i + 1) / n of all strikes left of them, and takes the root mean
// square direction of the shift-th of so many equal parts of those: the spread over all shifts is that of the strikes.
// (The middle of a part has less of the tails than the part.) Its carry is that of node i - n / 2 of a StrikeLattice.
class EqualWeightLattice {
 public:
  // At most `most` nodes, > 0; the direction is cut at +-cut_sd.
  EqualWeightLattice(int most, int cut_sd);

  int most() const { return most_; }
  // Deviates of the directions of n nodes, from the leftmost on; shift in 0..shifts - 1. n divides most().
  const double* direction_deviates(int n, int shift) const {
    return deviates_[static_cast<std::size_t>(n)].data() + static_cast<std::size_t>(shift * n);
  }
  // The node of a StrikeLattice whose carry node i of n takes. As many lie left of node 0 as right of it, so that
  // shots are as often too long as too short.
  static int carry_node(int i, int n) { return i - n / 2; }
  static constexpr int shifts = numerics::equal_weight_shifts;

 private:
  int most_;
  std::vector<std::vector<double>> deviates_;  // by n, by shift and node; empty where n does not divide most
};

}  // namespace yardworth
