#include "yardworth/strategy/hole_model.hpp"

#include <algorithm>
#include <optional>

namespace yardworth {

namespace {

// Poor strikes are few, so a coarser lattice serves: one step for each step between aims.
constexpr int poor_steps_per_sd = static_cast<int>(aims_per_sd * poor_direction_factor);

StrikeLattice solid_lattice_of(int steps_per_sd) {
  return {steps_per_sd, direction_cut_sd,
          direction_cut_sd * steps_per_sd + largest_aim * steps_per_sd / aims_per_sd + lattice_phases};
}

StrikeLattice poor_lattice_of(int refinement) {
  const int steps_per_sd = poor_steps_per_sd * refinement;
  // At a long stride the last aim may lie between two that have nodes, so that these go on beyond it.
  constexpr int furthest_aim = largest_aim + largest_lattice_stride;
  return {steps_per_sd, poor_direction_cut_sd,
          poor_direction_cut_sd * steps_per_sd + furthest_aim * refinement + lattice_phases};
}

// As often as solid strikes have their usual steps.
int poor_refinement(const Resolution& resolution) {
  return std::max(1, resolution.steps_per_sd / Resolution{}.steps_per_sd);
}

}  // namespace

Resolution judging(Resolution searched) {
  searched.phase = lattice_phases / 2;
  return searched;
}

StrikeLattices::StrikeLattices(const Resolution& resolution)
    : solid(solid_lattice_of(resolution.steps_per_sd)),
      poor(poor_lattice_of(poor_refinement(resolution))),
      tee_solid(solid_lattice_of(resolution.steps_per_sd * resolution.tee_refinement)),
      tee_poor(poor_lattice_of(poor_refinement(resolution) * resolution.tee_refinement)) {}

namespace {

std::vector<double> ring_radii(double first_yd, double last_yd, const Resolution& resolution) {
  constexpr double beside_edge_yd = 0.5;
  std::vector<double> radii = {first_yd};
  while (radii.back() < last_yd) {
    // Nearly half as far apart near the green; as far as at 150 yards from there on out.
    radii.push_back(radii.back() + resolution.ring_yd * std::clamp(radii.back() / 150.0, 0.6, 1.0));
  }
  const double furthest_yd = radii.back();
  for (const double edge : resolution.edges_yd) {
    for (const double radius : {edge - beside_edge_yd, edge + beside_edge_yd}) {
      if (radius > first_yd && radius < furthest_yd) radii.push_back(radius);
    }
  }
  std::sort(radii.begin(), radii.end());
  const auto close = [](double a, double b) { return b - a < beside_edge_yd; };
  radii.erase(std::unique(radii.begin(), radii.end(), close), radii.end());
  return radii;
}

}  // namespace

RingGrid::RingGrid(double first_yd, double last_yd, const Resolution& resolution)
    : radius_(ring_radii(first_yd, last_yd, resolution)) {
  first_vertex_.push_back(0);
  for (const double radius : radius_) {
    // A multiple of four puts a state in line with the axes; eight at least keep the innermost ring round.
    const double around = 2.0 * pi * radius / resolution.arc_yd;
    first_vertex_.push_back(first_vertex_.back() + 4 * std::max(2, static_cast<int>(std::ceil(around / 4.0))));
  }
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
                     const StrikeLattices& lattices, const Resolution& resolution)
    : map_(&map),
      tee_(tee),
      short_game_(&short_game),
      grid_(short_game_radius_yd, std::max(120.0, distance_yd(tee, map.pin()) + 60.0), resolution),
      lattices_(&lattices),
      phase_(resolution.phase),
      closeness_(resolution.closeness) {
  for (const Lie lie : all_lies) {
    const auto index = static_cast<std::size_t>(lie);
    swings_[index] = full_swings(player, lie);
    for (const double radius : grid_.radii()) baseline_on_rings_[index].push_back(short_game.strokes(lie, radius));
  }
  const std::vector<Point> offsets = grid_.offsets();
  places_.reserve(static_cast<std::size_t>(state_count()));
  for (int lie = 0; lie < 4; ++lie) {
    for (const Point offset : offsets) places_.push_back(map.pin() + offset);
  }
  places_.push_back(tee);
}

int HoleModel::stride_for(StateId state, double balls) const {
  if (state == tee_state()) return 1;
  const auto as_many_as = [&](double usual) { return balls >= usual / closeness_; };
  return fitting_stride(state, as_many_as(0.005)    ? 1
                               : as_many_as(0.0015) ? 2
                               : as_many_as(0.001)  ? 3
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
  return static_cast<Lie>(static_cast<int>(Lie::fairway) + state / grid_.size());
}

double middle_heading(const HoleMap& map, Point from, double total_yd) {
  const std::optional<Point> there = map.line().furthest_at(from, total_yd);
  return heading_rad(from, there ? *there : map.pin());
}

}  // namespace yardworth
