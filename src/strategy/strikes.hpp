#pragma once

#include <algorithm>
#include <array>
#include <vector>

#include "strategy/hole_model.hpp"
#include "strategy/kept_shots.hpp"

namespace yardworth {

// The nodes that stand for the strikes of one kind, solid or poor, of a swing from a state.
struct Stratum {
  const StrikeLattice* lattice = nullptr;
  double step_rad = 0.0;  // between nodes
  int steps_per_aim = 0;
  double share = 0.0;      // probability of this kind of strike
  int lattice_offset = 0;  // where along the lattice its carries begin, from 0 to lattice_offsets - 1
  int stride = 1;          // every how manieth node is struck
  bool solid = true;

  // Of the nodes struck, from the leftmost on; they sum to 1.
  const std::vector<double>& weights() const { return lattice->weights(stride); }
  double carry_yd(const Swing& swing, int k) const {
    const int node = node_at_offset(k, lattice_offset);
    return solid ? swing.solid_carry_yd(lattice->solid_deviate(node))
                 : swing.carry_yd * lattice->poor_carry_share(node);
  }
};

// Solid and poor strikes, at every stride-th node.
inline std::array<Stratum, 2> strata_of(const HoleModel& model, StateId state, const Swing& swing, int stride = 1) {
  const StrikeLattice& solid = model.solid_lattice(state);
  const StrikeLattice& poor = model.poor_lattice(state);
  const double aim_rad = swing.direction_scale_rad / aims_per_sd;
  const int solid_steps = solid_steps_per_aim(solid);
  const int poor_steps = poor_steps_per_aim(poor);
  const int lattice_offset = model.lattice_offset_of(state);
  return {{{&solid, aim_rad / solid_steps, solid_steps, 1.0 - swing.poor_strike, lattice_offset, stride, true},
           {&poor, aim_rad / poor_steps, poor_steps, swing.poor_strike, lattice_offset, stride, false}}};
}

// The nodes first, first + stride, ..., last of a stratum as they fly: visit(k, Point direction, double carry_yd), k
// rising.
template <class Visit>
void for_each_flight(const Swing& swing, const Stratum& stratum, double reference_heading_rad, int first, int last,
                     Visit visit) {
  Point direction = along_heading(reference_heading_rad + first * stratum.step_rad);
  const double sine = std::sin(stratum.stride * stratum.step_rad);
  const double cosine = std::cos(stratum.stride * stratum.step_rad);
  for (int k = first; k <= last; k += stratum.stride) {
    visit(k, direction, stratum.carry_yd(swing, k));
    // The next node's direction, turned by one step: cheaper than a sine and a cosine for each.
    direction = {direction.x * cosine + direction.y * sine, direction.y * cosine - direction.x * sine};
  }
}

// Strikes these nodes and calls visit(k, const Rest&) for each.
template <class Visit>
void strike_nodes(const HoleModel& model, Point from, const Swing& swing, const Stratum& stratum,
                  double reference_heading_rad, int first, int last, Visit visit) {
  for_each_flight(swing, stratum, reference_heading_rad, first, last, [&](int k, Point direction, double carry) {
    visit(k, come_to_rest(model.map(), from, direction, carry, carry * swing.roll_share));
  });
}

using numerics::thin_every;
using numerics::thin_from_sd;

// How many nodes that is at each end, the outermost aim being half the width of the weights from it.
inline int thin_nodes(const Stratum& stratum) {
  const int tail = stratum.lattice->half_width() - thin_from_sd * stratum.lattice->steps_per_sd();
  return tail / stratum.stride / thin_every * thin_every;
}

// Strikes `count` nodes of a stratum from `first` on, of the first and last `thin` (a multiple of thin_every) one in
// thin_every: visit(int i, int n, const Rest&) for what the n nodes from the i-th on come to.
template <class Visit>
void strike_thinly(const HoleModel& model, Point from, const Swing& swing, const Stratum& stratum,
                   double reference_heading_rad, int first, int count, int thin, Visit visit) {
  const auto strike_every = [&](int begin, int end, int every) {
    if (begin >= end) return;
    Stratum sparse = stratum;
    sparse.stride *= every;
    int i = begin;
    strike_nodes(model, from, swing, sparse, reference_heading_rad, first + (begin + every / 2) * stratum.stride,
                 first + (end - 1) * stratum.stride, [&](int, const Rest& rest) {
                   visit(i, every, rest);
                   i += every;
                 });
  };
  strike_every(0, thin, thin_every);
  strike_every(thin, count - thin, 1);
  strike_every(count - thin, count, thin_every);
}

// The strikes of a swing from a place, aimed so many steps right of a heading: visit(const Rest&, double weight),
// weights sum to 1.
template <class Visit>
void for_each_strike_from(const HoleModel& model, Point from, const Swing& swing, const std::array<Stratum, 2>& strata,
                          double reference_heading_rad, int aim, Visit visit) {
  for (const Stratum& stratum : strata) {
    if (stratum.share <= 0.0) continue;
    const int half = stratum.lattice->half_width();
    const int centre = aim * stratum.steps_per_aim;
    const double* weight = stratum.weights().data();
    strike_nodes(model, from, swing, stratum, reference_heading_rad, centre - half, centre + half,
                 [&](int, const Rest& rest) { visit(rest, stratum.share * *weight++); });
  }
}

// The same over equal-weight strikes, as many as the strides of the strata leave.
template <class Visit>
void for_each_equal_weight_strike(const HoleModel& model, Point from, const Swing& swing,
                                  const std::array<Stratum, 2>& strata, double heading_rad, Visit visit) {
  const Point heading = along_heading(heading_rad);
  for (const Stratum& stratum : strata) {
    if (stratum.share <= 0.0) continue;
    const EqualWeightLattice& even = model.equal_weight_rows(stratum.solid);
    const int nodes = even.most() / stratum.stride;
    const double* const deviates = even.direction_deviates(nodes, stratum.lattice_offset % EqualWeightLattice::shifts);
    const double weight = stratum.share / nodes;
    const double scale_rad = stratum.step_rad * stratum.lattice->steps_per_sd();
    for (int first = 0; first < nodes; first += static_cast<int>(directions_at_a_time)) {
      const int count = std::min(nodes - first, static_cast<int>(directions_at_a_time));
      std::array<double, directions_at_a_time> right_rad{};
      for (int i = 0; i < count; ++i) right_rad[static_cast<std::size_t>(i)] = scale_rad * deviates[first + i];
      const Directions directions = turned_right(heading, right_rad);
      for (int i = 0; i < count; ++i) {
        const auto at = static_cast<std::size_t>(i);
        const double carry = stratum.carry_yd(swing, EqualWeightLattice::carry_node(first + i, nodes));
        visit(come_to_rest(model.map(), from, {directions.x[at], directions.y[at]}, carry, carry * swing.roll_share),
              weight);
      }
    }
  }
}

template <class Visit>
void strike_anew(const HoleModel& model, StateId state, const Action& action, int stride, bool equal_weight,
                 Visit visit) {
  const Swing swing = model.swing_of(model.lie_of(state), action);
  const std::array<Stratum, 2> strata = strata_of(model, state, swing, stride);
  if (equal_weight && state != model.tee_state()) {
    for_each_equal_weight_strike(model, model.place_of(state), swing, strata,
                                 HoleModel::struck_heading_of(swing, action), visit);
  } else {
    for_each_strike_from(model, model.place_of(state), swing, strata, HoleModel::struck_reference_of(swing, action),
                         action.aim, visit);
  }
}

// The strikes of an action from a state, at every stride-th node, or but for the tee shot over equal-weight strikes, as
// many in proportion.
template <class Visit>
void for_each_strike(const HoleModel& model, StateId state, const Action& action, int stride, bool equal_weight,
                     Visit visit) {
  KeptShots* const kept = model.kept_shots();
  if (kept == nullptr || state == model.tee_state()) {
    return strike_anew(model, state, action, stride, equal_weight, visit);
  }
  const Swing swing = model.swing_of(model.lie_of(state), action);
  const PlacedShot shot{model.place_of(state),
                        swing,
                        HoleModel::struck_reference_of(swing, action),
                        action.aim,
                        model.lattice_offset_of(state),
                        stride,
                        equal_weight};
  const auto strikes =
      kept->strikes_of(shot, [&](auto keep) { strike_anew(model, state, action, stride, equal_weight, keep); });
  for (const Struck& struck : strikes) visit(struck.rest, struck.weight);
}

// The same as the rows of a model are summed.
template <class Visit>
void for_each_strike(const HoleModel& model, StateId state, const Action& action, int stride, Visit visit) {
  for_each_strike(model, state, action, stride, model.has_equal_weight_rows(), visit);
}

// The tee shots of a swing as they fly, at every stride-th node, wherever they end: visit(Point direction, double
// carry_yd, double weight). The same strikes, to the last digit, as those of the tee shot at aim 0 of that heading.
template <class Visit>
void for_each_tee_flight(const HoleModel& model, const Swing& swing, double heading_rad, int stride, Visit visit) {
  for (const Stratum& stratum : strata_of(model, model.tee_state(), swing, stride)) {
    if (stratum.share <= 0.0) continue;
    const int half = stratum.lattice->half_width();
    const double* weight = stratum.weights().data();
    for_each_flight(swing, stratum, heading_rad, -half, half,
                    [&](int, Point direction, double carry) { visit(direction, carry, stratum.share * *weight++); });
  }
}

}  // namespace yardworth
