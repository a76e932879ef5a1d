#pragma once

#include <array>
#include <cmath>
#include <vector>

#include "course/hole_map.hpp"
#include "player/lies_in_play.hpp"
#include "shot/rest.hpp"
#include "shot/swing.hpp"
#include "strategy/ring_grid.hpp"
#include "yardworth/baseline.hpp"
#include "yardworth/player.hpp"

namespace yardworth {

// Inside this distance of the hole the band's baseline takes over: the short game, by the trade's usual reckoning about
// 30 yards from the edge of a green (common practice, no source).
inline constexpr double short_game_radius_yd = 50.0;

using numerics::aims_per_sd;
using numerics::corridor_yd;
using numerics::every_node;
using numerics::largest_aim;
using numerics::lattice_offsets;

// A state of the hole: the ball on the tee, or on a lie at a vertex of the grid.
using StateId = int;

// A shot that a policy may ask for: one of the swings of the state's lie played to a carry, meant to start along
// reference_heading_rad turned right by aim steps of (direction spread / aims_per_sd).
struct Action {
  int swing = -1;  // index into HoleModel::swings(lie); -1: none
  double carry_yd = 0.0;
  double reference_heading_rad = 0.0;
  int aim = 0;
  // Whether the swing's mean direction is allowed for, by aiming so far to its other side.
  bool allows_for_mean = false;

  friend bool operator==(const Action&, const Action&) = default;
};

// What a ball at rest is worth: a cost that is certain plus a mean over four states (weights >= 0, sum 1), or nothing
// more, or the same shot again. Kept small and made without values: there are millions, written when they are struck.
struct Continuation {
  enum class Kind : std::uint8_t { holed, between_states, replay };

  double cost;                 // penalty strokes, and what the baseline adds
  std::array<float, 3> share;  // RingGrid's ring, near and far share
  std::array<std::uint32_t, 4> state;
  Kind kind;

  std::array<double, 4> weights() const { return bilinear_weights(share[0], share[1], share[2]); }
  // Strokes still to come, given values by state; what a replay will cost is left out.
  double worth(const std::vector<double>& value) const {
    if (kind != Kind::between_states) return cost;
    const std::array<double, 4> weight = weights();
    double sum = cost;
    for (std::size_t i = 0; i < 4; ++i) sum += weight[i] * value[state[i]];
    return sum;
  }
};

class KeptShots;

// One hole for one golfer: the states, the shots and what they lead to. Holds references: map, baseline and
// kept shots must outlive it.
class HoleModel {
 public:
  HoleModel(const HoleMap& map, Point tee, const Player& player, const Baseline& short_game,
            const Discretisation& discretisation, KeptShots* kept_shots = nullptr);

  // The same hole, states and strikes for another golfer.
  HoleModel for_player(const Player& player) const;
  // Likewise for one to whom the short game is worth something else; it must outlive the model.
  HoleModel for_golfer(const Player& player, const Baseline& short_game) const;
  // The same, struck on other nodes of the lattices.
  HoleModel with_other_strikes() const;

  const HoleMap& map() const { return *map_; }
  Point tee() const { return tee_; }
  Point pin() const { return map_->pin(); }
  const Baseline& short_game() const { return *short_game_; }
  // Where shots of this hole are kept that others may have struck before (KeptShots), and which of its bags the golfer
  // plays with; null where they are not.
  KeptShots* kept_shots() const { return kept_shots_; }
  std::size_t bag_number() const { return bag_number_; }
  // Full swings by lie, longest first.
  const std::vector<Swing>& swings(Lie lie) const { return swings_[static_cast<std::size_t>(lie)]; }

  int state_count() const { return tee_state() + 1; }
  StateId tee_state() const { return static_cast<int>(lies_in_play.size()) * place_count(); }
  Lie lie_of(StateId state) const;
  Point place_of(StateId state) const { return places_[static_cast<std::size_t>(state)]; }
  // The states of a lie that is played from are so many in a row, of the same places for every lie.
  StateId first_state(Lie lie) const { return static_cast<int>(index_in_play(lie)) * place_count(); }
  int place_count() const { return static_cast<int>(vertices_.size()); }
  // Strokes of the baseline from a state; and from such a place of a lie.
  double baseline_at(StateId state) const;
  double baseline_at(Lie lie, int place) const {
    return baseline_on_rings_[static_cast<std::size_t>(lie)][ring_at_[static_cast<std::size_t>(place)]];
  }
  // The state of a lie nearest to a place: on the nearer ring, since what is best to play depends most on the distance.
  StateId nearest_state(Lie lie, Point place) const;

  Continuation continuation(const Rest& rest) const {
    Continuation continuation{};
    write_continuation(rest, continuation);
    return continuation;
  }
  // Written straight into its place: copying a value just put together in pieces stalls the processor. Never called:
  // a call costs a twentieth of what a strike does.
  [[gnu::always_inline]] void write_continuation(const Rest& rest, Continuation& continuation) const {
    if (rest.replay) {
      continuation.cost = rest.penalty_strokes;
      continuation.kind = Continuation::Kind::replay;
      return;
    }
    const Point offset = rest.at - pin();
    const double distance = std::sqrt(offset.x * offset.x + offset.y * offset.y);
    double cost = rest.penalty_strokes + short_game_->strokes(rest.lie, distance);
    if (rest.lie == Lie::green || distance <= short_game_radius_yd) {
      continuation.cost = cost;
      continuation.kind = Continuation::Kind::holed;
      return;
    }
    const RingGrid::Corners corners = grid_.corners(offset, distance);
    const auto ring_share = static_cast<float>(corners.ring_share);
    // What is interpolated is the difference to the baseline, which knows how strokes grow with distance: that leaves a
    // function so smooth that the rings may lie far apart.
    const auto& on_rings = baseline_on_rings_[static_cast<std::size_t>(rest.lie)];
    cost -= on_rings[corners.ring] + ring_share * (on_rings[corners.ring + 1] - on_rings[corners.ring]);
    const int shift = first_state(rest.lie);
    continuation.cost = cost;
    continuation.share = {ring_share, static_cast<float>(corners.near_share), static_cast<float>(corners.far_share)};
    for (std::size_t i = 0; i < 4; ++i) {
      continuation.state[i] = static_cast<std::uint32_t>(place_at(corners.vertex[i]) + shift);
    }
    continuation.kind = Continuation::Kind::between_states;
  }

  // The swing that an action asks for.
  Swing swing_of(Lie lie, const Action& action) const {
    return played_down(swings(lie)[static_cast<std::size_t>(action.swing)], action.carry_yd);
  }
  // The direction in which the shot is meant to start; where the golfer aims for that; and where shots start on
  // average.
  static double heading_of(const Swing& swing, const Action& action) {
    return action.reference_heading_rad + action.aim * swing.direction_scale_rad / aims_per_sd;
  }
  static double aimed_heading_of(const Swing& swing, const Action& action) {
    return heading_of(swing, action) - (action.allows_for_mean ? swing.direction_mean_rad : 0.0);
  }
  static double struck_heading_of(const Swing& swing, const Action& action) {
    return heading_of(swing, action) + (action.allows_for_mean ? 0.0 : swing.direction_mean_rad);
  }
  // Where they start on average at aim 0.
  static double struck_reference_of(const Swing& swing, const Action& action) {
    return action.reference_heading_rad + (action.allows_for_mean ? 0.0 : swing.direction_mean_rad);
  }
  // Whether any swing starts elsewhere than it is aimed on average.
  bool has_direction_mean() const { return has_direction_mean_; }

  // Which node of a lattice a state's strikes begin at. The heaviest nodes are few: begun at the same carries
  // everywhere they would err the same way everywhere. Other places begin elsewhere, so that their errors cancel. The
  // tee shot has nodes enough.
  int lattice_offset_of(StateId state) const {
    const int first = discretisation_.options().lattice_offset;
    if (state == tee_state()) return first % lattice_offsets;
    const int vertex = vertices_[static_cast<std::size_t>(state % place_count())];
    return (vertex * numerics::lattice_offset_step + first) % lattice_offsets;
  }
  const Discretisation& discretisation() const { return discretisation_; }
  double sampling_density() const { return discretisation_.options().sampling_density; }
  // States that fewer balls come to are not evaluated (PolicyEvaluation).
  double evaluated_visits() const { return discretisation_.options().evaluated_visits / sampling_density(); }
  // Every how manieth node of the lattice is struck from a state that so many balls, of one from the tee, come to. The
  // error of a state counts as often as it is come to, and those of different states cancel: most states are come to
  // less often than once in a thousand holes, and a few strikes are enough for them.
  int stride_for(StateId state, double visits_here) const;
  // The longest stride of the rows of a state.
  int longest_stride(StateId state) const;
  // The longest stride of a state that is at most twice as long as this one.
  int longer_stride(StateId state, int stride) const;
  // The largest stride up to one wanted that fits the steps between aims, since all aims share the nodes: it divides
  // that of solid strikes, and divides or is a multiple of that of poor ones.
  int fitting_stride(StateId state, int wanted) const;
  // The strike lattices: of the tee shot, and of all others.
  const StrikeLattice& solid_lattice(StateId state) const {
    return state == tee_state() ? lattices().tee_solid : lattices().solid;
  }
  const StrikeLattice& poor_lattice(StateId state) const {
    return state == tee_state() ? lattices().tee_poor : lattices().poor;
  }

  // Whether rows but the tee shot's are summed over equal-weight strikes, and those.
  bool has_equal_weight_rows() const { return discretisation_.options().equal_weight_rows; }
  const EqualWeightLattice& equal_weight_rows(bool solid) const {
    return solid ? lattices().equal_weight_solid : lattices().equal_weight_poor;
  }

 private:
  int place_at(int vertex) const { return place_at_[static_cast<std::size_t>(vertex)]; }
  int equal_weight_stride_for(double visits_here) const;
  const StrikeLattices& lattices() const { return discretisation_.lattices(); }
  void take_swings(const Player& player);
  void take_short_game(const Baseline& short_game);
  void choose_places();

  const HoleMap* map_;
  Point tee_;
  const Baseline* short_game_;
  std::array<std::vector<Swing>, all_lies.size()> swings_;
  bool has_direction_mean_ = false;
  RingGrid grid_;
  std::array<std::vector<double>, all_lies.size()> baseline_on_rings_;
  std::vector<int> vertices_;         // of the grid where balls are played from
  std::vector<std::size_t> ring_at_;  // by place: the ring of that vertex
  std::vector<int> place_at_;         // by vertex: its index among them, or that of the nearest of them on its ring
  std::vector<Point> places_;         // by state
  Discretisation discretisation_;
  KeptShots* kept_shots_;
  std::size_t bag_number_ = 0;
};

// The direction that a golfer takes who plays `total_yd` down the middle: to the line of play that far away, or to the
// hole where that is nearer.
double middle_heading(const HoleMap& map, Point from, double total_yd);

}  // namespace yardworth
