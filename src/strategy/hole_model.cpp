#include "strategy/hole_model.hpp"

#include <algorithm>
#include <limits>
#include <numeric>
#include <optional>

namespace yardworth {

namespace {

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
int poor_refinement(const Discretisation& discretisation) {
  return std::max(1, discretisation.steps_per_sd / numerics::steps_per_sd);
}

// Even strikes at stride 1, about half as many as the nodes of the lattices: every stride divides them.
int equal_weight_solid_nodes(const Discretisation& discretisation) {
  return std::max(
             1, discretisation.steps_per_sd * numerics::equal_weight_share_above / numerics::equal_weight_share_below) *
         largest_lattice_stride;
}
int equal_weight_poor_nodes(const Discretisation& discretisation) {
  return numerics::equal_weight_poor * poor_refinement(discretisation) * largest_lattice_stride;
}

}  // namespace

Discretisation search_grid() {
  Discretisation discretisation;
  discretisation.ring_yd = numerics::search_ring_yd;
  discretisation.arc_yd = numerics::search_arc_yd;
  discretisation.sampling_density = numerics::search_sampling_density;
  discretisation.equal_weight_rows = true;
  return discretisation;
}

Discretisation held_out_grid(Discretisation searched) {
  searched.lattice_offset = lattice_offsets / 2;
  searched.arc_yd /= numerics::held_out_arcs;
  searched.sampling_density /= numerics::held_out_density_divisor;
  return searched;
}

StrikeLattices::StrikeLattices(const Discretisation& discretisation)
    : solid(solid_lattice_of(discretisation.steps_per_sd)),
      poor(poor_lattice_of(poor_refinement(discretisation))),
      tee_solid(solid_lattice_of(discretisation.steps_per_sd * discretisation.tee_refinement)),
      tee_poor(poor_lattice_of(poor_refinement(discretisation) * discretisation.tee_refinement)),
      equal_weight_solid(equal_weight_solid_nodes(discretisation), direction_cut_sd),
      equal_weight_poor(equal_weight_poor_nodes(discretisation), poor_direction_cut_sd) {}

namespace {

std::vector<double> ring_radii(double first_yd, double last_yd, const Discretisation& discretisation) {
  using numerics::ring_beside_edge_yd;
  std::vector<double> radii = {first_yd};
  while (radii.back() < last_yd) {
    const double share = std::clamp(radii.back() / numerics::rings_even_from_yd, numerics::closest_rings_share, 1.0);
    radii.push_back(radii.back() + discretisation.ring_yd * share);
  }
  const double furthest_yd = radii.back();
  for (const double edge : discretisation.edges_yd) {
    for (const double radius : {edge - ring_beside_edge_yd, edge + ring_beside_edge_yd}) {
      if (radius > first_yd && radius < furthest_yd) radii.push_back(radius);
    }
  }
  std::sort(radii.begin(), radii.end());
  const auto close = [](double a, double b) { return b - a < ring_beside_edge_yd; };
  radii.erase(std::unique(radii.begin(), radii.end(), close), radii.end());
  return radii;
}

}  // namespace

RingGrid::RingGrid(double first_yd, double last_yd, const Discretisation& discretisation)
    : radius_(ring_radii(first_yd, last_yd, discretisation)) {
  first_vertex_.push_back(0);
  for (const double radius : radius_) {
    const double in_quarter = 2.0 * pi * radius / discretisation.arc_yd / 4.0;
    const int count = 4 * std::max(numerics::least_states_in_quarter, static_cast<int>(std::ceil(in_quarter)));
    first_vertex_.push_back(first_vertex_.back() + count);
  }
  const auto ring_at = [&](std::size_t ring) {
    const int count = first_vertex_[ring + 1] - first_vertex_[ring];
    return Ring{0.25 * count, first_vertex_[ring], count};
  };
  for (std::size_t ring = 0; ring + 1 < radius_.size(); ++ring) {
    const double per_yard = 1.0 / (radius_[ring + 1] - radius_[ring]);
    gaps_.push_back({radius_[ring], radius_[ring + 1], per_yard, ring_at(ring), ring_at(ring + 1)});
  }
  gaps_.back().to_yd = std::numeric_limits<double>::infinity();
  const auto yards = static_cast<std::size_t>(radius_.back()) + 2;
  std::size_t ring = 0;
  for (std::size_t yard = 0; yard < yards; ++yard) {
    while (ring + 2 < radius_.size() && radius_[ring + 1] <= static_cast<double>(yard)) ++ring;
    ring_below_.push_back(static_cast<std::uint16_t>(ring));
  }
}

std::vector<Point> RingGrid::offsets() const {
  std::vector<Point> all;
  all.reserve(static_cast<std::size_t>(size()));
  for (std::size_t ring = 0; ring < radius_.size(); ++ring) {
    const int count = first_vertex_[ring + 1] - first_vertex_[ring];
    for (int vertex = 0; vertex < count; ++vertex) {
      const double turn = 4.0 * vertex / count;
      const double x = turn <= 2.0 ? 1.0 - turn : turn - 3.0;
      const double y = turn <= 2.0 ? 1.0 - std::abs(x) : std::abs(x) - 1.0;
      all.push_back((radius_[ring] / std::sqrt(x * x + y * y)) * Point{x, y});
    }
  }
  return all;
}

HoleModel::HoleModel(const HoleMap& map, Point tee, const Player& player, const Baseline& short_game,
                     const StrikeLattices& lattices, const Discretisation& discretisation)
    : map_(&map),
      tee_(tee),
      short_game_(&short_game),
      grid_(short_game_radius_yd,
            std::max(numerics::least_grid_yd, distance_yd(tee, map.pin()) + numerics::grid_behind_tee_yd),
            discretisation),
      lattices_(&lattices),
      lattice_offset_(discretisation.lattice_offset),
      sampling_density_(discretisation.sampling_density),
      equal_weight_rows_(discretisation.equal_weight_rows) {
  take_swings(player);
  for (const Lie lie : all_lies) {
    auto& on_rings = baseline_on_rings_[static_cast<std::size_t>(lie)];
    for (const double radius : grid_.radii()) on_rings.push_back(short_game.strokes(lie, radius));
  }
  choose_places();
}

HoleModel HoleModel::for_player(const Player& player) const {
  HoleModel model = *this;
  model.take_swings(player);
  return model;
}

void HoleModel::take_swings(const Player& player) {
  for (const Lie lie : all_lies) swings_[static_cast<std::size_t>(lie)] = full_swings(player, lie);
}

namespace {

// Points of the line of play, close enough together to tell how far from it a place is to two yards.
std::vector<Point> along_line(const LineOfPlay& line) {
  std::vector<Point> points;
  for (double along = 0.0; along < line.length_yd(); along += numerics::corridor_step_yd)
    points.push_back(line.at(along));
  points.push_back(line.at(line.length_yd()));
  return points;
}

bool in_corridor(const std::vector<Point>& line, Point place) {
  return std::any_of(line.begin(), line.end(), [place](Point p) {
    const Point off = place - p;
    return off.x * off.x + off.y * off.y <= corridor_yd * corridor_yd;
  });
}

// Which of the vertices kept of a ring of so many (rising, not empty) is nearest to a vertex.
std::size_t nearest_kept(const std::vector<int>& kept, int vertex, int count) {
  const auto next = std::lower_bound(kept.begin(), kept.end(), vertex);
  const std::size_t after = next == kept.end() ? 0 : static_cast<std::size_t>(next - kept.begin());
  const std::size_t before = (after + kept.size() - 1) % kept.size();
  const auto steps_between = [count](int from, int to) { return (to - from + count) % count; };
  return steps_between(vertex, kept[after]) < steps_between(kept[before], vertex) ? after : before;
}

}  // namespace

void HoleModel::choose_places() {
  const std::vector<Point> line = along_line(map_->line());
  const std::vector<Point> offsets = grid_.offsets();
  std::vector<Point> places;
  place_at_.reserve(offsets.size());
  for (std::size_t ring = 0; ring < grid_.radii().size(); ++ring) {
    const int first = grid_.first_vertex(ring);
    const int count = grid_.first_vertex(ring + 1) - first;
    const int first_place = place_count();
    const auto place_of_vertex = [&](int vertex) { return pin() + offsets[static_cast<std::size_t>(first + vertex)]; };
    std::vector<int> kept;
    for (int vertex = 0; vertex < count; ++vertex) {
      if (in_corridor(line, place_of_vertex(vertex))) kept.push_back(vertex);
    }
    // A ring that nowhere comes near the line, far behind the tee, keeps all.
    if (kept.empty()) {
      kept.resize(static_cast<std::size_t>(count));
      std::iota(kept.begin(), kept.end(), 0);
    }
    for (const int vertex : kept) {
      vertices_.push_back(first + vertex);
      places.push_back(place_of_vertex(vertex));
    }
    for (int vertex = 0; vertex < count; ++vertex) {
      place_at_.push_back(first_place + static_cast<int>(nearest_kept(kept, vertex, count)));
    }
  }
  places_.reserve(static_cast<std::size_t>(state_count()));
  for (int lie = 0; lie < 4; ++lie) places_.insert(places_.end(), places.begin(), places.end());
  places_.push_back(tee_);
}

int HoleModel::stride_for(StateId state, double visits_here) const {
  if (state == tee_state()) return 1;
  const auto as_many_as = [&](double usual) { return visits_here >= usual / sampling_density_; };
  return fitting_stride(state, as_many_as(numerics::every_node_visits)     ? 1
                               : as_many_as(numerics::every_second_visits) ? 2
                               : as_many_as(numerics::every_third_visits)  ? 3
                                                                           : largest_lattice_stride);
}

int HoleModel::fitting_stride(StateId state, int wanted) const {
  const int solid = solid_steps_per_aim(solid_lattice(state));
  const int poor = poor_steps_per_aim(poor_lattice(state));
  const auto fits = [&](int stride) { return solid % stride == 0 && (poor % stride == 0 || stride % poor == 0); };
  int stride = wanted;
  while (!fits(stride)) --stride;
  return stride;
}

Lie HoleModel::lie_of(StateId state) const {
  if (state == tee_state()) return Lie::tee;
  return static_cast<Lie>(static_cast<int>(Lie::fairway) + state / place_count());
}

StateId HoleModel::nearest_state(Lie lie, Point place) const {
  if (lie == Lie::tee) return tee_state();
  const Point offset = place - pin();
  const RingGrid::Corners corners = grid_.corners(offset, distance_yd(place, pin()));
  const bool further = corners.ring_share > 0.5;
  const bool second = (further ? corners.far_share : corners.near_share) > 0.5;
  const int vertex = corners.vertex[(further ? 2U : 0U) + (second ? 1U : 0U)];
  return place_at(vertex) + first_state(lie);
}

double middle_heading(const HoleMap& map, Point from, double total_yd) {
  const std::optional<Point> there = map.line().furthest_at(from, total_yd);
  return heading_rad(from, there ? *there : map.pin());
}

}  // namespace yardworth
